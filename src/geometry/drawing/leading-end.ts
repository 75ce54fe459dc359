import type { Point } from '../mesh.ts'
import type { Shape } from './shape.ts'

/** As much of a body as counts as its leading end, as a share of its length along the way. */
const endShare = 0.08

/**
 * The box around the end of a body that goes in first, where it sits.
 * Needs: `from` of any length but 0, towards where it comes from. Cost: O(points).
 */
export function leadingEnd(
  shapes: readonly Shape[],
  from: Point,
): { readonly lowMm: Point; readonly highMm: Point } {
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  eachPoint(shapes, (x, y, z) => {
    const along = x * from[0] + y * from[1] + z * from[2]
    if (along < first) first = along
    if (along > last) last = along
  })
  const end = first + endShare * (last - first) + 1e-6 * Math.abs(last)
  const low: [number, number, number] = [Infinity, Infinity, Infinity]
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity]
  eachPoint(shapes, (x, y, z) => {
    if (x * from[0] + y * from[1] + z * from[2] > end) return
    low[0] = Math.min(low[0], x)
    low[1] = Math.min(low[1], y)
    low[2] = Math.min(low[2], z)
    high[0] = Math.max(high[0], x)
    high[1] = Math.max(high[1], y)
    high[2] = Math.max(high[2], z)
  })
  return { lowMm: low, highMm: high }
}

function eachPoint(shapes: readonly Shape[], visit: (x: number, y: number, z: number) => void): void {
  for (const { mesh } of shapes)
    for (let at = 0; at < mesh.points.length; at += 3)
      visit(mesh.points[at]!, mesh.points[at + 1]!, mesh.points[at + 2]!)
}
