/** Placing a block of tied tasks whole: all of it, or none of it before its first start has moved later. */
import { type Board, bestFit, takeNeeds } from './board.ts'
import type { Blocks } from './linked-blocks.ts'
import { boundsOf, earliestOf } from './precedence.ts'
import { emptyRun, never, type Run, runAfter, runFrom } from './work-time.ts'

/** How placing ended; on anything but `placed` nothing of the block stays on the board. */
export type BlockOutcome = 'placed' | 'beyond horizon' | 'no room'

/** How one try ended: `later` means that a floor was raised and another try may fit. */
type TryOutcome = 'placed' | 'later' | 'lost'

const patience = 200

/** Puts `task` on the board at `run`, which must be free for it, and begins the holds that begin with it. */
export function put(board: Board, task: number, mode: number, run: Run): boolean {
  const { network, times, taken, heldTo } = board
  board.mode[task] = mode
  board.placed[task] = 1
  times.start[task] = run.start
  times.finish[task] = run.finish
  takeNeeds(board, task, mode, run, 1)
  for (const index of network.opens[task]!) {
    const { resource, amount, to } = network.problem.holds[index]!
    const end = to === task ? run.finish : Math.max(run.finish, times.finish[to]!)
    const blocked = taken[resource]!.blockedUntil(run.start, end, amount)
    if (blocked !== -never) {
      board.floor[task] = Math.max(board.floor[task]!, Math.min(blocked, never))
      return false
    }
    taken[resource]!.take(run.start, end, amount)
    heldTo[index] = end
  }
  return true
}

/** Takes the members off the board and forgets their times. */
function lift(board: Board, members: readonly number[], run: Run): void {
  const { network, times, placed, heldTo, taken } = board
  for (const task of members) {
    const mode = board.mode[task]!
    if (placed[task]) {
      runFrom(network.clocks[task]![mode]!, times.start[task]!, run)
      takeNeeds(board, task, mode, run, -1)
      for (const index of network.opens[task]!) {
        const { resource, amount } = network.problem.holds[index]!
        if (heldTo[index] !== -never) taken[resource]!.take(times.start[task]!, heldTo[index]!, -amount)
        heldTo[index] = -never
      }
    }
  }
  for (const task of members) {
    placed[task] = 0
    times.start[task] = -never
    times.finish[task] = -never
  }
}

/** One block in work: who is in it, and what still keeps whom. */
interface Work {
  readonly board: Board
  readonly blocks: Blocks
  readonly members: readonly number[]
  readonly rank: ArrayLike<number>
  /** Members that must still be placed before each task (by task number). */
  readonly unmet: Map<number, number>
  readonly run: Run
}

/**
 * Pushes the earliest times of unplaced members later until all links agree, beginning with `queue`.
 * Gives: `later` where a placed member would have to move; its floor is raised.
 */
function pushLater(work: Work, first: readonly number[]): TryOutcome {
  const { board, run } = work
  const { network, times, floor } = board
  const queue = [...first]
  const waiting = new Set(queue)
  let visits = patience * (work.members.length + 4)
  for (let head = 0; head < queue.length; head++) {
    const task = queue[head]!
    waiting.delete(task)
    if (visits-- <= 0) return 'lost'
    const bounds = boundsOf(network, times, task)
    bounds.start = Math.max(bounds.start, floor[task]!)
    if (board.placed[task]) {
      const fits = runAfter(network.clocks[task]![board.mode[task]!]!, bounds.start, bounds.finish, run)
      if (fits && run.start === times.start[task]) continue
      if (fits && run.start < times.start[task]!) continue
      floor[task] = fits ? run.start : never
      return 'later'
    }
    const best = earliestOf(network, task, -1, bounds, run)
    if (best.finish > network.problem.horizon) return 'lost'
    if (best.start === times.start[task] && best.finish === times.finish[task]) continue
    times.start[task] = best.start
    times.finish[task] = best.finish
    for (const next of neighbours(work, task)) {
      if (waiting.has(next)) continue
      waiting.add(next)
      queue.push(next)
    }
  }
  return 'placed'
}

function neighbours(work: Work, task: number): number[] {
  const { blockOf } = work.blocks
  return work.board.network.outOf[task]!.map((arc) => arc.to).filter((to) => blockOf[to] === blockOf[task])
}

/** The member to place next: inside a begun hold first, then by rank, among those that wait for none. */
function pick(work: Work): number {
  const { board, blocks, rank } = work
  const begun = work.members.flatMap((task) => (board.placed[task] ? openHolds(board, task) : []))
  let best = -1
  let bestKey: readonly [number, number, number] = [0, 0, 0]
  for (const task of work.members) {
    if (board.placed[task]) continue
    const held = begun.some((hold) => blocks.inside[hold]!.has(task))
    const free = work.unmet.get(task) === 0
    const key = [free ? 0 : 1, held ? 0 : 1, free ? rank[task]! : board.times.start[task]!] as const
    if (best < 0 || lessKey(key, bestKey)) {
      best = task
      bestKey = key
    }
  }
  return best
}

function lessKey(a: readonly [number, number, number], b: readonly [number, number, number]): boolean {
  if (a[0] !== b[0]) return a[0] < b[0]
  return a[1] !== b[1] ? a[1] < b[1] : a[2] < b[2]
}

function openHolds(board: Board, task: number): number[] {
  const { opens, problem } = board.network
  return opens[task]!.filter((hold) => !board.placed[problem.holds[hold]!.to])
}

/** Keeps each begun hold taken as far as its last task is now known to finish; `later` where somebody else is there. */
function stretchHolds(work: Work): TryOutcome {
  const { board } = work
  const { opens, problem } = board.network
  for (const task of work.members) {
    if (!board.placed[task]) continue
    for (const index of opens[task]!) {
      const { resource, amount, to } = problem.holds[index]!
      const end = board.times.finish[to]!
      if (end <= board.heldTo[index]!) continue
      const blocked = board.taken[resource]!.blockedUntil(board.heldTo[index]!, end, amount)
      if (blocked !== -never) {
        board.floor[task] = Math.max(board.floor[task]!, blocked)
        return 'later'
      }
      board.taken[resource]!.take(board.heldTo[index]!, end, amount)
      board.heldTo[index] = end
    }
  }
  return 'placed'
}

/** Places every member once, each at the earliest that fits, or says that somebody must start later. */
function tryOnce(work: Work): TryOutcome {
  const { board, blocks, members, unmet } = work
  for (const task of members) unmet.set(task, 0)
  for (const task of members) for (const to of blocks.leads[task]!) unmet.set(to, unmet.get(to)! + 1)
  let outcome = pushLater(work, members)
  for (let left = members.length; left > 0 && outcome === 'placed'; left--) {
    const task = pick(work)
    const bounds = boundsOf(board.network, board.times, task)
    bounds.start = Math.max(bounds.start, board.floor[task]!)
    const mode = bestFit(board, task, bounds)
    if (mode < 0) return 'lost'
    if (!put(board, task, mode, board.best)) return 'later'
    for (const to of blocks.leads[task]!) unmet.set(to, unmet.get(to)! - 1)
    outcome = pushLater(work, neighbours(work, task))
    if (outcome === 'placed') outcome = stretchHolds(work)
  }
  return outcome
}

/**
 * Places all members of a block, or none.
 * Method: members go to the earliest fit one by one. Where a longest wait then asks a placed one to come later, or a
 * held resource is taken by somebody before the hold can end, that task's floor rises to the first instant at which
 * this may change and the block begins anew. Floors only rise, so this ends; half-way through its patience the whole
 * block is sent behind everything placed, where only calendars can still refuse it.
 * Needs: every block before it is placed. Cost: tries x members x a fit; at most 100 + 10 members tries.
 */
export function placeBlock(
  board: Board,
  blocks: Blocks,
  block: number,
  rank: ArrayLike<number>,
): BlockOutcome {
  const members = blocks.members[block]!
  const work: Work = { board, blocks, members, rank, unmet: new Map(), run: emptyRun() }
  const most = 100 + 10 * members.length
  for (const task of members) board.floor[task] = -never
  for (let tries = 0; tries < most; tries++) {
    const outcome = tryOnce(work)
    if (outcome === 'placed') return 'placed'
    lift(board, members, work.run)
    if (outcome === 'lost') return 'beyond horizon'
    if (tries === most >> 1) sendBehind(board, members)
  }
  return 'no room'
}

function sendBehind(board: Board, members: readonly number[]): void {
  let last = board.network.problem.start
  for (let task = 0; task < board.placed.length; task++) {
    if (board.placed[task]) last = Math.max(last, board.times.finish[task]!)
  }
  for (const task of members) board.floor[task] = Math.max(board.floor[task]!, last)
}
