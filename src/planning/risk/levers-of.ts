/** What would bring the date nearer, each solved again. */

import { type Instant, minutesPerDay } from '../../base/clock.ts'
import { placesOf } from '../../base/places-of.ts'
import type { Lever } from '../../model/risk.ts'
import {
  type Decoder,
  decoderOf,
  networkOf,
  type Problem,
  type Schedule,
  scheduleProblem,
} from '../schedule/index.ts'
import { type Bearing, type Change, changesOf } from './changes.ts'
import type { SampleSource } from './lay-out-samples.ts'
import { planRank } from './policy.ts'

/** Most changes laid out in the plan's own orders; of them, most that are searched too. */
const mostChanges = 16
const mostSearched = 4
/** Most schedules tried in each of those searches, however many the plan tried. */
const mostEffort = 6
/** Tasks up to which so much is tried; of larger plans less, in proportion, as each try takes longer. */
const usualTasks = 400
/** Most changes told, and the least gain of one in days. */
const mostTold = 5
const leastGain = 0.5

/** Levers, and the days that searching as long brings without any change. */
export interface Levers {
  readonly levers: readonly Lever[]
  readonly searchAlone: number
}

/**
 * The changes that bring the finish nearest: a cart ordered one vendor day earlier, one more evening a week for a
 * person, a second machine, a machine at any hour, one more person who may use a machine. Each is laid out again in the
 * plan's own order of work and in that of its latest starts; the best are searched too, as long as the plan was, within
 * bounds. A gain counts against the best
 * that is known without the change: the plan, the same search, and the order of every plan found, laid out without it.
 * So what better searching alone brings is no lever's.
 * Gives: at most five with a gain of half a day or more, most days first; of a person's evenings the best.
 * Cost: at most 32 passes and 5 searches of 6 schedules.
 */
export function leversOf(source: SampleSource, shareOf: Bearing = () => 0): Levers {
  const { schedule } = source
  const { base, list } = changesOf(source, shareOf)
  const orders = [planRank(source), latestOrder(source)]
  const share = Math.min(1, usualTasks / source.network.tasks.length)
  const some = (most: number): number => Math.ceil(share * most)
  const effort = some(mostEffort) > 1 ? Math.min(schedule.schedulesTried, some(mostEffort)) : 0
  const inOrder = list.slice(0, some(mostChanges)).map((change) => inOwnOrders(change, orders))
  const tried = bestOfEach(inOrder).map((one, at) =>
    at < some(mostSearched) ? searchedToo(one, effort, orders[0]!) : one,
  )
  const best = bestWithout(source, base, [...orders, ...tried.flatMap(({ order }) => order ?? [])], effort)
  const levers = tried
    .map(({ change: { kind, of, person, weekday }, finish }): Lever => {
      const days = Math.max(0, best - finish) / minutesPerDay
      return { kind, of, person, weekday, finish, days }
    })
    .filter(({ days }) => days >= leastGain)
    .sort((a, b) => b.days - a.days || (a.of < b.of ? -1 : 1))
  return { levers: levers.slice(0, mostTold), searchAlone: (schedule.finish - best) / minutesPerDay }
}

/** A change solved again so far, and the order of tasks found for it by search, where that is what finishes first. */
interface Tried {
  readonly change: Change
  readonly problem: Problem
  readonly finish: Instant
  readonly order: Int32Array | null
}

function inOwnOrders(change: Change, orders: readonly Int32Array[]): Tried {
  const problem = change.problem()
  const decode = decoderOf(networkOf(problem))
  return { change, problem, finish: Math.min(...orders.map((order) => endOf(decode, order))), order: null }
}

/** Tasks in the order of the latest starts that links and hours alone leave them. */
function latestOrder({ network, schedule }: SampleSource): Int32Array {
  return orderBy(network.tasks.map(({ id }) => schedule.tasks.get(id)!.lateStart))
}

/** Earliest finish first; of the evenings of one person only the best. */
function bestOfEach(tried: readonly Tried[]): readonly Tried[] {
  const nameOf = ({ change: { kind, of, person } }: Tried) => [kind, of, person].join('\n')
  const sorted = [...tried].sort((a, b) => a.finish - b.finish)
  return sorted.filter((one, at) => sorted.findIndex((other) => nameOf(other) === nameOf(one)) === at)
}

function searchedToo(one: Tried, effort: number, first: Int32Array): Tried {
  const found = search(one.problem, effort, first)
  if (found === null || found.finish >= one.finish) return one
  const order = orderBy(found.placements.map(({ start }) => start))
  return { ...one, finish: found.finish, order }
}

/** The earliest finish known without any change: the plan's, that of each order, and that of the same search. */
function bestWithout(
  { schedule }: SampleSource,
  base: Problem,
  orders: readonly Int32Array[],
  effort: number,
): Instant {
  const decode = decoderOf(networkOf(base))
  const found = search(base, effort, orders[0]!)?.finish ?? schedule.finish
  return Math.min(schedule.finish, found, ...orders.map((order) => endOf(decode, order)))
}

/** The best of a few schedules, the first of them in the plan's own order; that one alone is known without. */
function search(problem: Problem, effort: number, first: Int32Array): Schedule | null {
  if (effort === 0) return null
  const outcome = scheduleProblem(problem, { effort, seed: 1, first, bounded: false })
  return outcome.kind === 'found' ? outcome.schedule : null
}

/** The place of each task where they go by time, lower numbers first at the same time. */
function orderBy(times: readonly Instant[]): Int32Array {
  return placesOf(times.map((_, task) => task).sort((a, b) => times[a]! - times[b]! || a - b))
}

function endOf(decode: Decoder, order: Int32Array): Instant {
  const outcome = decode(order)
  return outcome.kind === 'found' ? outcome.found.end : Number.POSITIVE_INFINITY
}
