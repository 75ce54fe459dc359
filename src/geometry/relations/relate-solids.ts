import { type Columns, columnsOf } from './columns.ts'
import { latticeOver, roomForCrossings } from './crossings.ts'
import { type Axis, axes, axesWith, type Direction, directionAlong } from './directions.ts'
import { roomForFacings } from './facings.ts'
import { mostNominalOverlapMm, pairGive, usualGiveMm } from './pair-give.ts'
import { type Gathering, overlapOf, redoDoubtful, redoThin } from './redo-doubtful.ts'
import { seatAxes } from './seat-axes.ts'
import { type Seen, seenAlong, turnedOnce } from './seen-along.ts'
import type { Solid } from './solid.ts'
import { bits, contactMm, type SweptPair, sweepPair } from './sweep-pair.ts'
import { forward, isSame, mostTilted, tiltedAxes } from './tilted-axes.ts'
import type { Vector } from './vector.ts'
import { widestDisc } from './widest-disc.ts'

/** How two parts stand to each other. */
export interface PairRelation {
  readonly a: number
  readonly b: number
  /** By direction: the widest disc, in mm, that runs into b when a moves so; 0: nothing does. And a, when b moves. */
  readonly aMm: Float64Array
  readonly bMm: Float64Array
  /** How widely they overlap as drawn, in mm: the least over all axes. */
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
  /** Axes besides x, y and z: directions from 6 on lead along them, two each. */
  readonly tilted: readonly Vector[]
  /** By smaller number times `count` plus the larger. */
  readonly pairs: ReadonlyMap<number, PairRelation>
  /** Leaking columns of each part, over all axes. */
  readonly leaks: readonly number[]
}

/** What is known of pairs beforehand. */
export interface RelateOptions {
  /** The least give of two parts, in mm, as a declared thread asks for; `null`: the usual one. */
  readonly leastGiveMm?: (a: number, b: number) => number | null
  /** Cell in mm, instead of the one chosen from the size of the device. */
  readonly cellMm?: number
  /** Axes besides x, y and z, instead of those that the parts have by their shape. */
  readonly tilted?: readonly Vector[]
  /** Whether two parts are looked at; all pairs where not said. */
  readonly looksAt?: (a: number, b: number) => boolean
}

/**
 * For every two parts and direction, along x, y, z and the tilted axes of the parts, whether and how widely one stops the other, how widely they overlap as
 * drawn, and where they touch. Collisions between half and twice the give of a pair are looked at again on a finer
 * lattice.
 * Method: column lists along each axis (solid stretches over square cells), swept pair by pair.
 * Gives: widths right to about a cell; collisions narrower than `giveMm` and sheets thinner than about that seen edge-on do not count.
 * Cost: O(axes x (parts x triangles + cells of the windows that pairs share)).
 */
export function relateSolids(solids: readonly Solid[], options: RelateOptions = {}): Relations {
  const tilted = options.tilted ?? tiltedAxes(solids)
  const relations = relateAlong(solids, tilted, options)
  const more = options.tilted ? [] : freeingAxes(solids, relations, options)
  return more.length > 0 ? relateAlong(solids, [...tilted, ...more], options) : relations
}

/** Most pairs and axes that are tried for the seats of parts. */
const mostTries = 24

/**
 * The axes of the seats of parts that another keeps in along all axes tried, where they free them: of a bore for a
 * ball, of a slot for a nut. None where no part is kept in so.
 */
function freeingAxes(
  solids: readonly Solid[],
  { pairs, tilted, cellMm }: Relations,
  { leastGiveMm }: RelateOptions,
): readonly Vector[] {
  const room = roomForFacings()
  const found: Vector[] = []
  let tries = 0
  for (const { a, b, aMm, giveMm } of pairs.values()) {
    if (aMm.some((width) => width <= giveMm)) continue
    const pair = [solids[a]!, solids[b]!] as const
    for (const along of seatAxes(...pair, room)) {
      if (tilted.length + found.length === mostTilted || tries === mostTries) return found
      if ([...tilted, ...found].some((known) => isSame(known, along))) continue
      tries++
      const tried = relateAlong(pair, [along], { cellMm, leastGiveMm: () => leastGiveMm?.(a, b) ?? null })
      if ([6, 7].some((direction) => stopWidth(tried, 0, 1, direction) === 0)) found.push(forward(along))
    }
  }
  return found
}

function relateAlong(solids: readonly Solid[], tilted: readonly Vector[], options: RelateOptions): Relations {
  const cellMm = options.cellMm ?? cellFor(solids)
  const room = roomForCrossings()
  const leaks = solids.map(() => 0)
  const gathered = new Map<number, Gathering>()
  for (const axis of axesWith(tilted)) {
    const seen = solids.map((solid) => seenAlong(solid, axis, tilted))
    const columns = seen.map((one) => columnsOf(one.solid, latticeOf(one, cellMm), room))
    for (const [part, { leaks: some }] of columns.entries()) leaks[part]! += some
    sweepAxis({ seen, columns, axis, axes: axes.length + tilted.length }, gathered, options)
  }
  const seenOf = turnedOnce(solids, tilted)
  const thinnest = solids.map(({ low, high }) => Math.min(...axes.map((axis) => high[axis] - low[axis])))
  const pairs = new Map<number, PairRelation>()
  for (const [key, pair] of gathered) {
    const overlapMm = overlapOf(seenOf, pair, { mostMm: mostNominalOverlapMm, cellMm }, room)
    const thinMm = Math.min(thinnest[pair.a]!, thinnest[pair.b]!)
    const giveMm = pairGive({ overlapMm, thinMm, leastMm: options.leastGiveMm?.(pair.a, pair.b) ?? 0 })
    if (thinMm < 2 * usualGiveMm) redoThin(seenOf, pair, { thinMm, cellMm }, room)
    else redoDoubtful(seenOf, pair, giveMm, cellMm, room)
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
  return { count: solids.length, cellMm, tilted, pairs, leaks }
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
      const [low, high] = across({ solid, axis })
      return sum + (high[0] - low[0]) * (high[1] - low[1])
    }, 0),
  )
  return Math.max(usual, Math.sqrt(Math.max(...area) / mostCells))
}

function across({
  solid: { low, high },
  axis,
}: Seen): readonly [readonly [number, number], readonly [number, number]] {
  const [u, v] = [((axis + 1) % 3) as Axis, ((axis + 2) % 3) as Axis]
  return [
    [low[u], low[v]],
    [high[u], high[v]],
  ]
}

function latticeOf(seen: Seen, cellMm: number) {
  return latticeOver(seen.axis, cellMm, ...across(seen))
}

/** All parts as seen along one axis of the device, of so many. */
interface Pass {
  readonly seen: readonly Seen[]
  readonly columns: readonly Columns[]
  readonly axis: number
  readonly axes: number
}

function sweepAxis(
  { seen, columns, axis, axes: all }: Pass,
  gathered: Map<number, Gathering>,
  { looksAt }: RelateOptions,
): void {
  for (let a = 0; a < seen.length; a++) {
    for (let b = a + 1; b < seen.length; b++) {
      if (!seeEachOther(seen[a]!, seen[b]!) || looksAt?.(a, b) === false) continue
      const swept = sweepPair(columns[a]!, columns[b]!)
      if (!swept || swept.any === 0) continue
      const key = a * seen.length + b
      const pair = gathered.get(key) ?? nothingYet(a, b, all)
      gathered.set(key, pair)
      take(pair, swept, axis)
    }
  }
}

/** Whether the boxes of two parts share a rectangle across the axis that is wide enough to matter. */
function seeEachOther({ solid: one, axis }: Seen, { solid: other }: Seen): boolean {
  return [1, 2].every((turn) => {
    const k = ((axis + turn) % 3) as Axis
    return Math.min(one.high[k], other.high[k]) - Math.max(one.low[k], other.low[k]) > contactMm
  })
}

function nothingYet(a: number, b: number, all: number): Gathering {
  const none = (): null[] => Array.from({ length: 2 * all }, () => null)
  return { a, b, found: none(), foundBack: none(), contactMm2: new Float64Array(2 * all), overlaps: [] }
}

/** Takes what one sweep found into the pair. */
function take(pair: Gathering, swept: SweptPair, axis: number): void {
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
