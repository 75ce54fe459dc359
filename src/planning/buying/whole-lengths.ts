import Fraction from 'fraction.js'

/** Lengths counted in one small step, so that a search can add and compare them without rounding. */
export interface WholeLengths {
  /** Whether every length is a whole number of steps; else pieces are counted up and bars down. */
  readonly exact: boolean
  readonly up: (length: Fraction) => number
  readonly down: (length: Fraction) => number
  readonly back: (steps: number) => Fraction
}

/** Sums of whole lengths stay below this, far inside what a number holds exactly. */
const largest = 2n ** 52n
/** Steps of one millimetre where no common step is large enough; well below what a saw can hold. */
const coarse = 10_000n

/**
 * The largest step of which all these lengths are whole multiples.
 * Needs: `sum` is the longest sum that will be formed. Gives: nothing is ever said to fit that does not.
 */
export function wholeLengths(lengths: readonly Fraction[], sum: Fraction): WholeLengths {
  const common = lengths.reduce((step, { d }) => (step * d) / greatestDivisor(step, d), 1n)
  const exact = sum.mul(common).lt(largest)
  const steps = exact ? common : coarse
  return {
    exact,
    up: (length) => Number(length.mul(steps).ceil().n),
    down: (length) => Number(length.mul(steps).floor().n),
    back: (whole) => new Fraction(BigInt(whole), steps),
  }
}

function greatestDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestDivisor(b, a % b)
}
