import { columnsOf } from './columns.ts'
import { type Crossings, latticeOver } from './crossings.ts'
import { axes, directionAlong } from './directions.ts'
import type { Solid } from './solid.ts'
import { bits, sweepPair } from './sweep-pair.ts'
import { type Widest, widestDisc } from './widest-disc.ts'

/** The pair as gathered axis by axis. */
export interface Gathering {
  readonly a: number
  readonly b: number
  readonly found: (Widest | null)[]
  readonly foundBack: (Widest | null)[]
  readonly contactMm2: Float64Array
  overlapMm: number
}

/** Most cells of one window that is looked at again. */
const mostCells = 250_000
/** Cells of the finer lattice to one of the coarse, at most. */
const finest = 4
/** A window that cannot be made this much finer tells nothing new. */
const leastGain = 1.5

/** Looks again, on a finer lattice, at collisions of a pair between half and twice what it gives. */
export function redoDoubtful(
  solids: readonly Solid[],
  pair: Gathering,
  giveMm: number,
  cellMm: number,
  room: Crossings,
): void {
  const doubtful = (one: Widest | null | undefined) =>
    one && one.widthMm >= giveMm / 2 && one.widthMm <= 2 * giveMm ? one : null
  for (const axis of axes) {
    const [up, down] = [directionAlong(axis, true), directionAlong(axis, false)]
    const asked = [
      { of: pair.found, direction: up, bit: bits.aUp },
      { of: pair.found, direction: down, bit: bits.aDown },
      { of: pair.foundBack, direction: up, bit: bits.bUp },
      { of: pair.foundBack, direction: down, bit: bits.bDown },
    ].flatMap((one) => {
      const found = doubtful(one.of[one.direction])
      return found ? [{ ...one, found }] : []
    })
    if (asked.length === 0) continue
    const window = around(
      solids[pair.a]!,
      solids[pair.b]!,
      axis,
      asked.map(({ found }) => found),
      cellMm,
    )
    if (!window) continue
    const swept = sweepPair(
      columnsOf(solids[pair.a]!, window, room),
      columnsOf(solids[pair.b]!, window, room),
    )
    if (!swept) continue
    for (const { of, direction, bit } of asked) of[direction] = widestDisc(swept.lattice, swept.cells, bit)
  }
}

/** The finer lattice over what was found, a cell wider all round; `null` where it is too large to be much finer. */
function around(a: Solid, b: Solid, axis: 0 | 1 | 2, found: readonly Widest[], cellMm: number) {
  const [u, v] = [((axis + 1) % 3) as 0 | 1 | 2, ((axis + 2) % 3) as 0 | 1 | 2]
  // Rectangles of the coarse sweep count from the first cell that both parts share.
  const left = Math.max(Math.floor(a.low[u] / cellMm), Math.floor(b.low[u] / cellMm))
  const low = Math.max(Math.floor(a.low[v] / cellMm), Math.floor(b.low[v] / cellMm))
  const lowest: [number, number] = [
    (left + Math.min(...found.map((one) => one.left)) - 1) * cellMm,
    (low + Math.min(...found.map((one) => one.low)) - 1) * cellMm,
  ]
  const highest: [number, number] = [
    (left + Math.max(...found.map((one) => one.left + one.columns)) + 1) * cellMm,
    (low + Math.max(...found.map((one) => one.low + one.rows)) + 1) * cellMm,
  ]
  const area = (highest[0] - lowest[0]) * (highest[1] - lowest[1])
  const fine = Math.max(cellMm / finest, Math.sqrt(area / mostCells))
  return fine * leastGain <= cellMm ? latticeOver(axis, fine, lowest, highest) : null
}
