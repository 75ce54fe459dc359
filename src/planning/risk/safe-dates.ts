/** How late each cart may be ordered. */
import { dayOf, type Instant, instantOf } from '../../base/clock.ts'
import { listSpans } from '../../base/spans.ts'
import type { SafeDate } from '../../model/risk.ts'
import type { Problem } from '../schedule/index.ts'
import { roughOrder } from '../schedule/precedence.ts'
import { latestStartsFor } from './latest-starts-for.ts'
import type { Sampled, SampleSource } from './lay-out-samples.ts'
import type { Held, Policy } from './policy.ts'
import { passesFor } from './samples-for.ts'
import { quantile, shareBy, thinned } from './statistics.ts'

/** The chance that a safe date keeps. */
const safeChance = 0.8

/** Passes spent on all carts together, for each sample; the cart in hand is tried to its end. */
const passesPerSample = 2

/** Samples that an evening is tried on: a fifth of all, but fifteen where there are as many. */
const triedOf = (samples: number): number => Math.max(15, Math.floor(samples / 5))

/** The samples tried for one cart, and how many of them may be late. */
interface Trial {
  readonly policy: Policy
  readonly target: Instant
  /** Samples in time where all is ordered as planned, those first that may be ordered least late. */
  readonly inTime: readonly number[]
  /** How many of those may be lost. */
  readonly spare: number
  /** By sample: ordered later than this it is surely late, whoever is free and whatever is. */
  readonly surely: (k: number) => Instant
}

/**
 * The last evening for each cart, ordered alone so late, with 80 % of the samples still done by the wanted date; by the
 * plan's own 80 % date where none is wanted. None where fewer keep the date as it is.
 * Method: bisection over the evenings on which whoever orders is there, each laid out anew on a fifth of the samples,
 * evenly spread among all by how long the cart is on its way. It begins at the last evening that links and hours alone
 * do not rule out, later ones being surely late; an evening is given up at the first sample too many, and taken where
 * those left cannot be too many.
 * Needs: a later order never brings a sample back into time; what a sample once showed is not asked again.
 * Cost: tried samples x a few passes a cart; once two passes a sample are spent, the carts left get no date.
 */
export function safeDates(
  source: SampleSource,
  sampled: Sampled,
  wanted: Instant | null,
): ReadonlyMap<string, SafeDate> {
  const { finishes } = sampled
  const target = wanted ?? quantile(finishes, safeChance)
  const below = !Number.isFinite(target) || shareBy(finishes, target) < safeChance
  const ways = new Map(
    source.network.tasks.flatMap(({ delivery }, at) => (delivery ? [[delivery.cart, at] as const] : [])),
  )
  const surely = latestIn(sampled.policy, target)
  const budget = { left: passesFor(passesPerSample, source.network.tasks.length) * finishes.length }
  const policy: Policy = {
    ...sampled.policy,
    layOut: (k, order) => {
      budget.left--
      return sampled.policy.layOut(k, order)
    },
  }
  // Less than one evening's tries would tell nothing.
  const least = triedOf(finishes.length)
  const safe = ordersByLatest(source).flatMap(({ id, subject, at }): [string, SafeDate][] => {
    if (subject.cart === null || (!below && budget.left < least)) return []
    const trial = trialOf({ ...sampled, policy }, target, ways.get(subject.cart)!, (k) => surely(k)[at]!)
    const order = below ? null : lastEvening(trial, at, source.schedule.tasks.get(id)!.start)
    return [[subject.cart, { order, samples: Math.min(triedOf(finishes.length), finishes.length) }]]
  })
  return new Map(safe)
}

/** Orders, those whose goods are wanted first before the others. */
function ordersByLatest({ network, schedule }: SampleSource) {
  const latest = (id: string): Instant => schedule.tasks.get(id)!.latestAlone
  return network.tasks
    .flatMap(({ kind, subject, id }, at) => (kind === 'order' ? [{ id, subject, at }] : []))
    .sort((a, b) => latest(a.id) - latest(b.id) || a.at - b.at)
}

/** By sample and task: started later than this, it is surely not done by the target. */
function latestIn(policy: Policy, target: Instant): (k: number) => Float64Array {
  const order = roughOrder(policy.networkIn(0))
  const known = new Map<number, Float64Array>()
  return (k) => {
    const latest = known.get(k) ?? latestStartsFor(policy.networkIn(k), order, target)
    known.set(k, latest)
    return latest
  }
}

function trialOf(
  { finishes, policy, draws }: Sampled,
  target: Instant,
  delivery: number,
  surely: (k: number) => Instant,
): Trial {
  const days = draws.days.get(delivery)
  const away = finishes.map((_, k) => (days ? days.lead[k]! + days.transit[k]! + days.out[k]! : 0))
  const picked = thinned(away, triedOf(finishes.length))
  const inTime = picked
    .filter((k) => finishes[k]! <= target)
    .sort((a, b) => surely(a) - surely(b) || finishes[b]! - finishes[a]! || a - b)
  const spare = Math.floor((shareBy(finishes, target) - safeChance) * picked.length + 1e-9)
  return { policy, target, inTime, spare, surely }
}

/** Bisection that begins with the last evening that is not surely too late and widens from there. */
function lastEvening(trial: Trial, task: number, planned: Instant): Instant {
  const { inTime, spare, surely, policy, target } = trial
  const evenings = eveningsOf(policy.problem, task, planned, target)
  // On an evening after this, more than may be lost are late.
  const end = spare < inTime.length ? surely(inTime[spare]!) : Number.POSITIVE_INFINITY
  const known = new Map<number, Known>(
    inTime.map((k) => [k, { good: Number.NEGATIVE_INFINITY, late: surely(k) + 1 }]),
  )
  // The plan itself keeps the date.
  let [kept, lost] = [-1, evenings.findLastIndex((open) => open <= end) + 1]
  let next = lost - 1
  for (let step = 1; lost - kept > 1; step *= 2) {
    const at = Math.min(lost - 1, Math.max(kept + 1, next))
    const good = keeps(trial, { task, until: evenings[at]! }, known)
    if (good) kept = at
    else lost = at
    next = kept >= 0 ? (kept + lost) >> 1 : at - step
  }
  return kept < 0 ? planned : evenings[kept]!
}

/** Of one sample: the latest order that was in time, and the earliest that was late. */
interface Known {
  readonly good: Instant
  readonly late: Instant
}

function keeps({ policy, target, inTime, spare }: Trial, order: Held, known: Map<number, Known>): boolean {
  const { until } = order
  let late = inTime.filter((k) => known.get(k)!.late <= until).length
  const open = inTime.filter((k) => known.get(k)!.good < until && until < known.get(k)!.late)
  for (const [at, k] of open.entries()) {
    if (late > spare || late + open.length - at <= spare) break
    const laid = policy.layOut(k, order)
    const good = laid !== null && laid.found.end <= target
    if (!good) late++
    known.set(k, { ...known.get(k)!, [good ? 'good' : 'late']: until })
  }
  return late <= spare
}

/** First opening on each later day, up to the target, at which somebody can place the order. */
function eveningsOf(problem: Problem, order: number, after: Instant, target: Instant): readonly Instant[] {
  const byDay = new Map<number, Instant>()
  for (const { calendar } of problem.tasks[order]!.modes) {
    if (calendar === null)
      for (let day = dayOf(after) + 1; day <= dayOf(target); day++) byDay.set(day, instantOf(day, 0))
    else
      for (const { open } of listSpans(problem.calendars[calendar]!.spans)) {
        if (open >= target || dayOf(open) <= dayOf(after)) continue
        byDay.set(dayOf(open), Math.min(open, byDay.get(dayOf(open)) ?? open))
      }
  }
  return [...byDay.values()].sort((a, b) => a - b)
}
