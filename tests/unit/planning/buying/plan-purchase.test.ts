import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roundMoney } from '../../../../src/base/money.ts'
import type { Project } from '../../../../src/model/project.ts'
import { planPurchase } from '../../../../src/planning/buying/index.ts'
import {
  aCutter,
  aForm,
  aMaterial,
  anOffer,
  anOperation,
  aPart,
  aProject,
  aSetup,
  aStock,
  aVendor,
  bar,
  days,
  frac,
  grams,
  here,
  machined,
  mm3,
  outside,
  points,
  printed,
  quantity,
} from '../project-builder.ts'
import { projects } from '../random-project.ts'

const linesOf = (project: Project) => planPurchase(project).carts.flatMap(({ lines }) => lines)

describe('what is bought', () => {
  it('buys tries and spares of what is not here', () => {
    const part = aPart('magnet', [anOffer('shop', 1)], { spares: 2, have: 3, tries: 2 })
    const project = aProject({ vendors: [aVendor('shop')], parts: [part], needed: { magnet: 5 } })
    expect(linesOf(project)[0]).toMatchObject({ id: 'magnet', needed: 8, quantity: 8 })
  })

  it('sends each lot out as a cart of its own, with what its offer and its step wait for', () => {
    const need = (id: string) => ({ kind: 'work' as const, id, at: here })
    const route = [
      aSetup([]),
      outside(anOffer('anodiser', '1.10', { minimum: frac(35), needs: [need('drawing')] }), {
        needs: [need('drawing'), need('masks')],
      }),
    ]
    const parts = [aPart('base', [], { way: machined('al', null, { route, lot: 2 }) })]
    const project = aProject({ vendors: [aVendor('anodiser')], parts, needed: { base: 3 } })
    const { carts } = planPurchase(project)
    expect(carts.map(({ id }) => id)).toEqual(['base / outside 1 / lot 1', 'base / outside 1 / lot 2'])
    expect(carts.map(({ lines }) => lines[0]!.needed)).toEqual([2, 1])
    expect(carts.map(({ goods, outside: away }) => [goods, away])).toEqual([
      [3500, true],
      [3500, true],
    ])
    expect(carts[0]!.needs.map((target) => 'id' in target && target.id)).toEqual(['drawing', 'masks'])
    expect(carts[0]!.lines[0]!.what).toEqual({ kind: 'outside', part: 'base', routeStep: 1, lot: 0 })
  })

  it('buys a cutter only where none is here, and as many as wear out', () => {
    const route = [aSetup([anOperation('flat', 600), anOperation('ball', 600), anOperation('own', 600)])]
    const offers = [anOffer('tools', 9)]
    const project = aProject({
      vendors: [aVendor('tools')],
      cutters: [
        aCutter('ball', { offers }),
        aCutter('flat', { offers, life: points(1000) }),
        aCutter('own', { offers, life: points(100), have: 1 }),
        aCutter('idle', { offers }),
      ],
      parts: [aPart('base', [], { way: machined('al', null, { route }) })],
      needed: { base: 4 },
    })
    expect(linesOf(project).map(({ id, quantity: many }) => [id, many])).toEqual([
      ['ball', 1],
      ['flat', 3],
    ])
  })

  it('takes one cart per vendor unless a cart name separates them, with the longest lead of its lines', () => {
    const parts = [
      aPart('a', [anOffer('shop', 1, { lead: days(1, 2, 6) })]),
      aPart('b', [anOffer('shop', 1, { lead: days(2) })]),
      aPart('c', [anOffer('shop', 1, { cart: 'late' })]),
    ]
    const vendors = [aVendor('shop', { transit: days(2, 3, 6) })]
    const { carts } = planPurchase(aProject({ vendors, parts }))
    expect(carts.map(({ id, leadDays, likelyLeadDays }) => [id, leadDays, likelyLeadDays])).toEqual([
      ['shop', 3, 2],
      ['shop / late', 1, 1],
    ])
    expect([carts[0]!.transitDays, carts[0]!.likelyTransitDays]).toEqual([4, 3])
  })

  it('names as missing what nobody offers and material that cannot be measured', () => {
    const parts = [
      aPart('orphan', []),
      aPart('cover', [], { way: printed('resin', null) }),
      aPart('base', [], { way: machined('al', null) }),
    ]
    const project = aProject({ materials: [aMaterial('resin', []), aMaterial('al', [])], parts })
    expect(planPurchase(project).missing.map(({ id, why }) => [id, why])).toEqual([
      ['base / material', 'no stock'],
      ['cover / material', 'no volume'],
      ['orphan', 'no offer'],
    ])
  })
})

describe('material', () => {
  const al = (have: string) =>
    aMaterial('al', [aForm('al bar', bar(20, 100), { have: frac(have), offers: [anOffer('metal', 10)] })])
  const cut = (length: number) => machined('al', aStock(bar(20, length), 'al bar'))

  it('cuts whole pieces from bars, own remnant first', () => {
    const parts = [aPart('long', [], { way: cut(58) }), aPart('short', [], { way: cut(18) })]
    const project = aProject({
      vendors: [aVendor('metal')],
      materials: [al('0.4')],
      parts,
      needed: { long: 2, short: 3 },
    })
    const [plan] = planPurchase(project).cuts
    expect(plan!.units.map(({ own, pieces }) => [own, pieces.map(({ part }) => part)])).toEqual([
      [true, ['short', 'short']],
      [false, ['long', 'short']],
      [false, ['long']],
    ])
    expect(plan!.unitsBought).toBe(2)
    expect(plan!.pieces.map(({ part, share }) => [part, share.toString()])).toEqual([
      ['long', '0.6'],
      ['short', '0.2'],
    ])
    expect(plan!.fromStock.toString()).toBe('0.4')
    expect(plan!.unitsUsed.toString()).toBe('1.8')
  })

  it('cuts from an own remnant before an own whole bar', () => {
    const project = aProject({ materials: [al('1.4')], parts: [aPart('short', [], { way: cut(18) })] })
    expect(planPurchase(project).cuts[0]!.units.map(({ size }) => size.toString())).toEqual(['0.4'])
  })

  it('draws what is here for one part after the other, and buys the rest', () => {
    const bottle = aForm('resin 1 L', { shape: 'volume', volume: mm3(1000) }, { have: frac('0.5') })
    const parts = ['a', 'b', 'c'].map((id) => aPart(id, [], { way: printed('resin', 300) }))
    const [plan] = planPurchase(aProject({ materials: [aMaterial('resin', [bottle])], parts })).cuts
    const taken = plan!.pieces.map(({ part, fromStock, fromBought }) => [
      part,
      `${fromStock} + ${fromBought}`,
    ])
    expect(taken).toEqual([
      ['a', '0.3 + 0'],
      ['b', '0.2 + 0.1'],
      ['c', '0 + 0.3'],
    ])
    expect(plan!.unitsBought).toBe(1)
  })

  it('lets the last piece of a bar take the end as it is, and refuses a piece longer than the bar', () => {
    const parts = [aPart('half', [], { way: cut(49) }), aPart('pole', [], { way: cut(101) })]
    const project = aProject({
      vendors: [aVendor('metal')],
      materials: [al('0')],
      parts,
      needed: { half: 2, pole: 1 },
    })
    const purchase = planPurchase(project)
    expect(purchase.cuts[0]).toMatchObject({ unitsBought: 1, tooLarge: ['pole'] })
    expect(purchase.cuts[0]!.unitsUsed.toString()).toBe('1')
    expect(purchase.missing.map(({ id, why }) => [id, why])).toEqual([['pole / material', 'too large']])
  })

  it('turns a printed volume into the mass of a spool by its density', () => {
    const spool = aForm(
      'pla 1 kg',
      { shape: 'mass', mass: grams(1000) },
      { have: frac('0.1'), offers: [anOffer('plastics', 20)] },
    )
    const density = quantity('0.00125', 'length^-3 mass')
    const project = aProject({
      vendors: [aVendor('plastics')],
      materials: [aMaterial('pla', [spool], { density })],
      parts: [aPart('case', [], { way: printed('pla', 100_000) })],
      needed: { case: 3 },
    })
    const [plan] = planPurchase(project).cuts
    // 3 x 100 cm3 x 1.25 g/cm3 = 375 g, of which 100 g are here.
    expect(plan!.unitsUsed.toString()).toBe('0.375')
    expect(plan!.fromStock.toString()).toBe('0.1')
    expect(plan!.unitsBought).toBe(1)
  })
})

describe('money of a cart with an unknown price', () => {
  const cartOf = (facts: Parameters<typeof aVendor>[1], known = '50') =>
    planPurchase(
      aProject({
        vendors: [aVendor('shop', facts)],
        parts: [aPart('dear', [anOffer('shop', known)]), aPart('riddle', [anOffer('shop', null)])],
      }),
    ).carts[0]!

  it('knows plain freight and clearance, but no share of them, no duty and no total', () => {
    const cart = cartOf({ freight: frac(8), clearance: frac(5), duty: frac('0.1') })
    expect(cart).toMatchObject({
      goods: null,
      freight: 800,
      clearance: 500,
      surcharge: 0,
      duty: null,
      tax: 0,
      total: null,
    })
    expect(cart).toMatchObject({ known: 6300, unknown: ['riddle'] })
    expect(cart.lines.map(({ freight, landed, known }) => [freight, landed, known])).toEqual([
      [null, null, 6300],
      [null, null, 0],
    ])
  })

  it('knows freight below a free limit and the surcharge below a least order only once the known goods decide', () => {
    expect(cartOf({ freight: frac(8), freeOver: frac(60) }).freight).toBeNull()
    expect(cartOf({ freight: frac(8), freeOver: frac(40) }).freight).toBe(0)
    expect(cartOf({ minimumOrder: frac(60) }).surcharge).toBeNull()
    expect(cartOf({ minimumOrder: frac(50) }).surcharge).toBe(0)
  })

  it('keeps the landed price of the known line where the cart adds nothing', () => {
    expect(cartOf({}).lines.map(({ landed }) => landed)).toEqual([5000, null])
  })
})

describe('foreign money', () => {
  const parts = [
    aPart('lens', [anOffer('overseas', '19.99', { currency: 'USD' })]),
    aPart('mount', [anOffer('overseas', '1000', { currency: 'JPY' })]),
  ]
  const facts = { currency: 'USD', freight: frac('7.49'), minimumOrder: frac(30) }

  it("rounds in the vendor's money, converts and rounds again; limits are held against all goods in that money", () => {
    const vendors = [aVendor('overseas', facts)]
    const project = aProject({ vendors, parts, exchange: { USD: '0.92', JPY: '0.0061' } })
    const cart = planPurchase(project).carts[0]!
    // 19.99 USD = 18.3908 EUR; 1000 JPY = 6.10 EUR = 6.6304 USD; short of 30 USD by 3.3796, so 3.38 USD = 3.1096 EUR.
    expect(cart.lines.map(({ goodsForeign, goods }) => [goodsForeign, goods])).toEqual([
      [1999, 1839],
      [1000, 610],
    ])
    expect([cart.freightForeign, cart.freight, cart.surchargeForeign, cart.surcharge]).toEqual([
      749, 689, 338, 311,
    ])
    expect(cart.total).toBe(1839 + 610 + 689 + 311)
  })

  it('knows nothing of money without a rate of exchange', () => {
    const cart = planPurchase(
      aProject({ vendors: [aVendor('overseas', facts)], parts, exchange: { JPY: '0.0061' } }),
    ).carts[0]!
    expect(cart).toMatchObject({ goods: null, freight: null, total: null, known: 610, unknown: ['lens'] })
  })
})

describe('laws of buying', () => {
  it('never buys fewer than needed, nor for more than the least amount allowed would cost', () => {
    fc.assert(
      fc.property(projects(true), ({ project }) => {
        for (const { offer, needed, quantity: many, goodsForeign } of linesOf(project)) {
          expect(many).toBeGreaterThanOrEqual(needed)
          expect(many % offer.pack).toBe(0)
          // A limit of free freight or least order is a matter of the whole cart.
          const { freeOver, minimumOrder } = project.vendors.get(offer.vendor)!
          if (freeOver || minimumOrder) continue
          if (!offer.prices) {
            expect(goodsForeign).toBeNull()
            continue
          }
          const least = offer.pack * Math.ceil(Math.max(needed, offer.moq) / offer.pack)
          const price = offer.prices.filter(({ from }) => from <= least).at(-1)!.price
          const plain = price.mul(least)
          const paid = offer.minimum?.gt(plain) ? offer.minimum : plain
          const digits = { EUR: 2, USD: 2, JPY: 0, KWD: 3 }[offer.currency]!
          expect(goodsForeign!).toBeLessThanOrEqual(roundMoney(paid, digits))
        }
      }),
      { numRuns: 60 },
    )
  })

  it('opens no bar or plate beyond its size and no more material than the pieces take', () => {
    fc.assert(
      fc.property(projects(true), ({ project }) => {
        for (const plan of planPurchase(project).cuts) {
          for (const { size, pieces } of plan.units) {
            const used = pieces.reduce((sum, { share }) => sum.add(share), frac(0))
            expect(used.lte(size)).toBe(true)
          }
          for (const { count, share, fromStock, fromBought } of plan.pieces) {
            expect(fromStock.add(fromBought).lte(share.mul(count))).toBe(true)
          }
          expect(plan.unitsUsed.sub(plan.fromStock).lte(plan.unitsBought)).toBe(true)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('gives the same carts whatever order parts, vendors and materials are listed in', () => {
    fc.assert(
      fc.property(projects(true), ({ project }) => {
        const turned = <T>(map: ReadonlyMap<string, T>) => new Map([...map].reverse())
        const other = {
          ...project,
          parts: turned(project.parts),
          vendors: turned(project.vendors),
          materials: turned(project.materials),
          cutters: turned(project.cutters),
          demand: turned(project.demand),
        }
        expect(planPurchase(other)).toEqual(planPurchase(project))
      }),
      { numRuns: 40 },
    )
  })
})
