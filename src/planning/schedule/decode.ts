/** From an order of tasks to a schedule: serial generation, one block after the other, each at its earliest fit. */
import type { Instant } from '../../base/clock.ts'
import { type Board, bestFit, boardOf, wipe } from './board.ts'
import { type Blocks, linkedBlocks } from './linked-blocks.ts'
import { LowestFirst } from './lowest-first.ts'
import type { Network } from './network.ts'
import { blockPlacer, placeBlock, put } from './place-block.ts'
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

/** A resource that is not there for a while. */
export interface Taken {
  readonly resource: number
  readonly open: Instant
  readonly close: Instant
}

/**
 * Tasks in order of rank (lowest first; who must wait for whom is seen to) to a schedule, around what is `taken`.
 * Gives: the same answer for the same rank, whatever was asked before.
 */
export type Decoder = (rank: ArrayLike<number>, taken?: readonly Taken[]) => DecodeOutcome

/** The lowest rank within each block. */
function blockKeys({ members, blockOf }: Blocks, rank: ArrayLike<number>): Float64Array {
  const keys = new Float64Array(members.length).fill(Number.POSITIVE_INFINITY)
  for (let task = 0; task < blockOf.length; task++) {
    const block = blockOf[task]!
    if (rank[task]! < keys[block]!) keys[block] = rank[task]!
  }
  return keys
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
  return placeBlock(blockPlacer(board, blocks), block, order) === 'placed'
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
  const placer = blockPlacer(board, blocks)
  const reasons = new Map<string, Reason>()
  const reason = (block: number, outcome: Reason) => {
    const known = reasons.get(`${block} ${outcome}`) ?? whyStuck(network, blocks, block, outcome)
    reasons.set(`${block} ${outcome}`, known)
    return known
  }
  return (rank, taken = []) => {
    wipe(board, -never)
    for (const { resource, open, close } of taken)
      board.taken[resource]!.take(open, close, network.problem.resources[resource]!.capacity)
    const queue = new LowestFirst(blockKeys(blocks, rank))
    const waits = blocks.waits.slice()
    for (let block = 0; block < waits.length; block++) if (waits[block] === 0) queue.push(block)
    while (queue.size > 0) {
      const block = queue.pop()
      const members = blocks.members[block]!
      if (members.length > 1 || blocks.tight[block] || network.opens[members[0]!]!.length > 0) {
        const outcome = placeBlock(placer, block, rank)
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
