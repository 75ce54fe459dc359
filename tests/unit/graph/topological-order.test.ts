import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Successors, topologicalOrder } from '../../../src/graph/topological-order.ts'

const graphs = fc
  .integer({ min: 0, max: 8 })
  .chain((n) => fc.array(fc.uniqueArray(fc.nat(Math.max(0, n - 1))), { minLength: n, maxLength: n }))

/** Takes the lowest node that waits for nobody left, again and again. */
function plainOrder(successors: Successors): number[] | null {
  const left = new Set(successors.keys())
  const order: number[] = []
  while (left.size > 0) {
    const next = [...left]
      .sort((a, b) => a - b)
      .find((node) => ![...left].some((a) => successors[a]!.includes(node)))
    if (next === undefined) return null
    left.delete(next)
    order.push(next)
  }
  return order
}

describe('topologicalOrder', () => {
  it('always takes the lowest free node, and knows when there is none', () => {
    fc.assert(
      fc.property(graphs, (successors) => {
        expect(topologicalOrder(successors)).toEqual(plainOrder(successors))
      }),
      { numRuns: 500 },
    )
  })

  it('keeps the written order of nodes that do not wait', () => {
    expect(topologicalOrder([[], [], []])).toEqual([0, 1, 2])
    expect(topologicalOrder([[], [0], [1]])).toEqual([2, 1, 0])
    expect(topologicalOrder([])).toEqual([])
  })

  it('counts a repeated arc once', () => {
    expect(topologicalOrder([[1, 1], []])).toEqual([0, 1])
  })
})
