/**
 * Typing a price, a charge, a rate or minutes into the sheets gives what compiling the changed project gives: every
 * computed cell is compared, with the compiler's exact arithmetic as the reference.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Offer, Project } from '../../../src/model/project.ts'
import type { PlanTask } from '../../../src/model/tasks.ts'
import { planPurchase } from '../../../src/planning/buying/index.ts'
import type { Sheet } from '../../../src/report/cells.ts'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { partsSheet } from '../../../src/report/parts-sheet.ts'
import { frac } from '../planning/project-builder.ts'
import { projects } from '../planning/random-project.ts'
import { type Held, heldBy, LiveModel } from './evaluate.ts'
import { toldOf } from './told.ts'

interface Planned {
  readonly project: Project
  readonly tasks: PlanTask[]
}

const sheetsOf = ({ project, tasks }: Planned): Sheet[] => {
  const told = toldOf(project, tasks)
  return [ordersSheet(told), moneySheet(told), partsSheet(told)]
}

/** Cells that tell the plan's own minutes from those typed: a new plan has none to tell apart. */
const aboutThePlan = /^(planned minutes|minutes changed|money\/minutes changed|money\/dates)/

/** Types into `before` what `after` states, and gives what differs then; `null` where other amounts are bought. */
function differences(before: readonly Sheet[], after: readonly Sheet[]): string[] | null {
  const [live, fresh] = [new LiveModel(before), new LiveModel(after)]
  const names = [...live.cells.keys()]
  if (names.join('\n') !== [...fresh.cells.keys()].join('\n')) return null
  const sameAmounts = names
    .filter((name) => name.startsWith('bought/'))
    .every((name) => heldBy(live.cells.get(name)!) === heldBy(fresh.cells.get(name)!))
  if (!sameAmounts) return null
  for (const [name, cell] of live.cells) {
    if (cell.accepts && name !== undefined) live.type(name, heldBy(fresh.cells.get(name)!))
  }
  return names
    .filter((name) => !aboutThePlan.test(name) && !live.cells.get(name)!.accepts)
    .flatMap((name) => {
      const [computed, compiled] = [live.valueOf(name) ?? '', heldBy(fresh.cells.get(name)!) ?? '']
      return alike(computed, compiled) ? [] : [`${name}: typed ${computed}, compiled ${compiled}`]
    })
}

function alike(a: Held, b: Held): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= 1e-10 * Math.max(1, Math.abs(b))
  return a === b
}

/** The sheets of the project with another price in the line's offer. */
function withPrice(planned: Planned, offer: Offer, from: number, price: string | null): Sheet[] {
  const open = offer as { -readonly [K in keyof Offer]: Offer[K] }
  const kept = offer.prices
  const breaks = kept ?? [{ from: 1, price: frac(1) }]
  open.prices =
    price === null
      ? null
      : breaks.map((each) => (each.from === from ? { from: each.from, price: frac(price) } : each))
  try {
    return sheetsOf(planned)
  } finally {
    open.prices = kept
  }
}

const cents = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((each) => frac(each).div(100))
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null })
const numRuns = 120

describe('a price typed into the orders', () => {
  it('changes line, landed, charges, left over, totals and balance as compiling with that price does', () => {
    let compared = 0
    const price = maybe(fc.integer({ min: 0, max: 60_000 }).map((mills) => `${mills / 1000}`))
    fc.assert(
      fc.property(fc.boolean().chain(projects), fc.nat(), price, (planned, pick, typed) => {
        const lines = planPurchase(planned.project).carts.flatMap((cart) => cart.lines)
        fc.pre(lines.length > 0)
        const { offer, breakFrom } = lines[pick % lines.length]!
        const found = differences(sheetsOf(planned), withPrice(planned, offer, breakFrom, typed))
        fc.pre(found !== null)
        compared += 1
        expect(found).toEqual([])
      }),
      { numRuns },
    )
    expect(compared).toBe(numRuns)
  })
})

const amountsOf = (project: Project): string =>
  planPurchase(project)
    .carts.flatMap(({ lines }) => lines.map(({ id, quantity }) => `${id} ${quantity}`))
    .join()

describe('a charge of a vendor or an exchange rate typed into the orders', () => {
  it('changes shares and totals as compiling with it does, also where it is taken away', () => {
    const facts = fc.record({
      freight: maybe(cents(20)),
      freeOver: maybe(cents(100)),
      minimumOrder: maybe(cents(60)),
      clearance: maybe(cents(15)),
      duty: fc.constantFrom('0', '0.027', '0.065').map(frac),
      tax: fc.constantFrom('0', '0.19', '0.2').map(frac),
    })
    const rates = fc.constantFrom(
      new Map([['USD', frac('0.875')]]),
      new Map([
        ['USD', frac('1.05')],
        ['JPY', frac('0.0065')],
        ['KWD', frac('2.9')],
      ]),
    )
    fc.assert(
      fc.property(fc.boolean().chain(projects), facts, rates, ({ project, tasks }, changed, exchange) => {
        const vendors = new Map([...project.vendors].map(([id, vendor]) => [id, { ...vendor, ...changed }]))
        const changedProject = { ...project, vendors, exchange }
        // Amounts are values of the workbook: where the new charges would make others cheaper, planning anew says so.
        fc.pre(amountsOf(changedProject) === amountsOf(project))
        const after = sheetsOf({ project: changedProject, tasks })
        expect(differences(sheetsOf({ project, tasks }), after)).toEqual([])
      }),
      { numRuns },
    )
  })
})

describe('minutes and rates typed into the money', () => {
  it('change hours, charges and balance as compiling with them does', () => {
    fc.assert(
      fc.property(projects(true), fc.nat(300), cents(40), ({ project, tasks }, more, rate) => {
        const longer = tasks.map((task) => ({
          ...task,
          machineMinutes: task.machineMinutes > 0 ? task.machineMinutes + more : 0,
          handsMinutes: task.handsMinutes > 0 ? task.handsMinutes + 2 * more : 0,
        }))
        const machines = new Map([...project.machines].map(([id, each]) => [id, { ...each, rate }]))
        const after = sheetsOf({ project: { ...project, machines }, tasks: longer })
        expect(differences(sheetsOf({ project, tasks }), after)).toEqual([])
      }),
      { numRuns },
    )
  })

  it('say that dates are not recomputed, and say nothing while no minutes are changed', () => {
    const sampled = fc.sample(projects(false), { numRuns: 30, seed: 4 })
    const planned = sampled.find(({ project, tasks }) =>
      toldOf(project, tasks).results.money.sources.some((source) => source.kind === 'hours'),
    )!
    const live = new LiveModel(sheetsOf(planned))
    expect([live.valueOf('money/minutes changed'), live.valueOf('money/dates')]).toEqual([0, ''])
    const name = [...live.cells.keys()].find((each) => each.startsWith('minutes/'))!
    live.type(name, Number(live.valueOf(name)) + 5)
    expect([live.valueOf('money/minutes changed'), live.valueOf('money/dates')]).toEqual([
      1,
      'dates not recomputed: run plan',
    ])
  })
})
