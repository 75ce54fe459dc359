import { exactSum } from './exact-sum.ts'
import { countTriangles, crossOf, type Mesh, type Point } from './mesh.ts'
import { type MeshSeams, meshSeams } from './mesh-seams.ts'

/** The smallest box along the axes that holds a mesh. */
export interface MeshBox {
  readonly lowMm: Point
  readonly highMm: Point
  readonly sizeMm: Point
}

/** What a mesh measures. */
export interface MeshMeasure {
  readonly triangles: number
  /** The size of the volume, never below zero; it means little where the mesh is not closed. */
  readonly volumeMm3: number
  readonly areaMm2: number
  readonly box: MeshBox
  readonly seams: MeshSeams
  /** Every edge is shared by just two triangles that look the same way. */
  readonly closed: boolean
  /** The faces look inward: the volume came out below zero. */
  readonly insideOut: boolean
  /** The sums in words. */
  readonly worked: readonly string[]
}

/**
 * Volume, surface and bounding box of a mesh, and how well it is closed.
 * Source: volume as the sum of signed tetrahedra a . (b x c) / 6, area as half the cross products (textbook).
 * Needs: at least one triangle. Cost: O(n log n) in triangles.
 */
export function measureMesh(mesh: Mesh): MeshMeasure {
  const box = boxOf(mesh)
  const seams = meshSeams(mesh)
  const { volume, area } = sumsOf(mesh, box)
  const triangles = countTriangles(mesh)
  const volumeMm3 = Math.abs(volume)
  const closed = seams.openEdges + seams.crowdedEdges + seams.turnedFaces + seams.oneSidedEdges === 0
  return {
    triangles,
    volumeMm3,
    areaMm2: area,
    box,
    seams,
    closed,
    insideOut: volume < 0,
    worked: [
      `volume = sum of ${triangles} signed tetrahedra a . (b x c) / 6 = ${volumeMm3.toPrecision(6)} mm3`,
      `surface = sum of ${triangles} triangles |u x v| / 2 = ${area.toPrecision(6)} mm2`,
      `box ${box.sizeMm.map((side) => side.toPrecision(6)).join(' x ')} mm`,
    ],
  }
}

/** The bounding box of a mesh along the axes. Needs: at least one triangle. */
export function boxOf({ corners }: Mesh): MeshBox {
  const low: [number, number, number] = [corners[0]!, corners[1]!, corners[2]!]
  const high: [number, number, number] = [...low]
  for (let i = 0; i < corners.length; i++) {
    const axis = i % 3
    low[axis] = Math.min(low[axis]!, corners[i]!)
    high[axis] = Math.max(high[axis]!, corners[i]!)
  }
  return { lowMm: low, highMm: high, sizeMm: [high[0] - low[0], high[1] - low[1], high[2] - low[2]] }
}

/** Sums from the middle of the box, so that a part far from the origin loses nothing. */
function sumsOf(mesh: Mesh, { lowMm, highMm }: MeshBox): { volume: number; area: number } {
  const { corners } = mesh
  const middle = lowMm.map((low, axis) => (low + highMm[axis]!) / 2)
  const [volume, area] = [exactSum(), exactSum()]
  for (let triangle = 0; 9 * triangle < corners.length; triangle++) {
    const [x, y, z] = crossOf(corners, triangle)
    const o = 9 * triangle
    const height =
      (corners[o]! - middle[0]!) * x + (corners[o + 1]! - middle[1]!) * y + (corners[o + 2]! - middle[2]!) * z
    volume.add(height / 6)
    area.add(Math.hypot(x, y, z) / 2)
  }
  return { volume: volume.total(), area: area.total() }
}
