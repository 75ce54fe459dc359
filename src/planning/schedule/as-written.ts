/** The same plan with its tasks nearer to the order in which they are listed: device 1 before device 2, a test before the lid. */

import { dayOf } from '../../base/clock.ts'
import { placesOf } from '../../base/places-of.ts'
import type { Judge } from './besides.ts'
import { lessTied } from './breed.ts'
import type { Decoded, Decoder, Taken } from './decode.ts'
import type { Network } from './network.ts'

/** Tasks in the order in which a plan begins them, of those that begin together the first listed. */
function orderOf({ start }: Decoded, listed: readonly number[]): number[] {
  return listed.map((_, task) => task).sort((a, b) => start[a]! - start[b]! || listed[a]! - listed[b]!)
}

/** Each day's tasks as they are listed. */
function listedByDay({ start }: Decoded, listed: readonly number[]): number[] {
  return listed
    .map((_, task) => task)
    .sort((a, b) => dayOf(start[a]!) - dayOf(start[b]!) || listed[a]! - listed[b]!)
}

/** The order with a task moved before the first of its day that is listed after it; `null` where none is. */
function movedUp(
  order: readonly number[],
  start: Int32Array,
  listed: readonly number[],
  task: number,
): number[] | null {
  const place = order.indexOf(task)
  const day = dayOf(start[task]!)
  const to = order.findIndex((other) => listed[other]! > listed[task]! && dayOf(start[other]!) === day)
  if (to < 0 || to > place) return null
  return [...order.slice(0, to), task, ...order.slice(to, place), ...order.slice(place + 1)]
}

/** Whether every task begins on the same day in both. */
const sameDays = (one: Decoded, other: Decoded): boolean =>
  one.start.every((at, task) => dayOf(at) === dayOf(other.start[task]!))

/**
 * A plan no later, no dearer, with no more sessions and no later orders, every task on its day, with its tasks rather as
 * listed; minutes that half-done work waits within a day do not count against that.
 * Method: first each day is laid out again as listed; then tasks go up one by one within their day.
 * Each try is one schedule, at most `tries`; `closed` are stretches that stay free.
 */
export function asWritten(
  network: Network,
  { decode, judge }: { readonly decode: Decoder; readonly judge: Judge },
  found: { readonly plan: Decoded; readonly closed: readonly Taken[] },
  tries: number,
): { readonly plan: Decoded; readonly tried: number } {
  const listed = network.problem.tasks.map((task, at) => task.listed ?? at)
  const astray = ({ start }: Decoded): number =>
    listed.reduce((sum, place, task) => sum + (listed.length - place) * start[task]!, 0)
  const worth = (plan: Decoded): number[] => {
    const { late, ties } = judge(plan)
    const [cost = 0, sessions = 0, _waits, early = 0] = Array.from(ties)
    return [late, cost, sessions, early, astray(plan)]
  }
  let current = found.plan
  let tried = 0
  const offer = (order: readonly number[]): void => {
    tried++
    const outcome = decode(placesOf(order), found.closed)
    if (outcome.kind === 'stuck' || outcome.found.end > current.end) return
    if (!sameDays(outcome.found, current)) return
    if (lessTied(worth(outcome.found), worth(current))) current = outcome.found
  }
  if (tries > 0) offer(listedByDay(current, listed))
  for (const task of orderOf({ ...current, start: Int32Array.from(listed) }, listed)) {
    if (tried >= tries) break
    const moved = movedUp(orderOf(current, listed), current.start, listed, task)
    if (moved) offer(moved)
  }
  return { plan: current, tried }
}
