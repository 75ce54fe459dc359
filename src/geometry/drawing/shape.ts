import { type DrawingFault, type DrawnMesh, drawingBounds } from './drawn-mesh.ts'
import { edgeTable } from './edge-table.ts'
import type { EdgeTable } from './edges.ts'
import { nearWeld } from './near-weld.ts'
import { reducedMesh } from './reduced-mesh.ts'
import { type WeldedMesh, weldCorners } from './weld-corners.ts'

/** A mesh made ready to be drawn any number of times, from any side. */
export interface Shape {
  readonly mesh: WeldedMesh
  readonly edges: EdgeTable
  /** The same with few triangles, to judge views by. */
  readonly reduced: WeldedMesh
  readonly lowMm: readonly [number, number, number]
  readonly highMm: readonly [number, number, number]
}

/** Makes a mesh ready: corners joined, edges found. Cost: O(triangles), once a part. */
export function shapeOf(drawn: DrawnMesh): Shape {
  const exact = weldCorners(drawn)
  const found = edgeTable(exact)
  const near = nearWeld(exact, found)
  const [mesh, edges] = near ? [near, edgeTable(near)] : [exact, found]
  const { lowMm, highMm } = boxOfPoints(mesh.points)
  const diagonal = Math.hypot(...highMm.map((high, axis) => high - lowMm[axis]!))
  return { mesh, edges, reduced: reducedMesh(mesh, lowMm, diagonal), lowMm, highMm }
}

/** What keeps meshes from being drawn, or `null`. Cost: O(corners). */
export function whyNotDrawn(meshes: readonly DrawnMesh[]): DrawingFault | null {
  const { mostParts, mostTriangles, farthestMm } = drawingBounds
  if (meshes.length > mostParts) return { fault: 'too many parts', parts: meshes.length, most: mostParts }
  const triangles = meshes.reduce((sum, mesh) => sum + mesh.triangles.length / 3, 0)
  if (triangles === 0) return { fault: 'nothing to draw' }
  if (triangles > mostTriangles) return { fault: 'too many triangles', triangles, most: mostTriangles }
  for (const [part, mesh] of meshes.entries()) {
    if (!mesh.positions.every((coordinate) => Math.abs(coordinate) <= farthestMm))
      return { fault: 'bad coordinate', part }
    const corners = mesh.positions.length / 3
    if (mesh.triangles.length % 3 !== 0 || !mesh.triangles.every((corner) => corner < corners))
      return { fault: 'bad triangle', part }
  }
  return null
}

function boxOfPoints(points: Float32Array): Pick<Shape, 'lowMm' | 'highMm'> {
  const low: [number, number, number] = [0, 0, 0]
  const high: [number, number, number] = [0, 0, 0]
  for (let axis = 0; axis < 3; axis++) {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
    for (let at = axis; at < points.length; at += 3) {
      if (points[at]! < least) least = points[at]!
      if (points[at]! > most) most = points[at]!
    }
    low[axis] = points.length > 0 ? least : 0
    high[axis] = points.length > 0 ? most : 0
  }
  return { lowMm: low, highMm: high }
}
