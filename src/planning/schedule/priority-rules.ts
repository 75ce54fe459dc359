/** Rules of thumb for who goes first: each gives one rank per task, lowest first. */

import { placesOf } from '../../base/places-of.ts'
import { demandsOf, type Network } from './network.ts'
import { earlyTimes, lateTimes, roughOrder } from './precedence.ts'

/** Sorts tasks by keys (lower first), then higher preference, then the order of the links, and numbers them. */
export function ranked(
  network: Network,
  keys: ArrayLike<number>,
  rough: readonly number[] = roughOrder(network),
): Int32Array {
  const { tasks } = network.problem
  const place = placesOf(rough)
  const order = Array.from(place, (_, task) => task).sort(
    (a, b) => keys[a]! - keys[b]! || tasks[b]!.preference - tasks[a]!.preference || place[a]! - place[b]!,
  )
  return placesOf(order)
}

/** How many tasks wait for each task, directly or through others. Cost: O(tasks x links / 32) memory-bound bit sets. */
function totalSuccessors(network: Network, rough: readonly number[]): Float64Array {
  const words = Math.ceil(network.size / 32)
  const sets = new Uint32Array(words * network.size)
  const counts = new Float64Array(network.size)
  for (const task of [...rough].reverse()) {
    const base = task * words
    for (const arc of network.outOf[task]!) {
      if (arc.turned) continue
      for (let w = 0; w < words; w++) sets[base + w]! |= sets[arc.to * words + w]!
      sets[base + (arc.to >> 5)]! |= 1 << (arc.to & 31)
    }
    for (let w = 0; w < words; w++) counts[task]! += ones(sets[base + w]!)
  }
  return counts
}

function ones(word: number): number {
  let bits = word - ((word >>> 1) & 0x55555555)
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333)
  return (((bits + (bits >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24
}

/** Share of all capacity-minutes that a task and those waiting directly for it take. */
function workContent(network: Network, modes: Int32Array): Float64Array {
  const { tasks, resources } = network.problem
  const own = tasks.map((task, k) => {
    const mode = task.modes[modes[k]!]!
    const shares = demandsOf(mode).map(
      (need) => need.working / Math.max(1, resources[need.resource]!.capacity),
    )
    return mode.duration * (1 + shares.reduce((sum, share) => sum + share, 0))
  })
  return Float64Array.from(own, (work, task) => {
    const next = new Set(network.outOf[task]!.filter((arc) => !arc.turned).map((arc) => arc.to))
    return [...next].reduce((sum, to) => sum + own[to]!, work)
  })
}

/**
 * Ranks by latest start, latest finish, least float, most tasks waiting in all, greatest work content with those
 * waiting directly, and earliest start, in this order, each worked out when asked for. Textbook rules. Late times are
 * those of the capacity-free plan.
 */
export function priorityRanks(network: Network): (() => Int32Array)[] {
  const rough = roughOrder(network)
  const early = earlyTimes(network, null)
  const negated = (keys: Float64Array) => keys.map((key) => -key)
  const waiting = () => negated(totalSuccessors(network, rough))
  if ('lost' in early) return [() => ranked(network, waiting(), rough)]
  const { times, modes } = early
  const end = times.finish.reduce((last, at) => Math.max(last, at), network.problem.start)
  const late = lateTimes(network, modes, end) ?? times
  const float = () => late.start.map((at, task) => at - times.start[task]!)
  const content = () => negated(workContent(network, modes))
  const keys = [() => late.start, () => late.finish, float, waiting, content, () => times.start]
  return keys.map((key) => () => ranked(network, key(), rough))
}
