/** The board on which tasks are put: times so far, and what is taken of every resource. */
import type { Instant, Minutes } from '../../base/clock.ts'
import { firstClosingAfter } from '../../base/spans.ts'
import type { Demand, Network } from './network.ts'
import { Occupation } from './occupation.ts'
import type { Bounds, Times } from './precedence.ts'
import type { Mode } from './problem.ts'
import { type Clock, emptyRun, never, type Run, runAfter, runBefore } from './work-time.ts'

/** Working state of one pass; passes write over it. */
export interface Board {
  readonly network: Network
  readonly taken: readonly Occupation[]
  /** Of placed tasks their times; of tasks of a block in work the earliest they may still have; else not known. */
  readonly times: Times
  readonly mode: Int32Array
  readonly placed: Uint8Array
  /** How far each hold is taken; `-never` where not yet. */
  readonly heldTo: Int32Array
  /** Not before this, found out while a block was tried. */
  readonly floor: Int32Array
  readonly run: Run
  readonly best: Run
  /** The resource that last kept a task back. */
  barrier: number
  /** By calendar and resource: the shortest first piece asked for. */
  readonly shortest: Int32Array
  /** By calendar and resource, of windows found full: the number of the next that may not be; 0: not known. */
  readonly beyond: (Int32Array | null)[]
}

/** An empty board. */
export function boardOf(network: Network): Board {
  const { size, problem } = network
  return {
    network,
    taken: problem.resources.map((resource) => new Occupation(resource.capacity)),
    times: { start: new Int32Array(size), finish: new Int32Array(size) },
    mode: new Int32Array(size),
    placed: new Uint8Array(size),
    heldTo: new Int32Array(problem.holds.length),
    floor: new Int32Array(size),
    run: emptyRun(),
    best: emptyRun(),
    barrier: -1,
    shortest: new Int32Array(problem.calendars.length * problem.resources.length).fill(never),
    beyond: Array.from({ length: problem.calendars.length * problem.resources.length }, () => null),
  }
}

/** Takes everything off the board; `unknown` is what the times say while not known. */
export function wipe(board: Board, unknown: Instant): void {
  for (const occupation of board.taken) occupation.clear()
  forgetFull(board)
  board.times.start.fill(unknown)
  board.times.finish.fill(unknown)
  board.mode.fill(0)
  board.placed.fill(0)
  board.heldTo.fill(-never)
  board.floor.fill(-never)
}

/** Whether the last piece lies in a window that a start one minute later would pass over. */
function mayPassOver(clock: Clock, run: Run): boolean {
  const open = run.pieces.at(-2)!
  if (clock.spans === null || clock.mode.timetable || run.pieces.length < 4) return false
  const k = firstClosingAfter(clock.spans, open)
  return clock.spans[2 * k + 1]! - clock.spans[2 * k]! < clock.mode.least
}

/**
 * The earliest instant at which a start after `run`'s might find one resource free; `-never` where `run` finds it free.
 * A later start works through the same minutes until it finishes, so it must wait for the end of whatever is in the way;
 * only a short last window may be passed over instead.
 */
function freeFrom(occupation: Occupation, demand: Demand, clock: Clock, run: Run): Instant {
  let until = demand.span > 0 ? occupation.blockedUntil(run.start, run.finish, demand.span) : -never
  if (demand.working === demand.span) return until
  const { pieces } = run
  for (let k = pieces.length - 2; k >= 0 && until < pieces[k]!; k -= 2) {
    const blocked = occupation.blockedUntil(pieces[k]!, pieces[k + 1]!, demand.working)
    if (blocked === -never) continue
    const last = k === pieces.length - 2
    until = Math.max(until, last && mayPassOver(clock, run) ? run.start + 1 : blocked)
  }
  return until
}

/** When a start after `run`'s might find everything free; `-never` where `run` does. What says so is left in `board.barrier`. */
export function freeAt(board: Board, task: number, mode: number, run: Run): Instant {
  const { problem, opens, clocks, demands } = board.network
  const clock = clocks[task]![mode]!
  let at = -never
  for (const demand of demands[task]![mode]!) {
    const free = freeFrom(board.taken[demand.resource]!, demand, clock, run)
    if (free <= at) continue
    at = free
    board.barrier = demand.resource
  }
  for (const index of opens[task]!) {
    const hold = problem.holds[index]!
    const end = hold.to === task ? run.finish : Math.max(run.finish, board.times.finish[hold.to]!)
    const free = board.taken[hold.resource]!.blockedUntil(run.start, end, hold.amount)
    if (free <= at) continue
    at = free
    board.barrier = hold.resource
  }
  return at
}

/**
 * The number of the first window from number `first` on that is not full: one in which nothing of a resource is free as
 * long as the shortest piece takes that was asked for so far. What was found full is passed over at once from then on,
 * until something is given back.
 */
function afterFull(board: Board, place: number, spans: Int32Array, resource: number, first: number): number {
  const beyond = board.beyond[place]!
  const least = board.shortest[place]!
  let k = first
  while (k < beyond.length) {
    if (beyond[k]! === 0 && !board.taken[resource]!.isFull(spans[2 * k]!, spans[2 * k + 1]!, least)) break
    k = Math.max(k + 1, beyond[k]!)
  }
  for (let j = first; j < k; ) {
    const next = Math.max(j + 1, beyond[j]!)
    beyond[j] = k
    j = next
  }
  return k
}

/** The first instant at or after `at`, within a window of the calendar, from which on a demand is free for a whole piece. */
function firstGap(board: Board, calendar: number, demand: Demand, at: Instant, piece: Minutes): Instant {
  const { spans } = board.network.problem.calendars[calendar]!
  const { resource, working } = demand
  const occupation = board.taken[resource]!
  const place = calendar * board.taken.length + resource
  board.beyond[place] ??= new Int32Array(spans.length >> 1)
  if (piece < board.shortest[place]!) {
    board.shortest[place] = piece
    board.beyond[place]!.fill(0)
  }
  let k = firstClosingAfter(spans, at)
  for (;;) {
    k = afterFull(board, place, spans, resource, k)
    if (2 * k >= spans.length) return never
    const gap = occupation.gapWithin(Math.max(at, spans[2 * k]!), spans[2 * k + 1]!, working, piece)
    if (gap < never) return gap
    k++
  }
}

/** Forgets what was found full: something of it may be free again. */
function forgetFull(board: Board): void {
  for (const beyond of board.beyond) beyond?.fill(0)
}

/** Where a search for a run may begin: whatever takes time takes its resources from its first minute on. */
function searchFrom(board: Board, task: number, mode: number, at: Instant): Instant {
  const clock = board.network.clocks[task]![mode]!
  const { calendar } = clock.mode
  if (calendar === null || clock.duration === 0 || clock.mode.timetable) return at
  let from = at
  for (const demand of board.network.demands[task]![mode]!)
    from = Math.max(from, firstGap(board, calendar, demand, from, clock.first))
  return from
}

/**
 * The earliest run of a task in one mode within the bounds that finds calendar, resources and the holds it begins free;
 * the answer is in `board.run`. Gives: false where there is none up to the horizon.
 */
export function fitEarliest(board: Board, task: number, mode: number, bounds: Bounds): boolean {
  const { network, run } = board
  const clock = network.clocks[task]![mode]!
  let at = searchFrom(board, task, mode, bounds.start)
  while (runAfter(clock, at, bounds.finish, run) && run.finish <= network.problem.horizon) {
    const next = freeAt(board, task, mode, run)
    if (next === -never) return true
    if (next >= never) return false
    at = searchFrom(board, task, mode, next)
  }
  return false
}

/** Whether the first mode is the better of two that finish together: cheaper, then with fewer needs. */
function isBetter(a: Mode, b: Mode): boolean {
  const dearer = (a.cost ?? 0) - (b.cost ?? 0)
  return dearer === 0 ? a.needs.length < b.needs.length : dearer < 0
}

/** The earliest-finishing fit among a task's modes (ties: cheaper, fewer needs, then mode order), in `board.best`; -1 where none. */
export function bestFit(board: Board, task: number, bounds: Bounds): number {
  const { clocks, problem } = board.network
  const { modes } = problem.tasks[task]!
  let best = -1
  for (let mode = 0; mode < clocks[task]!.length; mode++) {
    if (!fitEarliest(board, task, mode, bounds)) continue
    const gain = best < 0 ? 1 : board.best.finish - board.run.finish
    if (gain < 0 || (gain === 0 && !isBetter(modes[mode]!, modes[best]!))) continue
    best = mode
    copyRun(board.run, board.best)
  }
  return best
}

/** Copies an answer, pieces and all. */
export function copyRun(from: Run, to: Run): void {
  to.start = from.start
  to.finish = from.finish
  if (to.pieces.length !== from.pieces.length) to.pieces.length = from.pieces.length
  for (let k = 0; k < from.pieces.length; k++) to.pieces[k] = from.pieces[k]!
}

/** Takes what a mode needs during a run; `sign` -1 gives it back. */
export function takeNeeds(board: Board, task: number, mode: number, run: Run, sign: 1 | -1): void {
  if (sign < 0) forgetFull(board)
  for (const { resource, span, working } of board.network.demands[task]![mode]!) {
    board.taken[resource]!.take(run.start, run.finish, sign * span)
    if (working === span) continue
    for (let k = 0; k < run.pieces.length; k += 2) {
      board.taken[resource]!.take(run.pieces[k]!, run.pieces[k + 1]!, sign * (working - span))
    }
  }
}

/** The latest instant by which an earlier run must be finished to find one resource free; `never` where `run` finds it free. */
function freeUntil(occupation: Occupation, demand: Demand, run: Run): Instant {
  let from = demand.span > 0 ? occupation.blockedFrom(run.start, run.finish, demand.span) : never
  if (demand.working === demand.span) return from
  for (let k = 0; k < run.pieces.length && run.pieces[k]! < from; k += 2) {
    from = Math.min(from, occupation.blockedFrom(run.pieces[k]!, run.pieces[k + 1]!, demand.working))
  }
  return from
}

/** The latest run of a task in one mode within the bounds that finds calendar and resources free, in `board.run`. */
export function fitLatest(board: Board, task: number, mode: number, bounds: Bounds): boolean {
  const { network, run, taken } = board
  const clock = network.clocks[task]![mode]!
  let finish = bounds.finish
  while (runBefore(clock, bounds.start, finish, run)) {
    let before = never
    for (const demand of network.demands[task]![mode]!) {
      before = Math.min(before, freeUntil(taken[demand.resource]!, demand, run))
    }
    if (before === never) return true
    finish = Math.min(before, run.finish - 1)
  }
  return false
}
