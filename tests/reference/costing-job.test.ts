import { describe, expect, it } from 'vitest'
import { planPurchase } from '../../src/planning/buying/index.ts'
import { computeMoney } from '../../src/planning/cost/index.ts'
import {
  aCutter,
  aMachine,
  anOffer,
  anOperation,
  aPart,
  aPerson,
  aProject,
  aSetup,
  aStock,
  aTask,
  aVendor,
  bar,
  frac,
  machined,
  points,
  tasksOnly,
} from '../unit/planning/project-builder.ts'

describe('cost of a machined casting', () => {
  /**
   * Exercise in the style of Groover with its worked answer (public page "A machine tool is used to machine parts in
   * batches"): casting 5.00, batch 40, setup 1.75 h, machining 6.86 min, handling 2.0 min, tool 3.00 changed every 10
   * pieces in 1.5 min, labour 16 an hour, machine 22 an hour with 50 % overhead. Printed 14.794 a piece from terms
   * rounded down; exact 14.8019. Ten such batches, so that all times are whole minutes.
   */
  it('is 14.8019 a piece, by material, tool, machine and hands', () => {
    const [pieces, setup, run] = [400, 1050, 400 * (6.86 + 2 + 0.15)]
    const route = [aSetup([anOperation('tool', 6.86 * 60)])]
    const stock = aStock(bar(80, 50), null, { offers: [anOffer('foundry', '5.00')] })
    const project = aProject({
      vendors: [aVendor('foundry'), aVendor('tools')],
      people: [aPerson('ana', 16)],
      machines: [aMachine('lathe', 33)],
      cutters: [aCutter('tool', { life: points(10 * 6.86 * 60), offers: [anOffer('tools', '3.00')] })],
      parts: [aPart('casting', [], { way: machined('iron', stock, { route }) })],
      needed: { casting: pieces },
    })
    const minutes = Math.round(setup + run)
    expect(minutes).toBeCloseTo(setup + run, 9)
    const spent = { machine: 'lathe', who: ['ana'], machineMinutes: minutes, handsMinutes: minutes }
    const network = tasksOnly([aTask('work', { part: 'casting' }, spent)])
    const money = computeMoney(project, planPurchase(project), network)
    const kinds = Object.fromEntries(money.byProcess.map(({ process, known }) => [process, known]))
    expect(kinds).toEqual({ cutter: 12_000, hands: 124_107, machine: 255_970, material: 200_000 })
    expect(money.charged.known / 100 / pieces).toBeCloseTo(14.8019, 4)
  })
})

describe('expected loss', () => {
  /** Groover-style exercise (public page "Seatwork 1"): 50,000 good from 0.98^8 need 58,770.77 starts. */
  it('of 50,000 pieces at eight passes of 2 % scrap is the price of 8,770.77 more', () => {
    const project = aProject({
      vendors: [aVendor('shop')],
      parts: [aPart('part', [anOffer('shop', '1.00')], { yield: frac('0.98').pow(8)! })],
      needed: { part: 50_000 },
    })
    const money = computeMoney(project, planPurchase(project), tasksOnly([]))
    expect(money.expectedLoss).toMatchObject([{ part: 'part', attempts: 5_000_000, amount: 877_077 }])
    expect(money.charged.known).toBe(5_000_000)
  })
})
