/** Tasks that must be placed as one: tied by holds, by longest waits, or by rings of leads and lags. */
import { strongComponents } from '../../graph/strong-components.ts'
import type { Arc } from './lag.ts'
import { type Network, ordersTasks } from './network.ts'

/** The blocks of a problem and which must be placed before which. */
export interface Blocks {
  /** Tasks of each block, ascending. */
  readonly members: readonly (readonly number[])[]
  readonly blockOf: Int32Array
  /** Blocks that wait for each block (repeated where several links say so). */
  readonly after: readonly (readonly number[])[]
  /** How many entries of `after` name each block. */
  readonly waits: Int32Array
  /** Whether members are tied by a longest wait or a ring of lags (else, past one member, by holds). */
  readonly tight: readonly boolean[]
  /** Tasks that each task lets go first within its block. */
  readonly leads: readonly (readonly number[])[]
  /** Tasks between the ends of each hold, ends included. */
  readonly inside: readonly ReadonlySet<number>[]
  /** Holds within which each task lies. */
  readonly around: readonly (readonly number[])[]
}

/** All that `next` leads to from a task, itself included. */
function reach(start: number, next: (task: number) => readonly number[]): Set<number> {
  const found = new Set([start])
  for (const task of found) for (const other of next(task)) found.add(other)
  return found
}

/**
 * Tasks on a way of links from the first to the last task of each hold. As the hold itself leads back from its last
 * task to its first, they all are of one block.
 */
function insides(network: Network, blockOf: Int32Array): Set<number>[] {
  const ways = (arcs: readonly (readonly Arc[])[], end: 'from' | 'to') => (task: number) =>
    arcs[task]!.flatMap((arc) => (!arc.turned && blockOf[arc[end]] === blockOf[task] ? [arc[end]] : []))
  const forward = ways(network.outOf, 'to')
  const backward = ways(network.into, 'from')
  return network.problem.holds.map((hold) => {
    const later = reach(hold.from, forward)
    const earlier = reach(hold.to, backward)
    return new Set([...later].filter((task) => earlier.has(task)))
  })
}

/**
 * The blocks of a network. Tasks that must wait for each other both ways, directly or through others, are one block:
 * so the blocks themselves never wait in a ring.
 */
export function linkedBlocks(network: Network): Blocks {
  const { size, problem } = network
  const ways = network.outOf.map((arcs, task) => {
    const back = network.closes[task]!.map((hold) => problem.holds[hold]!.from)
    return [...arcs.map((arc) => arc.to), ...back]
  })
  const members = strongComponents(ways)
  const count = members.length
  const blockOf = new Int32Array(size)
  for (const [block, tasks] of members.entries()) for (const task of tasks) blockOf[task] = block
  const after: number[][] = Array.from({ length: count }, () => [])
  const waits = new Int32Array(count)
  const tight = Array.from({ length: count }, () => false)
  const leads: number[][] = Array.from({ length: size }, () => [])
  for (const arc of network.arcs) {
    const [from, to] = [blockOf[arc.from]!, blockOf[arc.to]!]
    if (from !== to) {
      after[from]!.push(to)
      waits[to]!++
    } else if (ordersTasks(network, arc)) leads[arc.from]!.push(arc.to)
    else tight[from] = true
  }
  const inside = insides(network, blockOf)
  const around = Array.from({ length: size }, (): number[] => [])
  for (const [index, tasks] of inside.entries()) for (const task of tasks) around[task]!.push(index)
  return { members, blockOf, after, waits, tight, leads, inside, around }
}
