/** The problem laid out for counting: clocks of every mode, arcs by their ends, holds by theirs. */

import { type Arc, arcsOf } from './lag.ts'
import type { Hold, Link, Mode, Problem } from './problem.ts'
import { type Clock, clockOf } from './work-time.ts'

/** Everything the passes ask again and again, worked out once. */
export interface Network {
  readonly problem: Problem
  readonly size: number
  /** Clocks of the modes of each task. */
  readonly clocks: readonly (readonly Clock[])[]
  readonly demands: readonly (readonly (readonly Demand[])[])[]
  readonly arcs: readonly Arc[]
  readonly into: readonly (readonly Arc[])[]
  readonly outOf: readonly (readonly Arc[])[]
  /** Holds that begin with each task, and those that end with it (indices). */
  readonly opens: readonly (readonly number[])[]
  readonly closes: readonly (readonly number[])[]
}

function grouped<T>(size: number, items: readonly T[], key: (item: T) => number): T[][] {
  const groups: T[][] = Array.from({ length: size }, () => [])
  for (const item of items) groups[key(item)]!.push(item)
  return groups
}

/** A hold says that its last task does not finish before its first starts. */
function holdArc({ from, to }: Hold): Arc {
  return { from, to, fromFinish: false, toFinish: true, lag: 0, days: null, link: -1, turned: false }
}

/** The problem laid out for counting; `more` links are added behind its own. */
export function networkOf(problem: Problem, more: readonly Link[] = []): Network {
  const { tasks, calendars, dayCalendars, holds } = problem
  const links = [...problem.links, ...more]
  const arcs = links.flatMap((link, k) => arcsOf(link, k, dayCalendars))
  for (const hold of holds) if (hold.from !== hold.to) arcs.push(holdArc(hold))
  const numbers = holds.map((_, k) => k)
  return {
    problem,
    size: tasks.length,
    clocks: tasks.map((task) => task.modes.map((mode) => clockOf(mode, calendars))),
    demands: tasks.map((task) => task.modes.map(demandsOf)),
    arcs,
    into: grouped(tasks.length, arcs, (arc) => arc.to),
    outOf: grouped(tasks.length, arcs, (arc) => arc.from),
    opens: grouped(tasks.length, numbers, (k) => holds[k]!.from),
    closes: grouped(tasks.length, numbers, (k) => holds[k]!.to),
  }
}

/** The least time from start to finish of a mode; timetables may take no time at all. */
export function leastLength(clock: Clock): number {
  return clock.mode.timetable ? 0 : clock.duration
}

/**
 * Whether the arc's first task surely does not start after its second: only then does it decide who is placed first.
 * A negative lag that outweighs the durations leaves the order open.
 */
export function ordersTasks(network: Network, arc: Arc): boolean {
  if (arc.turned) return false
  if (arc.link < 0) return true
  if (arc.days !== null) return arc.lag >= 0
  const shortest = Math.min(...network.clocks[arc.from]!.map(leastLength))
  const longest = Math.max(...network.clocks[arc.to]!.map(leastLength))
  return arc.lag + (arc.fromFinish ? shortest : 0) - (arc.toFinish ? longest : 0) >= 0
}

/** What a mode takes of one resource: from start to finish, and while the work goes on (that included). */
export interface Demand {
  readonly resource: number
  readonly span: number
  readonly working: number
}

/** The demands of a mode, one per resource that it takes any of for a time; what is used up is none of them. */
export function demandsOf(mode: Mode): Demand[] {
  const byResource = new Map<number, Demand>()
  for (const { resource, amount, during } of mode.needs) {
    if (during === 'ever') continue
    const { span, working } = byResource.get(resource) ?? { span: 0, working: 0 }
    const more = during === 'span' ? amount : 0
    byResource.set(resource, { resource, span: span + more, working: working + amount })
  }
  return [...byResource.values()].filter((demand) => demand.working > 0)
}
