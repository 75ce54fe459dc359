import { type Crossings, crossingsOf, type Lattice } from './crossings.ts'
import type { Solid } from './solid.ts'

/** The solid stretches of a part over every cell of a lattice, looked along one axis. */
export interface Columns {
  readonly lattice: Lattice
  /** By cell (row by row): where its bounds begin in `bounds`, and how many there are, two a stretch, rising. */
  readonly start: Int32Array
  readonly count: Int32Array
  readonly bounds: Float32Array
  /** Cells whose crossings did not cancel (missing or turned triangles); each took the stretches of a sound one near. */
  readonly leaks: number
}

/**
 * The solid stretches of a part over each cell: where crossings wind round it once or more, so that shells that
 * overlap, are doubled or turned inside out are no harm.
 * Cost: O(triangles + cells crossed).
 */
export function columnsOf(solid: Solid, lattice: Lattice, room: Crossings): Columns {
  const cells = lattice.columns * lattice.rows
  const total = crossingsOf(solid, lattice, room)
  const start = new Int32Array(cells + 1)
  for (let i = 0; i < total; i++) start[(room.cells[i]! >>> 1) + 1]!++
  for (let cell = 0; cell < cells; cell++) start[cell + 1]! += start[cell]!
  sortCrossings(start, room, total)
  const bounds = new Float32Array(total)
  const count = new Int32Array(cells)
  const leaking: number[] = []
  for (let cell = 0; cell < cells; cell++) {
    if (start[cell] === start[cell + 1]) continue
    const found = wind(room.sortedDepths, room.sortedTurns, start[cell]!, start[cell + 1]!, bounds)
    if (found < 0) leaking.push(cell)
    else count[cell] = found
  }
  mendLeaks(lattice, start, count, leaking)
  return { lattice, start, count, bounds, leaks: leaking.length }
}

/** Gathers the crossings by cell, sorted by depth, into the room. */
function sortCrossings(start: Int32Array, room: Crossings, total: number): void {
  const cellCount = start.length - 1
  if (room.filled.length < cellCount) room.filled = new Int32Array(2 * cellCount)
  if (room.sortedDepths.length < total) {
    room.sortedDepths = new Float32Array(2 * total)
    room.sortedTurns = new Int8Array(2 * total)
  }
  const { cells, depths, sortedDepths, sortedTurns, filled } = room
  filled.set(start.subarray(0, cellCount))
  for (let i = 0; i < total; i++) {
    const [packed, depth] = [cells[i]!, depths[i]!]
    const cell = packed >>> 1
    let at = filled[cell]!++
    for (const first = start[cell]!; at > first && sortedDepths[at - 1]! > depth; at--) {
      sortedDepths[at] = sortedDepths[at - 1]!
      sortedTurns[at] = sortedTurns[at - 1]!
    }
    sortedDepths[at] = depth
    sortedTurns[at] = packed & 1 ? 1 : -1
  }
}

/** Writes the stretches of one cell; how many bounds, or -1 where its crossings do not cancel. */
function wind(
  depths: Float32Array,
  ups: Int8Array,
  first: number,
  past: number,
  bounds: Float32Array,
): number {
  let [turns, at] = [0, first]
  for (let i = first; i < past; i++) {
    const before = turns
    turns += ups[i]!
    if (before === 0) {
      if (at > first && bounds[at - 1]! >= depths[i]!)
        at-- // Two shells touch: one stretch.
      else bounds[at++] = depths[i]!
    } else if (turns === 0) {
      if (bounds[at - 1]! === depths[i]!) at--
      else bounds[at++] = depths[i]!
    }
  }
  return turns === 0 ? at - first : -1
}

/** Furthest a leaking cell looks for a sound one, in cells. */
const furthest = 60

/** A leaking cell takes the stretches of the nearest sound cell that has some, in its row or column; else it is empty. */
function mendLeaks(lattice: Lattice, start: Int32Array, count: Int32Array, leaking: readonly number[]): void {
  if (leaking.length === 0) return
  const isLeaking = new Uint8Array(count.length)
  for (const cell of leaking) isLeaking[cell] = 1
  const from = leaking.map((cell) => soundNear(lattice, count, isLeaking, cell))
  for (const [k, cell] of leaking.entries()) {
    const source = from[k]!
    if (source < 0) continue
    start[cell] = start[source]!
    count[cell] = count[source]!
  }
}

function soundNear(
  { columns, rows }: Lattice,
  count: Int32Array,
  isLeaking: Uint8Array,
  cell: number,
): number {
  const [column, row] = [cell % columns, Math.floor(cell / columns)]
  for (let step = 1; step <= furthest; step++) {
    const near = [
      column >= step ? cell - step : -1,
      column + step < columns ? cell + step : -1,
      row >= step ? cell - step * columns : -1,
      row + step < rows ? cell + step * columns : -1,
    ]
    const sound = near.find((one) => one >= 0 && !isLeaking[one] && count[one]! > 0)
    if (sound !== undefined) return sound
  }
  return -1
}
