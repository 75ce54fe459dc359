/** How late each cart may be ordered. */
import { dayOf, type Instant, instantOf, type Minutes, minutesPerDay } from '../../base/clock.ts'
import { listSpans } from '../../base/spans.ts'
import type { SafeDate } from '../../model/risk.ts'
import type { Problem } from '../schedule/index.ts'
import type { Sampled, SampleSource } from './lay-out-samples.ts'
import type { Held, Policy } from './policy.ts'
import { meanOf, quantile, shareBy, thinned } from './statistics.ts'

/** The chance that a safe date keeps. */
const safeChance = 0.8

/** Passes spent on all carts together, for each sample; the cart in hand is tried to its end. */
const passesPerSample = 4

/** Samples that an evening is tried on: a fifth of all, but fifteen where there are as many. */
const triedOf = (samples: number): number => Math.max(15, Math.floor(samples / 5))

/** The samples tried for one cart, and how many of them may be late. */
interface Trial {
  readonly policy: Policy
  readonly target: Instant
  /** Samples in time where all is ordered as planned, those in which the cart takes longest first. */
  readonly inTime: readonly number[]
  /** How many of those may be lost. */
  readonly spare: number
  /** Minutes that a long way takes more than the planned one, about. */
  readonly longer: Minutes
}

/**
 * The last evening for each cart, ordered alone so late, with 80 % of the samples still done by the wanted date; by the
 * plan's own 80 % date where none is wanted. None where fewer keep the date as it is.
 * Method: bisection over the evenings on which whoever orders is there, each laid out anew on a fifth of the samples,
 * evenly spread among all by how long the cart is on its way; an evening is given up at the first sample too many.
 * Needs: a later order never brings a sample back into time; what a sample once showed is not asked again.
 * Cost: tried samples x a few passes a cart; once four passes a sample are spent, the carts left get no date.
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
  const budget = { left: passesPerSample * finishes.length }
  const policy: Policy = {
    ...sampled.policy,
    layOut: (k, order) => {
      budget.left--
      return sampled.policy.layOut(k, order)
    },
  }
  const safe = ordersByLatest(source).flatMap(({ id, subject, at }): [string, SafeDate][] => {
    if (subject.cart === null || (!below && budget.left <= 0)) return []
    const trial = trialOf({ ...sampled, policy }, target, ways.get(subject.cart)!)
    const { start, latestAlone } = source.schedule.tasks.get(id)!
    const expected = latestAlone + (target - source.schedule.finish) - trial.longer
    const order = below ? null : lastEvening(trial, at, start, expected)
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

function trialOf({ finishes, policy, draws }: Sampled, target: Instant, delivery: number): Trial {
  const days = draws.days.get(delivery)
  const away = finishes.map((_, k) => (days ? days.lead[k]! + days.transit[k]! + days.out[k]! : 0))
  const picked = thinned(away, triedOf(finishes.length))
  const inTime = picked
    .filter((k) => finishes[k]! <= target)
    .sort((a, b) => away[b]! - away[a]! || finishes[b]! - finishes[a]! || a - b)
  const spare = Math.floor((shareBy(finishes, target) - safeChance) * picked.length + 1e-9)
  // Vendor and carrier days are five of the seven of a week.
  const longer = (quantile(away, safeChance) - meanOf(away, away.keys())!) * 1.4 * minutesPerDay
  return { policy, target, inTime, spare, longer }
}

/** Bisection that begins where the plan lets expect the answer and widens from there. */
function lastEvening(trial: Trial, task: number, planned: Instant, expected: Instant): Instant {
  const evenings = eveningsOf(trial.policy.problem, task, planned, trial.target)
  const known: Known = { inTime: new Map(), late: new Map() }
  // The plan itself keeps the date; what is past all evenings does not.
  let [kept, lost] = [-1, evenings.length]
  let next = evenings.findLastIndex((open) => open <= expected)
  for (let step = 1; lost - kept > 1; step *= 2) {
    const at = Math.min(lost - 1, Math.max(kept + 1, next))
    const good = keeps(trial, { task, until: evenings[at]! }, known)
    if (good) kept = at
    else lost = at
    const both = kept >= 0 && lost < evenings.length
    next = both ? (kept + lost) >> 1 : at + (good ? step : -step)
  }
  return kept < 0 ? planned : evenings[kept]!
}

/** By sample: the latest order that was in time, and the earliest that was late. */
interface Known {
  readonly inTime: Map<number, Instant>
  readonly late: Map<number, Instant>
}

function keeps({ policy, target, inTime, spare }: Trial, order: Held, known: Known): boolean {
  let late = inTime.filter((k) => (known.late.get(k) ?? Number.POSITIVE_INFINITY) <= order.until).length
  for (const k of inTime) {
    if (late > spare) return false
    if ((known.late.get(k) ?? Number.POSITIVE_INFINITY) <= order.until) continue
    if ((known.inTime.get(k) ?? Number.NEGATIVE_INFINITY) >= order.until) continue
    const laid = policy.layOut(k, order)
    const good = laid !== null && laid.found.end <= target
    if (!good) late++
    ;(good ? known.inTime : known.late).set(k, order.until)
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
