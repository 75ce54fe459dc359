import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { majorUnits, roundMoney } from '../../../../src/base/money.ts'
import type { Money, Slice } from '../../../../src/model/money.ts'
import type { Offer, Part, Project } from '../../../../src/model/project.ts'
import type { PlanTask } from '../../../../src/model/tasks.ts'
import { planPurchase } from '../../../../src/planning/buying/index.ts'
import { computeMoney } from '../../../../src/planning/cost/index.ts'
import { whyUnbalanced } from '../../../../src/verify/why-unbalanced.ts'
import {
  aBoard,
  aCutter,
  aForm,
  aMachine,
  aMaterial,
  anOffer,
  anOperation,
  aPart,
  aPerson,
  aPlate,
  aProject,
  aSetup,
  aStock,
  aTask,
  aVendor,
  bar,
  frac,
  here,
  machined,
  outside,
  points,
  printed,
  tasksOnly,
} from '../project-builder.ts'
import { projects } from '../random-project.ts'

const moneyOf = (project: Project, tasks: readonly PlanTask[] = []): Money =>
  computeMoney(project, planPurchase(project), tasksOnly(tasks))

const views = ({ cash, charged, leftOver, fromOwnStock, hoursAtRate }: Money) => ({
  cash: cash.known,
  own: fromOwnStock.known,
  hours: hoursAtRate.known,
  charged: charged.known,
  left: leftOver.known,
})

const shop = aVendor('shop')

describe('bought parts', () => {
  it('charges what is built in and leaves spares and the rest of the pack over at landed price', () => {
    const magnet = aPart('magnet', [anOffer('shop', '0.62', { pack: 5 })], { spares: 1 })
    const vendors = [aVendor('shop', { freight: frac(9) })]
    const money = moneyOf(aProject({ vendors, parts: [magnet], needed: { magnet: 4 } }))
    // 5 x 0.62 + 9.00 = 12.10, of which 4/5 are built in.
    expect(views(money)).toEqual({ cash: 1210, own: 0, hours: 0, charged: 968, left: 242 })
    expect(money.leftovers.map(({ why, part }) => [why, part])).toEqual([['spare', 'magnet']])
  })

  it('draws what is here at its worth, else at the first price of the first offer, else leaves it unknown', () => {
    const offers = [anOffer('shop', { 1: '2.00', 10: '1.00' })]
    const parts = [
      aPart('marked', offers, { have: 2, worth: frac('0.50') }),
      aPart('offered', offers, { have: 2 }),
      aPart('found', [], { have: 2 }),
    ]
    const needed = { marked: 2, offered: 2, found: 2 }
    const money = moneyOf(aProject({ vendors: [shop], parts, needed }))
    const drawn = money.sources.map((source) => [source.id, source.amount])
    expect(drawn).toEqual([
      ['own / found', null],
      ['own / marked', 100],
      ['own / offered', 400],
    ])
    expect(money.fromOwnStock).toEqual({ known: 500, unknown: ['own / found'] })
    expect(money.charged).toEqual({ known: 500, unknown: ['own / found'] })
  })

  it('does not draw own pieces that only serve as spares, nor own tools', () => {
    const parts = [
      aPart('screw', [], { have: 9, spares: 2, worth: frac(1) }),
      aPart('press', [], { have: 1, role: 'tool', worth: frac(90) }),
    ]
    expect(views(moneyOf(aProject({ parts, needed: { screw: 3, press: 1 } })))).toMatchObject({
      own: 300,
      charged: 300,
    })
  })

  it('keeps a bought tool whole, and charges extra tries', () => {
    const parts = [
      aPart('reamer jig', [anOffer('shop', 30)], { role: 'tool' }),
      aPart('lens', [anOffer('shop', 10)], { tries: 2, spares: 1 }),
    ]
    const money = moneyOf(aProject({ vendors: [shop], parts, needed: { 'reamer jig': 1, lens: 2 } }))
    // Six lenses: one spare is kept, five are used up or scrap.
    expect(views(money)).toEqual({ cash: 9000, own: 0, hours: 0, charged: 5000, left: 4000 })
  })

  it('keeps with a spare board what is soldered onto it', () => {
    const parts = [
      aPart('board', [], { spares: 1, way: aBoard([anOffer('shop', 6)]) }),
      aPart('chip', [anOffer('shop', 2)]),
    ]
    const uses = { chip: [{ by: 'board' as const, into: 'board', count: 3, at: here }] }
    const money = moneyOf(aProject({ vendors: [shop], parts, needed: { board: 2, chip: 9 }, uses }))
    expect(views(money)).toEqual({ cash: 3600, own: 0, hours: 0, charged: 2400, left: 1200 })
  })
})

describe('made parts', () => {
  const stock = {
    way: machined('al', aStock(bar(20, 18), 'al bar'), { route: [aSetup([anOperation('flat', 600)])] }),
  }
  const facts = {
    vendors: [shop],
    people: [aPerson('ana', 20)],
    machines: [aMachine('mill', 6)],
    materials: [aMaterial('al', [aForm('al bar', bar(20, 100), { offers: [anOffer('shop', 10)] })])],
    cutters: [aCutter('flat', { offers: [anOffer('shop', 8)], life: points(4800) })],
  }
  const hours = [
    aTask('run', { part: 'ring' }, { machine: 'mill', machineMinutes: 90, handsMinutes: 30, who: ['ana'] }),
  ]

  it('splits each cost element of a lot between what is needed and its spares', () => {
    const parts = [aPart('ring', [], { ...stock, spares: 1 })]
    const money = moneyOf(aProject({ ...facts, parts, needed: { ring: 2 } }), hours)
    const charged = Object.fromEntries(money.byProcess.map(({ process, known }) => [process, known]))
    // Bar 10.00 x 3/5, cutter 8.00 x 3/8, mill 1.5 h x 6.00, hands 0.5 h x 20.00; two thirds of each.
    expect(charged).toEqual({ material: 400, cutter: 200, machine: 600, hands: 667 })
    expect(views(money)).toEqual({ cash: 1800, own: 0, hours: 1900, charged: 1867, left: 1833 })
  })

  it('charges outside work whole, also where the vendor counts more pieces than the lot has', () => {
    const route = [outside(anOffer('shop', '2.00', { moq: 10 }))]
    const parts = [aPart('ring', [], { way: machined('al', aStock(bar(20, 18), 'al bar'), { route }) })]
    const money = moneyOf(aProject({ ...facts, parts, needed: { ring: 2 } }))
    expect(money.byProcess.find(({ process }) => process === 'outside')!.known).toBe(2000)
  })

  it('charges a fixture whole', () => {
    const parts = [aPart('ring', [], { ...stock, role: 'fixture' })]
    const money = moneyOf(aProject({ ...facts, parts, needed: { ring: 1 } }), hours)
    expect(views(money)).toEqual({ cash: 1800, own: 0, hours: 1900, charged: 200 + 100 + 1900, left: 1500 })
  })

  it('draws own cutters as they are worn, and charges no wear without a life', () => {
    const parts = [aPart('ring', [], stock)]
    const own = [aCutter('flat', { have: 1, worth: frac(24), life: points(4800) })]
    expect(views(moneyOf(aProject({ ...facts, cutters: own, parts })))).toMatchObject({
      own: 300,
      charged: 500,
    })
    const lasting = [aCutter('flat', { offers: [anOffer('shop', 8)] })]
    expect(views(moneyOf(aProject({ ...facts, cutters: lasting, parts })))).toMatchObject({
      cash: 1800,
      charged: 200,
    })
  })

  it('divides a print job by the volume of the parts on it', () => {
    const parts = [
      aPart('cup', [], { way: printed('resin', 3000, { plate: 'p1' }) }),
      aPart('lid', [], { way: printed('resin', 1000, { plate: 'p1' }) }),
    ]
    const resin = aForm(
      'resin 1 L',
      { shape: 'volume', volume: { ...aStock(bar(1, 1), null).kerf, value: frac(1_000_000) } },
      { have: frac(1), worth: frac(50) },
    )
    const project = aProject({
      machines: [aMachine('printer', 4)],
      materials: [aMaterial('resin', [resin])],
      plates: [aPlate('p1', ['cup', 'lid'], 'resin')],
      parts,
      needed: { cup: 1, lid: 3 },
    })
    const money = moneyOf(project, [
      aTask('print', { plate: 'p1' }, { machine: 'printer', machineMinutes: 120 }),
    ])
    expect(money.byPart.map(({ cause, known }) => [cause, known])).toEqual([
      [{ kind: 'part', id: 'cup' }, 400 + 15],
      [{ kind: 'part', id: 'lid' }, 400 + 15],
    ])
  })

  it('charges work, ordering and assembling to themselves', () => {
    const tasks = [
      aTask('a', { work: 'firmware' }, { who: ['ana'], handsMinutes: 60 }),
      aTask('b', { cart: 'shop' }, { who: ['ana'], handsMinutes: 6 }),
      aTask('c', { cart: 'shop' }, { who: ['ana'], handsMinutes: 6 }),
      aTask('d', { step: 'close', device: 0 }, { who: ['ana'], handsMinutes: 30 }),
    ]
    const money = moneyOf(aProject({ people: [aPerson('ana', 20)] }), tasks)
    expect(money.byPart.map(({ cause, known }) => [cause.kind, known])).toEqual([
      ['device', 1000],
      ['work', 2000],
      ['cart', 400],
    ])
  })

  it('tells the loss to expect of tries that come out bad, beside the balance', () => {
    const parts = [aPart('ring', [], { ...stock, yield: frac('0.8') })]
    const money = moneyOf(aProject({ ...facts, parts }), hours)
    // 2.00 bar, 1.00 cutter, 9.00 mill and 10.00 hands, a quarter of it lost.
    expect(money.expectedLoss).toMatchObject([{ part: 'ring', attempts: 2200, amount: 550 }])
  })
})

/** The slice of a source's known amount, as a spreadsheet would reckon it from one cell. */
function reckoned(whole: number, { after, upTo }: Slice, digits: number): number {
  const exact = majorUnits(whole, digits)
  return roundMoney(exact.mul(upTo), digits) - roundMoney(exact.mul(after), digits)
}

const sum = (all: readonly { readonly known: number }[]): number =>
  all.reduce((total, { known }) => total + known, 0)

describe('laws of money', () => {
  const law = (
    name: string,
    unknown: boolean,
    holds: (project: Project, tasks: PlanTask[], money: Money) => void,
  ) =>
    it(name, () => {
      const run = fc.property(projects(unknown), ({ project, tasks }) =>
        holds(project, tasks, moneyOf(project, tasks)),
      )
      fc.assert(run, { numRuns: 60 })
    })

  law(
    'cash, own stock and hours are what is charged and left over, whatever is known',
    true,
    (_, __, money) => {
      const { cash, own, hours, charged, left } = views(money)
      expect(cash + own + hours).toBe(charged + left)
      expect(money.difference).toBe(0)
    },
  )

  law('the proof restated from the rules finds no fault', true, (project, _, money) => {
    expect(whyUnbalanced(project, planPurchase(project), money)).toBeNull()
  })

  law('cash is what the carts cost', true, (project, _, { cash }) => {
    expect(cash.known).toBe(sum(planPurchase(project).carts))
  })

  law('every table of shares adds up to the total it divides', true, (project, _, money) => {
    expect(sum(money.byPart)).toBe(money.charged.known)
    expect(sum(money.byProcess)).toBe(money.charged.known)
    expect(sum(money.byVendor)).toBe(money.cash.known)
    expect(sum(money.byDevice)).toBe(money.charged.known)
    expect(money.byDevice).toHaveLength(project.device.qty)
  })

  law(
    'every part of a source follows from the source and its running shares, from 0 to 1',
    true,
    (_, __, money) => {
      for (const source of money.sources) {
        const parts = [...money.charges, ...money.leftovers].filter(({ slice }) => slice.source === source.id)
        const inOrder = parts.sort((a, b) => a.slice.after.compare(b.slice.after))
        let reached = frac(0)
        for (const { slice, known } of inOrder) {
          expect(slice.after.equals(reached)).toBe(true)
          expect(known).toBe(reckoned(source.known, slice, money.digits))
          reached = slice.upTo
        }
        expect(reached.equals(1)).toBe(true)
      }
    },
  )

  law('whatever comes from an unknown price is unknown, never zero', true, (_, __, money) => {
    const unknown = new Set(money.sources.flatMap(({ id, amount }) => (amount === null ? [id] : [])))
    for (const { slice, amount } of [...money.charges, ...money.leftovers]) {
      expect(amount === null).toBe(unknown.has(slice.source))
    }
    const named = new Set([...money.charged.unknown, ...money.leftOver.unknown])
    expect([...named].sort()).toEqual([...unknown].sort())
    expect(
      [...money.cash.unknown, ...money.fromOwnStock.unknown, ...money.hoursAtRate.unknown].sort(),
    ).toEqual([...unknown].sort())
  })

  law('ids are unique', true, (_, __, money) => {
    const ids = [...money.sources, ...money.charges, ...money.leftovers].map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
  })

  law('no charge and nothing left over is below zero', true, (_, __, money) => {
    for (const { known } of [...money.charges, ...money.leftovers]) expect(known).toBeGreaterThanOrEqual(0)
  })

  law('the order in which things are listed changes nothing', true, (project, tasks, money) => {
    const turned = <T>(map: ReadonlyMap<string, T>) => new Map([...map].reverse())
    const other = {
      ...project,
      parts: turned(project.parts),
      materials: turned(project.materials),
      demand: turned(project.demand),
    }
    expect(moneyOf(other, [...tasks].reverse())).toEqual(money)
  })
})

describe('doubled prices', () => {
  const twice = (offer: Offer): Offer => ({
    ...offer,
    prices: offer.prices?.map((each) => ({ ...each, price: each.price.mul(2) })) ?? null,
    minimum: offer.minimum?.mul(2) ?? null,
  })

  // Prices of whole cents make every line exact, so that rounding hides nothing.
  it('double the goods of every line bought in whole cents', () => {
    const list = fc.array(fc.tuple(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 9 })), {
      minLength: 1,
      maxLength: 6,
    })
    fc.assert(
      fc.property(list, (wanted) => {
        const parts = wanted.map(([cents], k): Part => aPart(`p${k}`, [anOffer('shop', `${cents / 100}`)]))
        const needed = Object.fromEntries(wanted.map(([, many], k) => [`p${k}`, many]))
        const dear = parts.map((part): Part => {
          return part.way.kind === 'bought'
            ? { ...part, way: { ...part.way, offers: part.way.offers.map(twice) } }
            : part
        })
        const plain = moneyOf(aProject({ vendors: [shop], parts, needed }))
        const doubled = moneyOf(aProject({ vendors: [shop], parts: dear, needed }))
        expect(doubled.cash.known).toBe(2 * plain.cash.known)
        expect(doubled.charges.map(({ amount }) => amount)).toEqual(
          plain.charges.map(({ amount }) => 2 * amount!),
        )
      }),
      { numRuns: 50 },
    )
  })
})
