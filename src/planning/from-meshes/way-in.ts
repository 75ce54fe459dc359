import { type Direction, opposite } from '../../geometry/relations/directions.ts'
import type { Step } from '../../model/assembly.ts'
import type { MeshMove } from '../../model/from-meshes.ts'
import { sideOf } from './side-of.ts'

/** Where several ways are as good: from above, from the front, from the sides, from behind, from below. Common practice, no source. */
const fromAbove: Direction = 4
const usualOrder: readonly Direction[] = [4, 3, 0, 1, 2, 5]

/**
 * The direction that something comes in from, past what is there by then: as typed where that is free; else as what
 * fastens it, where that is free; else a free one that leads against what it ends at, from above first, else against what
 * it meets most widely; where none is free, the least blocked one. Directions off x, y and z come last.
 */
export function wayIn(
  move: MeshMove,
  step: Step,
  present: ReadonlySet<number>,
  fastened: readonly Direction[] = [],
): Direction {
  const widths = move.stops.map((stops) =>
    stops.reduce((most, { body, widthMm }) => (present.has(body) ? Math.max(most, widthMm) : most), 0),
  )
  const typed = move.role === 'put' ? sideOf(step.from) : null
  const wanted = [...(typed === null ? [] : [typed]), ...move.tiltedFrom, ...fastened].find(
    (direction) => widths[direction] === 0,
  )
  if (wanted !== undefined) return wanted
  const least = Math.min(...widths)
  const tilted = widths.flatMap((_, direction) => (usualOrder.includes(direction) ? [] : [direction]))
  const open = [...usualOrder, ...tilted].filter((direction) => widths[direction] === least)
  const ends = (direction: Direction): number => widths[opposite(direction)]!
  if (least === widths[fromAbove] && ends(fromAbove) > 0) return fromAbove
  return open.reduce((best, one) => (ends(one) > ends(best) ? one : best))
}
