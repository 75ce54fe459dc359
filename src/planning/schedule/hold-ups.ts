/** What kept a task of a finished schedule from every earlier start, stretch by stretch. */
import type { Instant } from '../../base/clock.ts'
import { firstClosingAfter } from '../../base/spans.ts'
import { type Board, boardOf, freeAt, takeNeeds, wipe } from './board.ts'
import { type Arc, arcBound } from './lag.ts'
import { type Network, networkOf } from './network.ts'
import type { Bounds } from './precedence.ts'
import type { Problem, Schedule } from './problem.ts'
import { type Stretch, stretchesOf } from './resource-order.ts'
import { type Clock, emptyRun, never, type Run, runAfter, runFrom } from './work-time.ts'

/** How many tasks that must each follow the last closely are looked at, one for the sake of the other. */
const mostFollowers = 6

/** What stood in the way of a task. */
export type Obstacle =
  /** Its own release, or the start of the project. */
  | { readonly kind: 'release' }
  /** A number into the problem's links. */
  | { readonly kind: 'link'; readonly link: number; readonly from: number }
  /** `from` had the resource before; `null` where that leads back into what is being explained. */
  | { readonly kind: 'resource'; readonly resource: number; readonly from: number | null }
  /** Its calendar was closed, from `since` on. */
  | { readonly kind: 'closed'; readonly calendar: number; readonly since: Instant }
  /** Its calendar was open, but never as long in one piece as it asks for. */
  | { readonly kind: 'short'; readonly calendar: number }
  /** Nothing: the schedule dawdles. */
  | { readonly kind: 'idle' }

/** One stretch of waiting. */
export interface HoldUp {
  readonly what: Obstacle
  /** The task in whose way it stood: the one asked about, or one that must follow it closely. */
  readonly of: number
  /** When that task could have begun as far as this goes. */
  readonly at: Instant
  /** When the task asked about could have. */
  readonly until: Instant
}

/** A finished schedule to be asked about. */
export interface Inquiry {
  readonly network: Network
  readonly schedule: Schedule
  readonly board: Board
  readonly stretches: readonly (readonly Stretch[])[]
  /** Tasks that are no answer any more. */
  readonly seen: Set<number>
  /** Tasks being explained right now. */
  readonly inHand: Set<number>
}

/** Begins to ask about a schedule. Needs: it satisfies the problem. */
export function inquiryInto(problem: Problem, schedule: Schedule): Inquiry {
  const network = networkOf(problem)
  const board = boardOf(network)
  wipe(board, -never)
  const stretches = stretchesOf(problem, schedule)
  for (const { resource, open, close, amount } of stretches.flat())
    board.taken[resource]!.take(open, close, amount)
  const inquiry = { network, schedule, board, stretches, seen: new Set<number>(), inHand: new Set<number>() }
  for (const [task, { mode }] of schedule.placements.entries()) {
    setTimes(inquiry, task)
    board.mode[task] = mode
  }
  return inquiry
}

function setTimes({ board, schedule }: Inquiry, task: number): void {
  board.times.start[task] = schedule.placements[task]!.start
  board.times.finish[task] = schedule.placements[task]!.finish
}

function forget({ board }: Inquiry, task: number): void {
  board.times.start[task] = -never
  board.times.finish[task] = -never
}

const clockOf = ({ network, board }: Inquiry, task: number): Clock =>
  network.clocks[task]![board.mode[task]!]!

/** Takes a task, with the holds it begins, off the board (-1) or puts it back (1). */
function shift(inquiry: Inquiry, task: number, sign: 1 | -1): void {
  const { network, board } = inquiry
  runFrom(clockOf(inquiry, task), board.times.start[task]!, board.run)
  takeNeeds(board, task, board.mode[task]!, board.run, sign)
  for (const index of network.opens[task]!) {
    const { resource, amount, to } = network.problem.holds[index]!
    board.taken[resource]!.take(board.times.start[task]!, board.times.finish[to]!, sign * amount)
  }
}

const turnedInto = ({ network }: Inquiry, task: number): readonly Arc[] =>
  network.into[task]!.filter(({ turned }) => turned)

/** A task and those that must follow it closely, and those that must follow them. */
function tiedTo(inquiry: Inquiry, task: number): readonly number[] {
  const tied = new Set([task])
  for (const one of tied) for (const { from } of turnedInto(inquiry, one)) tied.add(from)
  return [...tied]
}

/**
 * What kept a task back, in order of time and without a gap: first what it waited for (its release, a link, or a
 * resource), then what kept it from there to its start. Things that stood in its way without making it later are left
 * out. A task that others must follow closely waits for what stands in their way too.
 * Gives: one or more; the last ends with the start. Cost: O(stretches passed x (arcs + needs of the tied tasks)).
 */
export function holdUpsOf(inquiry: Inquiry, task: number): readonly HoldUp[] {
  const { schedule } = inquiry
  const tied = tiedTo(inquiry, task)
  for (const one of tied) shift(inquiry, one, -1)
  for (const one of tied) forget(inquiry, one)
  const { start } = schedule.placements[task]!
  const found = account(inquiry, task)?.ups ?? headsOf(inquiry, task)
  const told = found.filter(({ until }, at) => at === 0 || until <= start)
  for (const one of tied) setTimes(inquiry, one)
  for (const one of tied) shift(inquiry, one, 1)
  if (told.at(-1)!.until >= start) return told
  return [...told, { what: { kind: 'idle' }, of: task, at: start, until: start }]
}

/** A way from an instant to the first run that fits, with all that was in the way. */
interface Walk {
  readonly ups: readonly HoldUp[]
  readonly start: Instant
  readonly finish: Instant
}

/** Why a lifted task cannot begin before its first fit, and that fit; `null` where nothing fits. */
function account(inquiry: Inquiry, task: number): Walk | null {
  const heads = headsOf(inquiry, task)
  const ready = heads.at(-1)!.until
  inquiry.inHand.add(task)
  const full = walk(inquiry, task, ready, true)
  const told = full && toldOf(inquiry, task, heads, full)
  inquiry.inHand.delete(task)
  return full && told && { ...full, ups: told }
}

/** What of a way matters: from the last thing that leads on and without which the task would begin earlier. */
function toldOf(inquiry: Inquiry, task: number, heads: readonly HoldUp[], full: Walk): readonly HoldUp[] {
  const own = full.ups.some(({ what, of }) => what.kind === 'resource' && of === task)
  const alone = (from: Instant): Walk => walk(inquiry, task, from, false) ?? full
  const ready = heads.at(-1)!.until
  for (let k = full.ups.length - 1; k >= 0; k--) {
    const up = full.ups[k]!
    if (!leadsOn(inquiry, up)) continue
    if (up.of !== task) return full.ups.slice(k)
    const since = k === 0 ? ready : full.ups[k - 1]!.until
    if (alone(since).start < full.start) return [up, ...alone(up.until).ups]
  }
  return [...heads, ...(own ? alone(ready) : full).ups]
}

/** Whether there is somebody to ask further. */
function leadsOn({ seen }: Inquiry, { what }: HoldUp): boolean {
  return 'from' in what && what.from !== null && !seen.has(what.from)
}

/** The wait for what comes before: for the last that can be asked further, then for what cannot, if later. */
function headsOf(inquiry: Inquiry, task: number): readonly HoldUp[] {
  const { network, board } = inquiry
  const begin = Math.max(network.problem.start, network.problem.tasks[task]!.release)
  const release: HoldUp = { what: { kind: 'release' }, of: task, at: begin, until: begin }
  const arcs = network.into[task]!.filter((arc) => arc.link >= 0 && !arc.turned)
  const known = arcs.filter(({ from }) => board.times.start[from] !== -never)
  const ups = [release, ...known.flatMap((arc) => waitFor(inquiry, task, arc))]
  const last = (some: readonly HoldUp[]) => some.reduce((a, b) => (b.until > a.until ? b : a))
  const links = ups.filter((up) => leadsOn(inquiry, up))
  const fresh = last([...links, release])
  const any = last(ups)
  return any.until > fresh.until ? [fresh, any] : [fresh]
}

function waitFor(inquiry: Inquiry, task: number, arc: Arc): readonly HoldUp[] {
  const { times } = inquiry.board
  const bound = arcBound(arc, arc.fromFinish ? times.finish[arc.from]! : times.start[arc.from]!)
  const at = arc.toFinish ? startFor(inquiry, task, { start: -never, finish: bound }) : bound
  const what = { kind: 'link', link: arc.link, from: arc.from } as const
  return at === null ? [] : [{ what, of: task, at, until: at }]
}

/** The earliest start within the bounds on the task's own calendar; `null` where there is none. */
function startFor(inquiry: Inquiry, task: number, { start, finish }: Bounds): Instant | null {
  const run = emptyRun()
  const from = Math.max(start, inquiry.network.problem.start)
  return runAfter(clockOf(inquiry, task), from, finish, run) ? run.start : null
}

/** From an instant on, past everything in the way; `busy` says whether its own resources count. */
function walk(inquiry: Inquiry, task: number, from: Instant, busy: boolean): Walk | null {
  const { board, network } = inquiry
  const clock = clockOf(inquiry, task)
  const run = emptyRun()
  const ups: HoldUp[] = []
  let at = from
  while (runFrom(clock, at, run) && run.finish <= network.problem.horizon) {
    const { start, finish } = run
    if (start > at) ups.push(closedUntil(clock, task, at, start))
    const taken = busy ? takenAt(inquiry, task, run) : null
    board.times.start[task] = start
    board.times.finish[task] = finish
    const more = taken ? [taken] : tiesOf(inquiry, task)
    if (more.length === 0) return { ups, start, finish }
    ups.push(...more)
    at = more.at(-1)!.until
  }
  return null
}

/** The resource that a run finds taken; `null` where none is. */
function takenAt(inquiry: Inquiry, task: number, run: Run): HoldUp | null {
  const { board } = inquiry
  const at = freeAt(board, task, board.mode[task]!, run)
  if (at === -never) return null
  const resource = board.barrier
  return {
    what: { kind: 'resource', resource, from: holderBefore(inquiry, resource, at, task) },
    of: task,
    at,
    until: at,
  }
}

function closedUntil({ spans, mode }: Clock, task: number, since: Instant, until: Instant): HoldUp {
  const calendar = mode.calendar!
  const short = spans![2 * firstClosingAfter(spans!, since)]! < until
  return {
    what: short ? { kind: 'short', calendar } : { kind: 'closed', calendar, since },
    of: task,
    at: until,
    until,
  }
}

/** Who gave up a resource last, at or before an instant; of several at once the lowest task. */
function holderBefore(
  { stretches, seen }: Inquiry,
  resource: number,
  by: Instant,
  task: number,
): number | null {
  let best: Stretch | null = null
  for (const one of stretches[resource]!) {
    if (one.close > by || one.last === task || seen.has(one.last)) continue
    const gain = best === null ? 1 : one.close - best.close || best.last - one.last
    if (gain > 0) best = one
  }
  return best === null ? null : best.last
}

/** What stands in the way of those that must follow the task closely, where that moves the task. */
function tiesOf(inquiry: Inquiry, task: number): readonly HoldUp[] {
  for (const arc of turnedInto(inquiry, task)) {
    const ups = heldBack(inquiry, task, arc)
    if (ups.length > 0) return ups
  }
  return []
}

/** Where the follower of a longest wait cannot begin soon enough after a task: what stands in its way; else nothing. */
function heldBack(inquiry: Inquiry, task: number, arc: Arc): readonly HoldUp[] {
  if (inquiry.inHand.has(arc.from) || inquiry.inHand.size > mostFollowers) return []
  const { times } = inquiry.board
  const from = times.start[task]!
  const told = account(inquiry, arc.from)
  for (const one of tiedTo(inquiry, arc.from)) if (!inquiry.inHand.has(one)) forget(inquiry, one)
  if (told === null) return []
  const boundAt = (at: Instant): Instant => arcBound(arc, arc.fromFinish ? at + told.finish - told.start : at)
  const bound = boundAt(told.start)
  const bounds = arc.toFinish ? { start: from, finish: bound } : { start: bound, finish: -never }
  const needed = startFor(inquiry, task, bounds)
  if (needed === null || needed <= from) return []
  const length = arc.toFinish ? clockOf(inquiry, task).duration : 0
  // Its own closed hours come after this: the next look from there on tells them.
  return told.ups
    .map((up) => ({ ...up, until: Math.min(needed, boundAt(up.at) - length) }))
    .filter(({ until }) => until > from)
}
