import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { anOffer, aPart, aProject, aVendor, frac } from '../planning/project-builder.ts'
import { projects } from '../planning/random-project.ts'
import { cellsOf, heldBy, LiveModel, liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

const shop = aVendor('shop', { freight: frac(10), duty: frac('0.1') })
const priced = (second: string | null) =>
  toldOf(
    aProject({
      vendors: [shop],
      parts: [aPart('bearing', [anOffer('shop', 30)]), aPart('coupling', [anOffer('shop', second)])],
    }),
  )

describe('every live cell of the orders', () => {
  it('gives today what the purchase reckoned, prices known or not', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        expect(liveDifferences([ordersSheet(toldOf(project, tasks))])).toEqual([])
      }),
      { numRuns: 100 },
    )
  })

  it('lands its lines so that they add up to the order, and the orders to what is known of the cash for lines', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        const told = toldOf(project, tasks)
        const live = new LiveModel([ordersSheet(told)])
        for (const cart of told.results.purchase.carts) {
          const landed = Number(
            live.evaluate({ op: 'sum', names: cart.lines.map(({ id }) => `landed/${id}`) }),
          )
          expect(landed).toBeCloseTo(Number(live.valueOf(`order total/${cart.id}`)), 9)
          expect(landed).toBeCloseTo(cart.known / 100, 9)
        }
      }),
      { numRuns: 60 },
    )
  })
})

describe('a price that nobody knows', () => {
  it('is an empty input, reads unknown in its line, opens the shares, and marks the total', () => {
    const live = new LiveModel([ordersSheet(priced(null))])
    expect(live.valueOf('price/coupling')).toBeNull()
    expect(live.valueOf('goods/coupling')).toBe('unknown')
    expect(live.valueOf('landed/coupling')).toBe('unknown')
    expect(live.valueOf('state/coupling')).toBe('price unknown')
    expect(live.valueOf('state/bearing')).toBe('shares open')
    // Freight is charged whatever is ordered; duty hangs on the missing price.
    expect(live.valueOf('order duty/shop')).toBe('unknown')
    expect(live.valueOf('order total/shop')).toBe(40)
    expect(live.valueOf('order mark/shop')).toBe('known part; 1 price missing')
  })

  it('once typed gives lines and totals as though it had been known', () => {
    const live = new LiveModel([ordersSheet(priced(null))])
    live.type('price/coupling', 20)
    // Goods 50.00 and freight 10.00, duty a tenth of both: 66.00, by value 3 to 2.
    expect(live.valueOf('order mark/shop')).toBe('complete')
    expect(live.valueOf('order total/shop')).toBe(66)
    expect(['landed/bearing', 'landed/coupling'].map((name) => live.valueOf(name))).toEqual([39.6, 26.4])
    expect(['state/bearing', 'state/coupling'].map((name) => live.valueOf(name))).toEqual(['', ''])
  })

  it('taken away again is unknown again, and a price of zero is not', () => {
    const live = new LiveModel([ordersSheet(priced('20'))])
    live.type('price/coupling', null)
    expect(live.valueOf('order mark/shop')).toBe('known part; 1 price missing')
    live.type('price/coupling', 0)
    expect(live.valueOf('order mark/shop')).toBe('complete')
    expect(live.valueOf('goods/coupling')).toBe(0)
  })
})

describe('the sheet of orders', () => {
  it('has one block for every order, outside lots too, and every line once', () => {
    fc.assert(
      fc.property(projects(true), ({ project, tasks }) => {
        const told = toldOf(project, tasks)
        const { carts } = told.results.purchase
        const sheet = ordersSheet(told)
        const tables = sheet.blocks.filter(({ kind }) => kind === 'table')
        expect(tables.map(({ rows }) => rows.length)).toEqual(carts.map(({ lines }) => lines.length))
        const live = new LiveModel([sheet])
        for (const { id, quantity } of carts.flatMap(({ lines }) => lines))
          expect(live.valueOf(`bought/${id}`)).toBe(quantity)
      }),
      { numRuns: 60 },
    )
  })

  it('keeps names that look like formulas as words', () => {
    const name = '=HYPERLINK("http://x")'
    const told = toldOf(
      aProject({ vendors: [shop], parts: [aPart(name, [anOffer('shop', 3, { note: '+1' })])] }),
    )
    const cells = cellsOf([ordersSheet(told)])
    expect(
      cells.filter((cell) => heldBy(cell) === name && cell.value.type === 'text').length,
    ).toBeGreaterThan(0)
    expect(liveDifferences([ordersSheet(told)])).toEqual([])
  })

  it('says so where nothing has to be bought', () => {
    const words = cellsOf([ordersSheet(toldOf(aProject({})))]).map(heldBy)
    expect(words).toContain('Nothing has to be bought.')
  })
})
