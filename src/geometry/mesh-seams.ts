import { countTriangles, type Mesh } from './mesh.ts'
import { samePlaces } from './same-places.ts'
import { type Sides, sidesOf } from './sides.ts'
import { isFlat, walkEdges } from './walk-edges.ts'

/** How well the triangles of a mesh close it. */
export interface MeshSeams {
  /** Edges of one triangle alone: a leak. */
  readonly openEdges: number
  /** Edges of three or more triangles: bodies that touch, or doubled triangles. */
  readonly crowdedEdges: number
  /** Triangles that look the other way than most of their shell. */
  readonly turnedFaces: number
  /** Edges that no turning of faces can mend (a surface with one side). */
  readonly oneSidedEdges: number
  /** Triangles with two corners at one place; left out of the edges. */
  readonly flatTriangles: number
  /** Pieces that hang together by edges of just two triangles. */
  readonly shells: number
}

/** Leaks, crowded edges and turned faces of a mesh. Cost: O(n log n) in triangles. */
export function meshSeams(mesh: Mesh): MeshSeams {
  const triangles = countTriangles(mesh)
  const joined = samePlaces(mesh.corners)
  const sides = sidesOf(triangles)
  const counted = { openEdges: 0, crowdedEdges: 0, oneSidedEdges: 0 }
  walkEdges(joined, (owners) => {
    if (owners.length === 1) counted.openEdges++
    else if (owners.length > 2) counted.crowdedEdges++
    else if (!meet(owners, sides)) counted.oneSidedEdges++
  })
  const solid = Array.from({ length: triangles }, (_, triangle) => !isFlat(joined, triangle))
  const flatTriangles = solid.filter((is) => !is).length
  return { ...counted, flatTriangles, ...sides.minority((triangle) => solid[triangle] === true) }
}

/** Two triangles at an edge look the same way when they pass it in opposite directions. */
function meet(owners: Float64Array, sides: Sides): boolean {
  const [a, b] = [owners[0]!, owners[1]!]
  return sides.join(Math.floor(a / 2), Math.floor(b / 2), a % 2 !== b % 2)
}
