/** From an order of tasks to a schedule: serial generation, one block after the other, each at its earliest fit. */
import type { Instant } from '../../base/clock.ts'
import { type Board, bestFit, boardOf, wipe } from './board.ts'
import { type Blocks, linkedBlocks } from './linked-blocks.ts'
import type { Network } from './network.ts'
import { placeBlock, put } from './place-block.ts'
import { boundsOf } from './precedence.ts'
import type { Schedule } from './problem.ts'
import { emptyRun, never, placementOf, runFrom } from './work-time.ts'

/** A schedule as flat arrays by task: the pieces follow from mode and start. */
export interface Decoded {
  readonly start: Int32Array
  readonly finish: Int32Array
  readonly mode: Int32Array
  readonly end: Instant
}

/** Why tasks found no place. */
export type Reason = 'beyond horizon' | 'no room' | 'longest wait missed'

/** A decoder's answer: a schedule, or the tasks that found no place and why. */
export type DecodeOutcome =
  | { readonly kind: 'found'; readonly found: Decoded }
  | {
      readonly kind: 'stuck'
      readonly stuck: readonly number[]
      readonly why: Reason
    }

/**
 * Tasks in order of rank (lowest first; who must wait for whom is seen to) to a schedule.
 * Gives: the same answer for the same rank, whatever was asked before.
 */
export type Decoder = (rank: ArrayLike<number>) => DecodeOutcome

/** A heap of blocks, least key first, block number among equals. */
class BlockQueue {
  readonly #heap: number[] = []
  readonly #key: Float64Array

  constructor(key: Float64Array) {
    this.#key = key
  }

  get size(): number {
    return this.#heap.length
  }

  #before(a: number, b: number): boolean {
    const gap = this.#key[a]! - this.#key[b]!
    return gap === 0 ? a < b : gap < 0
  }

  push(block: number): void {
    const heap = this.#heap
    let k = heap.length
    heap.push(block)
    while (k > 0) {
      const up = (k - 1) >> 1
      if (!this.#before(block, heap[up]!)) break
      heap[k] = heap[up]!
      k = up
    }
    heap[k] = block
  }

  pop(): number {
    const heap = this.#heap
    const top = heap[0]!
    const last = heap.pop()!
    if (heap.length === 0) return top
    let k = 0
    for (;;) {
      let down = 2 * k + 1
      if (down >= heap.length) break
      if (down + 1 < heap.length && this.#before(heap[down + 1]!, heap[down]!)) down++
      if (!this.#before(heap[down]!, last)) break
      heap[k] = heap[down]!
      k = down
    }
    heap[k] = last
    return top
  }
}

function blockKeys(blocks: Blocks, rank: ArrayLike<number>): Float64Array {
  return Float64Array.from(blocks.members, (tasks) => Math.min(...tasks.map((task) => rank[task]!)))
}

function placeSingle(board: Board, task: number): boolean {
  const bounds = boundsOf(board.network, board.times, task)
  const mode = bestFit(board, task, bounds)
  return mode >= 0 && put(board, task, mode, board.best)
}

function finished(board: Board): Decoded {
  const { start, finish } = board.times
  const end = finish.reduce((last, at) => Math.max(last, at), board.network.problem.start)
  return { start: start.slice(), finish: finish.slice(), mode: board.mode.slice(), end }
}

/** Whether a block can be placed at all, with nothing else on the board, nobody before it and no release. */
function fitsAlone(network: Network, blocks: Blocks, block: number): boolean {
  const { problem } = network
  const free = problem.tasks.map((task) => ({ ...task, release: problem.start }))
  const board = boardOf({ ...network, problem: { ...problem, tasks: free } })
  wipe(board, -never)
  const order = Int32Array.from(blocks.blockOf, (_, task) => task)
  return placeBlock(board, blocks, block, order) === 'placed'
}

/** Why tasks of a block found no place: tied ones that miss each other even alone miss a longest wait. */
export function whyStuck(network: Network, blocks: Blocks, block: number, outcome: Reason): Reason {
  return blocks.tight[block] && !fitsAlone(network, blocks, block) ? 'longest wait missed' : outcome
}

/**
 * The decoder of a network. Cost: one pass takes O(tasks x (log tasks + modes x needs x steps in the way)).
 */
export function decoderOf(network: Network, blocks: Blocks = linkedBlocks(network)): Decoder {
  const board = boardOf(network)
  const reasons = new Map<string, Reason>()
  const reason = (block: number, outcome: Reason) => {
    const known = reasons.get(`${block} ${outcome}`) ?? whyStuck(network, blocks, block, outcome)
    reasons.set(`${block} ${outcome}`, known)
    return known
  }
  return (rank) => {
    wipe(board, -never)
    const queue = new BlockQueue(blockKeys(blocks, rank))
    const waits = blocks.waits.slice()
    for (let block = 0; block < waits.length; block++) if (waits[block] === 0) queue.push(block)
    while (queue.size > 0) {
      const block = queue.pop()
      const members = blocks.members[block]!
      if (members.length > 1 || blocks.tight[block] || network.opens[members[0]!]!.length > 0) {
        const outcome = placeBlock(board, blocks, block, rank)
        if (outcome !== 'placed') return { kind: 'stuck', stuck: members, why: reason(block, outcome) }
      } else if (!placeSingle(board, members[0]!)) {
        return { kind: 'stuck', stuck: members, why: 'beyond horizon' }
      }
      for (const next of blocks.after[block]!) if (--waits[next]! === 0) queue.push(next)
    }
    return { kind: 'found', found: finished(board) }
  }
}

/** The flat schedule with its pieces written out. */
export function scheduleOf(network: Network, decoded: Decoded): Schedule {
  const run = emptyRun()
  const placements = network.clocks.map((clocks, task) => {
    const mode = decoded.mode[task]!
    runFrom(clocks[mode]!, decoded.start[task]!, run)
    return placementOf(run, mode)
  })
  return { placements, finish: decoded.end }
}
