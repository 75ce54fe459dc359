/** Corners by number: those at exactly the same place share one. */
export interface SamePlaces {
  /** Number of the place of each corner, as places first come. */
  readonly places: Int32Array
  readonly count: number
}

/**
 * Which corners lie at exactly the same place; three coordinates a corner, -0 and 0 alike.
 * Method: a table of hashes with open addressing. Cost: O(corners).
 */
export function samePlaces(coordinates: Float32Array | Float64Array): SamePlaces {
  const exact = coordinates.map((coordinate) => coordinate + 0)
  const words = new Uint32Array(exact.buffer)
  const total = exact.length / 3
  const wordsEach = 3 * (exact.BYTES_PER_ELEMENT >> 2)
  const size = 2 ** Math.ceil(Math.log2(2 * total + 2))
  const table = new Int32Array(size).fill(-1)
  const places = new Int32Array(total)
  let count = 0
  for (let corner = 0; corner < total; corner++) {
    let slot = hashOf(words, wordsEach * corner, wordsEach) & (size - 1)
    while (table[slot] !== -1 && !sameSpot(exact, table[slot]!, corner)) slot = (slot + 1) & (size - 1)
    if (table[slot] === -1) {
      table[slot] = corner
      places[corner] = count++
    } else places[corner] = places[table[slot]!]!
  }
  return { places, count }
}

function sameSpot(corners: Float32Array | Float64Array, a: number, b: number): boolean {
  for (let i = 0; i < 3; i++) if (corners[3 * a + i] !== corners[3 * b + i]) return false
  return true
}

/** Mixes so many words. Source: constants of the 32-bit MurmurHash3 (Appleby), from memory. */
function hashOf(words: Uint32Array, start: number, length: number): number {
  let hash = 0
  for (let i = start; i < start + length; i++) {
    const mixed = Math.imul(words[i]!, 0xcc9e2d51)
    hash ^= Math.imul((mixed << 15) | (mixed >>> 17), 0x1b873593)
    hash = Math.imul((hash << 13) | (hash >>> 19), 5) + 0xe6546b64
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
  return (hash ^ (hash >>> 13)) >>> 0
}
