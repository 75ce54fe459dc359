import { describe, expect, it } from 'vitest'
import { shareOut } from '../../src/base/money.ts'
import { planPurchase } from '../../src/planning/buying/index.ts'
import { anOffer, aPart, aProject, aVendor, frac } from '../unit/planning/project-builder.ts'

describe('landed cost', () => {
  /**
   * Worked example of a public page, "Landed Cost Calculator": goods 8,000, freight 1,200, insurance 100, duty 4 %,
   * tax 20 %, clearance 120; printed: value for duty 9,300, duty 372, landed about 11,726, about 5.86 a unit. The page
   * leaves clearance out of the tax base; here clearance is taxed, so it is added by hand. Insurance counts as freight.
   */
  it('of 2,000 units is 11,726.40, 5.8632 a unit', () => {
    const vendor = aVendor('overseas', { freight: frac(1300), duty: frac('0.04'), tax: frac('0.2') })
    const project = aProject({
      vendors: [vendor],
      parts: [aPart('unit', [anOffer('overseas', '4.00')])],
      needed: { unit: 2000 },
    })
    const cart = planPurchase(project).carts[0]!
    expect([cart.goods, cart.freight, cart.duty, cart.tax]).toEqual([800_000, 130_000, 37_200, 193_440])
    expect(cart.total! + 12_000).toBe(1_172_640)
    expect((cart.total! + 12_000) / 2000 / 100).toBeCloseTo(5.8632, 10)
  })

  // Tax base with clearance in it; worked by hand: 0.2 x (9,300 + 372 + 120).
  it('taxes clearance with the rest', () => {
    const vendor = aVendor('overseas', {
      freight: frac(1300),
      duty: frac('0.04'),
      tax: frac('0.2'),
      clearance: frac(120),
    })
    const parts = [aPart('unit', [anOffer('overseas', '4.00')])]
    const cart = planPurchase(aProject({ vendors: [vendor], parts, needed: { unit: 2000 } })).carts[0]!
    expect([cart.tax, cart.total]).toEqual([195_840, 1_175_040])
  })
})

// Constructed shares, worked by hand.
describe('shares of an order', () => {
  const cartOf = (prices: readonly string[], freight: number) => {
    const parts = prices.map((price, k) => aPart(`p${k}`, [anOffer('shop', price)]))
    return planPurchase(aProject({ vendors: [aVendor('shop', { freight: frac(freight) })], parts })).carts[0]!
  }

  it('freight of 12.00 over lines of 60, 25 and 15 is 7.20, 3.00 and 1.80', () => {
    expect(cartOf(['60', '25', '15'], 12).lines.map(({ freight }) => freight)).toEqual([720, 300, 180])
  })

  it('freight of 10.00 over three equal lines is 3.33, 3.34 and 3.33', () => {
    expect(cartOf(['5', '5', '5'], 10).lines.map(({ freight }) => freight)).toEqual([333, 334, 333])
    expect(shareOut(1000, [frac(1), frac(1), frac(1)])).toEqual([333, 334, 333])
  })

  it('84.00 at 1.0850 is 91.14 at home, and duty of 2.7 % on it 2.46', () => {
    const vendor = aVendor('overseas', { currency: 'GBP', duty: frac('0.027') })
    const parts = [aPart('lens', [anOffer('overseas', '84', { currency: 'GBP' })])]
    const project = aProject({ vendors: [vendor], parts, exchange: { GBP: '1.085' } })
    const cart = planPurchase(project).carts[0]!
    expect([cart.goods, cart.duty, cart.total]).toEqual([9114, 246, 9360])
  })
})
