import { box } from './solids.ts'

/** A box as a binary STL file, in millimetres: `left` triangles of it, all twelve when silent. */
export function boxStl(x: number, y: number, z: number, left = 12): Uint8Array {
  const corners = box(x, y, z).corners.subarray(0, 9 * left)
  const view = new DataView(new ArrayBuffer(84 + 50 * left))
  view.setUint32(80, left, true)
  corners.forEach((each, at) => {
    // Twelve bytes of normal stand before the corners, two of attributes after them.
    view.setFloat32(84 + 50 * Math.floor(at / 9) + 12 + 4 * (at % 9), each, true)
  })
  return new Uint8Array(view.buffer)
}
