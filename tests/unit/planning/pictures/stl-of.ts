import type { DrawnMesh } from '../../../../src/geometry/drawing/drawn-mesh.ts'

/** Meshes as one binary STL file, in millimetres. */
export function stlOf(...meshes: readonly DrawnMesh[]): Uint8Array {
  const corners = meshes.flatMap(({ positions, triangles }) =>
    [...triangles].flatMap((corner) => [...positions.subarray(3 * corner, 3 * corner + 3)]),
  )
  const count = corners.length / 9
  const view = new DataView(new ArrayBuffer(84 + 50 * count))
  view.setUint32(80, count, true)
  for (const [at, each] of corners.entries())
    view.setFloat32(84 + 50 * Math.floor(at / 9) + 12 + 4 * (at % 9), each, true)
  return new Uint8Array(view.buffer)
}
