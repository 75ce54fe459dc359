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
  const bounds = new Float32Array(crossingsOf(solid, lattice, room))
  const [start, count] = [new Int32Array(cells), new Int32Array(cells)]
  const leaking: number[] = []
  for (let cell = 0, at = 0; cell < cells; cell++) {
    const last = room.last[cell]!
    if (last === 0) continue
    const crossings = sortCell(room, last)
    const found = wind(room.cellDepths, room.cellTurns, crossings, bounds, at)
    start[cell] = at
    if (found < 0) leaking.push(cell)
    else {
      count[cell] = found
      at += found
    }
  }
  mendLeaks(lattice, start, count, leaking)
  return { lattice, start, count, bounds, leaks: leaking.length }
}

/** Sorts the crossings of a cell by depth into the room, those noted first before others as deep; how many. */
function sortCell(room: Crossings, last: number): number {
  const { depths, before } = room
  let count = 0
  for (let link = last; link !== 0; link = before[(link >>> 1) - 1]!, count++) {
    if (count === room.cellDepths.length) growCell(room)
    const { cellDepths, cellTurns } = room
    const depth = depths[(link >>> 1) - 1]!
    let at = count
    for (; at > 0 && cellDepths[at - 1]! >= depth; at--) {
      cellDepths[at] = cellDepths[at - 1]!
      cellTurns[at] = cellTurns[at - 1]!
    }
    cellDepths[at] = depth
    cellTurns[at] = link & 1 ? 1 : -1
  }
  return count
}

function growCell(room: Crossings): void {
  const [depths, turns] = [room.cellDepths, room.cellTurns]
  room.cellDepths = new Float32Array(2 * depths.length)
  room.cellTurns = new Int8Array(2 * turns.length)
  room.cellDepths.set(depths)
  room.cellTurns.set(turns)
}

/** Writes the stretches of one cell from `first` on; how many bounds, or -1 where its crossings do not cancel. */
function wind(
  depths: Float32Array,
  ups: Int8Array,
  crossings: number,
  bounds: Float32Array,
  first: number,
): number {
  let [turns, at] = [0, first]
  for (let i = 0; i < crossings; i++) {
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
