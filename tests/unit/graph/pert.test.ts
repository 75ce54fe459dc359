import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { NetworkLink } from '../../../src/graph/network.ts'
import { chanceBy, normalBelow, pert } from '../../../src/graph/pert.ts'

const link = (from: number, to: number, type: NetworkLink['type'] = 'FS', lag = 0) => ({
  from,
  to,
  type,
  lag,
})

describe('pert', () => {
  it('takes the larger variance of two chains alike in mean', () => {
    const estimates = [
      { low: 6, likely: 6, high: 6 },
      { low: 3, likely: 6, high: 9 },
      { low: 1, likely: 1, high: 1 },
    ]
    expect(pert(estimates, [link(0, 2), link(1, 2)])).toEqual({ mean: 7, variance: 1 })
  })

  it('leaves out the spread of an activity that the chain only passes by one event', () => {
    const estimates = [
      { low: 1, likely: 2, high: 9 },
      { low: 3, likely: 6, high: 9 },
    ]
    expect(pert(estimates, [link(0, 1, 'SS', 4)])).toEqual({ mean: 10, variance: 1 })
  })

  it('knows a ring', () => {
    const estimate = { low: 1, likely: 1, high: 1 }
    expect(pert([estimate, estimate], [link(0, 1), link(1, 0)])).toBeNull()
  })
})

describe('chanceBy', () => {
  it('is all or nothing without spread', () => {
    expect([6, 7, 8].map((day) => chanceBy({ mean: 7, variance: 0 }, day))).toEqual([0, 1, 1])
  })
})

describe('normalBelow', () => {
  it('rises, and mirrors at 0', () => {
    const number = fc.double({ min: -12, max: 12, noNaN: true })
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(normalBelow(a) + normalBelow(-a)).toBeCloseTo(1, 13)
        if (a + 1e-6 < b) expect(normalBelow(a)).toBeLessThanOrEqual(normalBelow(b) + 1e-15)
      }),
    )
  })
})
