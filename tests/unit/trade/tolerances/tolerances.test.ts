import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { generalLengthMm, readGeneralClass } from '../../../../src/trade/tolerances/general-tolerance.ts'
import { processCapability, shareBelow } from '../../../../src/trade/tolerances/process-capability.ts'
import { processReach, processReaches } from '../../../../src/trade/tolerances/process-reach.ts'
import { sampledStack } from '../../../../src/trade/tolerances/sampled-stack.ts'
import {
  inflatedHalf,
  middleForLeast,
  shiftedHalf,
  stackUp,
} from '../../../../src/trade/tolerances/stack-up.ts'

describe('a drawing note', () => {
  it.each([
    ['ISO 2768-m', 'm'],
    ['ISO 2768-mK', 'm'],
    ['DIN ISO 2768 - f', 'f'],
    ['ISO 2768-1 c', 'c'],
    ['v', 'v'],
    ['ISO 2768', null],
    ['x', null],
  ])('%s names class %s', (text, wanted) => {
    expect(readGeneralClass(text)).toBe(wanted)
  })
})

describe('general tolerances', () => {
  it('never shrink with the size nor from a finer to a coarser class', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2000, noNaN: true }),
        fc.double({ min: 0.5, max: 2000, noNaN: true }),
        (a, b) => {
          const [small, large] = a <= b ? [a, b] : [b, a]
          for (const chosen of ['f', 'm', 'c'] as const)
            expect(generalLengthMm(chosen, small)!).toBeLessThanOrEqual(generalLengthMm(chosen, large)!)
          expect(generalLengthMm('f', a)!).toBeLessThanOrEqual(generalLengthMm('m', a)!)
          expect(generalLengthMm('m', a)!).toBeLessThanOrEqual(generalLengthMm('c', a)!)
        },
      ),
    )
  })
})

describe('numbers of any size', () => {
  const ok = (value: unknown): boolean => {
    if (value === null) return true
    if (typeof value === 'number') return Number.isFinite(value)
    const record = value as Record<string, unknown>
    return (
      'fault' in record ||
      Object.values(record).every((field) => typeof field !== 'number' || Number.isFinite(field))
    )
  }

  it('give finite figures or a fault', () => {
    const link = fc.record({
      name: fc.constant('a'),
      factor: fc.double(),
      middle: fc.double(),
      half: fc.double(),
    })
    fc.assert(
      fc.property(fc.array(link, { maxLength: 4 }), fc.double(), fc.double(), (links, a, b) => {
        expect(ok(stackUp(links))).toBe(true)
        expect(ok(inflatedHalf(links, a))).toBe(true)
        expect(ok(shiftedHalf(links, a))).toBe(true)
        expect(ok(middleForLeast(links, 0, a))).toBe(true)
        expect(ok(sampledStack(links, { spread: 'normal', count: 3, seed: 1, limits: [a, b] }))).toBe(true)
        expect(ok(processCapability({ lowerMm: a, upperMm: b, meanMm: a, sigmaMm: b }))).toBe(true)
        expect(ok(processReach(processReaches[0]!, { nominalMm: a, widthUm: b }))).toBe(true)
        expect(shareBelow(a)).toBeGreaterThanOrEqual(0)
        expect(shareBelow(a)).toBeLessThanOrEqual(1)
      }),
      { numRuns: 1500 },
    )
  })

  it('of a chain without links are all nothing', () => {
    expect(stackUp([])).toMatchObject({ middle: 0, worstHalf: 0, shares: [] })
  })

  it('keep the statistical spread within the worst case', () => {
    const size = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(fc.array(size, { minLength: 1, maxLength: 6 }), (halves) => {
        const found = stackUp(halves.map((half) => ({ name: 'a', factor: -1, middle: 1, half })))
        if ('fault' in found) throw new Error(found.what)
        expect(found.statisticalHalf).toBeLessThanOrEqual(found.worstHalf + 1e-9)
      }),
    )
  })
})
