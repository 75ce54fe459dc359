import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stringify } from 'yaml'
import { check, planReport } from '../../src/compile.ts'
import type { ReportOperation } from '../../src/report/report-model.ts'
import { quick, said } from './projects.ts'

type Texts = fc.Arbitrary<string | number>
type Keys = Readonly<Record<string, Texts>>

/** Quantities right in kind, small to large by orders of size; now and then broken or senseless where that is wanted. */
function quantity(
  units: readonly string[],
  [least, most]: readonly [number, number],
  broken: boolean,
): Texts {
  const text = (figure: fc.Arbitrary<string>, all: readonly string[]) =>
    fc.tuple(figure, fc.constantFrom(...all)).map(([value, unit]) => `${value} ${unit}`.trim())
  const figure = fc
    .noBias(fc.integer({ min: 0, max: 10_000 }))
    .map((part) => String(Number((least * (most / least) ** (part / 10_000)).toPrecision(4))))
  const odd = fc.constantFrom('0', '-1', '1e-9', '1e9', '1e15', '0.000001', '1e300', 'NaN', '1/3')
  return fc.oneof(
    { weight: 8, arbitrary: text(figure, units) },
    { weight: broken ? 2 : 0, arbitrary: text(odd, [...units, 'parsec', 'kg', '']) },
  )
}

const sizes = (sides: number, broken: boolean): Texts =>
  fc
    .array(
      fc.constantFrom('0.5', '4', '12', '40', '200', ...(broken ? ['0', '1e9', '-3'] : ['0.01', '3000'])),
      {
        minLength: sides,
        maxLength: sides,
      },
    )
    .map((all) => `${all.join(' x ')} mm`)

/** What a person may type, by key of the language. */
function texts(broken: boolean) {
  const of = (units: readonly string[], least: number, most: number): Texts =>
    quantity(units, [least, most], broken)
  return {
    mm: of(['mm', 'mm', 'thou', 'um'], 0.02, 400),
    speed: of(['rpm', 'm/min'], 1, 9000),
    turns: of(['rpm'], 1, 50_000),
    feed: of(['mm/min', 'mm/rev', 'in/min'], 0.002, 2000),
    chip: of(['mm', 'um'], 0.001, 3),
    edge: of(['m/min'], 0.1, 2000),
    angle: of(['deg'], 10, 180),
    volume: of(['cm3', 'mm3', 'L'], 0.0001, 600),
    area: of(['cm2', 'mm2'], 0.001, 800),
    rate: of(['cm2/min'], 0.01, 200),
    power: of(['W', 'kW'], 0.5, 9000),
    count: fc.oneof(fc.integer({ min: 1, max: 12 }), fc.constantFrom(10_000, 1)) as Texts,
    time: fc.constantFrom(
      '5 min',
      '1..2..4 h',
      '0 s',
      '3 s',
      ...(broken ? ['-4 min', '1e300 h'] : []),
    ) as Texts,
    set: fc.constantFrom('0 s', '10 s', '2 min') as Texts,
    thread: fc.constantFrom(
      ...['M6', 'M14x1-6H', 'M3 depth 6 mm', '1/4-20', 'G1/8'],
      ...(broken ? ['M0', 'Mx', 'M1e9'] : []),
    ) as Texts,
  }
}

/** Keys of each kind of operation, as the schemas know them. */
function kinds(broken: boolean): Readonly<Record<string, Keys>> {
  const { mm, speed, feed, count, time, set, thread, volume, area, rate } = texts(broken)
  const base = { depth: mm, step: mm, speed, feed, passes: count, time }
  const [seat, hole] = [fc.constant('seat'), fc.constant('hole')]
  return {
    face: { ...base, stock: mm, size: sizes(2, broken) },
    rough: { ...base, volume, pocket: sizes(3, broken), corner: mm },
    finish: { ...base, area, scallop: mm },
    contour: { ...base, length: mm, height: mm, corner: mm, wall: mm },
    chamfer: { ...base, length: mm, width: mm },
    drill: { ...base, diameter: mm, holes: count, peck: mm },
    ream: { ...base, diameter: mm, holes: count, feature: seat },
    bore: { ...base, from: mm, diameter: mm, set, feature: seat },
    tap: { ...base, thread, holes: count, feature: hole },
    'thread mill': { ...base, thread, feature: hole },
    turn: { ...base, from: mm, diameter: mm, length: mm, thread, set },
    'part off': { ...base, diameter: mm, bore: mm },
    saw: { time, section: area, rate },
  }
}

/** Any of the keys where things may be missing; else all of them but a time, which half have. */
const some = (keys: Keys, broken: boolean, optional: readonly string[] = []) =>
  fc.record(keys as Record<string, Texts>, {
    requiredKeys: broken ? [] : Object.keys(keys).filter((key) => !optional.includes(key)),
  })

interface Shop {
  readonly operations: readonly object[]
  readonly cutter: object
  readonly machine: object
  readonly like: string
  readonly stock: object
}

/** A bench with one set-up on it. */
function shops(broken: boolean): fc.Arbitrary<Shop> {
  const { mm, edge, angle, chip, thread, power, turns } = texts(broken)
  const all = kinds(broken)
  const operation = fc
    .constantFrom(...Object.keys(all))
    .chain((kind) =>
      some(all[kind]!, broken, ['time', 'thread', 'pocket', 'peck', 'speed', 'feed', 'step', 'scallop']).map(
        (keys) => ({ [kind]: { ...keys, cutter: 'edge' } }),
      ),
    )
  const cutter = {
    diameter: mm,
    flutes: fc.integer({ min: 1, max: 64 }) as Texts,
    reach: mm,
    'flute length': mm,
    'stick-out': mm,
    point: angle,
    'corner radius': mm,
    chip: chip,
    'cutting speed': edge,
    thread,
    pitch: mm,
    tool: fc.constantFrom('hss', 'carbide') as Texts,
    life: fc.constantFrom('1 s', '5 h') as Texts,
  }
  const machine = {
    travel: sizes(3, broken),
    headroom: mm,
    'fastest feed': quantity(['mm/min'], [1, 4000], broken),
    'tool change': fc.constantFrom('0 s', '90 s', '1 h') as Texts,
  }
  return fc.record({
    operations: fc.array(operation, { minLength: 1, maxLength: 2 }),
    cutter: some(cutter, broken, Object.keys(cutter).slice(2, 10)),
    machine: fc
      .tuple(
        some(machine, broken, Object.keys(machine)),
        some({ slowest: turns, fastest: turns, power }, broken),
      )
      .map(([own, spindle]) => ({ ...own, spindle })),
    like: fc.constantFrom('al-6082', 'brass', 'steel-c45', 'pom', 'fr4'),
    stock: fc.oneof(
      fc.tuple(mm, mm).map(([bar, length]) => ({ bar, length })),
      sizes(3, broken).map((block) => ({ block })),
    ),
  })
}

function textOf({ operations, cutter, machine, like, stock }: Shop): string {
  return stringify({
    device: { name: 'Lamp', currency: 'EUR', start: '2026-02-02' },
    people: { ana: { hours: { daily: '00:00-24:00' } } },
    machines: { mill: machine },
    cutters: { edge: cutter },
    materials: { metal: { like } },
    vendors: { metals: {} },
    parts: {
      base: {
        kind: 'machined',
        qty: 1,
        material: 'metal',
        stock: { ...stock, offers: [{ vendor: 'metals', price: 9, lead: '1 wd' }] },
        features: { seat: '6 H7', hole: 'M6-6H depth 8 mm' },
        route: [{ setup: { machine: 'mill', time: '10 min' }, ops: operations }],
      },
    },
  })
}

/** Every number of a value, at any depth. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  if (value === null || typeof value !== 'object') return []
  return (value instanceof Map ? [...value.values()] : Object.values(value)).flatMap(numbersIn)
}

const senseless = /\bNaN\b|Infinity|undefined|\[object|\be[+-]?\d{3}\b/

/** Words in which a person's own `NaN` may stand; what fettle says of itself may not have it. */
const ownWords = (text: string): string => text.replace(/`[^`]*`/g, '')

describe('operations with random, wrong and extreme figures', () => {
  it('never throw, and never say a number that is none', () => {
    fc.assert(
      fc.property(shops(true), (shop) => {
        const { diagnostics } = check('-', { stdin: textOf(shop) })
        for (const one of diagnostics) expect(ownWords(said(one))).not.toMatch(senseless)
      }),
      { numRuns: 800 },
    )
  })

  it('give a plan with finite numbers and no time below zero, in the JSON and in every cell, where there is one', () => {
    let planned = 0
    fc.assert(
      fc.property(shops(false), (shop) => {
        const { report, workbook } = planReport('-', { ...quick, effort: 1, stdin: textOf(shop) })
        if (!report) return
        planned += 1
        expect(numbersIn(report).filter((each) => !Number.isFinite(each))).toEqual([])
        expect(numbersIn(workbook).filter((each) => !Number.isFinite(each))).toEqual([])
        for (const { seconds, rpm, feed, power } of report.making)
          for (const each of [seconds, rpm, feed, power]) expect(each ?? 0).toBeGreaterThanOrEqual(0)
        for (const { minutes, likelyMinutes } of report.tasks) {
          expect(minutes).toBeGreaterThanOrEqual(0)
          expect(likelyMinutes).toBeGreaterThanOrEqual(0)
        }
        expect(JSON.stringify(report.making)).not.toMatch(senseless)
      }),
      { numRuns: 500 },
    )
    // Most are at fault somewhere; enough must get through for the claim to mean something.
    expect(planned).toBeGreaterThan(100)
  })

  it('leave no operation without a time unless a finding says so', () => {
    fc.assert(
      fc.property(fc.boolean().chain(shops), (shop) => {
        const { project, diagnostics } = check('-', { stdin: textOf(shop) })
        const way = project?.parts.get('base')?.way
        if (way?.kind !== 'machined' || diagnostics.some(({ level }) => level === 'error')) return
        for (const step of way.route)
          if (step.kind === 'setup') for (const one of step.operations) expect(one.time).not.toBeNull()
      }),
      { numRuns: 400 },
    )
  })
})

const mill = { spindle: { slowest: '200 rpm', fastest: '10000 rpm', power: '500 W' } }
const endMill = { diameter: '6 mm', flutes: 3, 'flute length': '13 mm', reach: '24 mm', tool: 'carbide' }
/** One operation on an ordinary bench. */
const plain = (kind: string, keys: object, edge: object = endMill, of: object = {}): Shop => ({
  operations: [{ [kind]: { cutter: 'edge', ...keys } }],
  cutter: edge,
  machine: mill,
  like: 'al-6082',
  stock: { block: '80 x 60 x 40 mm' },
  ...of,
})

/** What the plan says of the only operation; needs a plan. */
function made(shop: Shop): ReportOperation {
  const { report, diagnostics } = planReport('-', { ...quick, effort: 1, stdin: textOf(shop) })
  if (!report) throw new Error(diagnostics.map(said).join('; '))
  return report.making[0]!
}
const codes = (shop: Shop): readonly string[] =>
  check('-', { stdin: textOf(shop) }).diagnostics.map(({ code }) => code)

describe('what cannot be cut gives a finding', () => {
  const drill = { diameter: '4 mm', flutes: 2, tool: 'hss' }
  const bar = { stock: { bar: '20 mm', length: '18 mm' } }
  it.each<[claim: string, shop: Shop, code: string]>([
    ['a feed of zero', plain('drill', { depth: '8 mm', feed: '0 mm/min' }, drill), 'QTY06'],
    [
      'a speed of a thousand million turns',
      plain('drill', { depth: '8 mm', speed: '1e9 rpm' }, drill),
      'PRC10',
    ],
    ['a hole a millionth of a millimetre deep', plain('drill', { depth: '1e-9 mm' }, drill), 'PRC10'],
    [
      'a layer deeper than the flutes',
      plain('rough', { volume: '9 cm3', depth: '14 mm', feed: '50 mm/min' }),
      'PRC16',
    ],
    [
      'a bar shorter than what is turned',
      plain('turn', { diameter: '18 mm', length: '40 mm', feed: '0.1 mm/rev' }, { tool: 'carbide' }, bar),
      'PRC31',
    ],
    [
      'a bore deeper than the bar is long',
      plain(
        'bore',
        { from: '8 mm', diameter: '9 mm', depth: '40 mm', feed: '0.1 mm/rev' },
        { tool: 'carbide' },
        bar,
      ),
      'PRC31',
    ],
    [
      'a cutter without a diameter',
      plain('rough', { volume: '9 cm3', depth: '1 mm' }, { flutes: 3, tool: 'carbide' }),
      'QTY09',
    ],
    ['a depth in kilograms', plain('drill', { depth: '8 kg' }, drill), 'QTY03'],
    ['a depth in a unit that nobody has', plain('drill', { depth: '8 parsec' }, drill), 'QTY02'],
    ['more taken off than there is', plain('rough', { volume: '400 cm3', depth: '1 mm' }), 'PRC31'],
    [
      'a hole deeper than its drill reaches',
      plain('drill', { depth: '30 mm', peck: '4 mm' }, { ...drill, reach: '20 mm' }),
      'PRC17',
    ],
    [
      'a pocket narrower than the cutter',
      plain('rough', { pocket: '20 x 4 x 3 mm', depth: '1 mm' }),
      'PRC18',
    ],
    [
      'a bore narrower than before',
      plain(
        'bore',
        { from: '9 mm', diameter: '8 mm', depth: '9 mm', feed: '0.1 mm/rev' },
        { tool: 'carbide' },
      ),
      'PRC11',
    ],
    [
      'a stated time that cannot be',
      plain('rough', { volume: '9 cm3', depth: '0.1 mm', feed: '50 mm/min', time: '1 s' }),
      'PRC12',
    ],
  ])('%s', (_, shop, code) => {
    expect(codes(shop)).toContain(code)
  })
})

describe('laws of the time of a cut', () => {
  const runs = { numRuns: 25 }
  const volumes = fc.integer({ min: 1, max: 60 })

  it('a stated time always wins, whatever the cut would take', () => {
    fc.assert(
      fc.property(volumes, fc.integer({ min: 1, max: 500 }), (volume, minutes) => {
        const keys = { volume: `${volume} cm3`, depth: '1 mm', time: `${minutes} min` }
        expect(made(plain('rough', keys))).toMatchObject({ seconds: 60 * minutes, timeFrom: 'stated' })
      }),
      runs,
    )
  })

  it('twice the volume takes twice as long, to the second', () => {
    fc.assert(
      fc.property(volumes, (volume) => {
        const one = made(plain('rough', { volume: `${volume} cm3`, depth: '1 mm' })).seconds!
        const two = made(plain('rough', { volume: `${2 * volume} cm3`, depth: '1 mm' })).seconds!
        expect(Math.abs(two - 2 * one)).toBeLessThanOrEqual(1)
      }),
      runs,
    )
  })

  it('a faster feed never takes longer, and more holes never less', () => {
    const drill = { diameter: '4 mm', flutes: 2, tool: 'hss' }
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 800 }), fc.integer({ min: 1, max: 30 }), (rate, holes) => {
        const seconds = (feed: number, count: number): number =>
          made(plain('drill', { depth: '9 mm', holes: count, feed: `${feed} mm/min` }, drill)).seconds!
        expect(seconds(rate + 50, holes)).toBeLessThanOrEqual(seconds(rate, holes))
        expect(seconds(rate, holes + 1)).toBeGreaterThanOrEqual(seconds(rate, holes))
      }),
      runs,
    )
  })

  it('a speed in m/min and a feed in mm/rev come to the same cut as their rpm and mm/min', () => {
    // n = 1000 v / (pi D) and v_f = n f, makers' catalogues: 4 mm at 1000 rpm is 12.566 m/min.
    const drill = { diameter: '4 mm', flutes: 2, tool: 'hss' }
    const turned = made(plain('drill', { depth: '9 mm', speed: '1000 rpm', feed: '80 mm/min' }, drill))
    const edge = made(plain('drill', { depth: '9 mm', speed: '12.566371 m/min', feed: '0.08 mm/rev' }, drill))
    expect(edge.rpm).toBeCloseTo(1000, 3)
    expect(edge.feed).toBeCloseTo(80, 3)
    expect(edge.seconds).toBe(turned.seconds)
  })

  it('the teeth of a milling cutter share a feed of one turn', () => {
    const keys = { volume: '9 cm3', depth: '1 mm', speed: '6000 rpm' }
    expect(made(plain('rough', { ...keys, feed: '0.09 mm/rev' })).feed).toBeCloseTo(540, 6)
  })
})
