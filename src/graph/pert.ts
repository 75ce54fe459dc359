import { foldChains } from './critical-chains.ts'
import { criticalNet } from './critical-path.ts'
import type { NetworkLink } from './network.ts'

/** Optimistic, likely and pessimistic duration of an activity. */
export interface Estimate {
  readonly low: number
  readonly likely: number
  readonly high: number
}

/** Length of a project by the textbook method, with its spread along the chain that is critical by the means. */
export interface Pert {
  readonly mean: number
  readonly variance: number
}

/** Mean of a three-point estimate, (a + 4m + b)/6. Source: Malcolm et al. (1959), from memory. */
export function pertMean({ low, likely, high }: Estimate): number {
  return (low + 4 * likely + high) / 6
}

/** Variance of a three-point estimate, ((b - a)/6)^2. Source: as `pertMean`. */
export function pertVariance({ low, high }: Estimate): number {
  return ((high - low) / 6) ** 2
}

/**
 * Mean and variance of the finish along the critical chain of the mean durations; of several such chains the one of
 * largest variance counts. `null` where the links form a ring. Only chains alike in mean are compared, so that the
 * chance of a date comes out too high where a chain nearly as long runs beside.
 * Source: Malcolm, Roseboom, Clark and Fazar, "Application of a technique for research and development program
 * evaluation" (1959), from memory. Cost: O((activities + links) log activities).
 */
export function pert(estimates: readonly Estimate[], links: readonly NetworkLink[]): Pert | null {
  // In sixths, so that whole estimates give whole means and ties between chains are seen.
  const net = criticalNet({
    durations: estimates.map(({ low, likely, high }) => low + 4 * likely + high),
    links: links.map((link) => ({ ...link, lag: 6 * link.lag })),
  })
  if (!net) return null
  const variance = foldChains<number>(net, {
    none: Number.NEGATIVE_INFINITY,
    begun: 0,
    join: Math.max,
    pass: (sum, { activity, enters, leaves }) =>
      enters === leaves ? sum : sum + pertVariance(estimates[activity]!),
  })
  return { mean: net.finish / 6, variance: Math.max(0, variance) }
}

/** The chance that a project ends no later than `deadline`, its length taken as normally distributed. */
export function chanceBy({ mean, variance }: Pert, deadline: number): number {
  if (variance === 0) return deadline >= mean ? 1 : 0
  return normalBelow((deadline - mean) / Math.sqrt(variance))
}

/**
 * The chance that a standard normal number is below `z`; absolute error under 1e-14.
 * Source: Marsaglia, "Evaluating the normal distribution", Journal of Statistical Software 11(4), 2004: the series
 * z + z^3/3 + z^5/(3 x 5) + ... times the density.
 */
export function normalBelow(z: number): number {
  if (z < -9) return 0
  if (z > 9) return 1
  let [term, sum] = [z, z]
  for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
    term *= (z * z) / odd
    sum += term
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI)
}
