import { describe, expect, it } from 'vitest'
import { chooseQuantity } from '../../src/planning/buying/choose-quantity.ts'
import { anOffer } from '../unit/planning/project-builder.ts'

/**
 * Price table: Heizer and Render / Render and Stair, Wohl's Discount Store (toy cars at 5.00 up to 999, 4.80 up to
 * 1,999, 4.75 from 2,000), seen in a copy. The needs of a single order are worked out from that table.
 */
const toyCars = anOffer('wholesaler', { 1: '5.00', 1000: '4.80', 2000: '4.75' })

describe('buying more where more is cheaper, toy-car price table', () => {
  it.each([
    [950, 950, 475_000],
    [960, 960, 480_000],
    [970, 1000, 480_000],
    [1970, 1970, 945_600],
    [1979, 1979, 949_920],
    [1980, 2000, 950_000],
    [1985, 2000, 950_000],
  ])(
    'a need of %i is bought as %i for %i cents; the smaller amount where both cost the same',
    (need, buy, cents) => {
      const chosen = chooseQuantity(toyCars, need, 2)
      expect([chosen.quantity, chosen.goodsForeign]).toEqual([buy, cents])
    },
  )

  it('the published order of 1,000 is bought at its own price of 4.80', () => {
    const chosen = chooseQuantity(toyCars, 1000, 2)
    expect(chosen.quantity).toBe(1000)
    expect(chosen.unitPrice!.toString()).toBe('4.8')
    expect(chosen.more).toBeNull()
  })
})

// Worked by hand from the rule of multiples not below a least order; constructed, not published.
describe('least order and pack', () => {
  it.each([
    [7, 10, 5, 10, 'pack'],
    [3, 10, 5, 10, 'least order'],
    [11, 10, 5, 15, 'pack'],
    [23, 1, 10, 30, 'pack'],
    [10, 12, 5, 15, 'least order'],
    [15, 12, 5, 15, null],
  ])('a need of %i with least order %i in packs of %i is bought as %i', (need, moq, pack, buy, more) => {
    const chosen = chooseQuantity(anOffer('shop', '1.00', { moq, pack }), need, 2)
    expect([chosen.quantity, chosen.more]).toEqual([buy, more])
  })

  it.each([
    [18, 20, 4000, 'pack'],
    [21, 30, 4500, 'pack'],
    [75, 80, 12_000, 'pack'],
    [81, 100, 12_000, 'cheaper'],
  ])('a need of %i in packs of ten under three breaks is bought as %i', (need, buy, cents, more) => {
    const offer = anOffer('shop', { 1: '2.00', 25: '1.50', 100: '1.20' }, { pack: 10 })
    const chosen = chooseQuantity(offer, need, 2)
    expect([chosen.quantity, chosen.goodsForeign, chosen.more]).toEqual([buy, cents, more])
  })
})
