/** The backward half of improvement: every task as late as the plan's finish allows. */
import { type Board, boardOf, fitLatest, takeNeeds, wipe } from './board.ts'
import type { Decoded } from './decode.ts'
import type { Network } from './network.ts'
import { type Bounds, latestBoundsOf } from './precedence.ts'
import { never } from './work-time.ts'

/** From a schedule to starts pushed as late as they go; only their order is meant to be used. */
export type BackwardPass = (decoded: Decoded) => Int32Array

/**
 * A hold seen from behind: it is taken from its earliest member so far up to its end. Earlier members stretch it.
 * Who else is there is not asked: the order that comes out is checked by the forward pass.
 */
function takeHolds(board: Board, task: number, inside: readonly ReadonlySet<number>[]): void {
  const { holds } = board.network.problem
  const { start, finish } = board.times
  for (const [index, members] of inside.entries()) {
    if (!members.has(task)) continue
    const { resource, amount } = holds[index]!
    const from = board.heldTo[index] === -never ? finish[task]! : board.heldTo[index]!
    if (start[task]! >= from) continue
    board.taken[resource]!.take(start[task]!, from, amount)
    board.heldTo[index] = start[task]!
  }
}

/** The latest fit that also finds the resources free of whatever holds the task would end. */
function fitClear(board: Board, task: number, mode: number, bounds: Bounds): boolean {
  const { closes, problem } = board.network
  while (fitLatest(board, task, mode, bounds)) {
    const { start, finish } = board.run
    const before = closes[task]!.map((index) => {
      const { resource, amount } = problem.holds[index]!
      return board.taken[resource]!.blockedFrom(start, finish, amount)
    })
    const blocked = Math.min(never, ...before)
    if (blocked === never) return true
    bounds.finish = Math.min(blocked, finish - 1)
  }
  return false
}

/**
 * The backward pass of a network. Tasks go in order of falling finish, each to its latest fit before what already went;
 * a task that finds none keeps its start.
 */
export function backwardOf(network: Network, inside: readonly ReadonlySet<number>[]): BackwardPass {
  const board = boardOf(network)
  const numbers = Array.from({ length: network.size }, (_, task) => task)
  return (decoded) => {
    wipe(board, never)
    const { start, finish, mode, end } = decoded
    const order = [...numbers].sort((a, b) => finish[b]! - finish[a]! || start[b]! - start[a]! || b - a)
    for (const task of order) {
      const bounds = latestBoundsOf(network, board.times, task)
      bounds.finish = Math.min(bounds.finish, end)
      const fits = fitClear(board, task, mode[task]!, bounds) && board.run.start >= start[task]!
      board.times.start[task] = fits ? board.run.start : start[task]!
      board.times.finish[task] = fits ? board.run.finish : finish[task]!
      if (fits) takeNeeds(board, task, mode[task]!, board.run, 1)
      takeHolds(board, task, inside)
    }
    return board.times.start.slice()
  }
}
