import { strongComponents } from './strong-components.ts'
import type { Successors } from './topological-order.ts'

/** A group of nodes that wait for one another. */
export interface Ring {
  /** A shortest ring of the group in the order of the arcs, its lowest node first; the first is not repeated. */
  readonly ring: readonly number[]
  /** Every node of the group, rising. */
  readonly members: readonly number[]
}

/**
 * Every group of nodes caught in rings, each with one shortest ring to show; none where an order exists. Of several
 * shortest rings the one with the lowest first node is taken.
 * Cost: O(members x arcs) within each group, by breadth-first search from each member.
 */
export function findRings(successors: Successors): Ring[] {
  return strongComponents(successors)
    .filter((group) => group.length > 1 || successors[group[0]!]!.includes(group[0]!))
    .map((members) => ({ ring: shortestRing(successors, members), members }))
}

function shortestRing(successors: Successors, members: readonly number[]): number[] {
  const inside = new Set(members)
  let best: number[] | null = null
  for (const start of members) {
    const ring = ringThrough(successors, inside, start)
    if (best === null || ring.length < best.length) best = ring
    if (best.length === 1) break
  }
  return best!
}

/** A shortest ring through `start`. Needs: `start` reaches itself within `inside`. */
function ringThrough(successors: Successors, inside: ReadonlySet<number>, start: number): number[] {
  const cameFrom = new Map<number, number>()
  const queue = [start]
  for (const node of queue) {
    for (const next of [...successors[node]!].sort((a, b) => a - b)) {
      if (next === start) return walkBack(cameFrom, start, node)
      if (!inside.has(next) || cameFrom.has(next)) continue
      cameFrom.set(next, node)
      queue.push(next)
    }
  }
  throw new Error(`node ${start} is on no ring`)
}

function walkBack(cameFrom: ReadonlyMap<number, number>, start: number, end: number): number[] {
  const ring: number[] = []
  for (let node = end; node !== start; node = cameFrom.get(node)!) ring.push(node)
  return [start, ...ring.reverse()]
}
