/** State of the generator: four 32-bit words, not all zero. Plain data: copy it to continue later or elsewhere. */
export type RandomState = readonly [number, number, number, number]

/** A seeded source of random numbers: the same seed gives the same numbers on every machine. */
export interface Random {
  /** Next number, at least 0 and below 1, in steps of 2^-32. */
  next(): number
  /** Where the generator stands now. */
  state(): RandomState
}

/** A generator for a seed: any whole number, of which the lower 32 bits count. */
export function seededRandom(seed: number): Random {
  let counter = seed >>> 0
  const word = () => {
    counter = (counter + 0x9e3779b9) >>> 0
    return finalMix(counter)
  }
  // The mix is one to one and the counter moves on, so at most one of the four words is zero.
  return resumeRandom([word(), word(), word(), word()])
}

/**
 * A generator that goes on from a state.
 * Source: xoshiro128** 1.1, Blackman and Vigna, "Scrambled linear pseudorandom number generators" (2021).
 */
export function resumeRandom(state: RandomState): Random {
  let [a, b, c, d] = state
  return {
    next() {
      const result = Math.imul(turnLeft(Math.imul(b, 5), 7), 9) >>> 0
      const shifted = b << 9
      c ^= a
      d ^= b
      b ^= c
      a ^= d
      c ^= shifted
      d = turnLeft(d, 11)
      return result / 4_294_967_296
    },
    state: () => [a >>> 0, b >>> 0, c >>> 0, d >>> 0],
  }
}

function turnLeft(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits))
}

/** Spreads the bits of a word. Source: the 32-bit finaliser of MurmurHash3 (Appleby), from memory. */
function finalMix(word: number): number {
  let mixed = word
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b)
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35)
  return (mixed ^ (mixed >>> 16)) >>> 0
}
