/** Random projects for laws that hold for every project: prices, packs, lots, material, cutters and hours of all kinds. */
import fc from 'fast-check'
import type { Offer, Part, Project, Vendor } from '../../../src/model/project.ts'
import type { PlanTask, Subject } from '../../../src/model/tasks.ts'
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
  grams,
  machined,
  outside,
  plate,
  points,
  printed,
  quantity,
} from './project-builder.ts'

const vendorNames = ['alder', 'birch', 'cedar'] as const
const currencies = ['EUR', 'USD', 'JPY', 'KWD'] as const
const money = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((cents) => frac(cents).div(100))
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null })
const tenths = (most: number) => fc.integer({ min: 0, max: most * 10 }).map((each) => frac(each).div(10))

const vendor = (id: string): fc.Arbitrary<Vendor> =>
  fc
    .record({
      currency: fc.constantFrom(...currencies),
      freight: maybe(money(20)),
      freeOver: maybe(money(100)),
      minimumOrder: maybe(money(60)),
      clearance: maybe(money(15)),
      duty: fc.constantFrom('0', '0.027', '0.12').map(frac),
      tax: fc.constantFrom('0', '0.2').map(frac),
    })
    .map((facts) => aVendor(id, facts))

/** Falling price breaks, or an unknown price where `unknown` allows it. */
export const offers = (unknown: boolean): fc.Arbitrary<Offer> =>
  fc
    .record({
      vendor: fc.constantFrom(...vendorNames),
      currency: fc.constantFrom(...currencies),
      first: fc.integer({ min: 1, max: 5000 }),
      falls: fc.array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 50, max: 99 })), {
        maxLength: 3,
      }),
      priced: unknown ? fc.integer({ min: 0, max: 5 }).map((n) => n > 0) : fc.constant(true),
      pack: fc.constantFrom(1, 1, 3, 5),
      moq: fc.constantFrom(1, 1, 4, 10),
      minimum: maybe(money(40)),
      cart: fc.constantFrom(null, null, 'later'),
    })
    .map(({ vendor: id, first, falls, priced, ...facts }) => {
      const breaks: Record<number, string> = { 1: `${first / 100}` }
      let [from, price] = [1, first / 100]
      for (const [step, percent] of falls) {
        from += step
        price = Math.ceil(price * percent) / 100
        breaks[from] = `${price}`
      }
      return anOffer(id, priced ? breaks : null, facts)
    })

const offerList = (unknown: boolean) =>
  offers(unknown).chain((offer) => fc.constantFrom([offer], [offer], [offer], unknown ? [] : [offer]))

const partFacts = fc.record({
  spares: fc.constantFrom(0, 0, 1, 3),
  have: fc.constantFrom(0, 0, 1, 4),
  tries: fc.constantFrom(1, 1, 2),
  worth: maybe(money(9)),
  yield: fc.constantFrom('1', '0.8').map(frac),
  role: fc.constantFrom('device' as const, 'device' as const, 'fixture' as const, 'tool' as const),
})

const bought = (unknown: boolean) =>
  fc.tuple(partFacts, offerList(unknown), fc.boolean()).map(
    ([facts, list, bare]) =>
      (id: string): Part =>
        aPart(id, list, bare ? { ...facts, way: aBoard(list) } : facts),
  )

const route = (unknown: boolean) =>
  fc
    .tuple(fc.integer({ min: 0, max: 900 }), maybe(offers(unknown)))
    .map(([seconds, offer]) => [
      aSetup([anOperation('ball', seconds), anOperation('flat', 2 * seconds, { each: false })]),
      ...(offer ? [outside(offer)] : []),
    ])

const madeOf = (unknown: boolean) =>
  fc.record({
    facts: partFacts,
    route: route(unknown),
    lot: fc.constantFrom(null, 2),
    length: fc.integer({ min: 5, max: 320 }),
    width: fc.integer({ min: 5, max: 120 }),
    shape: fc.constantFrom('bar', 'plate', 'printed', 'own stock'),
    stock: offers(unknown),
  })

const made = (unknown: boolean) =>
  madeOf(unknown).map(({ facts, route: steps, lot, length, width, shape, stock }) => (id: string): Part => {
    const common = { route: steps, lot }
    const cut =
      shape === 'plate' ? aStock(plate(length, width, 10), 'al plate') : aStock(bar(20, length), 'al bar')
    const own = shape === 'own stock' ? { ...cut, form: null, offers: [stock] } : cut
    const way =
      shape === 'printed'
        ? printed('resin', length * 100, { ...common, plate: 'p1' })
        : machined('al', own, common)
    return aPart(id, [], { ...facts, way })
  })

const materials = (unknown: boolean) =>
  fc
    .record({
      bars: tenths(2),
      plates: tenths(1),
      bottle: tenths(1),
      list: fc.array(offerList(unknown), { minLength: 3, maxLength: 3 }),
      worth: maybe(money(30)),
    })
    .map(({ bars, plates, bottle, list, worth }) => [
      aMaterial('al', [
        aForm('al bar', bar(20, 300), { have: bars, offers: list[0]!, worth }),
        aForm('al plate', plate(200, 100, 10), { have: plates, offers: list[1]! }),
      ]),
      aMaterial(
        'resin',
        [
          aForm(
            'resin bottle',
            { shape: 'mass', mass: grams(50) },
            { have: bottle, offers: list[2]!, worth },
          ),
        ],
        { density: quantity('0.0011', 'length^-3 mass') },
      ),
    ])

const cutters = (unknown: boolean) =>
  fc
    .tuple(fc.constantFrom(0, 0, 2), offerList(unknown), offerList(unknown), fc.constantFrom(600, 5000))
    .map(([have, a, b, life]) => [
      aCutter('ball', { have, offers: a, life: points(life) }),
      aCutter('flat', { offers: b }),
    ])

const minutes = fc.integer({ min: 0, max: 500 })

/** Tasks over parts, the print job, carts, work and the device. */
function tasks(parts: readonly string[]): fc.Arbitrary<PlanTask[]> {
  const subjects: readonly Partial<Subject>[] = [
    ...parts.map((part) => ({ part })),
    { plate: 'p1' },
    { cart: 'alder' },
    { work: 'firmware' },
    { step: 'close', device: 0 },
  ]
  const who: readonly (readonly string[])[] = [['ana'], ['ben', 'ana'], []]
  const spent = fc.tuple(fc.constantFrom(...subjects), minutes, minutes, fc.constantFrom(...who))
  return fc
    .array(spent, { maxLength: 8 })
    .map((all) =>
      all.map(([subject, machineMinutes, handsMinutes, people], k) =>
        aTask(`t${k}`, subject, { machine: 'mill', machineMinutes, handsMinutes, who: people }),
      ),
    )
}

/** A project and its tasks; with `unknown` some prices, offers and worths are missing. */
export const projects = (unknown: boolean): fc.Arbitrary<{ project: Project; tasks: PlanTask[] }> =>
  fc
    .record({
      devices: fc.integer({ min: 1, max: 5 }),
      vendors: fc.tuple(...vendorNames.map(vendor)),
      bought: fc.array(bought(unknown), { maxLength: 4 }),
      made: fc.array(made(unknown), { maxLength: 4 }),
      needs: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 8, maxLength: 8 }),
      materials: materials(unknown),
      cutters: cutters(unknown),
      rate: money(30),
    })
    .chain((facts) => {
      const parts = [...facts.bought, ...facts.made].map((part, k) => part(`part ${k}`))
      const names = parts.map(({ id }) => id)
      const onPlate = parts.flatMap(({ id, way }) => (way.kind === 'printed' ? [id] : []))
      const project = aProject({
        devices: facts.devices,
        exchange: { USD: '0.92', JPY: '0.0061', KWD: '3.01' },
        vendors: facts.vendors,
        materials: facts.materials,
        cutters: facts.cutters,
        people: [aPerson('ana', 0), { ...aPerson('ben', 0), rate: facts.rate }],
        machines: [{ ...aMachine('mill', 0), rate: facts.rate }],
        plates: [aPlate('p1', onPlate, 'resin')],
        parts,
        needed: Object.fromEntries(names.map((name, k) => [name, facts.needs[k]!])),
      })
      return tasks(names).map((all) => ({ project, tasks: all }))
    })
