import type { Mesh } from './mesh.ts'

/** Corners of a mesh by number: those at exactly the same place share one. */
export interface JoinedCorners {
  /** Number of the place of each corner, three a triangle. */
  readonly places: Int32Array
  readonly count: number
}

/**
 * The places where corners of triangles meet: loose triangles joined by exactly equal coordinates.
 * Method: a table of hashes with open addressing. Cost: O(triangles).
 */
export function joinCorners({ corners }: Mesh): JoinedCorners {
  const total = corners.length / 3
  const exact = corners.map((coordinate) => coordinate + 0) // -0 and 0 are one place
  const words = new Uint32Array(exact.buffer)
  const size = 2 ** Math.ceil(Math.log2(2 * total + 2))
  const table = new Int32Array(size).fill(-1)
  const places = new Int32Array(total)
  let count = 0
  for (let corner = 0; corner < total; corner++) {
    let slot = hashOf(words, 6 * corner) & (size - 1)
    while (table[slot] !== -1 && !sameSpot(exact, table[slot]!, corner)) slot = (slot + 1) & (size - 1)
    if (table[slot] === -1) {
      table[slot] = corner
      places[corner] = count++
    } else places[corner] = places[table[slot]!]!
  }
  return { places, count }
}

function sameSpot(corners: Float64Array, a: number, b: number): boolean {
  for (let i = 0; i < 3; i++) if (corners[3 * a + i] !== corners[3 * b + i]) return false
  return true
}

/** Mixes six words. Source: constants of the 32-bit MurmurHash3 (Appleby), from memory. */
function hashOf(words: Uint32Array, start: number): number {
  let hash = 0
  for (let i = start; i < start + 6; i++) {
    const mixed = Math.imul(words[i]!, 0xcc9e2d51)
    hash ^= Math.imul((mixed << 15) | (mixed >>> 17), 0x1b873593)
    hash = Math.imul((hash << 13) | (hash >>> 19), 5) + 0xe6546b64
  }
  return (hash ^ (hash >>> 16)) >>> 0
}
