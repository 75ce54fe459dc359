import type { DepthBuffer } from './depth-buffer.ts'

/**
 * Cells that lie outside of some parts: joined to the rim of the picture by cells that show none of them. What is seen
 * through a hole of a part is not outside of it.
 * Method: swept down and up until nothing is added; most pictures take two or three sweeps. Cost: O(cells) a sweep.
 */
export function outsideCells({ across, part: parts }: DepthBuffer, isInside: Uint8Array): Uint8Array {
  const outside = new Uint8Array(across * across)
  const open = new Uint8Array(across * across)
  for (let cell = 0; cell < open.length; cell++) {
    const part = parts[cell]!
    open[cell] = part >= 0 && isInside[part] === 1 ? 0 : 1
  }
  for (let i = 0; i < across; i++)
    for (const cell of [i, (across - 1) * across + i, i * across, i * across + across - 1])
      outside[cell] = open[cell]!
  while (sweep(open, outside, across, 1) + sweep(open, outside, across, -1) > 0);
  return outside
}

/** Carries what is outside on along the rows and to the next row, down (1) or up (-1); gives how much was added. */
function sweep(open: Uint8Array, outside: Uint8Array, across: number, way: 1 | -1): number {
  let added = 0
  for (let i = 1; i < across; i++) {
    const row = (way === 1 ? i : across - 1 - i) * across
    const before = row - way * across
    for (let column = 0; column < across; column++) {
      const cell = row + column
      if (outside[cell] === 1 || open[cell] === 0) continue
      if (outside[before + column] === 1 || (column > 0 && outside[cell - 1] === 1)) {
        outside[cell] = 1
        added++
      }
    }
    for (let cell = row + across - 2; cell >= row; cell--) {
      if (outside[cell] === 1 || open[cell] === 0 || outside[cell + 1] === 0) continue
      outside[cell] = 1
      added++
    }
  }
  return added
}
