import { type Instant, minutesPerDay, type Span } from '../../base/clock.ts'
import { listSpans } from '../../base/spans.ts'
import type { TonightAction } from '../../model/risk.ts'
import { sessionsOf } from '../calendar/open-hours.ts'
import type { Sampled, SampleSource } from './lay-out-samples.ts'
import type { Held, Pulled } from './policy.ts'
import { passesFor } from './samples-for.ts'
import { thinned } from './statistics.ts'
import { whyWorth } from './why-worth.ts'

/** Samples that an action is tried on: a fifth of all, but no more than fifty. */
const triedOf = (samples: number): number => Math.min(50, Math.ceil(samples / 5))

/** Samples after which an action that moved none of them is taken to be worth nothing. */
const firstLook = 6

/** Passes spent on the actions of all people together, for each sample; the action in hand is tried to its end. */
const passesPerSample = 2

/** Most actions of a session that are looked at, of those planned for it and of the others each. */
const mostActions = 10

/** An action and what the plan is asked to find its worth. */
interface Candidate {
  readonly task: number
  readonly planned: boolean
  readonly change: Held | Pulled
}

/** The next session of a person, and when they are there again. */
interface Evening extends Span {
  readonly person: string
  readonly until: Instant
}

/**
 * What is worth doing in the next session of each person. A task planned for it is laid out waiting until the person's
 * session after that, the rest as planned: its worth is the mean of the days by which the finish comes later. A task
 * planned later that could be begun in it (what it waits for is done, the person may do it, what it needs is free) is
 * laid out before everything else: its worth is the mean of the days by which the finish comes earlier.
 * Gives: those that save something, session by session, most days first. Samples are those of the whole plan, thinned
 * evenly by finish; one after the other the likeliest to matter are tried until the passes are spent.
 * Cost: at most two passes a sample (the action in hand is tried to its end), and one for each action that might be begun.
 */
export function tonightByValue(source: SampleSource, sampled: Sampled): readonly TonightAction[] {
  const evenings = nextEvenings(source, sampled.policy.horizon)
  const { finishes } = sampled
  const picked = thinned(finishes, triedOf(finishes.length)).filter((k) => Number.isFinite(finishes[k]))
  if (picked.length === 0) return []
  const mixed = inTurn(picked)
  return evenings.flatMap((evening) => {
    const passes = passesFor(passesPerSample, source.network.tasks.length)
    const budget = { left: Math.floor((passes * finishes.length) / evenings.length) }
    return candidatesOf(source, sampled, evening, Math.min(mostActions, budget.left >> 2))
      .flatMap((candidate) => worthOf(source, sampled, evening, { candidate, picked: mixed, budget }))
      .sort((a, b) => b.days - a.days || (a.task < b.task ? -1 : 1))
  })
}

/** Sorted things so that the first few are spread over all: every third, then the others. */
function inTurn(sorted: readonly number[]): readonly number[] {
  const stride = Math.max(1, Math.floor(sorted.length / firstLook))
  const first = sorted.filter((_, at) => at % stride === stride >> 1)
  return [...first, ...sorted.filter((_, at) => at % stride !== stride >> 1)]
}

/** By time, then person. */
function nextEvenings({ project }: SampleSource, to: Instant): readonly Evening[] {
  const from = project.device.start * minutesPerDay
  const evenings = [...project.people.values()].flatMap((person): readonly Evening[] => {
    const [next, after] = listSpans(sessionsOf(person, from, to))
    return next && after ? [{ ...next, person: person.id, until: after.open }] : []
  })
  return evenings.sort((a, b) => a.open - b.open || (a.person < b.person ? -1 : 1))
}

/** Actions of an evening, the likeliest to matter first; of those planned and of those that are not, so many at most. */
function candidatesOf(
  source: SampleSource,
  sampled: Sampled,
  evening: Evening,
  most: number,
): readonly Candidate[] {
  const { network, schedule } = source
  const { open, close, person, until } = evening
  const placed = network.tasks.map(({ id }) => schedule.tasks.get(id)!)
  const within = (at: number): boolean => placed[at]!.start >= open && placed[at]!.start < close
  const byBearing = (a: Candidate, b: Candidate): number =>
    sampled.onChain[b.task]! - sampled.onChain[a.task]! ||
    placed[a.task]!.latestStart - placed[b.task]!.latestStart ||
    a.task - b.task
  const all = network.tasks.map((_, at) => at)
  const planned = all
    .filter((at) => within(at) && placed[at]!.people.includes(person))
    .map((task): Candidate => ({ task, planned: true, change: { task, until } }))
  const later = all
    .filter((at) => placed[at]!.start >= close && network.tasks[at]!.who.includes(person))
    .filter(couldBegin(source, close))
    .map((task): Candidate => ({ task, planned: false, change: { task, until: 'first' } }))
    .sort(byBearing)
    .slice(0, most)
    .filter((candidate) => beginsWithin(sampled, candidate, evening))
  return [...planned.sort(byBearing).slice(0, most), ...later].sort(byBearing)
}

/** Whether all that a task waits for is done in the plan before an instant. */
function couldBegin({ network, schedule }: SampleSource, close: Instant): (at: number) => boolean {
  const waiting = new Set(
    network.links
      .filter(
        ({ from, lag }) => 'workingDays' in lag || schedule.tasks.get(from)!.finish + lag.minutes >= close,
      )
      .map(({ to }) => to),
  )
  return (at) => {
    const { id, attention, release } = network.tasks[at]!
    return attention === 'hands' && release < close && !waiting.has(id)
  }
}

/** Whether it does begin in the session, by that person, where it goes first and all else as planned. */
function beginsWithin({ policy }: Sampled, { task, change }: Candidate, evening: Evening): boolean {
  const laid = policy.asPlanned(change)
  if (laid === null) return false
  const { found } = laid
  const start = found.start[task]!
  const { needs } = policy.problem.tasks[task]!.modes[found.mode[task]!]!
  const own = needs.some(
    ({ resource }) => policy.problem.resources[resource]!.id === `person:${evening.person}`,
  )
  return own && start >= evening.open && start < evening.close
}

interface Trial {
  readonly candidate: Candidate
  readonly picked: readonly number[]
  readonly budget: { left: number }
}

/** The worth of an action where it has one, and where passes are left to find it. */
function worthOf(
  source: SampleSource,
  sampled: Sampled,
  { person, open, close, until }: Evening,
  { candidate, picked, budget }: Trial,
): readonly TonightAction[] {
  if (budget.left <= 0) return []
  const { task, planned } = candidate
  const saved: number[] = []
  for (const k of picked) {
    if (saved.length === firstLook && saved.every((days) => days <= 0)) return []
    saved.push(savedIn(sampled, k, candidate, until, budget))
  }
  const days = saved.reduce((sum, one) => sum + one, 0) / saved.length
  if (days <= 0) return []
  const share = saved.filter((one) => one > 0).length / saved.length
  const why = whyWorth(source, sampled, task)
  const { id } = source.network.tasks[task]!
  return [{ task: id, person, open, close, planned, until, days, share, why }]
}

/** Days saved in one sample. */
function savedIn(
  { policy, finishes, starts }: Sampled,
  k: number,
  { task, planned, change }: Candidate,
  until: Instant,
  budget: { left: number },
): number {
  // Where it begins so late anyway, waiting changes nothing.
  if (planned && starts[k]![task]! >= until) return 0
  budget.left--
  const laid = policy.layOut(k, change)
  // Where the change leaves something without a place, that says nothing of days.
  if (laid === null) return 0
  return ((planned ? 1 : -1) * (laid.found.end - finishes[k]!)) / minutesPerDay
}
