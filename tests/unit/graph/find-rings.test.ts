import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findRings } from '../../../src/graph/find-rings.ts'
import { strongComponents } from '../../../src/graph/strong-components.ts'
import { type Successors, topologicalOrder } from '../../../src/graph/topological-order.ts'

const graphs = fc
  .integer({ min: 1, max: 7 })
  .chain((n) => fc.array(fc.uniqueArray(fc.nat(n - 1), { maxLength: 3 }), { minLength: n, maxLength: n }))

/** Steps from each node to each, at least one; Infinity where there is no way. */
function distances(successors: Successors): number[][] {
  const all = successors.map((nexts) =>
    successors.map((_, b) => (nexts.includes(b) ? 1 : Number.POSITIVE_INFINITY)),
  )
  for (const k of successors.keys())
    for (const a of successors.keys())
      for (const b of successors.keys()) all[a]![b] = Math.min(all[a]![b]!, all[a]![k]! + all[k]![b]!)
  return all
}

describe('strongComponents', () => {
  it('groups exactly the nodes that reach one another', () => {
    fc.assert(
      fc.property(graphs, (successors) => {
        const far = distances(successors)
        const together = (a: number, b: number) => a === b || Number.isFinite(far[a]![b]! + far[b]![a]!)
        const nodes = [...successors.keys()]
        const groups = nodes
          .map((a) => nodes.filter((b) => together(a, b)))
          .filter((group, a) => group[0] === a)
        expect(strongComponents(successors)).toEqual(groups)
      }),
      { numRuns: 500 },
    )
  })
})

describe('findRings', () => {
  it('finds a ring for each group exactly where no order exists', () => {
    fc.assert(
      fc.property(graphs, (successors) => {
        expect(findRings(successors).length === 0).toBe(topologicalOrder(successors) !== null)
      }),
    )
  })

  it('shows a true ring, as short as any of its group, from its lowest node on', () => {
    fc.assert(
      fc.property(graphs, (successors) => {
        const far = distances(successors)
        for (const { ring, members } of findRings(successors)) {
          for (const [i, node] of ring.entries())
            expect(successors[node]).toContain(ring[(i + 1) % ring.length])
          expect(ring.length).toBe(Math.min(...members.map((node) => far[node]![node]!)))
          expect(ring[0]).toBe(Math.min(...ring))
          expect(new Set(ring).size).toBe(ring.length)
        }
      }),
      { numRuns: 500 },
    )
  })

  it('does not depend on the order in which arcs are written', () => {
    fc.assert(
      fc.property(graphs, (successors) => {
        expect(findRings(successors.map((nexts) => [...nexts].reverse()))).toEqual(findRings(successors))
      }),
    )
  })

  it('shows one ring for each of several groups', () => {
    expect(findRings([[1], [0], [2], [4], [5], [3]])).toEqual([
      { ring: [0, 1], members: [0, 1] },
      { ring: [2], members: [2] },
      { ring: [3, 4, 5], members: [3, 4, 5] },
    ])
  })

  it('finds the ring in a long row without running out of stack', () => {
    const length = 20_000
    const row = Array.from({ length }, (_, i) => (i + 1 < length ? [i + 1] : [length - 2]))
    expect(findRings(row)).toEqual([{ ring: [length - 2, length - 1], members: [length - 2, length - 1] }])
  })
})
