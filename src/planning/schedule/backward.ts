/** Plans read from their end: every task as late as an end allows. */
import type { Instant } from '../../base/clock.ts'
import { placesOf } from '../../base/places-of.ts'
import { type Board, boardOf, copyRun, fitLatest, takeNeeds, wipe } from './board.ts'
import type { Blocks } from './linked-blocks.ts'
import { LowestFirst } from './lowest-first.ts'
import type { Network } from './network.ts'
import { type Bounds, latestBoundsOf, roughOrder } from './precedence.ts'
import { never, runBefore } from './work-time.ts'

/**
 * Tasks by falling key (who must wait for whom is seen to) as late as `end` allows; starts are written to `start`.
 * Only their order is meant to be used: a task that finds no room lies where its links alone would have it.
 */
export type BackwardPass = (key: ArrayLike<number>, end: Instant, start: Int32Array) => void

/**
 * A hold seen from behind: it is taken from its earliest member so far up to its end. Earlier members stretch it.
 * Who else is there is not asked: the order that comes out is checked by the forward pass.
 */
function takeHolds(board: Board, task: number, within: readonly number[]): void {
  const { holds } = board.network.problem
  const { start, finish } = board.times
  for (const index of within) {
    const { resource, amount } = holds[index]!
    const from = board.heldTo[index] === -never ? finish[task]! : board.heldTo[index]!
    if (start[task]! >= from) continue
    board.taken[resource]!.take(start[task]!, from, amount)
    board.heldTo[index] = start[task]!
  }
}

/** The latest fit that also finds the resources free of whatever holds the task would end. */
function fitClear(board: Board, task: number, mode: number, { start, finish }: Bounds): boolean {
  const { closes, problem } = board.network
  const bounds = { start, finish }
  while (fitLatest(board, task, mode, bounds)) {
    const { run } = board
    let blocked = never
    for (const index of closes[task]!) {
      const { resource, amount } = problem.holds[index]!
      blocked = Math.min(blocked, board.taken[resource]!.blockedFrom(run.start, run.finish, amount))
    }
    if (blocked === never) return true
    bounds.finish = Math.min(blocked, run.finish - 1)
  }
  return false
}

/** The mode whose fit starts latest (ties: mode order), in `board.best`; -1 where none fits. */
function latestFit(board: Board, task: number, bounds: Bounds): number {
  const modes = board.network.clocks[task]!.length
  let best = -1
  for (let mode = 0; mode < modes; mode++) {
    if (!fitClear(board, task, mode, bounds)) continue
    if (best >= 0 && board.run.start <= board.best.start) continue
    best = mode
    copyRun(board.run, board.best)
  }
  return best
}

/** Where links and calendar alone would have the latest start. */
function latestByLinks({ network, run }: Board, task: number, { start, finish }: Bounds): void {
  const clock = network.clocks[task]![0]!
  if (runBefore(clock, start, finish, run)) return
  run.start = Math.min(start, finish - clock.duration)
  run.finish = run.start + clock.duration
}

/** Links that put the first of two tasks before the second in any reading: what the backward pass waits for. */
function waitsFor(network: Network): {
  readonly next: readonly (readonly number[])[]
  readonly count: Int32Array
} {
  const place = placesOf(roughOrder(network))
  const count = new Int32Array(network.size)
  const next = network.into.map((arcs, task) =>
    arcs.filter(({ turned, from }) => !turned && place[from]! < place[task]!).map(({ from }) => from),
  )
  for (const list of next) for (const from of list) count[from]!++
  return { next, count }
}

/** The backward pass of a network; `around` names the holds within which each task lies. Cost: as a forward pass. */
export function backwardOf(network: Network, around: Blocks['around']): BackwardPass {
  const board = boardOf(network)
  const { next, count } = waitsFor(network)
  const falling = new Float64Array(network.size)
  return (key, end, start) => {
    wipe(board, never)
    for (let task = 0; task < network.size; task++) falling[task] = -key[task]!
    const queue = new LowestFirst(falling)
    const waits = count.slice()
    for (let task = 0; task < network.size; task++) if (waits[task] === 0) queue.push(task)
    while (queue.size > 0) {
      const task = queue.pop()
      const bounds = latestBoundsOf(network, board.times, task)
      bounds.finish = Math.min(bounds.finish, end)
      const mode = latestFit(board, task, bounds)
      if (mode < 0) latestByLinks(board, task, bounds)
      const run = mode < 0 ? board.run : board.best
      board.times.start[task] = run.start
      board.times.finish[task] = run.finish
      if (mode >= 0) takeNeeds(board, task, mode, run, 1)
      takeHolds(board, task, around[task]!)
      for (const from of next[task]!) if (--waits[from]! === 0) queue.push(from)
    }
    start.set(board.times.start)
  }
}
