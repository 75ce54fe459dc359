import type { EdgeTable } from './edges.ts'
import { bends } from './edges.ts'
import { renumbered, type WeldedMesh } from './weld-corners.ts'

/** Points nearer to each other are one, in millimetres: less than any maker of parts means, more than rounding. */
const nearMm = 1e-3

/**
 * Joins points of open edges that lie within a micrometre of each other, as where an export rounded them apart;
 * `null` where none do.
 * Method: points sorted along x, each compared with those just before it. Cost: O(n log n) in points of open edges.
 */
export function nearWeld({ points, triangles }: WeldedMesh, edges: EdgeTable): WeldedMesh | null {
  const loose = looseEnds(edges)
  const order = [...loose].sort((a, b) => fromLow(points, a, b))
  const numbers = Uint32Array.from({ length: points.length / 3 }, (_, i) => i)
  let joined = 0
  for (let at = 1; at < order.length; at++) {
    const twin = nearBefore(points, order, at)
    if (twin === null) continue
    numbers[order[at]!] = numbers[twin]!
    joined++
  }
  return joined === 0 ? null : { points, triangles: renumbered(triangles, numbers) }
}

function looseEnds({ count, bend, from, to }: EdgeTable): ReadonlySet<number> {
  const ends = new Set<number>()
  for (let edge = 0; edge < count; edge++) {
    if (bend[edge] !== bends.open) continue
    ends.add(from[edge]!)
    ends.add(to[edge]!)
  }
  return ends
}

function nearBefore(points: Float32Array, order: readonly number[], at: number): number | null {
  const here = 3 * order[at]!
  for (let back = at - 1; back >= Math.max(0, at - 64); back--) {
    const there = 3 * order[back]!
    if (points[here]! - points[there]! > nearMm) return null
    if (
      Math.abs(points[here + 1]! - points[there + 1]!) <= nearMm &&
      Math.abs(points[here + 2]! - points[there + 2]!) <= nearMm
    )
      return order[back]!
  }
  return null
}

function fromLow(points: Float32Array, a: number, b: number): number {
  return (
    points[3 * a]! - points[3 * b]! ||
    points[3 * a + 1]! - points[3 * b + 1]! ||
    points[3 * a + 2]! - points[3 * b + 2]!
  )
}
