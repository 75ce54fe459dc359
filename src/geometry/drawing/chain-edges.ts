import type { DrawnEdge } from './drawn-edges.ts'

/** An edge as a chain passes it. */
export interface ChainLink {
  readonly edge: DrawnEdge
  /** Passed from its second end to its first. */
  readonly backward: boolean
}

/**
 * Edges joined end to end wherever just two of them meet.
 * Needs: edges sorted by place. Gives: every edge once; the same chains whatever order the triangles had.
 * Cost: O(edges).
 */
export function chainEdges(edges: readonly DrawnEdge[]): readonly (readonly ChainLink[])[] {
  const at = new Map<number, number[]>()
  for (const [index, { from, to }] of edges.entries())
    for (const end of [from, to]) {
      const there = at.get(end)
      if (there) there.push(index)
      else at.set(end, [index])
    }
  const used = new Uint8Array(edges.length)
  const walk = (first: number, start: number): readonly ChainLink[] => {
    const links: ChainLink[] = []
    for (let [index, end] = [first, start]; ; ) {
      const edge = edges[index]!
      used[index] = 1
      links.push({ edge, backward: edge.to === end })
      end = edge.from === end ? edge.to : edge.from
      const there = at.get(end)!
      const next = there.length === 2 ? there.find((each) => used[each] === 0) : undefined
      if (next === undefined) return links
      index = next
    }
  }
  const chains: (readonly ChainLink[])[] = []
  // From where chains end or meet first; what is left are rings, begun at their lowest place.
  for (const wanted of [(count: number) => count !== 2, () => true])
    for (const [index, { from, to }] of edges.entries())
      for (const start of [from, to])
        if (used[index] === 0 && wanted(at.get(start)!.length)) chains.push(walk(index, start))
  return chains
}
