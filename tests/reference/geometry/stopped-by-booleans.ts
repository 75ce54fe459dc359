import { axisOf, type Direction, goesUp } from '../../../src/geometry/relations/directions.ts'
import type { Manifold } from './manifold-solids.ts'

/** Whether a, moved in steps of 0.7 mm, ever has more than 0.1 mm3 in common with b. Source: booleans of manifold-3d. */
export function stoppedByBooleans(a: Manifold, b: Manifold, direction: Direction): boolean {
  const [axis, up] = [axisOf(direction), goesUp(direction)]
  const [mine, theirs] = [a.boundingBox(), b.boundingBox()]
  const aside = [0, 1, 2].some(
    (k) => k !== axis && (mine.max[k]! <= theirs.min[k]! || theirs.max[k]! <= mine.min[k]!),
  )
  const way = up ? theirs.max[axis]! - mine.min[axis]! : mine.max[axis]! - theirs.min[axis]!
  if (aside || way <= 0) return false
  const gap = Math.max(0, up ? theirs.min[axis]! - mine.max[axis]! : mine.min[axis]! - theirs.max[axis]!)
  for (let s = gap + 0.7; s < way; s += 0.7) {
    const by: [number, number, number] = [0, 0, 0]
    by[axis] = up ? s : -s
    if (a.translate(by).intersect(b).volume() > 0.1) return true
  }
  return false
}
