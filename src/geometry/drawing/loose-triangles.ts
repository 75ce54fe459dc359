import type { Mesh } from '../mesh.ts'
import type { DrawnMesh } from './drawn-mesh.ts'

/** Loose triangles numbered corner by corner, as a picture takes them; equal corners are joined when it is drawn. */
export function looseTriangles({ corners }: Mesh): DrawnMesh {
  return {
    positions: Float32Array.from(corners),
    triangles: Uint32Array.from({ length: corners.length / 3 }, (_, corner) => corner),
  }
}
