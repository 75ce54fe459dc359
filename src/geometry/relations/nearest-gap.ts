import { columnsOf } from './columns.ts'
import { latticeOver, roomForCrossings } from './crossings.ts'
import { type Axis, axes } from './directions.ts'
import type { Solid } from './solid.ts'

/** Cells of the look along one axis. */
const cellsEach = 40_000

/**
 * How far two parts are apart, in mm: the least way along an axis from one to the other; 0 where they overlap. Where
 * they see each other along no axis, the distance of their boxes. Slanting gaps come out wider than they are.
 * Cost: O(triangles + cells) an axis.
 */
export function nearestGap(a: Solid, b: Solid): number {
  const seen = axes.map((axis) => gapAlong(a, b, axis)).filter(Number.isFinite)
  return seen.length > 0 ? Math.min(...seen) : boxGap(a, b)
}

/** How far the boxes of two parts are apart, in mm: never more than the parts are. */
export function boxGap(a: Solid, b: Solid): number {
  return Math.hypot(...axes.map((k) => Math.max(0, a.low[k] - b.high[k], b.low[k] - a.high[k])))
}

function gapAlong(a: Solid, b: Solid, axis: Axis): number {
  const [u, v] = [((axis + 1) % 3) as Axis, ((axis + 2) % 3) as Axis]
  const low = [Math.max(a.low[u], b.low[u]), Math.max(a.low[v], b.low[v])] as const
  const high = [Math.min(a.high[u], b.high[u]), Math.min(a.high[v], b.high[v])] as const
  const area = (high[0] - low[0]) * (high[1] - low[1])
  if (high[0] <= low[0] || high[1] <= low[1]) return Infinity
  const lattice = latticeOver(axis, Math.sqrt(area / cellsEach), low, high)
  const room = roomForCrossings()
  const [one, other] = [columnsOf(a, lattice, room), columnsOf(b, lattice, room)]
  let least = Infinity
  for (let cell = 0; cell < lattice.columns * lattice.rows; cell++) {
    const [a0, b0] = [one.start[cell]!, other.start[cell]!]
    for (let i = a0; i < a0 + one.count[cell]!; i += 2)
      for (let k = b0; k < b0 + other.count[cell]!; k += 2) {
        const gap = Math.max(one.bounds[i]! - other.bounds[k + 1]!, other.bounds[k]! - one.bounds[i + 1]!)
        least = Math.min(least, Math.max(0, gap))
      }
  }
  return least
}
