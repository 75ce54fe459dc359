/** Draws from the beta distribution of a three-point estimate. */
import type { Random } from '../../base/random.ts'

/** Optimistic, likely and pessimistic value as plain numbers. */
export interface Estimate {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/**
 * One draw of a three-point estimate: beta-PERT, mean (a + 4m + b)/6, variance (mean - a)(b - mean)/7.
 * Method: a beta number is g/(g + h) for two gamma numbers of its shapes; the shapes are 1 + 4(m - a)/(b - a) and
 * 1 + 4(b - m)/(b - a), both at least 1. Needs: low <= likely <= high.
 * Source: the beta-PERT distribution and the gamma ratio, from memory.
 */
export function drawBetaPert({ low, likely, high }: Estimate, random: Random): number {
  const width = high - low
  if (width <= 0) return low
  const g = drawGamma(1 + (4 * (likely - low)) / width, random)
  const h = drawGamma(1 + (4 * (high - likely)) / width, random)
  return low + width * (g / (g + h))
}

/**
 * One gamma number of a shape of 1 or more, scale 1.
 * Source: Marsaglia and Tsang, "A simple method for generating gamma variables" (2000), from memory.
 */
export function drawGamma(shape: number, random: Random): number {
  const d = shape - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = drawNormal(random)
    const v = (1 + c * x) ** 3
    if (v <= 0) continue
    // A uniform number may be 0, whose logarithm lies below everything.
    if (Math.log(random.next()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v
  }
}

/** One standard normal number. Source: Marsaglia's polar method (1964), from memory. */
function drawNormal(random: Random): number {
  for (;;) {
    const x = 2 * random.next() - 1
    const y = 2 * random.next() - 1
    const square = x * x + y * y
    if (square > 0 && square < 1) return x * Math.sqrt((-2 * Math.log(square)) / square)
  }
}

/**
 * How often something fails before it succeeds, each try failing with the same chance; at most `most`.
 * Gives: a geometric number, mean chance / (1 - chance) where `most` is out of reach.
 */
export function drawFailures(chance: number, most: number, random: Random): number {
  let count = 0
  while (count < most && random.next() < chance) count++
  return count
}
