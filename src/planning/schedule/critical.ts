/** The plain critical path: calendars, links and longest waits kept, capacities and holds dropped. */

import type { Instant, Minutes } from '../../base/clock.ts'
import { placesOf } from '../../base/places-of.ts'
import { minutesBetween } from '../../base/spans.ts'
import { strongComponents } from '../../graph/strong-components.ts'
import { topologicalOrder } from '../../graph/topological-order.ts'
import { type Arc, arcBound } from './lag.ts'
import { type Network, networkOf } from './network.ts'
import { earlyTimes, lateTimes, roughOrder, type Times } from './precedence.ts'
import type { Problem } from './problem.ts'
import { emptyRun, never, runAfter } from './work-time.ts'

/** One task of the plain critical path. */
export interface CriticalRow {
  readonly mode: number
  readonly earlyStart: Instant
  readonly earlyFinish: Instant
  readonly lateStart: Instant
  readonly lateFinish: Instant
  /** Open minutes of the task's own calendar between early and late start. */
  readonly float: Minutes
  /** On a chain of binding links to the finish; on a calendar it may have float and still be. */
  readonly critical: boolean
}

/** Early and late times and every chain that sets the finish. */
export interface CriticalPath {
  readonly finish: Instant
  readonly rows: readonly CriticalRow[]
  /** Chains as task numbers from first to last, at most as many as asked for. */
  readonly chains: readonly (readonly number[])[]
  /** How many there are in all. */
  readonly chainCount: bigint
}

/** Tasks whose early start each task sets: `before[b]` holds a where a link from a to b binds. */
interface Bonds {
  readonly before: readonly (readonly number[])[]
  readonly after: readonly (readonly number[])[]
  /** Tasks so that bonds point forward. */
  readonly order: readonly number[]
}

/** Whether the arc alone, with the calendar, already puts its second task where it is: nothing in it can be tightened. */
function binds(network: Network, times: Times, modes: Int32Array, arc: Arc): boolean {
  const bound = arcBound(arc, arc.fromFinish ? times.finish[arc.from]! : times.start[arc.from]!)
  const clock = network.clocks[arc.to]![modes[arc.to]!]!
  const run = emptyRun()
  const [start, finish] = arc.toFinish ? [network.problem.start, bound] : [bound, -never]
  return runAfter(clock, start, finish, run) && run.start === times.start[arc.to]
}

/**
 * The binding links as pairs of tasks, without rings: where tasks set each other at once (equal lag and longest wait),
 * only pairs from the earlier to the later task stay.
 */
function bondsOf(network: Network, times: Times, modes: Int32Array): Bonds {
  const { size } = network
  const arcs = network.arcs.filter(
    (arc) => arc.link >= 0 && arc.from !== arc.to && binds(network, times, modes, arc),
  )
  const next = Array.from({ length: size }, (): number[] => [])
  for (const arc of arcs) next[arc.from]!.push(arc.to)
  const set = new Int32Array(size)
  for (const [k, tasks] of strongComponents(next).entries()) for (const task of tasks) set[task] = k
  const place = placesOf(roughOrder(network))
  const { start, finish } = times
  const inTime = (a: number, b: number) =>
    start[a]! - start[b]! || finish[a]! - finish[b]! || place[a]! - place[b]!
  const before = Array.from({ length: size }, () => new Set<number>())
  const after = Array.from({ length: size }, () => new Set<number>())
  for (const { from, to } of arcs) {
    if (set[from] === set[to] && inTime(from, to) > 0) continue
    before[to]!.add(from)
    after[from]!.add(to)
  }
  const sorted = (sets: readonly Set<number>[]) => sets.map((tasks) => [...tasks].sort((a, b) => a - b))
  const forward = sorted(after)
  // What is left of a ring runs forward in time, so an order exists.
  const order = topologicalOrder(forward)!
  return { before: sorted(before), after: forward, order }
}

/** Tasks from which bonds lead to a task that finishes last. */
function criticalTasks(bonds: Bonds, finish: Int32Array, end: Instant): Uint8Array {
  const critical = new Uint8Array(finish.length)
  for (const task of [...bonds.order].reverse()) {
    const leads = bonds.after[task]!.some((next) => critical[next])
    critical[task] = leads || finish[task] === end ? 1 : 0
  }
  return critical
}

function countChains(bonds: Bonds, critical: Uint8Array, ends: readonly number[]): bigint {
  const ways = new Map<number, bigint>()
  for (const task of bonds.order) {
    if (!critical[task]) continue
    const sum = bonds.before[task]!.reduce((total, from) => total + ways.get(from)!, 0n)
    ways.set(task, bonds.before[task]!.length === 0 ? 1n : sum)
  }
  return ends.reduce((total, task) => total + ways.get(task)!, 0n)
}

function listChains(bonds: Bonds, ends: readonly number[], most: number): number[][] {
  const chains: number[][] = []
  const walk = (task: number, tail: readonly number[]): void => {
    if (chains.length >= most) return
    const chain = [task, ...tail]
    if (bonds.before[task]!.length === 0) chains.push(chain)
    for (const from of bonds.before[task]!) walk(from, chain)
  }
  for (const task of ends) walk(task, [])
  return chains
}

function fastestModes(network: Network): Int32Array | null {
  const any = earlyTimes(network, null)
  return 'lost' in any ? null : any.modes
}

/** How to go about the plain critical path. */
export interface CriticalOptions {
  /** List at most so many chains; 20 where not said. */
  readonly mostChains?: number
  /** The mode of each task, for instance those of a schedule; else each task's fastest. */
  readonly modes?: readonly number[]
}

/**
 * The plain critical path, or `null` where links and calendars leave no time up to the horizon in these modes.
 * The fastest mode of a task is the one that finishes first from its early start (ties: the first such).
 * A chain begins at a task that no link sets, and ends at one that finishes last and sets no other critical task.
 * Cost: O(arcs x log spans) for the times; listing costs as much as it lists.
 */
export function criticalPath(problem: Problem, options: CriticalOptions = {}): CriticalPath | null {
  const network = networkOf({ ...problem, holds: [] })
  const modes = options.modes ? Int32Array.from(options.modes) : fastestModes(network)
  const early = modes === null ? null : earlyTimes(network, modes)
  if (modes === null || early === null || 'lost' in early) return null
  const { start, finish } = early.times
  const end = finish.reduce((last, at) => Math.max(last, at), problem.start)
  // Lags in counted days can lead the late pass astray; the early times themselves always keep every rule.
  const late = lateTimes(network, modes, end) ?? early.times
  const bonds = bondsOf(network, early.times, modes)
  const critical = criticalTasks(bonds, finish, end)
  const rows = network.clocks.map((clocks, task) => {
    const { spans, mode } = clocks[modes[task]!]!
    const [from, to] = [start[task]!, Math.max(start[task]!, late.start[task]!)]
    return {
      mode: modes[task]!,
      earlyStart: from,
      earlyFinish: finish[task]!,
      lateStart: to,
      lateFinish: Math.max(finish[task]!, late.finish[task]!),
      float: spans === null || mode.timetable ? to - from : minutesBetween(spans, from, to),
      critical: critical[task] === 1,
    }
  })
  const ends = rows.flatMap((row, task) => {
    const last = row.earlyFinish === end && !bonds.after[task]!.some((next) => critical[next])
    return last ? [task] : []
  })
  return {
    finish: end,
    rows,
    chains: listChains(bonds, ends, options.mostChains ?? 20),
    chainCount: countChains(bonds, critical, ends),
  }
}
