import { describe, expect, it } from 'vitest'
import { readSize } from '../../src/trade/fits/read-size.ts'
import {
  type GeneralClass,
  generalAngleDegrees,
  generalLengthMm,
  generalRadiusMm,
} from '../../src/trade/tolerances/general-tolerance.ts'
import { processCapability, shareBelow } from '../../src/trade/tolerances/process-capability.ts'
import { processReach, processReaches, reachNamed } from '../../src/trade/tolerances/process-reach.ts'
import { sampledStack } from '../../src/trade/tolerances/sampled-stack.ts'
import {
  inflatedHalf,
  middleForLeast,
  type StackLink,
  shiftedHalf,
  stackLink,
  stackUp,
} from '../../src/trade/tolerances/stack-up.ts'

const link = (factor: number, middle: number, half: number): StackLink => ({
  name: 'part',
  factor,
  middle,
  half,
})

function sound<T>(value: T): Exclude<T, { readonly fault: string } | null> {
  if (value === null || (typeof value === 'object' && 'fault' in value))
    throw new Error(JSON.stringify(value))
  return value as Exclude<T, { readonly fault: string } | null>
}

const near = (found: number, wanted: number, share: number): void =>
  expect(Math.abs(found / wanted - 1)).toBeLessThan(share)

describe('dimension chains', () => {
  const textbook = [link(1, 6.52, 0.01), link(-1, 1.5, 0.001), link(-1, 2, 0.003), link(-1, 3, 0.004)]
  const spacer = [link(1, 40, 0.1), link(-1, 25, 0.05), link(-1, 2, 0.03), link(-1, 10, 0.05)]

  it('of a solved problem give 0.020 in, 0.002 to 0.038 (C-01)', () => {
    // Source: a solved textbook problem.
    const found = sound(stackUp(textbook))
    expect(found.middle).toBeCloseTo(0.02, 9)
    expect(found.worstHalf).toBeCloseTo(0.018, 9)
    expect([found.least, found.most].map((gap) => gap.toFixed(6))).toEqual(['0.002000', '0.038000'])
  })

  it('say how large the first part must be for a smallest gap of 0.010 in (C-02)', () => {
    // Source: the same problem.
    expect(middleForLeast(textbook, 0, 0.01)).toBeCloseTo(6.528, 9)
    const mended = [link(1, 6.528, 0.01), ...textbook.slice(1)]
    expect(sound(stackUp(mended)).middle).toBeCloseTo(0.028, 9)
    expect(sound(stackUp(mended)).least).toBeCloseTo(0.01, 9)
  })

  it('by root sum of squares give 0.01122 in (C-03)', () => {
    near(sound(stackUp(textbook)).statisticalHalf, 0.01122, 0.005)
  })

  it('of a spacer and ring give 3.00, 0.23 and 0.1261 (C-04)', () => {
    // Source: a public worked article for the sizes; computed.
    const found = sound(stackUp(spacer))
    expect(found.middle).toBeCloseTo(3, 9)
    expect(found.worstHalf).toBeCloseTo(0.23, 9)
    near(found.statisticalHalf, 0.1261, 0.005)
  })

  it('drawn at random give the sigma of the formulas (C-05, C-06)', () => {
    // Source: sigma = sqrt(sum t^2)/3, or /sqrt(3) evenly, /sqrt(6) peaked; three standard errors at 100 000 draws.
    const draw = { count: 100_000, seed: 7, limits: null }
    const normal = sound(sampledStack(spacer, { ...draw, spread: 'normal' }))
    expect(Math.abs(normal.mean - 3)).toBeLessThan(0.0006)
    near(normal.sigma, 0.04203, 0.01)
    const uniform = sound(sampledStack(spacer, { ...draw, spread: 'uniform' }))
    near(uniform.sigma, 0.0728, 0.01)
    expect(uniform.least).toBeGreaterThanOrEqual(2.77)
    expect(uniform.most).toBeLessThanOrEqual(3.23)
    near(sound(sampledStack(spacer, { ...draw, spread: 'triangular' })).sigma, 0.1261 / Math.sqrt(6), 0.01)
  })

  it('drawn at random twice with one seed are the same, and fall outside limits as often as the formula says', () => {
    const sampling = { spread: 'normal' as const, count: 100_000, seed: 3, limits: [2.95, 9] as const }
    const once = sound(sampledStack(spacer, sampling))
    expect(sampledStack(spacer, sampling)).toEqual(once)
    const share = shareBelow((2.95 - 3) / 0.04203)
    expect(Math.abs(once.shareOutside - share)).toBeLessThan(3 * Math.sqrt((share * (1 - share)) / 100_000))
  })

  it.each([
    // Source: public pages with equal and mixed tolerances (C-07, C-08).
    [Array(10).fill(0.1), 1, 0.3162],
    [Array(5).fill(0.1), 0.5, 0.2236],
    [[0.2, 0.1, 0.15], 0.45, 0.2693],
  ])('of %j give %s at worst and %s by statistics', (halves: number[], worst, statistical) => {
    const found = sound(stackUp(halves.map((half) => link(1, 1, half))))
    expect(found.worstHalf).toBeCloseTo(worst, 9)
    near(found.statisticalHalf, statistical, 0.005)
  })

  it('name the share of each part (C-09)', () => {
    const { shares } = sound(stackUp(spacer))
    for (const [at, share] of [62.9, 15.7, 5.7, 15.7].entries())
      expect(Math.abs(100 * shares[at]! - share)).toBeLessThan(0.2)
  })

  it('widen with a shift of the mean or a factor (C-10)', () => {
    near(sound(shiftedHalf(spacer, 0.25)), 0.1521, 0.005)
    near(sound(inflatedHalf(spacer, 1.5)), 0.1891, 0.005)
  })

  it('take unequal limits by their middle (C-13)', () => {
    const found = stackLink('pin', 1, { nominal: 12, upper: 0.1, lower: -0.02 })
    expect([found.middle, found.half].map((size) => size.toFixed(9))).toEqual(['12.040000000', '0.060000000'])
  })

  it('of a hole and a shaft are their fit (C-15)', () => {
    // Source: 25 H7/g6 in micrometres.
    const found = sound(stackUp([link(1, 10.5, 10.5), link(-1, -13.5, 6.5)]))
    expect([found.middle, found.worstHalf, found.least, found.most]).toEqual([24, 17, 7, 41])
    near(found.statisticalHalf, 12.35, 0.005)
  })
})

describe('measured processes', () => {
  it('have Cp 1.667 and Cpk 1.333 in the worked case (C-12)', () => {
    // Source: computed from the textbook definitions.
    const found = sound(processCapability({ lowerMm: 9.95, upperMm: 10.05, meanMm: 10.01, sigmaMm: 0.01 }))
    expect(found.cp).toBeCloseTo(1.667, 3)
    expect(found.cpk).toBeCloseTo(1.333, 3)
  })

  it('fall below limits as the normal table says (C-11)', () => {
    // Source: tables of the normal distribution: Phi(-2.5) = 0.00621, Phi(1) = 0.84134, Phi(1.96) = 0.97500.
    expect(shareBelow((0 - 0.05) / 0.02)).toBeCloseTo(0.00621, 5)
    expect(shareBelow(1)).toBeCloseTo(0.84134, 5)
    expect(shareBelow(1.96)).toBeCloseTo(0.975, 5)
    expect([shareBelow(-9), shareBelow(0), shareBelow(9)]).toEqual([0, 0.5, 1])
  })
})

describe('general tolerances', () => {
  const sizes = [2, 5, 20, 100, 300, 900, 1500, 3000]

  // Source: ISO 2768-1:1989 table 1, a public reproduction and an open transcription.
  it.each([
    ['f', [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null]],
    ['m', [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2]],
    ['c', [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4]],
    ['v', [null, 0.5, 1, 1.5, 2.5, 4, 6, 8]],
  ] as const)('of class %s are %j for lengths', (chosen, wanted) => {
    expect(sizes.map((size) => generalLengthMm(chosen, size))).toEqual(wanted)
  })

  it('belong to the step whose upper end the size is (C-14)', () => {
    expect([2, 6, 6.01, 30, 45, 150].map((size) => generalLengthMm('m', size))).toEqual([
      0.1, 0.1, 0.2, 0.2, 0.3, 0.5,
    ])
  })

  // Source: the open transcription of ISO 2768-1:1989, tables 2 and 3.
  it.each([
    ['f', [0.2, 0.5, 1], [60, 30, 20, 10, 5]],
    ['m', [0.2, 0.5, 1], [60, 30, 20, 10, 5]],
    ['c', [0.4, 1, 2], [90, 60, 30, 15, 10]],
    ['v', [0.4, 1, 2], [180, 120, 60, 30, 20]],
  ] as [GeneralClass, number[], number[]][])(
    'of class %s are %j for radii and %j minutes for angles',
    (chosen, radii, minutes) => {
      expect([3, 6, 50].map((size) => generalRadiusMm(chosen, size))).toEqual(radii)
      const found = [10, 50, 120, 400, 401].map((leg) => Math.round(60 * generalAngleDegrees(chosen, leg)!))
      expect(found).toEqual(minutes)
    },
  )

  it('are none below 0.5 mm and beyond the table', () => {
    expect([generalLengthMm('m', 0.4), generalLengthMm('m', 4001), generalRadiusMm('m', 0.4)]).toEqual([
      null,
      null,
      null,
    ])
  })
})

describe('what processes hold', () => {
  // Source: Narayana, Machine Drawing, figure 15.2: the single grade it gives lies between finest and usual.
  it.each([
    ['lap', 4],
    ['hone', 5],
    ['grind round', 6],
    ['turn', 7],
    ['turn', 8],
    ['ream', 8],
    ['mill', 10],
    ['drill', 11],
    ['press form', 13],
    ['die cast', 14],
    ['mould', 14],
    ['sand cast', 16],
    ['flame cut', 16],
  ])('%s reaches IT%s', (name, grade) => {
    const reach = reachNamed(name)
    if (reach?.by !== 'grade') throw new Error(name)
    expect(reach.finest).toBeLessThanOrEqual(grade)
    expect(reach.usual).toBeGreaterThanOrEqual(grade)
  })

  // Source: tables of service bureaus; the rest common practice, no source.
  it.each([
    ['filament print', 0.2, 0.5],
    ['vat print', 0.1, 0.25],
    ['laser cut', 0.1, 0.1],
    ['mill on a small machine', 0.05, 0.1],
    ['saw', 0.5, 1],
  ])('%s holds +/- %s with care and %s as a rule', (name, finestMm, usualMm) => {
    expect(reachNamed(name)).toMatchObject({ finestMm, usualMm })
  })

  it('tell a reamed H7 from a drilled one', () => {
    // Source: H7 of 6 mm is 12 um, IT8 18 um, IT6 8 um, IT10 48 um (ISO 286-1).
    const asked = { nominalMm: 6, widthUm: 12 }
    expect(sound(processReach(reachNamed('ream')!, asked)).verdict).toBe('with care')
    expect(sound(processReach(reachNamed('drill')!, asked)).verdict).toBe('tighter than usual')
    expect(sound(processReach(reachNamed('drill')!, { nominalMm: 6, widthUm: 75 })).verdict).toBe('usual')
    expect(sound(processReach(reachNamed('filament print')!, asked)).verdict).toBe('tighter than usual')
  })

  it('name each process once, with a source, finest no coarser than usual', () => {
    expect(new Set(processReaches.map(({ name }) => name)).size).toBe(processReaches.length)
    for (const reach of processReaches) {
      expect(reach.source).not.toBe('')
      if (reach.by === 'grade') expect(reach.finest).toBeLessThanOrEqual(reach.usual)
      else expect(reach.finestMm).toBeLessThanOrEqual(reach.usualMm)
    }
  })
})

describe('sizes as text', () => {
  it('with unequal limits give the deviations as written', () => {
    expect(readSize('12 +0.10 / -0.02')).toMatchObject({ kind: 'deviations', upperMm: 0.1, lowerMm: -0.02 })
  })
})
