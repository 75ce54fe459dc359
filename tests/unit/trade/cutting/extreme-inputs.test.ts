import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lifeAtSpeed, taylorLifeMinutes, wornShare } from '../../../../src/trade/cutting/cutter-life.ts'
import { cuttingOperations } from '../../../../src/trade/cutting/index.ts'
import { travelShortfall } from '../../../../src/trade/cutting/travel-shortfall.ts'
import type {
  Cut,
  Cutter,
  CuttingFault,
  CuttingMachine,
  MaterialGroup,
  WorkMaterial,
} from '../../../../src/trade/cutting/types.ts'

type Ask = (
  job: object,
  cutter: Cutter,
  material: WorkMaterial,
  machine: CuttingMachine,
) => Cut | CuttingFault
const operations = Object.entries(cuttingOperations) as [string, Ask][]

/** Sensible, enormous, tiny, broken and absent numbers alike. */
const anyNumber = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.01, max: 100, noNaN: true }) },
  { weight: 2, arbitrary: fc.double({ min: 1e-4, max: 1e5, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -1, 1e9, 1e308, Number.NaN, Number.POSITIVE_INFINITY, 5e-324) },
  { weight: 2, arbitrary: fc.constant(null) },
)
const sane = fc.double({ min: 0.5, max: 9, noNaN: true })
/** From a thousandth to ten metres, every order of size alike; now and then left out. */
const wide = fc.oneof(
  { weight: 9, arbitrary: fc.double({ min: -3, max: 1, noNaN: true }).map((power) => 10 ** power) },
  { weight: 1, arbitrary: fc.constant(null) },
)
const count = fc.oneof({ weight: 40, arbitrary: fc.integer({ min: 1, max: 20 }) }, anyNumber)
const numbers = (names: readonly string[], each: fc.Arbitrary<number | null>) =>
  fc.record(Object.fromEntries(names.map((name) => [name, each])))

const lengths = [
  'lengthMm',
  'widthMm',
  'stockMm',
  'depthMm',
  'stepMm',
  'overhangMm',
  'clearanceMm',
  'volumeMm3',
  'totalDepthMm',
  'cornerMm',
  'wallMm',
  'areaMm2',
  'scallopMm',
  'layerMm',
  'diameterMm',
  'peckMm',
  'secondsPerPeck',
  'fromDiameterMm',
  'toDiameterMm',
  'innerDiameterMm',
  'bladeMm',
  'pitchMm',
  'runoutMm',
  'majorDiameterMm',
  'minorDiameterMm',
  'linkSeconds',
  'sectionMm2',
  'rateMm2PerMin',
  'clampSeconds',
  'kerfMm',
  'speedMPerMin',
  'rpm',
  'feedMmPerMin',
  'feedMmPerRev',
  'chipLoadMm',
] as const
const ofCutter = [
  'diameterMm',
  'reachMm',
  'fluteLengthMm',
  'cornerRadiusMm',
  'pointAngleDeg',
  'pitchFromMm',
  'pitchToMm',
  'mostChipMm',
]
const ofMachine = ['leastRpm', 'mostRpm', 'powerW', 'torqueNm', 'mostFeedMmPerMin', 'toolChangeSeconds']
const groups: readonly (MaterialGroup | null)[] = [
  'aluminium',
  'brass',
  'low-carbon steel',
  'austenitic stainless',
  'hardened steel',
  'plastic',
  'laminate',
  null,
]

interface Asked {
  readonly job: object
  readonly cutter: Cutter
  readonly material: WorkMaterial
  readonly machine: CuttingMachine
}

const question = (each: fc.Arbitrary<number | null>) =>
  fc.record({
    job: fc
      .tuple(numbers(lengths, each), numbers(['holes', 'cuts', 'passes'], count), fc.boolean())
      .map(([sizes, counts, isOutside]) => ({ ...sizes, ...counts, isOutside })),
    cutter: fc
      .tuple(numbers(ofCutter, each), count, fc.constantFrom('hss', 'carbide', null))
      .map(([sizes, flutes, tool]): Cutter => ({ ...sizes, flutes, tool })),
    material: fc.record({
      group: fc.constantFrom(...groups),
      kc11NPerMm2: fc.option(fc.integer({ min: 100, max: 5000 })),
      mc: fc.option(fc.double({ min: 0, max: 0.5, noNaN: true })),
    }),
    machine: numbers(ofMachine, each) as fc.Arbitrary<CuttingMachine>,
  })

const times = (value: number | null | undefined, factor: number, plus = 0): number | null =>
  value === null || value === undefined ? null : value * factor + plus

/** Speeds and powers of a bench where lengths are of any order of size. */
function atBenchScale({ job, cutter, material, machine }: Asked): Asked {
  const sized = job as Readonly<Record<string, number | null>>
  return {
    job: { ...job, rpm: times(sized.rpm, 1000), rateMm2PerMin: times(sized.rateMm2PerMin, 100) },
    cutter: { ...cutter, pointAngleDeg: times(cutter.pointAngleDeg, 16, 10) },
    material,
    machine: {
      ...machine,
      leastRpm: times(machine.leastRpm, 100, 1),
      mostRpm: times(machine.mostRpm, 3000, 1),
      powerW: times(machine.powerW, 100, 1),
      torqueNm: times(machine.torqueNm, 1),
    },
  }
}

/** A question with up to two of its numbers replaced by anything. */
const spoiled = fc
  .tuple(
    question(wide),
    fc.array(fc.tuple(fc.constantFrom(...lengths, ...ofCutter, ...ofMachine), anyNumber), { maxLength: 2 }),
  )
  .map(([drawn, changes]) => {
    const asked = atBenchScale(drawn)
    const change = <Given extends object>(given: Given): Given => ({
      ...given,
      ...Object.fromEntries(changes.filter(([name]) => name in given)),
    })
    return { ...asked, job: change(asked.job), cutter: change(asked.cutter), machine: change(asked.machine) }
  })

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (value === null || typeof value !== 'object') return []
  return Object.values(value).flatMap(numbersIn)
}

const isBroken = (text: string): boolean => /NaN|Infinity/.test(text)

describe('an operation', () => {
  it.each(operations)('%s never answers with a number that is broken or a time below nothing', (_, ask) => {
    let answered = 0
    fc.assert(
      fc.property(spoiled, ({ job, cutter, material, machine }) => {
        const cut = ask(job, cutter, material, machine)
        expect(numbersIn(cut).every(Number.isFinite)).toBe(true)
        if ('fault' in cut) return
        answered += 1
        expect(cut.seconds).toBeGreaterThanOrEqual(0)
        expect(Math.min(...Object.values(cut.timeSeconds))).toBeGreaterThanOrEqual(-1e-9)
        expect(cut.worked.filter(isBroken)).toEqual([])
        expect(cut.assumed.filter(({ value }) => isBroken(value))).toEqual([])
      }),
      { numRuns: 500, endOnFailure: true },
    )
    expect(answered).toBeGreaterThan(20)
  })

  it.each(operations)(
    '%s with every figure stated and sane has an answer or names what is wrong',
    (_, ask) => {
      let answered = 0
      fc.assert(
        fc.property(question(sane), ({ job, cutter, material, machine }) => {
          const whole = { ...job, holes: 2, cuts: 2, passes: 2, rpm: 1000 }
          const cut = ask(
            whole,
            { ...cutter, flutes: 2, pointAngleDeg: 118 },
            { ...material, mc: 0.2 },
            machine,
          )
          if ('fault' in cut) expect(cut.fault).not.toBe('missing')
          else {
            answered += 1
            expect(cut.seconds).toBeGreaterThan(0)
            expect(cut.worked.length).toBeGreaterThan(0)
          }
        }),
        { numRuns: 200, endOnFailure: true },
      )
      expect(answered).toBeGreaterThan(20)
    },
  )

  it.each(operations)('%s asked with nothing names what is missing', (_, ask) => {
    const cut = ask({}, {}, {}, {})
    expect(cut).toMatchObject({ fault: 'missing' })
    if ('fault' in cut && cut.fault === 'missing') expect(cut.what.length).toBeGreaterThan(0)
  })

  it.each([0, -3, 1e9, Number.NaN, Number.POSITIVE_INFINITY])(
    'a stated spindle speed of %d is out of domain',
    (rpm) => {
      for (const [, ask] of operations)
        expect(ask({ rpm }, {}, {}, {})).toMatchObject({ fault: 'out of domain', what: 'rpm' })
    },
  )
})

describe('laws that need no expected value', () => {
  const cutter: Cutter = { diameterMm: 4, flutes: 2, tool: 'carbide' }
  const material: WorkMaterial = { group: 'aluminium', kc11NPerMm2: 800, mc: 0.25 }

  it('twice the feed in a contour halves the time and never needs less power', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 50, max: 2000 }),
        fc.integer({ min: 1, max: 4 }),
        (feedMmPerMin, stepMm) => {
          const job = { lengthMm: 100, depthMm: 2, stepMm, rpm: 10_000 }
          const [slow, fast] = [feedMmPerMin, 2 * feedMmPerMin].map((feed) =>
            cuttingOperations.contour({ ...job, feedMmPerMin: feed }, cutter, material, {}),
          ) as [Cut, Cut]
          expect(fast.seconds).toBeCloseTo(slow.seconds / 2, 6)
          expect(fast.powerW!).toBeGreaterThan(slow.powerW!)
          expect(fast.powerW!).toBeLessThan(2 * slow.powerW!)
        },
      ),
    )
  })

  it('a faster spindle limit never makes a cut longer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 30_000 }),
        fc.integer({ min: 0, max: 20_000 }),
        (least, more) => {
          const job = { volumeMm3: 1000, depthMm: 1 }
          const [slow, fast] = [least, least + more].map((mostRpm) =>
            cuttingOperations.rough(job, cutter, material, { mostRpm }),
          ) as [Cut, Cut]
          expect(fast.seconds).toBeLessThanOrEqual(slow.seconds * (1 + 1e-9))
        },
      ),
    )
  })
})

describe('life and travel', () => {
  it('never give a broken number', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyNumber, (a, b, c) => {
        const [x, y, z] = [a ?? 1, b ?? 1, c ?? 1]
        const found = [
          taylorLifeMinutes(x, y, z),
          lifeAtSpeed({ lifeSeconds: x, speedMPerMin: y }, z, 0.25),
          wornShare(x, y),
        ]
        expect(found.every((value) => value === null || (Number.isFinite(value) && value >= 0))).toBe(true)
        const axes = { xMm: x, yMm: y, zMm: z }
        const room = travelShortfall({
          stockMm: axes,
          holdMm: axes,
          travelMm: axes,
          cutterDiameterMm: x,
          cutterLengthMm: y,
          clearanceMm: z,
        })
        expect(numbersIn(room).every(Number.isFinite)).toBe(true)
      }),
    )
  })
})
