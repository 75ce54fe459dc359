import type { Projected } from './projection.ts'

/** What is nearest in each cell of a picture: which part, and how near. */
export interface DepthBuffer {
  /** Cells across and down. */
  readonly across: number
  /** Number of the part; -1: nothing. */
  readonly part: Int16Array
  /** Depth towards the looker in cells; minus endless where there is nothing. */
  readonly depth: Float32Array
}

/** Surfaces of two parts nearer to each other than this lie in one plane, in cells: the part filled first stays. */
const flushCells = 0.02

/** A picture without anything in it. */
export function emptyBuffer(across: number): DepthBuffer {
  return {
    across,
    part: new Int16Array(across * across).fill(-1),
    depth: new Float32Array(across * across).fill(Number.NEGATIVE_INFINITY),
  }
}

/**
 * Puts a part into the picture. A cell belongs to a triangle when its middle does; edges shared by two triangles
 * leave no gap, because both cut a row of cells at the same place.
 * Method: triangles filled row by row between their sides. Gives: the same whatever the order of triangles.
 * Cost: O(triangles + cells filled).
 */
export function fillPart(buffer: DepthBuffer, part: number, triangles: Uint32Array, at: Projected): void {
  const { x, y } = at
  const rows = rowFiller(buffer, part, at)
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!
    const b = triangles[t + 1]!
    const c = triangles[t + 2]!
    const top = Math.max(0, Math.ceil(Math.min(y[a]!, y[b]!, y[c]!) - 0.5))
    const bottom = Math.min(buffer.across, Math.ceil(Math.max(y[a]!, y[b]!, y[c]!) - 0.5))
    if (top >= bottom) continue
    const first = Math.ceil(Math.min(x[a]!, x[b]!, x[c]!) - 0.5)
    const past = Math.ceil(Math.max(x[a]!, x[b]!, x[c]!) - 0.5)
    if (first < past && past > 0 && first < buffer.across) {
      rows.turnTo(a, b, c)
      for (let row = top; row < bottom; row++) rows.fill(row)
    }
  }
}

/** Fills rows of one triangle after another. */
interface RowFiller {
  turnTo(a: number, b: number, c: number): void
  fill(row: number): void
}

function rowFiller(buffer: DepthBuffer, part: number, { x, y, z }: Projected): RowFiller {
  let [a, b, c, slopeX, slopeY, least, most] = [0, 0, 0, 0, 0, 0, 0]
  return {
    turnTo(first, second, third) {
      a = first
      b = second
      c = third
      const [ux, uy, uz] = [x[b]! - x[a]!, y[b]! - y[a]!, z[b]! - z[a]!]
      const [vx, vy, vz] = [x[c]! - x[a]!, y[c]! - y[a]!, z[c]! - z[a]!]
      // Not a number, and then nothing is filled, where the triangle is seen edge-on.
      const twice = ux * vy - uy * vx || Number.NaN
      slopeX = (uz * vy - vz * uy) / twice
      slopeY = (vz * ux - uz * vx) / twice
      least = Math.min(z[a]!, z[b]!, z[c]!)
      most = Math.max(z[a]!, z[b]!, z[c]!)
    },
    fill(row) {
      const level = row + 0.5
      const ab = cutAt(x, y, a, b, level)
      const bc = cutAt(x, y, b, c, level)
      const ca = cutAt(x, y, c, a, level)
      // Two of the three sides cut a row; the third is not a number, and a comparison with it is false.
      let left = Number.POSITIVE_INFINITY
      let right = Number.NEGATIVE_INFINITY
      if (ab < left) left = ab
      if (ab > right) right = ab
      if (bc < left) left = bc
      if (bc > right) right = bc
      if (ca < left) left = ca
      if (ca > right) right = ca
      const past = Math.min(buffer.across, Math.ceil(right - 0.5))
      const start = z[a]! + slopeY * (level - y[a]!) - slopeX * (x[a]! - 0.5)
      const base = row * buffer.across
      for (let column = Math.max(0, Math.ceil(left - 0.5)); column < past; column++) {
        const plane = start + slopeX * column
        put(buffer, base + column, part, Math.max(least, Math.min(most, plane)))
      }
    },
  }
}

function put({ part: parts, depth: depths }: DepthBuffer, cell: number, part: number, depth: number): void {
  const there = depths[cell]!
  if (parts[cell] === part ? depth > there : depth > there + flushCells) {
    depths[cell] = depth
    parts[cell] = part
  }
}

/** Where a side cuts a row, reckoned from its upper end whichever triangle asks; no number where it does not. */
function cutAt(x: Float32Array, y: Float32Array, a: number, b: number, level: number): number {
  const upper = y[a]! < y[b]! || (y[a] === y[b] && a < b) ? a : b
  const lower = upper === a ? b : a
  if (!(y[upper]! < level && level <= y[lower]!)) return Number.NaN
  return x[upper]! + ((level - y[upper]!) / (y[lower]! - y[upper]!)) * (x[lower]! - x[upper]!)
}
