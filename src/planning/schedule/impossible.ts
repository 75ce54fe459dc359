/** Proofs that no schedule exists, whatever the order: each holds without trying any. */
import type { Minutes } from '../../base/clock.ts'
import { strongComponents } from '../../graph/strong-components.ts'
import { demandsOf, leastLength, type Network } from './network.ts'
import type { Mode, Problem, ScheduleOutcome } from './problem.ts'

type Impossible = Extract<ScheduleOutcome, { kind: 'impossible' }>

/** From one event to another, at least `least` elapsed minutes (negative: at most that many before). */
interface Step {
  readonly from: number
  readonly to: number
  readonly least: Minutes
}

function lengthSteps(network: Network): Step[] {
  return network.clocks.flatMap((clocks, task) => {
    const steps = [{ from: 2 * task, to: 2 * task + 1, least: Math.min(...clocks.map(leastLength)) }]
    if (clocks.every((clock) => clock.spans === null && clock.mode.timetable === null)) {
      const most = Math.max(...clocks.map((clock) => clock.duration))
      steps.push({ from: 2 * task + 1, to: 2 * task, least: -most })
    }
    return steps
  })
}

/** Counted days later is at least so many days later; counted days earlier may be any time earlier, which proves nothing. */
function arcSteps(network: Network): Step[] {
  return network.arcs
    .filter((arc) => arc.link >= 0 && (arc.days === null || arc.lag >= 0))
    .map((arc) => ({
      from: 2 * arc.from + (arc.fromFinish ? 1 : 0),
      to: 2 * arc.to + (arc.toFinish ? 1 : 0),
      least: arc.days === null ? arc.lag : arc.lag * 1440,
    }))
}

/** Events of a ring whose steps add up to more than no time; `null` where every ring leaves room. */
function pushingRing(events: number, steps: readonly Step[]): number[] | null {
  const at = new Float64Array(events)
  const by: (Step | null)[] = Array.from({ length: events }, () => null)
  let moved: number | null = 0
  for (let round = 0; round <= events && moved !== null; round++) {
    moved = null
    for (const step of steps) {
      if (at[step.from]! + step.least <= at[step.to]!) continue
      at[step.to] = at[step.from]! + step.least
      by[step.to] = step
      moved = step.to
    }
  }
  if (moved === null) return null
  let event = moved
  for (let k = 0; k < events; k++) event = by[event]?.from ?? event
  const ring = [event]
  for (let back = by[event]!.from; back !== event; back = by[back]!.from) ring.push(back)
  return ring.reverse()
}

/** Waiting in a ring: links, lags, longest waits and shortest lengths alone push every task of the ring later and later. */
export function ringOf(network: Network): readonly number[] | null {
  const steps = [...lengthSteps(network), ...arcSteps(network)]
  const next: number[][] = Array.from({ length: 2 * network.size }, () => [])
  for (const step of steps) next[step.from]!.push(step.to)
  const sets = new Int32Array(2 * network.size)
  for (const [k, events] of strongComponents(next).entries()) for (const event of events) sets[event] = k
  const inner = steps.filter((step) => sets[step.from] === sets[step.to])
  const ring = pushingRing(2 * network.size, inner)
  return ring === null ? null : [...new Set(ring.map((event) => event >> 1))]
}

/** What of a resource one mode uses up. */
function usedUp(mode: Mode, resource: number): number {
  const spent = mode.needs.filter((need) => need.during === 'ever' && need.resource === resource)
  return spent.reduce((sum, { amount }) => sum + amount, 0)
}

/** Tasks that, each in its thriftiest mode, together use up more of a resource than there is. */
function overStock({ tasks, resources }: Problem): number[] {
  const needs = tasks.flatMap(({ modes }) => modes.flatMap((mode) => mode.needs))
  const stock = new Set(needs.filter(({ during }) => during === 'ever').map((need) => need.resource))
  return resources.flatMap(({ capacity }, resource) => {
    if (!stock.has(resource)) return []
    const least = tasks.map(({ modes }) => Math.min(...modes.map((mode) => usedUp(mode, resource))))
    const users = least.flatMap((amount, task) => (amount > 0 ? [task] : []))
    return least.reduce((sum, amount) => sum + amount, 0) > capacity ? users : []
  })
}

function overCapacity(problem: Problem, mode: Mode): boolean {
  return demandsOf(mode).some((demand) => demand.working > problem.resources[demand.resource]!.capacity)
}

/** Whether a mode that may not pause is longer than every window of its calendar. */
function fitsNoWindow(problem: Problem, mode: Mode): boolean {
  if (mode.pausable || mode.calendar === null || mode.timetable) return false
  const { spans } = problem.calendars[mode.calendar]!
  let widest = 0
  for (let k = 0; k < spans.length; k += 2) widest = Math.max(widest, spans[k + 1]! - spans[k]!)
  return mode.duration > widest
}

/** Tasks no mode of which can ever be done: each needs more than there is, or a longer window than there is. */
export function hopelessTasks(problem: Problem): Impossible | null {
  const over = new Set<number>(overStock(problem))
  const windowless: number[] = []
  for (const [index, task] of problem.tasks.entries()) {
    const left = task.modes.filter((mode) => !overCapacity(problem, mode))
    if (left.length === 0) over.add(index)
    else if (left.every((mode) => fitsNoWindow(problem, mode))) windowless.push(index)
  }
  for (const hold of problem.holds) {
    if (hold.amount <= problem.resources[hold.resource]!.capacity) continue
    over.add(hold.from).add(hold.to)
  }
  if (over.size > 0) return { kind: 'impossible', tasks: [...over].sort((a, b) => a - b), why: 'capacity' }
  return windowless.length > 0 ? { kind: 'impossible', tasks: windowless, why: 'no window' } : null
}

/**
 * A proof that the problem has no schedule, or `null` where none of the three kinds known here applies (which does not
 * mean that there is one). Cost: O(events x links) at worst, within rings only.
 */
export function whyImpossible(network: Network): Impossible | null {
  const ring = ringOf(network)
  return ring === null ? hopelessTasks(network.problem) : { kind: 'impossible', tasks: ring, why: 'ring' }
}
