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

/**
 * Room for the places where lines through the cells cross a surface; grows, and is used again from part to part. A link is
 * twice the number of a crossing, counted from 1, plus one where the line enters; 0: none.
 */
export interface Crossings {
  depths: Float32Array
  /** By crossing: link to the one before it in the same cell. */
  before: Int32Array
  /** By cell: link to its last one. */
  last: Int32Array
  /** Crossings of one cell by rising depth: 1 where the line enters, -1 where it leaves. */
  cellDepths: Float32Array
  cellTurns: Int8Array
}

/** Empty room for crossings. */
export function roomForCrossings(): Crossings {
  return {
    depths: new Float32Array(1 << 18),
    before: new Int32Array(1 << 18),
    last: new Int32Array(1 << 16),
    cellDepths: new Float32Array(64),
    cellTurns: new Int8Array(64),
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
 * Where the lines through the middles of the cells cross the surface of a part, by cell in the room; how many there are.
 * Method: triangles row by row. Each edge adds or takes one turn for all cells right of it, worked out from its lower
 * end, so that over a closed surface the turns of every line cancel exactly.
 */
export function crossingsOf(solid: Solid, lattice: Lattice, room: Crossings): number {
  const { corners, insideOut } = solid
  const cells = lattice.columns * lattice.rows
  if (room.last.length < cells) room.last = new Int32Array(cells)
  else room.last.fill(0, 0, cells)
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
      note(walk, walk.total++, row * columns + column, leaves, Math.min(highest, Math.max(lowest, depth)))
    }
  }
}

/** Where an edge passes a row, the same from either side. */
function crossAt(ua: number, va: number, ub: number, vb: number, at: number): number {
  return va < vb ? ua + ((at - va) * (ub - ua)) / (vb - va) : ub + ((at - vb) * (ua - ub)) / (va - vb)
}

function note({ room }: Walk, at: number, cell: number, leaves: boolean, depth: number): void {
  if (at === room.depths.length) {
    const [depths, before] = [new Float32Array(2 * at), new Int32Array(2 * at)]
    depths.set(room.depths)
    before.set(room.before)
    room.depths = depths
    room.before = before
  }
  room.depths[at] = depth
  room.before[at] = room.last[cell]!
  room.last[cell] = 2 * (at + 1) + (leaves ? 0 : 1)
}
