import type { Rectangle } from './max-rects.ts'

/**
 * As many equal parts as fit a plate in one or two blocks: in each block all lie alike, the second block turned.
 * Method: every way to cut the plate in two across either side is tried.
 * Gives: places in whole micrometres; at least the better of the two plain grids. Cost: O(parts along a side).
 */
export function equalParts(
  plate: { readonly w: number; readonly d: number },
  w: number,
  d: number,
): Rectangle[] {
  let best: readonly Block[] = []
  for (const blocks of layouts(plate.w, plate.d, w, d)) if (countIn(blocks) > countIn(best)) best = blocks
  return best.flatMap(placesIn)
}

/** A grid of parts that all lie alike, from its lower left corner. */
interface Block {
  readonly x: number
  readonly y: number
  readonly across: number
  readonly deep: number
  readonly w: number
  readonly d: number
}

function* layouts(plateW: number, plateD: number, w: number, d: number): Generator<readonly Block[]> {
  for (const [pw, pd] of w === d ? [[w, d] as const] : [[w, d] as const, [d, w] as const]) {
    for (let columns = Math.floor(plateW / pw); columns >= 0; columns--)
      yield [
        block(0, 0, columns * pw, plateD, pw, pd),
        block(columns * pw, 0, plateW - columns * pw, plateD, pd, pw),
      ]
    for (let rows = Math.floor(plateD / pd); rows >= 0; rows--)
      yield [block(0, 0, plateW, rows * pd, pw, pd), block(0, rows * pd, plateW, plateD - rows * pd, pd, pw)]
  }
}

function block(x: number, y: number, roomW: number, roomD: number, w: number, d: number): Block {
  return { x, y, across: Math.floor(roomW / w), deep: Math.floor(roomD / d), w, d }
}

function countIn(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { across, deep }) => sum + across * deep, 0)
}

function placesIn({ x, y, across, deep, w, d }: Block): Rectangle[] {
  return Array.from({ length: across * deep }, (_, i) => ({
    x: x + (i % across) * w,
    y: y + Math.floor(i / across) * d,
    w,
    d,
  }))
}
