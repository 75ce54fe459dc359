import { type Columns, columnsOf } from './columns.ts'
import { latticeOver, roomForCrossings } from './crossings.ts'
import { type Axis, axes, type Direction, directionAlong } from './directions.ts'
import { type Gathering, overlapOf, redoDoubtful } from './redo-doubtful.ts'
import type { Solid } from './solid.ts'
import { bits, contactMm, type SweptPair, sweepPair } from './sweep-pair.ts'
import { widestDisc } from './widest-disc.ts'

/** How two parts stand to each other. */
export interface PairRelation {
  readonly a: number
  readonly b: number
  /** By direction: the widest disc, in mm, that runs into b when a moves so; 0: nothing does. And a, when b moves. */
  readonly aMm: Float64Array
  readonly bMm: Float64Array
  /** How widely they overlap as drawn, in mm: the least over the three axes. */
  readonly overlapMm: number
  /** By direction: area where b touches a on that side of it, seen along the axis, in mm2. */
  readonly contactMm2: Float64Array
  /** Collisions narrower than this, in mm, do not count. */
  readonly giveMm: number
}

/** How the parts of a device stand to each other; pairs that have nothing to do with each other are left out. */
export interface Relations {
  readonly count: number
  readonly cellMm: number
  /** By smaller number times `count` plus the larger. */
  readonly pairs: ReadonlyMap<number, PairRelation>
  /** Leaking columns of each part, over the three axes. */
  readonly leaks: readonly number[]
}

/** What is known of pairs beforehand. */
export interface RelateOptions {
  /** The least give of two parts, in mm, as a declared thread asks for; `null`: the usual one. */
  readonly leastGiveMm?: (a: number, b: number) => number | null
  /** Cell in mm, instead of the one chosen from the size of the device. */
  readonly cellMm?: number
  /** Whether two parts are looked at; all pairs where not said. */
  readonly looksAt?: (a: number, b: number) => boolean
}

/** Collisions narrower than this are play, roundings and facets, in mm. */
export const usualGiveMm = 0.3
/** Overlaps narrower than this are threads, press fits and facets: the pair gives as much more. */
const mostNominalOverlapMm = 1

/**
 * For every two parts and six directions whether and how widely one stops the other, how widely they overlap as
 * drawn, and where they touch. Collisions between half and twice the give of a pair are looked at again on a finer
 * lattice.
 * Method: column lists along each axis (solid stretches over square cells), swept pair by pair.
 * Gives: widths right to about a cell; collisions narrower than `giveMm` and sheets thinner than about that seen edge-on do not count.
 * Cost: O(parts x triangles + cells of the windows that pairs share).
 */
export function relateSolids(solids: readonly Solid[], options: RelateOptions = {}): Relations {
  const cellMm = options.cellMm ?? cellFor(solids)
  const room = roomForCrossings()
  const leaks = solids.map(() => 0)
  const gathered = new Map<number, Gathering>()
  for (const axis of axes) {
    const columns = solids.map((solid) => columnsOf(solid, latticeOf(solid, axis, cellMm), room))
    for (const [part, { leaks: some }] of columns.entries()) leaks[part]! += some
    sweepAxis(solids, columns, axis, gathered, options)
  }
  const pairs = new Map<number, PairRelation>()
  for (const [key, pair] of gathered) {
    const overlapMm = overlapOf(solids, pair, { mostMm: mostNominalOverlapMm, cellMm }, room)
    const giveMm = giveOf(pair, overlapMm, options)
    redoDoubtful(solids, pair, giveMm, cellMm, room)
    pairs.set(key, {
      a: pair.a,
      b: pair.b,
      aMm: Float64Array.from(pair.found, (one) => one?.widthMm ?? 0),
      bMm: Float64Array.from(pair.foundBack, (one) => one?.widthMm ?? 0),
      overlapMm,
      contactMm2: pair.contactMm2,
      giveMm,
    })
  }
  return { count: solids.length, cellMm, pairs, leaks }
}

/** How widely one part runs into another when moved in a direction, in mm; 0: not at all, or less than the pair gives. */
export function stopWidth(relations: Relations, mover: number, still: number, direction: Direction): number {
  const pair = pairOf(relations, mover, still)
  if (!pair) return 0
  const width = (pair.a === mover ? pair.aMm : pair.bMm)[direction]!
  return width > pair.giveMm ? width : 0
}

/** What is known of two parts; `null`: they have nothing to do with each other. */
export function pairOf({ pairs, count }: Relations, one: number, other: number): PairRelation | null {
  return pairs.get(Math.min(one, other) * count + Math.max(one, other)) ?? null
}

/** Least area that counts as touching, in mm2: more than facets and roundings make. Common practice, no source. */
const leastContactMm2 = 0.2

/** Whether two parts touch or overlap. */
export function touches(relations: Relations, one: number, other: number): boolean {
  const pair = pairOf(relations, one, other)
  return pair !== null && (pair.overlapMm > 0 || pair.contactMm2.some((area) => area > leastContactMm2))
}

const largestCellMm = 0.2
/** Most cells of all parts along one axis: past it the cells grow. */
const mostCells = 12_000_000

/**
 * The diagonal of the device over 1000, between 0.05 and 0.2 mm; larger for a huge device. A disc as wide as the usual
 * give holds the middle of a cell of 0.2 mm wherever it lies, and what is as narrow as that is looked at again.
 */
function cellFor(solids: readonly Solid[]): number {
  const size = axes.map(
    (axis) =>
      Math.max(...solids.map(({ high }) => high[axis])) - Math.min(...solids.map(({ low }) => low[axis])),
  )
  const usual = Math.min(largestCellMm, Math.max(0.05, Math.hypot(...size) / 1000))
  const area = axes.map((axis) =>
    solids.reduce((sum, solid) => {
      const [low, high] = across(solid, axis)
      return sum + (high[0] - low[0]) * (high[1] - low[1])
    }, 0),
  )
  return Math.max(usual, Math.sqrt(Math.max(...area) / mostCells))
}

function across(
  { low, high }: Solid,
  axis: Axis,
): readonly [readonly [number, number], readonly [number, number]] {
  const [u, v] = [((axis + 1) % 3) as Axis, ((axis + 2) % 3) as Axis]
  return [
    [low[u], low[v]],
    [high[u], high[v]],
  ]
}

function latticeOf(solid: Solid, axis: Axis, cellMm: number) {
  return latticeOver(axis, cellMm, ...across(solid, axis))
}

function sweepAxis(
  solids: readonly Solid[],
  columns: readonly Columns[],
  axis: Axis,
  gathered: Map<number, Gathering>,
  { looksAt }: RelateOptions,
): void {
  for (let a = 0; a < solids.length; a++) {
    for (let b = a + 1; b < solids.length; b++) {
      if (!seeEachOther(solids[a]!, solids[b]!, axis) || looksAt?.(a, b) === false) continue
      const swept = sweepPair(columns[a]!, columns[b]!)
      if (!swept || swept.any === 0) continue
      const key = a * solids.length + b
      const pair = gathered.get(key) ?? nothingYet(a, b)
      gathered.set(key, pair)
      take(pair, swept, axis)
    }
  }
}

/** Whether the boxes of two parts share a rectangle across the axis that is wide enough to matter. */
function seeEachOther(one: Solid, other: Solid, axis: Axis): boolean {
  return [1, 2].every((turn) => {
    const k = ((axis + turn) % 3) as Axis
    return Math.min(one.high[k], other.high[k]) - Math.max(one.low[k], other.low[k]) > contactMm
  })
}

function nothingYet(a: number, b: number): Gathering {
  const none = (): null[] => Array.from({ length: 6 }, () => null)
  return { a, b, found: none(), foundBack: none(), contactMm2: new Float64Array(6), overlaps: [] }
}

/** Takes what one sweep found into the pair. */
function take(pair: Gathering, swept: SweptPair, axis: Axis): void {
  const [up, down] = [directionAlong(axis, true), directionAlong(axis, false)]
  const { lattice, cells, any } = swept
  const widest = (bit: number) => (any & bit ? widestDisc(lattice, cells, bit) : null)
  pair.found[up] = widest(bits.aUp)
  pair.found[down] = widest(bits.aDown)
  // Without an overlap b runs into a just where a, moved the other way, runs into b.
  const alike = !(any & bits.overlap)
  pair.foundBack[down] = alike ? pair.found[up]! : widest(bits.bDown)
  pair.foundBack[up] = alike ? pair.found[down]! : widest(bits.bUp)
  pair.contactMm2[up] = swept.contactUpMm2
  pair.contactMm2[down] = swept.contactDownMm2
  pair.overlaps[axis] = widest(bits.overlap)
}

function giveOf({ a, b }: Gathering, overlapMm: number, { leastGiveMm }: RelateOptions): number {
  const own = usualGiveMm + (overlapMm < mostNominalOverlapMm ? overlapMm : 0)
  return Math.max(own, leastGiveMm?.(a, b) ?? 0)
}
