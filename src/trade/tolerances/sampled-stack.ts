import { seededRandom } from '../../base/random.ts'
import { type OutOfDomain, outOfDomain } from './domain.ts'
import { type StackLink, stackUp } from './stack-up.ts'

/** How sizes fall within their limits: half = 3 sigma, evenly, or peaked in the middle. */
export type SizeSpread = 'normal' | 'uniform' | 'triangular'

/** What many imagined assemblies gave. */
export interface SampledStack {
  readonly mean: number
  readonly sigma: number
  readonly least: number
  readonly most: number
  /** Share of assemblies outside the limits asked for; 0 where none were. */
  readonly shareOutside: number
}

/** How to sample a chain; the same seed gives the same figures. */
export interface Sampling {
  readonly spread: SizeSpread
  readonly count: number
  readonly seed: number
  readonly limits: readonly [least: number, most: number] | null
}

/**
 * A dimension chain drawn many times. Cost: O(links x count).
 * Source: standard deviations t/3, t/sqrt(3), t/sqrt(6); normal draws by Box and Muller (1958).
 */
export function sampledStack(links: readonly StackLink[], sampling: Sampling): SampledStack | OutOfDomain {
  const stack = stackUp(links)
  if ('fault' in stack) return stack
  const { count, limits, spread } = sampling
  if (!(Number.isInteger(count) && count >= 2 && count <= 1e7))
    return outOfDomain('count', count, 'a whole number from 2 to 10 million')
  const random = seededRandom(sampling.seed)
  // Sums of distances from the middle: large sizes then cost no digits.
  let [total, squares, least, most, outside] = [0, 0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0]
  for (let at = 0; at < count; at++) {
    let away = 0
    for (const { factor, half } of links) away += factor * half * draw[spread](random.next)
    total += away
    squares += away * away
    least = Math.min(least, away)
    most = Math.max(most, away)
    const gap = stack.middle + away
    if (limits && (gap < limits[0] || gap > limits[1])) outside++
  }
  const variance = Math.max(0, (squares - (total * total) / count) / (count - 1))
  return {
    mean: stack.middle + total / count,
    sigma: Math.sqrt(variance),
    least: stack.middle + least,
    most: stack.middle + most,
    shareOutside: outside / count,
  }
}

/** Draws from -1 to 1 of the half-width (the normal one beyond it now and then). */
const draw: Readonly<Record<SizeSpread, (next: () => number) => number>> = {
  uniform: (next) => 2 * next() - 1,
  triangular: (next) => next() - next(),
  normal: (next) => (Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())) / 3,
}
