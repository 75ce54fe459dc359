/** What set the finish of a schedule: task by task, each with what kept it from starting earlier. */
import type { Instant, Minutes } from '../../base/clock.ts'
import { type Board, boardOf, freeAt, takeNeeds, wipe } from './board.ts'
import { type Arc, arcBound } from './lag.ts'
import { type Network, networkOf } from './network.ts'
import { boundsOf } from './precedence.ts'
import type { Problem, Schedule } from './problem.ts'
import { type Stretch, stretchesOf } from './resource-order.ts'
import { type Clock, never, runAfter, runFrom } from './work-time.ts'

/** What kept a task back. `link` is a number into the problem's links; `longest` where its longest wait did it, not its lag. */
export type Held =
  | { readonly kind: 'link'; readonly link: number; readonly from: number; readonly longest: boolean }
  /** `from` had the resource before. */
  | { readonly kind: 'resource'; readonly resource: number; readonly from: number }
  /** Nothing but its own release, or the start of the project. */
  | { readonly kind: 'release' }

/** The cause of a start: what kept the task back and, where it then waited for its calendar to open, that too. */
export type Cause =
  | Held
  | { readonly kind: 'calendar'; readonly calendar: number; readonly opened: Instant; readonly after: Held }

/** One task of the driving chain. */
export interface DrivingStep {
  readonly task: number
  readonly because: Cause
  readonly start: Instant
  readonly finish: Instant
  /** Where the task goes by timetable: it had to leave before this instant. */
  readonly leaveBefore: Instant | null
  /**
   * The link by which a step further down the chain kept it back beyond its cause (a longest wait, or a ring of lags);
   * `null` where the cause alone did.
   */
  readonly tied: number | null
  /** Minutes between when the cause would have let it start and when it did; 0 unless the schedule dawdles. */
  readonly idle: Minutes
}

/** A cause with the instant it names and the start that follows from it on the task's calendar. */
interface Candidate {
  readonly held: Held
  readonly at: Instant
  readonly start: Instant
}

interface Inquiry {
  readonly network: Network
  readonly schedule: Schedule
  readonly board: Board
  readonly stretches: readonly (readonly Stretch[])[]
  readonly seen: Set<number>
}

function inquiryInto(problem: Problem, schedule: Schedule): Inquiry {
  const network = networkOf(problem)
  const board = boardOf(network)
  wipe(board, -never)
  const stretches = stretchesOf(problem, schedule)
  for (const { resource, open, close, amount } of stretches.flat())
    board.taken[resource]!.take(open, close, amount)
  for (const [task, placement] of schedule.placements.entries()) {
    board.times.start[task] = placement.start
    board.times.finish[task] = placement.finish
    board.mode[task] = placement.mode
  }
  return { network, schedule, board, stretches, seen: new Set() }
}

/** Takes a task, with the holds it begins, off the board (-1) or puts it back (1). */
function shift(inquiry: Inquiry, task: number, sign: 1 | -1): void {
  const { network, board } = inquiry
  const mode = board.mode[task]!
  runFrom(network.clocks[task]![mode]!, board.times.start[task]!, board.run)
  takeNeeds(board, task, mode, board.run, sign)
  for (const index of network.opens[task]!) {
    const { resource, amount, to } = network.problem.holds[index]!
    board.taken[resource]!.take(board.times.start[task]!, board.times.finish[to]!, sign * amount)
  }
}

function fromArc(inquiry: Inquiry, clock: Clock, arc: Arc): Candidate | null {
  const { board, network } = inquiry
  const { times, run } = board
  const bound = arcBound(arc, arc.fromFinish ? times.finish[arc.from]! : times.start[arc.from]!)
  const [start, finish] = arc.toFinish ? [network.problem.start, bound] : [bound, -never]
  if (arc.link < 0 || !runAfter(clock, start, finish, run)) return null
  const held: Held = { kind: 'link', link: arc.link, from: arc.from, longest: arc.turned }
  return { held, at: arc.toFinish ? run.start : bound, start: run.start }
}

function fromRelease(inquiry: Inquiry, task: number, clock: Clock): Candidate {
  const { problem } = inquiry.network
  const at = Math.max(problem.start, problem.tasks[task]!.release)
  runFrom(clock, at, inquiry.board.run)
  return { held: { kind: 'release' }, at, start: inquiry.board.run.start }
}

/** Who gave up a resource last, at or before `by`; of several at once the lowest task. */
function holderBefore(inquiry: Inquiry, resource: number, by: Instant, task: number): number | null {
  const others = inquiry.stretches[resource]!.filter(
    ({ close, last }) => close <= by && last !== task && !inquiry.seen.has(last),
  )
  const best = others.sort((a, b) => b.close - a.close || a.last - b.last)[0]
  return best ? best.last : null
}

/** The last resource that a task, set out from where its links allow, had to wait for; its own use is off the board. */
function fromResource(inquiry: Inquiry, task: number): Candidate | null {
  const { network, board, schedule } = inquiry
  const { start, mode } = schedule.placements[task]!
  const clock = network.clocks[task]![mode]!
  const bounds = boundsOf(network, board.times, task)
  let last: { resource: number; at: Instant } | null = null
  let at = bounds.start
  while (runAfter(clock, at, bounds.finish, board.run) && board.run.start < start) {
    const free = freeAt(board, task, mode, board.run)
    if (free.at === -never || free.at > start) break
    at = free.at
    last = free
  }
  if (last === null) return null
  const from = holderBefore(inquiry, last.resource, last.at, task)
  if (from === null || !runAfter(clock, at, bounds.finish, board.run)) return null
  return { held: { kind: 'resource', resource: last.resource, from }, at: last.at, start: board.run.start }
}

/** The cause that let the task start last; on equal terms a lag before a resource, before a longest wait, before the release. */
function strongest(candidates: readonly (Candidate | null)[]): Candidate {
  const weight = ({ held }: Candidate) => {
    if (held.kind === 'link') return held.longest ? 2 : 0
    return held.kind === 'resource' ? 1 : 3
  }
  const some = candidates.filter((candidate) => candidate !== null)
  return some.sort((a, b) => b.start - a.start || weight(a) - weight(b))[0]!
}

/** Everything that may have kept a task back, itself off the board, in what of it lies at or before its start. */
function candidatesFor(inquiry: Inquiry, task: number, clock: Clock): Candidate[] {
  const { start } = inquiry.schedule.placements[task]!
  shift(inquiry, task, -1)
  const arcs = inquiry.network.into[task]!.map((arc) => fromArc(inquiry, clock, arc))
  const found = [...arcs, fromResource(inquiry, task)].filter((one) => one !== null && one.start <= start)
  shift(inquiry, task, 1)
  return [...found.filter((one) => one !== null), fromRelease(inquiry, task, clock)]
}

function stepFor(inquiry: Inquiry, task: number): { step: DrivingStep; before: number | null } {
  const { start, finish, mode } = inquiry.schedule.placements[task]!
  const clock = inquiry.network.clocks[task]![mode]!
  const candidates = candidatesFor(inquiry, task, clock)
  const fresh = candidates.filter(({ held }) => held.kind === 'release' || !inquiry.seen.has(held.from))
  const cause = strongest(fresh)
  const { held } = cause
  const top = strongest(candidates)
  const tied = top.start > cause.start && top.held.kind === 'link' ? top.held.link : null
  const { calendar, timetable } = clock.mode
  const waited = cause.start > cause.at && calendar !== null && !timetable
  const because: Cause = waited ? { kind: 'calendar', calendar, opened: cause.start, after: held } : held
  const leaveBefore = timetable ? timetable.leaveBefore.find((leave) => leave > start)! : null
  const idle = Math.max(0, start - Math.max(cause.start, top.start))
  return {
    step: { task, because, start, finish, leaveBefore, tied, idle },
    before: held.kind === 'release' ? null : held.from,
  }
}

/**
 * The driving chain of a schedule, from the first task to one that finishes last (the lowest numbered of several).
 * Each step but the first names, as `from`, the step before it. Facts only.
 * Needs: a schedule that satisfies the problem. Cost: O(chain x (arcs of a task + stretches of its resources)).
 */
export function drivingChain(problem: Problem, schedule: Schedule): DrivingStep[] {
  const inquiry = inquiryInto(problem, schedule)
  const chain: DrivingStep[] = []
  let task: number | null = schedule.placements.findIndex((placement) => placement.finish === schedule.finish)
  if (task < 0) return []
  while (task !== null) {
    inquiry.seen.add(task)
    const { step, before }: { step: DrivingStep; before: number | null } = stepFor(inquiry, task)
    chain.push(step)
    task = before
  }
  return chain.reverse()
}
