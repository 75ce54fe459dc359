import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import type { Told } from '../../../src/report/sheets.ts'
import {
  aMachine,
  anOffer,
  aPart,
  aProject,
  aTask,
  aVendor,
  frac,
  here,
} from '../planning/project-builder.ts'
import { projects } from '../planning/random-project.ts'
import { LiveModel, liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

const liveOf = (told: Told): LiveModel => new LiveModel([ordersSheet(told), moneySheet(told)])

describe('every live cell of orders and money', () => {
  it('gives today what purchase and money reckoned, prices known or not', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        const told = toldOf(project, tasks)
        expect(liveDifferences([ordersSheet(told), moneySheet(told)])).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

describe('the views of the money', () => {
  it('balance to zero after any price, rate and minutes are typed', () => {
    const typing = fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 99_999 })), { maxLength: 12 })
    fc.assert(
      fc.property(fc.boolean().chain(projects), typing, ({ project, tasks }, typed) => {
        const live = liveOf(toldOf(project, tasks))
        const inputs = [...live.cells].filter(([name]) => /^(price|worth|rate|minutes)\b/.test(name))
        const open = inputs.filter(([, cell]) => cell.accepts).map(([name]) => name)
        if (open.length > 0)
          for (const [pick, cents] of typed) live.type(open[pick % open.length]!, cents / 100)
        expect(Math.abs(Number(live.valueOf('money/difference')))).toBe(0)
      }),
      { numRuns: 100 },
    )
  })

  it('name one device exactly where they say per device, and the devices add up to what is charged', () => {
    fc.assert(
      fc.property(projects(false), ({ project, tasks }) => {
        const live = liveOf(toldOf(project, tasks))
        const devices = [...live.cells.keys()].filter((name) => name.startsWith('money/device/'))
        const sum = devices.reduce((all, name) => all + Number(live.valueOf(name)), 0)
        expect(devices.length).toBe(project.device.qty)
        expect(sum).toBeCloseTo(Number(live.valueOf('money/charged')), 9)
        expect(live.valueOf('money/per device')).toBe(live.valueOf('money/device/1'))
      }),
      { numRuns: 60 },
    )
  })

  it('say what is missing, and take a price for what nobody is known to sell', () => {
    const parts = [aPart('magnet', [anOffer('shop', 2)]), aPart('prism', [])]
    const live = liveOf(toldOf(aProject({ vendors: [aVendor('shop')], parts })))
    expect(live.valueOf('money/cash')).toBe(2)
    expect(live.valueOf('money/cash/mark')).toBe('known part; 1 price missing')
    expect(live.valueOf('money/charged/mark')).toBe('known part; 1 amount missing')
    live.type('price of missing/prism', 12.5)
    expect(live.valueOf('money/cash')).toBe(14.5)
    expect(live.valueOf('money/charged')).toBe(14.5)
    expect(live.valueOf('money/cash/mark')).toBe('complete')
    expect(live.valueOf('money/charged/mark')).toBe('complete')
  })
})

describe('hours', () => {
  it('follow the minutes and the rate typed, to the part that was worked on', () => {
    const parts = [aPart('ring', [], { have: 1, worth: null })]
    const tasks = [aTask('run', { part: 'ring' }, { machine: 'mill', machineMinutes: 90 })]
    const live = liveOf(toldOf(aProject({ parts, machines: [aMachine('mill', 6)] }), tasks))
    expect(live.valueOf('money/hours')).toBe(9)
    live.type('minutes/machine / mill / part ring', 100)
    live.type('rate/machine/mill', 7)
    // 100 min at 7.00 an hour: 11.666...
    expect(live.valueOf('charged/part/ring')).toBe(11.67)
    expect(live.valueOf('money/minutes changed')).toBe(1)
  })
})

describe('a limit of cash', () => {
  it('shows what is left under it, and follows the prices', () => {
    const parts = [aPart('magnet', [anOffer('shop', '2.50')])]
    const limits = { cash: { value: frac(10), at: here }, mass: null, envelope: null }
    const told = toldOf(aProject({ vendors: [aVendor('shop')], parts, limits }))
    const live = liveOf(told)
    expect(live.valueOf('money/cash room')).toBe(7.5)
    expect(liveDifferences([ordersSheet(told), moneySheet(told)])).toEqual([])
    live.type('price/magnet', 12)
    expect(live.valueOf('money/cash room')).toBe(-2)
  })
})
