import type { DepthBuffer } from './depth-buffer.ts'

/** Pieces of hatch shorter than this are specks, in cells. */
const speckCells = 3

/** How a surface is hatched. */
export interface Hatch {
  /** Between lines, measured across them: 2 or more. */
  readonly everyCells: number
  /** Falling to the right instead of rising: to tell one part from another before which it stands. */
  readonly falling: boolean
}

/** Lines at 45 degrees over what is seen of some parts, those marked 1 in `hatched`. Gives: x and y of both ends, in cells. */
export function hatchLines(
  { across, part: parts }: DepthBuffer,
  hatched: Uint8Array,
  { everyCells, falling }: Hatch,
): readonly (readonly number[])[] {
  const lines: number[][] = []
  const step = everyCells * Math.SQRT2
  for (let sum = step / 2; sum < 2 * across; sum += step) {
    const diagonal = Math.floor(sum)
    const first = Math.max(0, diagonal - across + 1)
    const past = Math.min(across, diagonal + 1)
    const rowAt = (column: number): number => (falling ? across - 1 - diagonal + column : diagonal - column)
    let start = -1
    for (let column = first; column <= past; column++) {
      const part = column < past ? parts[rowAt(column) * across + column]! : -1
      const inside = part >= 0 && hatched[part] === 1
      if (inside && start < 0) start = column
      if (inside || start < 0) continue
      if (column - start >= speckCells) {
        const rim = falling ? 0 : 1
        lines.push([start, rowAt(start) + rim, column, rowAt(column) + rim])
      }
      start = -1
    }
  }
  return lines
}
