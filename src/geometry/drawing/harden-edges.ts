import { bends, type EdgeTable } from './edges.ts'

/** An edge goes on into another where it turns by less than this. */
const cosGoesOn = Math.cos((35 * Math.PI) / 180)

/**
 * Takes for sharp what is nearly so and goes on from a sharp edge, so that a crease about as blunt as the limit is not
 * drawn in dashes.
 * Needs: `weak` holds 1 for each edge that may. Gives: changes `edges.bend`. Cost: O(edges), and O(weak) a round.
 */
export function hardenEdges(points: Float32Array, edges: EdgeTable, weak: Uint8Array): void {
  let left = [...weak.keys()].filter((edge) => weak[edge] === 1)
  if (left.length === 0) return
  const sharpAt = new Map<number, number[]>()
  const note = (edge: number): void => {
    for (const end of [edges.from[edge]!, edges.to[edge]!]) {
      const there = sharpAt.get(end)
      if (there) there.push(edge)
      else sharpAt.set(end, [edge])
    }
  }
  for (let edge = 0; edge < edges.count; edge++) if (edges.bend[edge] === bends.sharp) note(edge)
  for (let found = left; found.length > 0; ) {
    found = left.filter((edge) => goesOn(points, edges, edge, sharpAt))
    left = left.filter((edge) => !found.includes(edge))
    for (const edge of found) {
      edges.bend[edge] = bends.sharp
      note(edge)
    }
  }
}

function goesOn(
  points: Float32Array,
  edges: EdgeTable,
  edge: number,
  sharpAt: ReadonlyMap<number, readonly number[]>,
): boolean {
  const [from, to] = [edges.from[edge]!, edges.to[edge]!]
  return [from, to].some((end) =>
    (sharpAt.get(end) ?? []).some((other) => {
      const beyond = edges.from[other] === end ? edges.to[other]! : edges.from[other]!
      return cosOf(points, end === from ? to : from, end, beyond) > cosGoesOn
    }),
  )
}

/** Cosine of the turn on the way over three points. */
function cosOf(points: Float32Array, a: number, b: number, c: number): number {
  let [dot, one, two] = [0, 0, 0]
  for (let axis = 0; axis < 3; axis++) {
    const first = points[3 * b + axis]! - points[3 * a + axis]!
    const second = points[3 * c + axis]! - points[3 * b + axis]!
    dot += first * second
    one += first * first
    two += second * second
  }
  return dot / Math.sqrt(one * two || 1)
}
