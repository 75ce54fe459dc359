import { fileKind } from './file-kind.ts'
import type { Mesh } from './mesh.ts'
import { readStlText } from './read-stl-text.ts'
import { isUsable, type StlBounds, type StlFault, usualStlBounds } from './stl-fault.ts'
import { weldNear } from './weld-near.ts'

const headerBytes = 84
const triangleBytes = 50

/**
 * The triangles of an STL file, binary or text, or why there are none. The format has no unit: coordinates are taken
 * as millimetres. A file whose length fits its binary count is binary, whatever its header says.
 * Source: binary layout (80 bytes, a count of 32 bits, 50 bytes a triangle, little-endian; normal first) and the words
 * of the text form as on a public university page; from memory beyond that.
 * Gives: finite coordinates, at least one triangle; corners that were rounded apart are joined (`weldNear`). Normals
 * are not used: the order of the corners says which side is out.
 * Cost: O(bytes log bytes).
 */
export function readStl(bytes: Uint8Array, bounds: StlBounds = usualStlBounds): Mesh | StlFault {
  const mesh = readAsWritten(bytes, bounds)
  return 'fault' in mesh ? mesh : weldNear(mesh)
}

function readAsWritten(bytes: Uint8Array, bounds: StlBounds): Mesh | StlFault {
  if (bytes.length === 0) return { fault: 'empty file' }
  if (bytes.length > bounds.mostBytes)
    return { fault: 'too many bytes', bytes: bytes.length, most: bounds.mostBytes }
  const declared = declaredCount(bytes)
  const fitsBinary = declared !== null && bytes.length === headerBytes + declared * triangleBytes
  if (!fitsBinary && opensAsText(bytes)) return readStlText(bytes, bounds)
  const kind = fitsBinary ? null : fileKind(bytes)
  if (kind) return { fault: 'other kind', kind }
  if (declared === null) return { fault: 'not STL', bytes: bytes.length }
  // Less than a triangle behind the last one is a tail that some programs leave.
  if (!fitsBinary && (declared === 0 || roomOf(bytes) !== declared)) return wrongCount(bytes, declared)
  if (declared > bounds.mostTriangles)
    return { fault: 'too many triangles', triangles: declared, most: bounds.mostTriangles }
  return declared === 0 ? { fault: 'no triangles' } : readBinary(bytes, declared)
}

function declaredCount(bytes: Uint8Array): number | null {
  return bytes.length < headerBytes ? null : viewOf(bytes).getUint32(80, true)
}

/** Text opens with `solid`; a binary header may say so too, but then zeros follow and no `facet` with its loop. */
function opensAsText(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, 512)
  const text = String.fromCharCode(...head)
  // Some programs write a mark before UTF-8 text.
  const opens = /^(?:\u00ef\u00bb\u00bf)?\s*solid\b/i.test(text)
  return opens && (!head.includes(0) || /\sfacet\s+normal\s[-+.\deE\s]+outer\s+loop\s/i.test(text))
}

function wrongCount(bytes: Uint8Array, declared: number): StlFault {
  const room = roomOf(bytes)
  const spareBytes = bytes.length - headerBytes - room * triangleBytes
  return { fault: 'wrong triangle count', declared, room, spareBytes }
}

/** Whole triangles behind the header. */
function roomOf(bytes: Uint8Array): number {
  return Math.floor((bytes.length - headerBytes) / triangleBytes)
}

function readBinary(bytes: Uint8Array, triangles: number): Mesh | StlFault {
  const view = viewOf(bytes)
  const corners = new Float64Array(9 * triangles)
  for (let triangle = 0; triangle < triangles; triangle++) {
    // Twelve bytes of normal stand before the corners.
    const start = headerBytes + triangle * triangleBytes + 12
    for (let i = 0; i < 9; i++) {
      const coordinate = view.getFloat32(start + 4 * i, true)
      if (!isUsable(coordinate))
        return { fault: 'bad coordinate', triangle: triangle + 1, found: `${coordinate}` }
      corners[9 * triangle + i] = coordinate
    }
  }
  return { corners }
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}
