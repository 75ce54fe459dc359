/** The tasks that set the finish of one sample, found fast. */
import { dayOf, type Instant, minutesPerDay } from '../../base/clock.ts'
import type { Problem } from '../schedule/index.ts'
import { emptyRun, type Run, runFrom } from '../schedule/work-time.ts'
import type { Laid } from './policy.ts'

/** Gives the tasks on the chain that sets the finish of a sample, last first. */
export type ChainFinder = (laid: Laid) => readonly number[]

/** Who takes a resource: a task for itself, or a hold that ends with `until`. */
interface User {
  /** Place among the users of the resource. */
  readonly place: number
  readonly until: number
  readonly held: boolean
}

interface Ways {
  readonly problem: Problem
  readonly into: readonly (readonly Problem['links'][number][])[]
  /** By resource; sorted anew for each sample, which changes little. */
  readonly users: readonly User[][]
  /** Resources of the holds that begin with each task. */
  readonly holds: readonly (readonly number[])[]
  /** Tasks that must follow each task closely. */
  readonly followers: readonly (readonly number[])[]
  readonly run: Run
}

/**
 * Finds the chain that sets a finish, by the rule of the plan's driving chain: from the last task back, each to the link
 * that ends last where its start follows from that on its own hours, else to whoever gave up one of its people or
 * machines last. Where its start follows from neither, another has to follow it closely, and whatever ended last for
 * either is taken. Cost: O(users of resources + chain x (links of a
 * task + log of the users of its resources)).
 */
export function chainFinder(problem: Problem): ChainFinder {
  const ways = waysOf(problem)
  return (laid) => {
    const chain: number[] = []
    const seen = new Set<number>()
    sortUsers(ways, laid.found)
    let task = laid.found.finish.indexOf(laid.found.end)
    while (task >= 0) {
      seen.add(task)
      chain.push(task)
      task = causeOf(ways, laid, task, seen)
    }
    return chain
  }
}

/** Something that ended, and the task it was of; -1 where there is none. */
interface Ended {
  readonly task: number
  readonly at: Instant
}

const nothing: Ended = { task: -1, at: Number.NEGATIVE_INFINITY }
const later = (a: Ended, b: Ended): Ended => (b.at > a.at ? b : a)

/** Whom a task waited for; -1 where for nobody. */
function causeOf(ways: Ways, laid: Laid, task: number, seen: ReadonlySet<number>): number {
  const link = lastLink(ways, laid, task, seen)
  if (link.task >= 0 && follows(ways, laid, task, link.at)) return link.task
  const user = lastUser(ways, laid, task, seen)
  if (user.task >= 0 && user.at > link.at && follows(ways, laid, task, user.at)) return user.task
  const followers = ways.followers[task]!.map((next) =>
    later(lastLink(ways, laid, next, seen), lastUser(ways, laid, next, seen)),
  )
  return [user, ...followers].reduce(later, link).task
}

function waysOf(problem: Problem): Ways {
  const into: Problem['links'][number][][] = problem.tasks.map(() => [])
  const followers: number[][] = problem.tasks.map(() => [])
  for (const link of problem.links) {
    into[link.to]!.push(link)
    if (link.longest !== null) followers[link.from]!.push(link.to)
  }
  const users: User[][] = problem.resources.map(() => [])
  for (const [task, { modes }] of problem.tasks.entries()) {
    const resources = new Set(modes.flatMap(({ needs }) => needs.map(({ resource }) => resource)))
    for (const resource of resources)
      users[resource]!.push({ place: users[resource]!.length, until: task, held: false })
  }
  const holds: number[][] = problem.tasks.map(() => [])
  for (const { resource, from, to } of problem.holds) {
    users[resource]!.push({ place: users[resource]!.length, until: to, held: true })
    holds[from]!.push(resource)
  }
  return { problem, into, users, holds, followers, run: emptyRun() }
}

/** Whether the start of a task follows, on its own hours, from an instant. */
function follows({ run }: Ways, { found, network }: Laid, task: number, from: Instant): boolean {
  const start = found.start[task]!
  if (from === start) return true
  const clock = network.clocks[task]![found.mode[task]!]!
  return from < start && runFrom(clock, from, run) && run.start === start
}

/** The link into a task that ends last. */
function lastLink(ways: Ways, laid: Laid, task: number, seen: ReadonlySet<number>): Ended {
  let last = nothing
  for (const { from, lag } of ways.into[task]!) {
    if (seen.has(from)) continue
    const at = endOf(ways, lag, laid.found.finish[from]!)
    if (at > last.at) last = { task: from, at }
  }
  return last
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

/** Who gave up a person, machine, fixture or tool of a task last, at or before its start. */
function lastUser(ways: Ways, { found, network }: Laid, task: number, seen: ReadonlySet<number>): Ended {
  const takes = (other: number) => network.demands[other]![found.mode[other]!]!
  const start = found.start[task]!
  let [best, last] = [-1, Number.NEGATIVE_INFINITY]
  const look = (resource: number): void => {
    const users = ways.users[resource]!
    for (let k = countUpTo(users, found.finish, start) - 1; k >= 0; k--) {
      const { until, held } = users[k]!
      const end = found.finish[until]!
      if (end <= last) return
      if (until === task || seen.has(until)) continue
      if (!held && !takes(until).some((demand) => demand.resource === resource)) continue
      best = until
      last = end
      return
    }
  }
  for (const { resource } of takes(task)) look(resource)
  for (const resource of ways.holds[task]!) look(resource)
  return { task: best, at: last }
}

/** How many users, sorted by finish, finish by an instant. */
function countUpTo(users: readonly User[], finish: Int32Array, by: Instant): number {
  let [low, high] = [0, users.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (finish[users[middle]!.until]! > by) high = middle
    else low = middle + 1
  }
  return low
}

/** Sorts users by finish, of those that finish together the first named last. */
function sortUsers({ users }: Ways, { finish }: Laid['found']): void {
  for (const some of users) some.sort((a, b) => finish[a.until]! - finish[b.until]! || b.place - a.place)
}
