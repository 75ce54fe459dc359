import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitOf, namedFit } from '../../../../src/trade/fits/fit.ts'
import { freeingTemperatureK, slideOnTemperatureK } from '../../../../src/trade/fits/fit-temperature.ts'
import { shaftLetters } from '../../../../src/trade/fits/fundamental-deviation.ts'
import { pressFit } from '../../../../src/trade/fits/press-fit.ts'
import { readSize } from '../../../../src/trade/fits/read-size.ts'
import { classLimits, sizeLimits } from '../../../../src/trade/fits/size-limits.ts'
import { gradeWithin } from '../../../../src/trade/fits/tolerance-grade.ts'

describe('a size as drawings write it', () => {
  it.each([
    ['6 H7', { kind: 'class', nominalMm: 6, class: { gender: 'hole', letter: 'h', grade: 7 } }],
    ['6H7', { kind: 'class', class: { text: 'H7' } }],
    ['6 m6', { kind: 'class', class: { gender: 'shaft', letter: 'm', grade: 6 } }],
    ['6 mm H7', { kind: 'class', unitFrom: 'written' }],
    ['25 js6', { class: { letter: 'js' } }],
    ['Ø6 H7', { kind: 'class', isDiameter: true }],
    ['6 H7/m6', { kind: 'fit', hole: { text: 'H7' }, shaft: { text: 'm6' } }],
    ['6 H7-m6', { kind: 'fit' }],
    ['6 H7 m6', { kind: 'fit' }],
    [
      '25 ±0.05',
      { kind: 'deviations', nominalMm: 25, upperMm: 0.05, lowerMm: -0.05, unit: 'mm', unitFrom: 'default' },
    ],
    ['4.2 ± 0.05 mm', { upperMm: 0.05, unitFrom: 'written' }],
    ['25 +/- 0.05', { upperMm: 0.05, lowerMm: -0.05 }],
    ['10 +0.02 -0.01', { upperMm: 0.02, lowerMm: -0.01 }],
    ['12 +0.10/-0.02 mm', { upperMm: 0.1, lowerMm: -0.02 }],
    ['10 -0.01 +0.02', { upperMm: 0.02, lowerMm: -0.01 }],
    ['10 0/-0.02', { upperMm: 0, lowerMm: -0.02 }],
    ['10 -0.01 -0.02', { upperMm: -0.01, lowerMm: -0.02 }],
    ['25.021 / 25.000', { kind: 'limits', minMm: 25, maxMm: 25.021 }],
    ['24.98 - 25.02 mm', { kind: 'limits', minMm: 24.98, maxMm: 25.02 }],
    ['25', { kind: 'plain', nominalMm: 25 }],
    ['1 in ±0.005', { nominalMm: 25.4, upperMm: 0.127, unit: 'in' }],
    ['1/8 in ±0.001', { nominalMm: 3.175, upperMm: 0.0254 }],
    ['25.4 mm ±1 thou', { nominalMm: 25.4, upperMm: 0.0254 }],
    ['10 ±5 µm', { nominalMm: 10, upperMm: 0.005 }],
  ])('%s is read', (text, wanted) => {
    expect(readSize(text)).toMatchObject(wanted)
  })
})

describe('a text that is no size', () => {
  it.each([
    ['', 'empty', '', 0, []],
    ['foo', 'not a size', 'foo', 0, []],
    ['-5 H7', 'not a size', '-5 H7', 0, []],
    ['4,2 ±0.1', 'comma', ',', 1, ['4.2 ±0.1']],
    ['10 -0.02', 'one deviation', '-0.02', 3, ['10 0/-0.02', '10 ±0.02']],
    ['10 -0.02 -0.01', 'limits crossed', '-0.02 -0.01', 3, []],
    ['6 m6/H7', 'order of fit', 'm6/H7', 2, ['6 H7/m6']],
    ['6 H7/N7', 'same gender', 'H7/N7', 2, []],
    ['6 j6', 'letter', 'j6', 2, ['js6', 'h6']],
    ['6 Js7', 'letter', 'Js7', 2, ['js7', 'JS7']],
    ['6 H19', 'grade', 'H19', 2, ['H6', 'H7', 'H8', 'H9', 'H11']],
    ['6 H 7', 'left over', 'H 7', 2, ['H7', 'h7']],
  ])('%s: %s', (typed, fault, text, at, near) => {
    expect(readSize(typed)).toEqual({ fault, text, at, length: text.length, near })
  })

  it('has its fault inside it, whatever it is', () => {
    const parts = fc.constantFrom(
      '6',
      '25',
      '0.02',
      ' ',
      '+',
      '-',
      '±',
      '/',
      'H7',
      'm6',
      'js',
      'Ø',
      'mm',
      'in',
      '1/8',
      '0',
      ',',
    )
    const texts = fc.oneof(
      fc.string({ maxLength: 20 }),
      fc.array(parts, { maxLength: 8 }).map((all) => all.join('')),
    )
    fc.assert(
      fc.property(texts, (text) => {
        const read = readSize(text)
        if ('fault' in read) {
          expect(text.slice(read.at, read.at + read.length)).toBe(read.text)
          return
        }
        const limits = sizeLimits(read)
        if (!('fault' in limits)) {
          expect([limits.minMm, limits.maxMm].every((size) => Number.isFinite(size))).toBe(true)
          expect(limits.minMm).toBeLessThanOrEqual(limits.maxMm)
        }
      }),
      { numRuns: 3000 },
    )
  })
})

describe('limits', () => {
  it('are as wide as the grade for every class and size to 120 mm', () => {
    const letters = fc.constantFrom(...shaftLetters)
    const genders = fc.constantFrom('hole' as const, 'shaft' as const)
    const sizes = fc.double({ min: 0.001, max: 120, noNaN: true })
    fc.assert(
      fc.property(letters, genders, fc.integer({ min: 1, max: 18 }), sizes, (letter, gender, grade, size) => {
        const found = classLimits(size, { text: '', gender, letter, grade })
        if ('fault' in found) throw new Error(found.fault)
        expect(found.upperUm).toBeGreaterThan(found.lowerUm)
        expect(Number.isFinite(found.minMm) && Number.isFinite(found.maxMm)).toBe(true)
      }),
      { numRuns: 1000 },
    )
  })

  it('are none above 120 mm, for a plain size and for two parts at once', () => {
    const of = (text: string) => {
      const read = readSize(text)
      return 'fault' in read ? read : sizeLimits(read)
    }
    expect(of('121 H7')).toEqual({ fault: 'outside the tables' })
    expect(of('6')).toEqual({ fault: 'no tolerance' })
    expect(of('6 H7/m6')).toEqual({ fault: 'two parts' })
    const fit = readSize('121 H7/g6')
    expect('fault' in fit || fit.kind !== 'fit' ? null : namedFit(fit)).toEqual({
      fault: 'outside the tables',
    })
  })

  it('written in any way make a fit', () => {
    const of = (text: string) => {
      const read = readSize(text)
      if ('fault' in read) throw new Error(read.fault)
      const found = sizeLimits(read)
      if ('fault' in found) throw new Error(found.fault)
      return found
    }
    const named = fitOf(of('25 H7'), of('25 g6'))
    const written = fitOf(of('25.021/25.000'), of('25 -0.007 -0.020'))
    expect(written.largestClearanceUm).toBe(named.largestClearanceUm)
    expect(written.smallestClearanceUm).toBe(named.smallestClearanceUm)
    expect(written.kind).toBe('clearance')
  })

  it('show how they came about', () => {
    expect(
      sizeLimits({
        kind: 'class',
        nominalMm: 40,
        class: { text: 'P7', gender: 'hole', letter: 'p', grade: 7 },
      }),
    ).toMatchObject({
      worked: [
        'IT7 at 40 mm = 25 um',
        'ES of P = -17 um (ES = -ei + delta, delta = IT7 - IT6 = 9)',
        '40 -17/-42 um: 39.958 to 39.983 mm',
      ],
    })
  })
})

describe('a tolerance asked', () => {
  it('is as fine as the coarsest grade within it', () => {
    expect([12, 17, 8, 0.1].map((width) => gradeWithin(width, 6))).toEqual([7, 7, 6, null])
  })
})

describe('numbers of any size', () => {
  it('give no pressure or temperature that is not finite, or a fault', () => {
    const finite = (value: object): boolean =>
      Object.values(value).every((field) => typeof field !== 'number' || Number.isFinite(field))
    fc.assert(
      fc.property(fc.array(fc.double(), { minLength: 10, maxLength: 10 }), (n) => {
        const [a, b, c, d, e, f, g, h, i, j] = n as [
          number,
          number,
          number,
          number,
          number,
          number,
          number,
          number,
          number,
          number,
        ]
        const joint = { jointMm: a, hubOuterMm: b, shaftBoreMm: c, lengthMm: d, friction: e }
        const parts = { hub: { modulusMpa: f, poisson: g }, shaft: { modulusMpa: h, poisson: i } }
        const pressed = pressFit({ ...joint, ...parts }, j)
        expect('fault' in pressed || finite(pressed)).toBe(true)
        const heat = { jointMm: a, interferenceUm: b, hubExpansionPerK: c, shaftExpansionPerK: d }
        const freed = freeingTemperatureK(heat)
        expect(freed === null || 'fault' in freed || finite(freed)).toBe(true)
        const slid = slideOnTemperatureK({ ...heat, playUm: e })
        expect('fault' in slid || finite(slid)).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })

  it('within reach of a shop are answered with a push, never a pull', () => {
    const size = fc.double({ min: 1, max: 100, noNaN: true })
    fc.assert(
      fc.property(size, size, fc.double({ min: 0, max: 0.9, noNaN: true }), size, (d, wall, hollow, um) => {
        const steel = { modulusMpa: 210_000, poisson: 0.3 }
        const joint = {
          jointMm: d,
          hubOuterMm: d + wall,
          shaftBoreMm: hollow * d,
          lengthMm: d,
          hub: steel,
          shaft: steel,
        }
        const found = pressFit({ ...joint, friction: 0.12 }, um)
        if ('fault' in found) throw new Error(found.what)
        expect(found.pressureMpa).toBeGreaterThan(0)
        expect(found.shaftHoopMpa).toBeLessThan(0)
      }),
    )
  })
})
