import type { DrawnMesh } from './drawn-mesh.ts'

/** Points of a mesh, each place once, and its triangles over them; triangles without room are left out. */
export interface WeldedMesh {
  readonly points: Float32Array
  readonly triangles: Uint32Array
}

/**
 * Joins corners at exactly the same place.
 * Method: a table of hashes with open addressing. Cost: O(corners).
 */
export function weldCorners({ positions, triangles }: DrawnMesh): WeldedMesh {
  const exact = positions.map((coordinate) => coordinate + 0) // -0 and 0 are one place
  const words = new Uint32Array(exact.buffer)
  const total = exact.length / 3
  const size = 2 ** Math.ceil(Math.log2(2 * total + 2))
  const table = new Int32Array(size).fill(-1)
  const numbers = new Uint32Array(total)
  const points = new Float32Array(exact.length)
  let count = 0
  for (let corner = 0; corner < total; corner++) {
    let slot = hashOf(words, 3 * corner) & (size - 1)
    while (table[slot] !== -1 && !samePlace(words, table[slot]!, corner)) slot = (slot + 1) & (size - 1)
    if (table[slot] === -1) {
      table[slot] = corner
      numbers[corner] = count
      points.set(exact.subarray(3 * corner, 3 * corner + 3), 3 * count++)
    } else numbers[corner] = numbers[table[slot]!]!
  }
  return { points: points.slice(0, 3 * count), triangles: renumbered(triangles, numbers) }
}

/** The triangles over new numbers, without those that lose a side by it. */
export function renumbered(triangles: Uint32Array, numbers: Uint32Array): Uint32Array {
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

function samePlace(words: Uint32Array, a: number, b: number): boolean {
  return (
    words[3 * a] === words[3 * b] &&
    words[3 * a + 1] === words[3 * b + 1] &&
    words[3 * a + 2] === words[3 * b + 2]
  )
}

/** Mixes three words. Source: constants of the 32-bit MurmurHash3 (Appleby), from memory. */
function hashOf(words: Uint32Array, start: number): number {
  let hash = 0
  for (let i = start; i < start + 3; i++) {
    const mixed = Math.imul(words[i]!, 0xcc9e2d51)
    hash ^= Math.imul((mixed << 15) | (mixed >>> 17), 0x1b873593)
    hash = Math.imul((hash << 13) | (hash >>> 19), 5) + 0xe6546b64
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
  return (hash ^ (hash >>> 13)) >>> 0
}
