import type { Point } from '../mesh.ts'

/** A part as it is moved for a picture: its box where it sits, and the way it takes to get there. */
export interface LiftedPart {
  readonly lowMm: Point
  readonly highMm: Point
  /** The box of all that moves with it as one. */
  readonly body: { readonly lowMm: Point; readonly highMm: Point }
  /** Number of a part before it that it moves with as one; `null`: none. */
  readonly fixedTo: number | null
  /** Gap to what it is to hang clear of. */
  readonly gapMm: number
  /** How it goes in; `null`: it stays where it sits. */
  readonly way: Way | null
}

/** The straight way a part takes into its seat. */
export interface Way {
  /** Where it comes from, seen from its seat; any length but 0. */
  readonly from: Point
  /** Number of the part before it that it goes along with when that one is moved too; `null`: none. */
  readonly along: number | null
  /** Points of its seat where it rests on what is there, the one for all of it first; none: its leading end says. */
  readonly seats: readonly Point[]
}

/** How far a part is moved for a picture. */
export interface Lift {
  /** Along with what it hangs on. */
  readonly baseMm: Point
  /** From there along its own way. */
  readonly ownMm: Point
  /** How much of that is gap: until there the part hangs clear of the boxes of all before it. */
  readonly gapMm: number
}

const stays: Lift = { baseMm: [0, 0, 0], ownMm: [0, 0, 0], gapMm: 0 }

/**
 * How far each part is moved so that it hangs clear of all before it along its own way: moves add up where parts
 * follow each other on one way.
 * Needs: parts in the order they go in; `along` and `fixedTo` name parts before. Cost: O(parts squared).
 */
export function liftParts(parts: readonly LiftedPart[]): readonly Lift[] {
  const lifts: Lift[] = []
  for (const [number, part] of parts.entries()) lifts.push(liftOf(part, parts.slice(0, number), lifts))
  return lifts
}

/** Where a lifted part stands in all. */
export function movedBy({ baseMm, ownMm }: Lift): Point {
  return [baseMm[0] + ownMm[0], baseMm[1] + ownMm[1], baseMm[2] + ownMm[2]]
}

function liftOf(
  { body, fixedTo, gapMm, way }: LiftedPart,
  before: readonly LiftedPart[],
  lifts: readonly Lift[],
): Lift {
  if (fixedTo !== null) return lifts[fixedTo] ?? stays
  if (way === null) return stays
  const length = Math.hypot(...way.from)
  if (!(length > 0)) return stays
  const to: Point = [way.from[0] / length, way.from[1] / length, way.from[2] / length]
  const baseMm = way.along !== null && way.along < before.length ? movedBy(lifts[way.along]!) : stays.baseMm
  const own = boxSpan(body.lowMm, body.highMm, baseMm, to)
  const clear = before.reduce((most, other, i) => {
    const there = boxSpan(other.lowMm, other.highMm, movedBy(lifts[i]!), to)
    return besides(own, there) ? most : Math.max(most, there.end - own.start)
  }, 0)
  const travel = Math.max(0, clear) + gapMm
  return { baseMm, ownMm: [to[0] * travel, to[1] * travel, to[2] * travel], gapMm }
}

/** A box along a direction, and its extent in space. */
interface Span {
  readonly start: number
  readonly end: number
  readonly low: Point
  readonly high: Point
  readonly to: Point
}

function boxSpan(lowMm: Point, highMm: Point, moved: Point, to: Point): Span {
  const low: Point = [lowMm[0] + moved[0], lowMm[1] + moved[1], lowMm[2] + moved[2]]
  const high: Point = [highMm[0] + moved[0], highMm[1] + moved[1], highMm[2] + moved[2]]
  const ends = to.map((along, axis) => [along * low[axis]!, along * high[axis]!])
  return {
    start: ends.reduce((sum, [a, b]) => sum + Math.min(a!, b!), 0),
    end: ends.reduce((sum, [a, b]) => sum + Math.max(a!, b!), 0),
    low,
    high,
    to,
  }
}

/** Whether two boxes pass each other along a direction: apart along an axis that it does not run along. */
function besides(a: Span, b: Span): boolean {
  if (b.end <= a.start) return true
  return [0, 1, 2].some(
    (axis) => Math.abs(a.to[axis]!) < 0.2 && (a.high[axis]! <= b.low[axis]! || b.high[axis]! <= a.low[axis]!),
  )
}
