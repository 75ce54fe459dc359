/** The tasks that set the finish of one sample, found fast. */
import { dayOf, type Instant, minutesPerDay } from '../../base/clock.ts'
import { finishFrom, type Problem } from '../schedule/index.ts'
import type { Laid } from './policy.ts'

/** Gives the tasks on the chain that sets the finish of a sample, last first. */
export type ChainFinder = (laid: Laid) => readonly number[]

/** Who takes a resource: a task for itself, or a hold that ends with `until`. */
interface User {
  readonly until: number
  readonly held: boolean
}

interface Ways {
  readonly problem: Problem
  readonly into: readonly (readonly Problem['links'][number][])[]
  readonly users: readonly (readonly User[])[]
  /** Resources of the holds that begin with each task. */
  readonly holds: readonly (readonly number[])[]
}

/**
 * Finds the chain that sets a finish, by the rule of the plan's driving chain: from the last task back, each to the link
 * from whose end its start follows on its own hours, else to whoever gave up one of its people or machines last.
 * Holds and longest waits are followed only as far as that. Cost: O(chain x (links of a task + users of its resources)).
 */
export function chainFinder(problem: Problem): ChainFinder {
  const ways = waysOf(problem)
  return (laid) => {
    const chain: number[] = []
    const seen = new Set<number>()
    let task = laid.found.finish.indexOf(laid.found.end)
    while (task >= 0) {
      seen.add(task)
      chain.push(task)
      const link = heldByLink(ways, laid, task, seen)
      task = link >= 0 ? link : heldByUser(ways, laid, task, seen)
    }
    return chain
  }
}

function waysOf(problem: Problem): Ways {
  const into: Problem['links'][number][][] = problem.tasks.map(() => [])
  for (const link of problem.links) into[link.to]!.push(link)
  const users: User[][] = problem.resources.map(() => [])
  for (const [task, { modes }] of problem.tasks.entries()) {
    const resources = new Set(modes.flatMap(({ needs }) => needs.map(({ resource }) => resource)))
    for (const resource of resources) users[resource]!.push({ until: task, held: false })
  }
  const holds: number[][] = problem.tasks.map(() => [])
  for (const { resource, from, to } of problem.holds) {
    users[resource]!.push({ until: to, held: true })
    holds[from]!.push(resource)
  }
  return { problem, into, users, holds }
}

/** Whether the start of a task follows, on its own hours, from an instant. */
function follows({ problem }: Ways, { found, network }: Laid, task: number, from: Instant): boolean {
  const start = found.start[task]!
  if (from === start) return true
  const { mode } = network.clocks[task]![found.mode[task]!]!
  return from < start && finishFrom(mode, problem.calendars, from)?.start === start
}

/** The first link into a task from whose end its start follows; -1 where none does. */
function heldByLink(ways: Ways, laid: Laid, task: number, seen: ReadonlySet<number>): number {
  const links = ways.into[task]!.filter(({ from }) => !seen.has(from))
  const ends = links.map(({ from, lag }) => endOf(ways, lag, laid.found.finish[from]!))
  // A later end never leads to an earlier start: where the latest does not lead to this one, none does.
  if (links.length === 0 || !follows(ways, laid, task, Math.max(...ends))) return -1
  return links[ends.findIndex((end) => follows(ways, laid, task, end))]!.from
}

/** When the wait of a link is over. */
function endOf({ problem }: Ways, lag: Problem['links'][number]['lag'], finish: Instant): Instant {
  if (typeof lag === 'number') return finish + lag
  return daysAfter(problem.dayCalendars[lag.calendar]!.days, finish, lag.days)
}

/** The same time of day so many counting days later. */
function daysAfter(days: Int32Array, at: Instant, count: number): Instant {
  if (count === 0) return at
  const next = days.findIndex((day) => day > dayOf(at))
  const day = days[next + count - 1]
  return day === undefined ? at : day * minutesPerDay + (at - dayOf(at) * minutesPerDay)
}

/** Who gave up a person, machine, fixture or tool of a task last, at or before its start; -1 where nobody did. */
function heldByUser(ways: Ways, laid: Laid, task: number, seen: ReadonlySet<number>): number {
  const { found, network } = laid
  const takes = (other: number) => network.demands[other]![found.mode[other]!]!
  let [best, last] = [-1, Number.NEGATIVE_INFINITY]
  for (const resource of [...takes(task).map((demand) => demand.resource), ...ways.holds[task]!]) {
    for (const { until, held } of ways.users[resource]!) {
      const end = found.finish[until]!
      if (end <= last || end > found.start[task]! || until === task || seen.has(until)) continue
      if (!held && !takes(until).some((demand) => demand.resource === resource)) continue
      best = until
      last = end
    }
  }
  return best >= 0 && follows(ways, laid, task, last) ? best : -1
}
