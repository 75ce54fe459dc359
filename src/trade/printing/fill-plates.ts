import { bestSpot, type Rectangle, type RoomRule, roomsAfter } from './max-rects.ts'

/** One copy of a part, its footprint with the gap, in whole micrometres. */
export interface Copy {
  /** Which part of the list, from 0. */
  readonly of: number
  /** Which copy of that part, from 1. */
  readonly copy: number
  readonly w: number
  readonly d: number
}

/** A copy in its place; `w` and `d` as it lies. */
export interface LaidCopy extends Copy, Rectangle {
  /** Which plate, from 1. */
  readonly plate: number
  readonly turned: boolean
}

/**
 * Copies put down one after the other, each on the first plate that has room, in its best place there.
 * Needs: every copy fits an empty plate.
 */
export function fillPlates(
  copies: readonly Copy[],
  room: { readonly w: number; readonly d: number },
  rule: RoomRule,
): LaidCopy[] {
  const plates: Rectangle[][] = []
  return copies.map((copy) => {
    for (let on = 0; ; on++) {
      const rooms = plates[on] ?? [{ x: 0, y: 0, ...room }]
      const spot = bestSpot(rooms, copy.w, copy.d, rule)
      if (!spot) continue
      plates[on] = roomsAfter(rooms, spot)
      const { x, y, w, d, turned } = spot
      return { of: copy.of, copy: copy.copy, x, y, w, d, turned, plate: on + 1 }
    }
  })
}
