/** Problems without calendars, timetables, holds and longest waits, as flat arrays: what the fast passes work on. */

import type { Instant, Minutes } from '../../base/clock.ts'
import { placesOf } from '../../base/places-of.ts'
import type { Network } from './network.ts'
import { roughOrder } from './precedence.ts'
import type { Mode, Problem } from './problem.ts'

/** Longest plan, in units, for which use is kept unit by unit; past it the general decoder is the better one. */
const mostUnits = 40_000

/** Waits of tasks for others: those before task `k` are `task[first[k]]` up to `task[first[k + 1]]`, with their lags. */
export interface Waits {
  readonly first: Int32Array
  readonly task: Int32Array
  /** Units from the finish of the one to the start of the other; the same read backwards. */
  readonly lag: Int32Array
}

/**
 * A problem in plain numbers. Time runs in units from 0; ways (task and mode together) are numbered through:
 * those of task `k` are `firstWay[k]` up to `firstWay[k + 1]`.
 */
export interface PlainProblem {
  readonly size: number
  readonly unit: Minutes
  readonly start: Instant
  readonly firstWay: Int32Array
  readonly duration: Int32Array
  /** Amounts of way `w` are `need[w * resources]` and on; `spent` likewise of what is used up. */
  readonly need: Int32Array
  readonly capacity: Int32Array
  readonly spent: Int32Array
  readonly release: Int32Array
  readonly before: Waits
  readonly after: Waits
  /** Tasks so that those waited for come first. */
  readonly order: Int32Array
  /** No pass in either direction reaches beyond. */
  readonly horizon: number
  /** Whether no release keeps a task back, so that a plan read backwards is a plan too. */
  readonly symmetric: boolean
}

function greatestDivisor(a: number, b: number): number {
  let [large, small] = [Math.abs(a), Math.abs(b)]
  while (small > 0) [large, small] = [small, large % small]
  return large
}

interface Wait {
  readonly from: number
  readonly to: number
  readonly lag: number
}

function waitsBy(size: number, waits: readonly Wait[], forward: boolean): Waits {
  const first = new Int32Array(size + 1)
  const key = (wait: Wait) => (forward ? wait.to : wait.from)
  const sorted = [...waits].sort((a, b) => key(a) - key(b))
  for (const wait of sorted) first[key(wait) + 1]!++
  for (let k = 0; k < size; k++) first[k + 1]! += first[k]!
  const other = (wait: Wait) => (forward ? wait.from : wait.to)
  return { first, task: Int32Array.from(sorted, other), lag: Int32Array.from(sorted, ({ lag }) => lag) }
}

const isPlainMode = (mode: Mode): boolean => mode.calendar === null && mode.timetable === null

/** Whether schedules are judged by anything but their finish. */
function asksMore({ tasks, links, resources }: Problem): boolean {
  const wishes = tasks.some(
    ({ due, uncertain, modes }) => due !== undefined || uncertain || modes.some(({ cost }) => cost),
  )
  return wishes || links.some(({ halfDone }) => halfDone) || resources.some(({ sessions }) => sessions)
}

/** Lags from finish to start; `null` where a link is not plain. Other link types need tasks of one mode. */
function plainWaits({ tasks, links }: Problem): Wait[] | null {
  const waits: Wait[] = []
  for (const { from, to, type, lag, longest } of links) {
    if (longest !== null || typeof lag !== 'number') return null
    const [first, second] = [tasks[from]!.modes, tasks[to]!.modes]
    if (type !== 'FS' && (first.length > 1 || second.length > 1)) return null
    const early = type[0] === 'S' ? first[0]!.duration : 0
    const late = type[1] === 'F' ? second[0]!.duration : 0
    waits.push({ from, to, lag: lag - early - late })
  }
  return waits
}

/** What each way takes of each resource: used up, or else for a time. */
export function amountsOf(problem: Problem, ways: readonly Mode[], usedUp: boolean): Int32Array {
  const count = problem.resources.length
  const amounts = new Int32Array(ways.length * count)
  for (const [way, { needs }] of ways.entries()) {
    for (const { resource, amount, during } of needs) {
      if ((during === 'ever') === usedUp) amounts[way * count + resource]! += amount
    }
  }
  return amounts
}

function unitOf(problem: Problem, ways: readonly Mode[], waits: readonly Wait[]): Minutes {
  const releases = problem.tasks.map(({ release }) => Math.max(0, release - problem.start))
  const all = [...releases, ...ways.map(({ duration }) => duration), ...waits.map(({ lag }) => lag)]
  return Math.max(1, all.reduce(greatestDivisor, 0))
}

/**
 * The problem in plain numbers, or `null` where it has a calendar, a timetable, a hold, a longest wait, a lag in days,
 * a ring of links, is judged by more than its finish, or is too long for its unit.
 */
export function plainProblem(network: Network): PlainProblem | null {
  const { problem, size } = network
  const ways = problem.tasks.flatMap(({ modes }) => modes)
  const waits = plainWaits(problem)
  if (waits === null || problem.holds.length > 0 || !ways.every(isPlainMode) || asksMore(problem)) return null
  const order = Int32Array.from(roughOrder(network))
  const place = placesOf(order)
  if (waits.some(({ from, to }) => place[from]! >= place[to]!)) return null
  const unit = unitOf(problem, ways, waits)
  const scaled = waits.map((wait) => ({ ...wait, lag: wait.lag / unit }))
  const release = problem.tasks.map((task) => Math.max(0, task.release - problem.start) / unit)
  const longest = problem.tasks.map(({ modes }) => Math.max(...modes.map(({ duration }) => duration)) / unit)
  const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0)
  const horizon = sum(longest) + sum(scaled.map(({ lag }) => Math.max(0, lag))) + Math.max(0, ...release)
  if (horizon > mostUnits) return null
  const firstWay = new Int32Array(size + 1)
  for (const [k, { modes }] of problem.tasks.entries()) firstWay[k + 1] = firstWay[k]! + modes.length
  return {
    size,
    unit,
    start: problem.start,
    firstWay,
    duration: Int32Array.from(ways, (mode) => mode.duration / unit),
    need: amountsOf(problem, ways, false),
    spent: amountsOf(problem, ways, true),
    capacity: Int32Array.from(problem.resources, (resource) => resource.capacity),
    release: Int32Array.from(release),
    before: waitsBy(size, scaled, true),
    after: waitsBy(size, scaled, false),
    order,
    horizon,
    symmetric: release.every((at) => at === 0),
  }
}
