import { minutesPerDay } from '../../base/clock.ts'
import type { SpreadBy } from '../../model/risk.ts'
import type { Input } from './draws.ts'
import { correlation, meanOf, ranksOf } from './statistics.ts'

/** Most things named. */
const mostNamed = 8

/**
 * What goes with a late finish most: rank correlation of every drawn thing with the finish. Named are those beyond what
 * chance alone shows in so many samples (3.3 standard errors of no correlation, 1/sqrt(n - 1)), strongest first; beside
 * each, how many days later the mean finish is where the thing lies in its highest fifth than in its lowest.
 * Source: rank correlation and its standard error, textbook; the threshold: common practice, no source.
 */
export function spreadOf(inputs: readonly Input[], finishes: Float64Array): readonly SpreadBy[] {
  const count = finishes.length
  if (count < 20) return []
  const ranks = ranksOf(finishes)
  const least = 3.3 / Math.sqrt(count - 1)
  return inputs
    .map(({ kind, of, values }) => ({ kind, of, values, correlation: correlation(ranksOf(values), ranks) }))
    .filter((one) => Math.abs(one.correlation) >= least)
    .sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation) || (a.of < b.of ? -1 : 1))
    .slice(0, mostNamed)
    .map(({ values, ...one }) => ({ ...one, days: daysBetweenFifths(values, finishes) }))
}

/** Days between the mean finishes of the samples with the highest and the lowest fifth of the values. */
function daysBetweenFifths(values: Float64Array, finishes: Float64Array): number {
  const order = Array.from(values, (_, at) => at).sort((a, b) => values[a]! - values[b]! || a - b)
  const fifth = Math.max(1, Math.floor(order.length / 5))
  // Where many values are alike at an end, all of them count.
  const [low, high] = [values[order[fifth - 1]!]!, values[order.at(-fifth)!]!]
  const late = meanOf(
    finishes,
    order.filter((at) => values[at]! >= high),
  )
  const early = meanOf(
    finishes,
    order.filter((at) => values[at]! <= low),
  )
  return late === null || early === null ? 0 : (late - early) / minutesPerDay
}
