import type { Point } from '../mesh.ts'
import type { PosedPart } from './picture-part.ts'

/** A way from where a part is drawn to its seat. */
export interface WayEnds {
  readonly lifted: Point
  readonly seat: Point
  /** Share of the way after which the part is among others: until there it hangs clear of their boxes. */
  readonly entry: number
}

/**
 * Ways of points on the leading end of a part: those of its seat where it rests on something; else its middle, then
 * the middles of the four sides of its box.
 */
export function leadingPoints({ lead: { lowMm, highMm }, lift, way }: PosedPart): readonly WayEnds[] {
  const own = Math.hypot(...lift.ownMm)
  if (own === 0) return []
  const entry = Math.min(1, lift.gapMm / own)
  if (way && way.seats.length > 0)
    return way.seats.map((spot) => {
      const seat = sum(spot, lift.baseMm)
      return { lifted: sum(seat, lift.ownMm), seat, entry }
    })
  const back = lift.ownMm.map((along) => along / own)
  const halves = highMm.map((high, axis) => (high - lowMm[axis]!) / 2)
  const half = halves.reduce((sum, side, axis) => sum + Math.abs(back[axis]!) * side, 0)
  const middle = halves.map((side, axis) => lowMm[axis]! + side - half * back[axis]! + lift.baseMm[axis]!)
  const besides = [0, 1, 2]
    .filter((axis) => Math.abs(back[axis]!) < 0.2)
    .flatMap((axis) => [1, -1].map((sign) => [0, 1, 2].map((i) => (i === axis ? sign * halves[axis]! : 0))))
  return [[0, 0, 0], ...besides].map((beside) => {
    const seat = sum(middle, beside)
    return { lifted: sum(seat, lift.ownMm), seat, entry }
  })
}

function sum(a: readonly number[], b: readonly number[]): Point {
  return [a[0]! + b[0]!, a[1]! + b[1]!, a[2]! + b[2]!]
}
