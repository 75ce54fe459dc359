import { samePlaces } from '../same-places.ts'
import type { DrawnMesh } from './drawn-mesh.ts'

/** Points of a mesh, each place once, and its triangles over them; triangles without room are left out. */
export interface WeldedMesh {
  readonly points: Float32Array
  readonly triangles: Uint32Array
}

/** Joins corners at exactly the same place. Cost: O(corners). */
export function weldCorners({ positions, triangles }: DrawnMesh): WeldedMesh {
  const { places, count } = samePlaces(positions)
  const points = new Float32Array(3 * count)
  // Corners of one place are alike but for the sign of zero.
  for (const [corner, place] of places.entries())
    for (let i = 0; i < 3; i++) points[3 * place + i] = positions[3 * corner + i]! + 0
  return { points, triangles: renumbered(triangles, places) }
}

/** The triangles over new numbers, without those that lose a side by it. */
export function renumbered(triangles: Uint32Array, numbers: ArrayLike<number>): Uint32Array {
  const kept = new Uint32Array(triangles.length)
  let filled = 0
  for (let at = 0; at < triangles.length; at += 3) {
    const a = numbers[triangles[at]!]!
    const b = numbers[triangles[at + 1]!]!
    const c = numbers[triangles[at + 2]!]!
    if (a === b || b === c || c === a) continue
    kept[filled++] = a
    kept[filled++] = b
    kept[filled++] = c
  }
  return kept.slice(0, filled)
}
