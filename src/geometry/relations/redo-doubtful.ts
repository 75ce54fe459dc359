import { columnsOf } from './columns.ts'
import { type Crossings, latticeOver } from './crossings.ts'
import { type Axis, directionAlong } from './directions.ts'
import type { Seen } from './seen-along.ts'
import { bits, type SweptPair, sweepPair } from './sweep-pair.ts'
import { type Widest, widestDisc } from './widest-disc.ts'

/** The pair as gathered axis by axis. */
export interface Gathering {
  readonly a: number
  readonly b: number
  readonly found: (Widest | null)[]
  readonly foundBack: (Widest | null)[]
  readonly contactMm2: Float64Array
  /** By axis they are seen along: how widely they overlap; `undefined`: they do not see each other along it. */
  readonly overlaps: (Widest | null | undefined)[]
}

/** A part, by number, as seen along an axis of the device. */
type SeenOf = (part: number, axis: number) => Seen

/** Cells of one window that is looked at again: as a rule, and where it would else not be twice as fine. */
const usualCells = 500_000
const mostCells = 4_000_000
/** Cells of the finer lattice to one of the coarse, at most. */
const finest = 3
/** A window that cannot be made this much finer tells nothing new. */
const leastGain = 1.5

/** Looks again, on a finer lattice, at collisions of a pair between half and twice what it gives. */
export function redoDoubtful(
  seenOf: SeenOf,
  pair: Gathering,
  giveMm: number,
  cellMm: number,
  room: Crossings,
): void {
  const doubtful = (one: Widest | null | undefined) =>
    one && one.widthMm >= giveMm / 2 && one.widthMm <= 2 * giveMm ? one : null
  for (let axis = 0; 2 * axis < pair.found.length; axis++) {
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
    const rectangles = asked.map(({ found }) => found)
    const swept = sweptFiner(seenOf, pair, { axis, rectangles, cellMm }, room)
    if (!swept) continue
    for (const { of, direction, bit } of asked) of[direction] = widestDisc(swept.lattice, swept.cells, bit)
  }
}

/** Cells across the thickness of a sheet that is seen edge-on. */
const acrossSheet = 4

/**
 * Looks again at a pair of which one is a sheet of `thinMm`, as fine as that takes, along the axes in which the sheet is
 * seen edge-on: on the coarse lattice it may fall between two cells.
 */
export function redoThin(
  seenOf: SeenOf,
  pair: Gathering,
  { thinMm, cellMm }: { readonly thinMm: number; readonly cellMm: number },
  room: Crossings,
): void {
  for (let axis = 0; 2 * axis < pair.found.length; axis++) {
    const [one, other] = [seenOf(pair.a, axis), seenOf(pair.b, axis)]
    const [u, v] = [((one.axis + 1) % 3) as Axis, ((one.axis + 2) % 3) as Axis]
    const low = [u, v].map((k) => Math.max(one.solid.low[k], other.solid.low[k])) as [number, number]
    const high = [u, v].map((k) => Math.min(one.solid.high[k], other.solid.high[k])) as [number, number]
    const sides = [high[0] - low[0], high[1] - low[1]] as const
    if (Math.min(...sides) <= 0 || Math.min(...sides) > thinMm * 1.01) continue
    const fine = Math.max(
      Math.min(cellMm, thinMm / acrossSheet),
      Math.sqrt((sides[0] * sides[1]) / usualCells),
    )
    const lattice = latticeOver(one.axis, fine, low, high)
    const swept = sweepPair(columnsOf(one.solid, lattice, room), columnsOf(other.solid, lattice, room))
    if (!swept) continue
    const [up, down] = [directionAlong(axis, true), directionAlong(axis, false)]
    pair.found[up] = widestDisc(swept.lattice, swept.cells, bits.aUp)
    pair.found[down] = widestDisc(swept.lattice, swept.cells, bits.aDown)
    pair.foundBack[up] = widestDisc(swept.lattice, swept.cells, bits.bUp)
    pair.foundBack[down] = widestDisc(swept.lattice, swept.cells, bits.bDown)
  }
}

/** How widely a pair overlaps, in mm: the least over the axes it is seen along, looked at finer where that is below `mostMm`. */
export function overlapOf(
  seenOf: SeenOf,
  { overlaps, ...pair }: Gathering,
  { mostMm, cellMm }: { readonly mostMm: number; readonly cellMm: number },
  room: Crossings,
): number {
  const seen = [...overlaps].flatMap((found, axis) => (found === undefined ? [] : [{ axis, found: found! }]))
  if (seen.length === 0 || seen.some(({ found }) => found === null)) return 0
  const least = (widths: readonly number[]): number => widths.reduce((one, other) => Math.min(one, other))
  const coarse = least(seen.map(({ found }) => found.widthMm))
  if (coarse >= mostMm + 2 * cellMm) return coarse
  return least(
    seen.map(({ axis, found }) => {
      if (found.widthMm >= mostMm + 2 * cellMm) return found.widthMm
      const swept = sweptFiner(seenOf, pair, { axis, rectangles: [found], cellMm }, room)
      return swept ? (widestDisc(swept.lattice, swept.cells, bits.overlap)?.widthMm ?? 0) : found.widthMm
    }),
  )
}

/** What was found along an axis, by its rectangles on the coarse lattice. */
interface Window {
  readonly axis: number
  readonly rectangles: readonly Widest[]
  readonly cellMm: number
}

/** A pair swept again where something was found; `null` where that is too large to be seen much finer. */
function sweptFiner(
  seenOf: SeenOf,
  { a, b }: Pick<Gathering, 'a' | 'b'>,
  { axis, rectangles, cellMm }: Window,
  room: Crossings,
): SweptPair | null {
  const [one, other] = [seenOf(a, axis), seenOf(b, axis)]
  const window = around(one, other, rectangles, cellMm)
  if (!window) return null
  return sweepPair(columnsOf(one.solid, window, room), columnsOf(other.solid, window, room))
}

/** The finer lattice over what was found, a cell wider all round; `null` where it is too large to be much finer. */
function around({ solid: a, axis }: Seen, { solid: b }: Seen, found: readonly Widest[], cellMm: number) {
  const [u, v] = [((axis + 1) % 3) as Axis, ((axis + 2) % 3) as Axis]
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
  const usual = Math.min(cellMm / 2, Math.sqrt(area / usualCells))
  const fine = Math.max(cellMm / finest, usual, Math.sqrt(area / mostCells))
  return fine * leastGain <= cellMm ? latticeOver(axis, fine, lowest, highest) : null
}
