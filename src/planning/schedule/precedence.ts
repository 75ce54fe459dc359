/** Early and late times by links and calendars alone, capacities dropped. */
import { dayOf, type Instant, minutesPerDay } from '../../base/clock.ts'
import { arcBound, arcLatest, arcLeast } from './lag.ts'
import type { Network } from './network.ts'
import { emptyRun, never, type Run, runAfter, runBefore } from './work-time.ts'

/** A start and a finish per task; `-never` (in late passes `never`) while not known. */
export interface Times {
  readonly start: Int32Array
  readonly finish: Int32Array
}

/** What the links and the release ask of one task. */
export interface Bounds {
  start: Instant
  finish: Instant
}

/** The earliest that release, project start and the links from tasks with known times allow. */
export function boundsOf(network: Network, times: Times, task: number, boundOf = arcBound): Bounds {
  const { start: begin, tasks } = network.problem
  let start = Math.max(begin, tasks[task]!.release)
  let finish = -never
  for (const arc of network.into[task]!) {
    if (times.start[arc.from]! === -never) continue
    const bound = boundOf(arc, arc.fromFinish ? times.finish[arc.from]! : times.start[arc.from]!)
    if (arc.toFinish) finish = Math.max(finish, bound)
    else start = Math.max(start, bound)
  }
  return { start, finish }
}

/** How often the settling below may come back, per task, before a ring that keeps pushing is taken for endless. */
const patience = 400

/**
 * A queue of tasks waiting to be looked at again, each at most once at a time; `next` says whom a moved one bothers.
 * Gives: false where a task was let down (`settle` said so) or the queue never came to rest.
 */
function settleAll(
  network: Network,
  order: readonly number[],
  settle: (task: number) => 'same' | 'moved' | 'lost',
  next: { readonly arcs: Network['into']; readonly end: 'from' | 'to' },
): number {
  const queue = [...order]
  const waiting = new Uint8Array(network.size).fill(1)
  let visits = patience * (network.size + 4)
  for (let head = 0; head < queue.length; head++) {
    const task = queue[head]!
    waiting[task] = 0
    const outcome = settle(task)
    if (outcome === 'lost' || visits-- <= 0) return task
    if (outcome === 'same') continue
    for (const arc of next.arcs[task]!) {
      const other = arc[next.end]
      if (waiting[other]) continue
      waiting[other] = 1
      queue.push(other)
    }
  }
  return -1
}

/** Tasks so that those that must start first come first, as far as the links are no ring (lowest number first among equals). */
export function roughOrder(network: Network): number[] {
  const state = new Uint8Array(network.size)
  const order: number[] = []
  for (let root = 0; root < network.size; root++) {
    const stack = state[root] ? [] : [root]
    while (stack.length > 0) {
      const task = stack.at(-1)!
      if (state[task] === 0) {
        state[task] = 1
        for (const arc of network.into[task]!) if (!arc.turned && state[arc.from] === 0) stack.push(arc.from)
      } else {
        stack.pop()
        if (state[task] === 1) order.push(task)
        state[task] = 2
      }
    }
  }
  return order
}

/** Early times, or the task at which no time was left. */
export type EarlyOutcome = { readonly times: Times; readonly modes: Int32Array } | { readonly lost: number }

/**
 * The earliest times that links, releases, longest waits and calendars allow together.
 * Method: a longest wait read backwards is a lower bound too, so all rules only push later; pushing until nothing moves
 * gives the one least answer. `modes` fixes each task's mode; `null` takes, for start and finish each, the best of any.
 * Cost: O(arcs x log spans) per round, few rounds unless rings of waits straddle closed hours.
 */
export function earlyTimes(network: Network, modes: Int32Array | null, boundOf = arcBound): EarlyOutcome {
  const { size, problem } = network
  const times = { start: new Int32Array(size).fill(-never), finish: new Int32Array(size).fill(-never) }
  const picked = new Int32Array(size)
  const run = emptyRun()
  const settle = (task: number) => {
    const bounds = boundsOf(network, times, task, boundOf)
    const best = earliestOf(network, task, modes === null ? -1 : modes[task]!, bounds, run)
    if (best.finish > problem.horizon) return 'lost'
    picked[task] = best.mode
    const same = best.start === times.start[task] && best.finish === times.finish[task]
    times.start[task] = best.start
    times.finish[task] = best.finish
    return same ? 'same' : 'moved'
  }
  const lost = settleAll(network, roughOrder(network), settle, { arcs: network.outOf, end: 'to' })
  return lost < 0 ? { times, modes: picked } : { lost }
}

/**
 * An instant before which no schedule finishes: the finish with capacities dropped and every task in its best mode;
 * or the task at which, even so, time ran out.
 */
export function capacityFreeBound(network: Network): { readonly bound: Instant } | { readonly lost: number } {
  const early = earlyTimes(network, null, arcLeast)
  if ('lost' in early) return early
  return { bound: early.times.finish.reduce((last, at) => Math.max(last, at), network.problem.start) }
}

/** Earliest start and earliest finish of a task among its modes (-1: any), and the mode of that finish (first among equals). */
export function earliestOf(network: Network, task: number, only: number, bounds: Bounds, run: Run) {
  const best = { start: never, finish: never, mode: Math.max(only, 0) }
  const clocks = network.clocks[task]!
  for (let mode = 0; mode < clocks.length; mode++) {
    if (only >= 0 && mode !== only) continue
    if (!runAfter(clocks[mode]!, bounds.start, bounds.finish, run)) continue
    best.start = Math.min(best.start, run.start)
    if (run.finish < best.finish) best.mode = mode
    best.finish = Math.min(best.finish, run.finish)
  }
  return best
}

/** The latest that the links to tasks with known times allow. */
export function latestBoundsOf(network: Network, times: Times, task: number): Bounds {
  let start = never
  let finish = never
  for (const arc of network.outOf[task]!) {
    if (times.start[arc.to]! === never) continue
    const bound = arcLatest(arc, arc.toFinish ? times.finish[arc.to]! : times.start[arc.to]!)
    if (arc.fromFinish) finish = Math.min(finish, bound)
    else start = Math.min(start, bound)
  }
  return { start, finish }
}

/** A late pass in work. */
interface LatePass {
  readonly network: Network
  readonly times: Times
  readonly modes: Int32Array
  readonly run: Run
}

/**
 * The latest run within the bounds for which every link out of the task still holds.
 * A lag in counted days is not steady (Saturday morning may lead to an earlier Monday than Friday night), so where an
 * arc fails the task's event goes back to the same clock time, on its own day, as the event it must not pass.
 */
function latestRunWithin(pass: LatePass, task: number, bounds: Bounds): boolean {
  const { network, times, modes, run } = pass
  let { start, finish } = bounds
  for (let tries = 0; tries < 64; tries++) {
    if (!runBefore(network.clocks[task]![modes[task]!]!, start, finish, run)) return false
    const failing = network.outOf[task]!.find((arc) => {
      const known = arc.toFinish ? times.finish[arc.to]! : times.start[arc.to]!
      return (
        arc.days !== null && known < never && arcBound(arc, arc.fromFinish ? run.finish : run.start) > known
      )
    })
    if (!failing) return true
    const bound = failing.toFinish ? times.finish[failing.to]! : times.start[failing.to]!
    const clock = bound - dayOf(bound) * minutesPerDay
    if (failing.fromFinish) finish = dayOf(run.finish) * minutesPerDay + clock
    else start = dayOf(run.start) * minutesPerDay + clock
  }
  return false
}

/**
 * The latest times that keep every task finished by `finish`, by links, longest waits and calendars; `null` where there
 * are none. `latest` may name a latest start of a task. Needs: `modes` fixes each task's mode.
 */
export function lateTimes(
  network: Network,
  modes: Int32Array,
  finish: Instant,
  latest: (task: number) => Instant | null = () => null,
): Times | null {
  const { size } = network
  const times = { start: new Int32Array(size).fill(never), finish: new Int32Array(size).fill(never) }
  const run = emptyRun()
  const settle = (task: number) => {
    const bounds = latestBoundsOf(network, times, task)
    bounds.finish = Math.min(bounds.finish, finish)
    bounds.start = Math.min(bounds.start, latest(task) ?? never)
    const found = latestRunWithin({ network, times, modes, run }, task, bounds)
    if (!found || run.start < network.problem.tasks[task]!.release) return 'lost'
    const same = run.start === times.start[task] && run.finish === times.finish[task]
    times.start[task] = run.start
    times.finish[task] = run.finish
    return same ? 'same' : 'moved'
  }
  const order = roughOrder(network).reverse()
  const lost = settleAll(network, order, settle, { arcs: network.into, end: 'from' })
  return lost < 0 ? times : null
}
