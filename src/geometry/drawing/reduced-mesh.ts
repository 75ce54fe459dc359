import { renumbered, type WeldedMesh } from './weld-corners.ts'

/** Meshes up to this many triangles are taken as they are. */
const fewTriangles = 600
/** Cells along the diagonal of a part that points are gathered in. */
const cells = 24

/**
 * A mesh with far fewer triangles, close enough to count what is seen of it: all points of a cell become one.
 * Cost: O(points).
 */
export function reducedMesh(mesh: WeldedMesh, lowMm: readonly number[], diagonalMm: number): WeldedMesh {
  const { points, triangles } = mesh
  if (triangles.length <= 3 * fewTriangles || diagonalMm === 0) return mesh
  const side = cells / diagonalMm
  const across = cells + 2
  const numberOf = new Int32Array(across ** 3).fill(-1)
  const numbers = new Uint32Array(points.length / 3)
  const kept: number[] = []
  for (let point = 0; point < numbers.length; point++) {
    const cell = [0, 1, 2].reduce(
      (sum, axis) => sum * across + Math.floor((points[3 * point + axis]! - lowMm[axis]!) * side),
      0,
    )
    if (numberOf[cell] === -1) {
      numberOf[cell] = kept.length / 3
      kept.push(points[3 * point]!, points[3 * point + 1]!, points[3 * point + 2]!)
    }
    numbers[point] = numberOf[cell]!
  }
  return { points: Float32Array.from(kept), triangles: renumbered(triangles, numbers) }
}
