/** Exact search for small problems with calendars: every order that could matter, laid out once. */
import type { Instant } from '../../base/clock.ts'
import { type Board, boardOf, copyRun, fitEarliest, takeNeeds, wipe } from './board.ts'
import type { Decoded } from './decode.ts'
import { type Network, ordersTasks } from './network.ts'
import { boundsOf, roughOrder } from './precedence.ts'
import { emptyRun, never, type Run } from './work-time.ts'
import { type LateBounds, lateBoundsOf } from './workload-bound.ts'

/** What the search ends with. */
export interface SmallProof {
  /** A plan that finishes earlier than the one known, the earliest there is; `null` where there is none or it was not told. */
  readonly plan: Decoded | null
  /** Whether every order that could matter was looked at. */
  readonly complete: boolean
  readonly nodes: number
}

/** Most tasks of which every set is kept as one number. */
const mostTasks = 31

/**
 * Whether laying tasks out in the order of their starts, each at its earliest fit, gives every schedule that matters: no
 * holds, no longest waits, nothing used up, and no link that lets its second task start first.
 * Reason: whatever can start earlier with all others where they are may do so, until nothing can; and in what is left
 * each task starts as early as those that start before it allow.
 */
export function isSmall(network: Network): boolean {
  const { tasks, holds } = network.problem
  const stock = tasks.some(({ modes }) =>
    modes.some(({ needs }) => needs.some(({ during }) => during === 'ever')),
  )
  return (
    tasks.length <= mostTasks &&
    holds.length === 0 &&
    !stock &&
    tasks.every(
      ({ due, modes }) => due === undefined && modes.every(({ timetable }) => timetable === null),
    ) &&
    network.arcs.every((arc) => ordersTasks(network, arc) && arc.days === null)
  )
}

interface Placed {
  readonly task: number
  readonly mode: number
  readonly run: Run
}

interface Search {
  readonly network: Network
  readonly board: Board
  readonly before: Int32Array
  readonly most: number
  /** Late times for the end that is sought, renewed when a plan is found. */
  late: LateBounds | null
  readonly seen: Set<string>
  best: Decoded | null
  sought: Instant
  nodes: number
}

/** Everything that the rest of a plan depends on: who is placed, from where on, and what is taken or waited for after it. */
function stateOf({ board, network }: Search, done: number, from: Instant): string {
  const parts: (number | string)[] = [done, from]
  for (let task = 0; task < network.size; task++) {
    if (!((done >>> task) & 1)) continue
    const waits = network.outOf[task]!.some(({ to }) => !((done >>> to) & 1))
    if (board.times.finish[task]! > from || waits)
      parts.push(
        task,
        Math.max(board.times.start[task]!, waits ? -never : from),
        board.times.finish[task]!,
        board.mode[task]!,
      )
  }
  return parts.join()
}

/** Places a task in a mode at its earliest start from `from` on; `null` where it fits nowhere or too late. */
function placedAt(search: Search, task: number, mode: number, from: Instant): Placed | null {
  const { network, board, late } = search
  const bounds = boundsOf(network, board.times, task)
  if (!fitEarliest(board, task, mode, bounds)) return null
  // Starts do not fall along an order; this plan is met in another one.
  if (
    board.run.start < from ||
    board.run.start > late!.start[task]! ||
    board.run.finish > late!.finish[task]!
  )
    return null
  const run = emptyRun()
  copyRun(board.run, run)
  return { task, mode, run }
}

function put({ board }: Search, { task, mode, run }: Placed, sign: 1 | -1): void {
  takeNeeds(board, task, mode, run, sign)
  board.times.start[task] = sign > 0 ? run.start : -never
  board.times.finish[task] = sign > 0 ? run.finish : -never
  board.mode[task] = sign > 0 ? mode : 0
}

/** Every task not yet placed has a start left. */
function hopeful({ network, board, late }: Search, done: number, from: Instant): boolean {
  for (let task = 0; task < network.size; task++)
    if (
      !((done >>> task) & 1) &&
      Math.max(from, boundsOf(network, board.times, task).start) > late!.start[task]!
    )
      return false
  return true
}

function keep(search: Search): void {
  const { start, finish } = search.board.times
  const end = finish.reduce((last, at) => Math.max(last, at), search.network.problem.start)
  search.best = { start: start.slice(), finish: finish.slice(), mode: search.board.mode.slice(), end }
  search.sought = end - 1
  search.late = lateBoundsOf(search.network, search.sought)
}

/** Looks at every order that goes on from here; false where the nodes ran out. */
function goOn(search: Search, done: number, left: number, from: Instant): boolean {
  if (left === 0) {
    keep(search)
    return true
  }
  if (search.late === null || !hopeful(search, done, from)) return true
  const state = stateOf(search, done, from)
  if (search.seen.has(state)) return true
  if (search.nodes >= search.most) return false
  search.nodes++
  const { network, before } = search
  const next: Placed[] = []
  for (let task = 0; task < network.size; task++) {
    if ((done >>> task) & 1 || (before[task]! & ~done) !== 0) continue
    for (let mode = 0; mode < network.clocks[task]!.length; mode++) {
      const placed = placedAt(search, task, mode, from)
      if (placed) next.push(placed)
    }
  }
  next.sort((a, b) => a.run.start - b.run.start || search.late!.start[a.task]! - search.late!.start[b.task]!)
  for (const placed of next) {
    if (search.late === null) break
    put(search, placed, 1)
    const whole = goOn(search, done | (1 << placed.task), left - 1, placed.run.start)
    put(search, placed, -1)
    if (!whole) return false
  }
  search.seen.add(state)
  return true
}

/**
 * Whether anything finishes before `upper`, and the best that does. Needs: `isSmall`.
 * Cost: at most `nodes` states, each as many fits as tasks may follow.
 */
export function proveSmall(network: Network, upper: Instant, nodes: number): SmallProof {
  const board = boardOf(network)
  wipe(board, -never)
  const before = new Int32Array(network.size)
  for (const task of roughOrder(network))
    for (const { from } of network.into[task]!) before[task]! |= 1 << from
  const search: Search = {
    network,
    board,
    before,
    most: nodes,
    late: lateBoundsOf(network, upper - 1),
    seen: new Set(),
    best: null,
    sought: upper - 1,
    nodes: 0,
  }
  const complete = goOn(search, 0, network.size, network.problem.start)
  return { plan: search.best, complete, nodes: search.nodes }
}
