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

/** What placing blocks of a network asks again and again, and its working memory. */
export interface BlockPlacer {
  readonly board: Board
  readonly blocks: Blocks
  /** Tasks of the same block that wait for each task in any way. */
  readonly peers: readonly (readonly number[])[]
  /** How many members must still be placed before each task. */
  readonly unmet: Int32Array
  readonly queue: Int32Array
  readonly waiting: Uint8Array
  readonly run: Run
}

/** A placer of blocks on a board. */
export function blockPlacer(board: Board, blocks: Blocks): BlockPlacer {
  const { size, outOf } = board.network
  const longest = blocks.members.reduce((most, { length }) => Math.max(most, length), 0)
  return {
    board,
    blocks,
    peers: outOf.map((arcs, task) => [
      ...new Set(arcs.map(({ to }) => to).filter((to) => blocks.blockOf[to] === blocks.blockOf[task])),
    ]),
    unmet: new Int32Array(size),
    queue: new Int32Array(patience * (longest + 4) + longest + 1),
    waiting: new Uint8Array(size),
    run: emptyRun(),
  }
}

/** Where an unplaced member may be at the earliest, or whether a placed one would have to move. */
function settle(placer: BlockPlacer, task: number): 'same' | 'moved' | 'later' | 'lost' {
  const { board, run } = placer
  const { network, times, floor } = board
  const bounds = boundsOf(network, times, task)
  if (floor[task]! > bounds.start) bounds.start = floor[task]!
  if (board.placed[task]) {
    const fits = runAfter(network.clocks[task]![board.mode[task]!]!, bounds.start, bounds.finish, run)
    if (fits && run.start <= times.start[task]!) return 'same'
    floor[task] = fits ? run.start : never
    return 'later'
  }
  const best = earliestOf(network, task, -1, bounds, run)
  if (best.finish > network.problem.horizon) return 'lost'
  if (best.start === times.start[task] && best.finish === times.finish[task]) return 'same'
  times.start[task] = best.start
  times.finish[task] = best.finish
  return 'moved'
}

/**
 * Pushes the earliest times of unplaced members later until all links agree, beginning with `first`.
 * Gives: `later` where a placed member would have to move; its floor is raised.
 */
function pushLater(placer: BlockPlacer, size: number, first: readonly number[]): TryOutcome {
  const { queue, waiting, peers } = placer
  let [head, tail] = [0, 0]
  let visits = patience * (size + 4)
  let outcome: TryOutcome = 'placed'
  for (const task of first) {
    queue[tail++] = task
    waiting[task] = 1
  }
  while (head < tail) {
    const task = queue[head++]!
    waiting[task] = 0
    // What is still in the queue must not be left marked.
    if (outcome !== 'placed') continue
    const settled = visits-- <= 0 ? 'lost' : settle(placer, task)
    if (settled === 'same') continue
    if (settled !== 'moved') outcome = settled
    else
      for (const next of peers[task]!) {
        if (waiting[next]) continue
        waiting[next] = 1
        queue[tail++] = next
      }
  }
  return outcome
}

/** Whether a task lies within a hold that is begun and not ended. */
function isHeld({ board, blocks }: BlockPlacer, task: number): boolean {
  const { holds } = board.network.problem
  for (const index of blocks.around[task]!) {
    const { from, to } = holds[index]!
    if (board.placed[from] && !board.placed[to]) return true
  }
  return false
}

/** The member to place next: among those that wait for none, inside a begun hold first, then by rank. */
function pick(placer: BlockPlacer, members: readonly number[], rank: ArrayLike<number>): number {
  const { board, unmet } = placer
  let best = -1
  let [bestClass, bestKey] = [0, 0]
  for (const task of members) {
    if (board.placed[task]) continue
    const free = unmet[task] === 0
    const kind = (free ? 0 : 2) + (isHeld(placer, task) ? 0 : 1)
    const key = free ? rank[task]! : board.times.start[task]!
    if (best >= 0 && (kind > bestClass || (kind === bestClass && key >= bestKey))) continue
    best = task
    bestClass = kind
    bestKey = key
  }
  return best
}

/** Keeps each begun hold taken as far as its last task is now known to finish; `later` where somebody else is there. */
function stretchHolds({ board }: BlockPlacer, members: readonly number[]): TryOutcome {
  const { opens, problem } = board.network
  for (const task of members) {
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
function tryOnce(placer: BlockPlacer, members: readonly number[], rank: ArrayLike<number>): TryOutcome {
  const { board, blocks, unmet, peers } = placer
  for (const task of members) unmet[task] = 0
  for (const task of members) for (const to of blocks.leads[task]!) unmet[to]!++
  let outcome = pushLater(placer, members.length, members)
  for (let left = members.length; left > 0 && outcome === 'placed'; left--) {
    const task = pick(placer, members, rank)
    const bounds = boundsOf(board.network, board.times, task)
    bounds.start = Math.max(bounds.start, board.floor[task]!)
    const mode = bestFit(board, task, bounds)
    if (mode < 0) return 'lost'
    if (!put(board, task, mode, board.best)) return 'later'
    for (const to of blocks.leads[task]!) unmet[to]!--
    outcome = pushLater(placer, members.length, peers[task]!)
    if (outcome === 'placed') outcome = stretchHolds(placer, members)
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
export function placeBlock(placer: BlockPlacer, block: number, rank: ArrayLike<number>): BlockOutcome {
  const { board, blocks } = placer
  const members = blocks.members[block]!
  const most = 100 + 10 * members.length
  for (const task of members) board.floor[task] = -never
  for (let tries = 0; tries < most; tries++) {
    const outcome = tryOnce(placer, members, rank)
    if (outcome === 'placed') return 'placed'
    lift(board, members, placer.run)
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
