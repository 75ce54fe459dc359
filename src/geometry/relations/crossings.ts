import type { Axis } from './directions.ts'
import type { Solid } from './solid.ts'

/** Square cells across an axis; cell (0, 0) begins at `left`, `low` cells from the origin. */
export interface Lattice {
  readonly axis: Axis
  readonly cellMm: number
  /** First cell along the next axis, and along the one after it. */
  readonly left: number
  readonly low: number
  readonly columns: number
  readonly rows: number
}

/** Room for the places where lines through the cells cross a surface; grows, and is used again from part to part. */
export interface Crossings {
  /** Twice the number of the cell, plus one where the line enters. */
  cells: Int32Array
  depths: Float32Array
  /** The same by cell and rising depth: 1 where the line enters, -1 where it leaves. */
  sortedDepths: Float32Array
  sortedTurns: Int8Array
  /** By cell, how many are sorted in. */
  filled: Int32Array
}

/** Empty room for crossings. */
export function roomForCrossings(): Crossings {
  return {
    cells: new Int32Array(1 << 16),
    depths: new Float32Array(1 << 16),
    sortedDepths: new Float32Array(1 << 16),
    sortedTurns: new Int8Array(1 << 16),
    filled: new Int32Array(1 << 16),
  }
}

/** The lattice over a rectangle across an axis, in millimetres; at least one cell. */
export function latticeOver(
  axis: Axis,
  cellMm: number,
  low: readonly [number, number],
  high: readonly [number, number],
): Lattice {
  const [left, bottom] = [Math.floor(low[0] / cellMm), Math.floor(low[1] / cellMm)]
  return {
    axis,
    cellMm,
    left,
    low: bottom,
    columns: Math.max(1, Math.ceil(high[0] / cellMm) - left),
    rows: Math.max(1, Math.ceil(high[1] / cellMm) - bottom),
  }
}

/**
 * Where the lines through the middles of the cells cross the surface of a part; how many crossings there are.
 * Method: triangles row by row. Each edge adds or takes one turn for all cells right of it, worked out from its lower
 * end, so that over a closed surface the turns of every line cancel exactly.
 */
export function crossingsOf(solid: Solid, lattice: Lattice, room: Crossings): number {
  const { corners, insideOut } = solid
  const [u, v, w] = [(lattice.axis + 1) % 3, (lattice.axis + 2) % 3, lattice.axis]
  const walk: Walk = { lattice, room, total: 0, insideOut }
  const { cellMm, low, rows, left, columns } = lattice
  for (let o = 0; o < corners.length; o += 9) {
    const [va, vb, vc] = [corners[o + v]!, corners[o + 3 + v]!, corners[o + 6 + v]!]
    const first = Math.max(0, Math.ceil(Math.min(va, vb, vc) / cellMm - 0.5) - low)
    const past = Math.min(rows, Math.ceil(Math.max(va, vb, vc) / cellMm - 0.5) - low)
    if (first >= past) continue
    const [ua, ub, uc] = [corners[o + u]!, corners[o + 3 + u]!, corners[o + 6 + u]!]
    if (Math.min(ua, ub, uc) / cellMm - 0.5 > left + columns) continue
    if (Math.max(ua, ub, uc) / cellMm - 0.5 < left) continue
    rowsOf(walk, first, past, [
      ua,
      va,
      corners[o + w]!,
      ub,
      vb,
      corners[o + 3 + w]!,
      uc,
      vc,
      corners[o + 6 + w]!,
    ])
  }
  return walk.total
}

interface Walk {
  readonly lattice: Lattice
  readonly room: Crossings
  readonly insideOut: boolean
  total: number
}

/** u, v, w of three corners. */
type Triangle = readonly [number, number, number, number, number, number, number, number, number]

function rowsOf(walk: Walk, first: number, past: number, t: Triangle): void {
  const [ua, va, wa, ub, vb, wb, uc, vc, wc] = t
  const area = (ub - ua) * (vc - va) - (uc - ua) * (vb - va)
  const alongU = area === 0 ? 0 : ((wb - wa) * (vc - va) - (wc - wa) * (vb - va)) / area
  const alongV = area === 0 ? 0 : ((wc - wa) * (ub - ua) - (wb - wa) * (uc - ua)) / area
  const [lowest, highest] = [Math.min(wa, wb, wc), Math.max(wa, wb, wc)]
  const { cellMm, low, left, columns } = walk.lattice
  for (let row = first; row < past; row++) {
    const at = (row + low + 0.5) * cellMm
    let [rising, falling] = [0, 0]
    if (va <= at !== vb <= at) {
      const x = crossAt(ua, va, ub, vb, at)
      if (vb > va) rising = x
      else falling = x
    }
    if (vb <= at !== vc <= at) {
      const x = crossAt(ub, vb, uc, vc, at)
      if (vc > vb) rising = x
      else falling = x
    }
    if (vc <= at !== va <= at) {
      const x = crossAt(uc, vc, ua, va, at)
      if (va > vc) rising = x
      else falling = x
    }
    // Counter-clockwise seen from the far end of the axis: the line leaves there.
    const leaves = falling < rising !== walk.insideOut
    const from = Math.max(0, Math.ceil(Math.min(rising, falling) / cellMm - 0.5) - left)
    const to = Math.min(columns, Math.ceil(Math.max(rising, falling) / cellMm - 0.5) - left)
    const base = wa + (at - va) * alongV + ((left + 0.5) * cellMm - ua) * alongU
    for (let column = from; column < to; column++) {
      const depth = base + column * cellMm * alongU
      note(walk, row * columns + column, leaves, Math.min(highest, Math.max(lowest, depth)))
    }
  }
}

/** Where an edge passes a row, the same from either side. */
function crossAt(ua: number, va: number, ub: number, vb: number, at: number): number {
  return va < vb ? ua + ((at - va) * (ub - ua)) / (vb - va) : ub + ((at - vb) * (ua - ub)) / (va - vb)
}

function note(walk: Walk, cell: number, leaves: boolean, depth: number): void {
  const { room } = walk
  if (walk.total === room.cells.length) {
    const [cells, depths] = [new Int32Array(2 * walk.total), new Float32Array(2 * walk.total)]
    cells.set(room.cells)
    depths.set(room.depths)
    room.cells = cells
    room.depths = depths
  }
  room.cells[walk.total] = 2 * cell + (leaves ? 0 : 1)
  room.depths[walk.total++] = depth
}
