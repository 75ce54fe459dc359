import { bends } from './edges.ts'
import type { Projected } from './projection.ts'
import type { Shape } from './shape.ts'

/** An edge of a part that may be seen as a line from where one looks. */
export interface DrawnEdge {
  /** Numbers of its ends among the points of the part, in the order of their places. */
  readonly from: number
  readonly to: number
  /** Third points of the triangles beside it; -1: there is none. */
  readonly one: number
  readonly two: number
  /** Drawn wherever it is seen; others only where what lies behind is farther away. */
  readonly sharp: boolean
}

/**
 * Sharp edges, open edges, and those where the surface turns away from the looker: both triangles lie on the same
 * side of the edge on the paper, which holds whichever way the faces look.
 * Gives: sorted by place, whatever the order of triangles. Cost: O(edges).
 */
export function drawnEdges({ mesh, edges }: Shape, { x, y }: Projected): readonly DrawnEdge[] {
  const { points } = mesh
  const found: DrawnEdge[] = []
  const sideOf = (edge: number, point: number): number => {
    const a = edges.from[edge]!
    const b = edges.to[edge]!
    return (x[b]! - x[a]!) * (y[point]! - y[a]!) - (y[b]! - y[a]!) * (x[point]! - x[a]!)
  }
  for (let edge = 0; edge < edges.count; edge++) {
    const bend = edges.bend[edge]!
    const [one, two] = [edges.one[edge]!, edges.two[edge]!]
    if (bend === bends.smooth && !isFold(sideOf(edge, one), sideOf(edge, two))) continue
    const [a, b] = [edges.from[edge]!, edges.to[edge]!]
    const turned = comparePlaces(points, a, b) > 0
    const swapped = one >= 0 && two >= 0 && comparePlaces(points, one, two) > 0
    found.push({
      from: turned ? b : a,
      to: turned ? a : b,
      one: swapped ? two : one,
      two: swapped ? one : two,
      sharp: bend === bends.sharp,
    })
  }
  return found.sort((p, q) => comparePlaces(points, p.from, q.from) || comparePlaces(points, p.to, q.to))
}

/** Of a face seen edge-on every edge would be a fold; its rim is drawn anyway, as an edge of those beside it. */
const edgeOn = 1e-3

/** Both triangles on one side: neither edge-on together nor going on past the edge. */
function isFold(one: number, two: number): boolean {
  return one * two >= 0 && Math.max(Math.abs(one), Math.abs(two)) > edgeOn
}

/** Order of two points by x, then y, then z. */
export function comparePlaces(points: Float32Array, a: number, b: number): number {
  return (
    points[3 * a]! - points[3 * b]! ||
    points[3 * a + 1]! - points[3 * b + 1]! ||
    points[3 * a + 2]! - points[3 * b + 2]!
  )
}
