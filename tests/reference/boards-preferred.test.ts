import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../src/base/quantity-fault.ts'
import { readComponentValue } from '../../src/trade/boards/component-value.ts'
import {
  nearestPreferred,
  type PreferredSeries,
  preferredValues,
  seriesOf,
} from '../../src/trade/boards/preferred-values.ts'

const column = (text: string): number[] => text.trim().split(/\s+/).map(Number)

// IEC 60063 as printed in an encyclopedia and on a radio amateur's page; E192 as several public tables print it.
const tables: Readonly<Record<PreferredSeries, readonly number[]>> = {
  E3: column('10 22 47'),
  E6: column('10 15 22 33 47 68'),
  E12: column('10 12 15 18 22 27 33 39 47 56 68 82'),
  E24: column('10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91'),
  E48: column(`
    100 105 110 115 121 127 133 140 147 154 162 169 178 187 196 205 215 226 237 249 261 274 287 301
    316 332 348 365 383 402 422 442 464 487 511 536 562 590 619 649 681 715 750 787 825 866 909 953`),
  E96: column(`
    100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174
    178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309
    316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464 475 487 499 511 523 536 549
    562 576 590 604 619 634 649 665 681 698 715 732 750 768 787 806 825 845 866 887 909 931 953 976`),
  E192: column(`
    100 101 102 104 105 106 107 109 110 111 113 114 115 117 118 120 121 123 124 126 127 129 130 132
    133 135 137 138 140 142 143 145 147 149 150 152 154 156 158 160 162 164 165 167 169 172 174 176
    178 180 182 184 187 189 191 193 196 198 200 203 205 208 210 213 215 218 221 223 226 229 232 234
    237 240 243 246 249 252 255 258 261 264 267 271 274 277 280 284 287 291 294 298 301 305 309 312
    316 320 324 328 332 336 340 344 348 352 357 361 365 370 374 379 383 388 392 397 402 407 412 417
    422 427 432 437 442 448 453 459 464 470 475 481 487 493 499 505 511 517 523 530 536 542 549 556
    562 569 576 583 590 597 604 612 619 626 634 642 649 657 665 673 681 690 698 706 715 723 732 741
    750 759 768 777 787 796 806 816 825 835 845 856 866 876 887 898 909 920 931 942 953 965 976 988`),
}
const names = Object.keys(tables) as PreferredSeries[]

function nearest(wanted: number, series: PreferredSeries) {
  const near = nearestPreferred(wanted, series)
  if (isFault(near)) throw new Error(JSON.stringify(near))
  return near
}

describe('preferred values, IEC 60063', () => {
  it.each(names)('%s whole, as printed', (series) => {
    expect(tables[series]).toHaveLength(Number(series.slice(1)))
    expect(preferredValues[series]).toEqual(tables[series])
  })

  it('the rule 10^(i/24) misses the printed E24 at eight places', () => {
    const byRule = tables.E24.map((_, i) => Math.round(10 * 10 ** (i / 24)))
    expect(byRule.filter((value, i) => value !== tables.E24[i])).toEqual([26, 29, 32, 35, 38, 42, 46, 83])
  })

  it('the first four of E96 are 1.00, 1.02, 1.05, 1.07 and the 48th is 3.09', () => {
    expect([...preferredValues.E96.slice(0, 4), preferredValues.E96[47]]).toEqual([100, 102, 105, 107, 309])
  })

  // By hand, by ratio.
  it('nearest to 3399 ohm: 3.3 k of E24, 3.40 k of E96; nearest to 5 k of E12: 4.7 k', () => {
    expect(nearest(3399, 'E24').value).toBe(3300)
    expect(nearest(3399, 'E96').value).toBe(3400)
    expect(nearest(5000, 'E12').value).toBe(4700)
  })

  // Between 10 and 22: middle by ratio sqrt(220) = 14.83, by difference 16.
  it('near the middle the nearest by ratio and by difference are two values, and both are told', () => {
    expect(nearest(15.5, 'E3')).toMatchObject({ value: 22, byDifference: 10, below: 10, above: 22 })
  })

  it('values in a series are known as such, in any decade', () => {
    for (const wanted of [4.7e-12, 0.1, 4700, 2.2e6]) expect(nearest(wanted, 'E6').inSeries).toBe(true)
    expect(nearest(4800, 'E24').inSeries).toBe(false)
    expect([
      seriesOf(4700),
      seriesOf(820),
      seriesOf(5100),
      seriesOf(4.87e3),
      seriesOf(4.99e3),
      seriesOf(9.2),
      seriesOf(1234),
    ]).toEqual(['E3', 'E12', 'E24', 'E48', 'E96', 'E192', null])
  })

  it('no value of three decades is nearer than the nearest, by a plain search', () => {
    const wanted = fc.double({ min: -9, max: 8, noNaN: true }).map((exponent) => 10 ** exponent)
    fc.assert(
      fc.property(wanted, fc.constantFrom(...names), (value, series) => {
        const near = nearest(value, series)
        const scale = tables[series][0] === 10 ? 10 : 100
        const decade = Math.floor(Math.log10(value))
        for (const shift of [-1, 0, 1])
          for (const figures of tables[series]) {
            const other = (figures / scale) * 10 ** (decade + shift)
            expect(Math.abs(Math.log(near.value / value))).toBeLessThanOrEqual(
              Math.abs(Math.log(other / value)) + 1e-9,
            )
          }
      }),
    )
  })
})

describe('component values as the trade writes them', () => {
  // Letter for the point: IEC 60062, from memory; the rest common practice, no source.
  it.each([
    ['4k7', 4700, null],
    ['4.7k', 4700, null],
    ['4,7k', 4700, null],
    ['4K7', 4700, null],
    ['100n', 1e-7, null],
    ['10uF', 1e-5, 'farad'],
    ['10 \u00b5F', 1e-5, 'farad'],
    ['10 \u03bcF', 1e-5, 'farad'],
    ['0R1', 0.1, 'ohm'],
    ['R47', 0.47, 'ohm'],
    ['2M2', 2.2e6, null],
    ['1R5', 1.5, 'ohm'],
    ['0R', 0, 'ohm'],
    ['47', 47, null],
    ['4n7F', 4.7e-9, 'farad'],
    ['2m2', 2.2e-3, null],
    ['5.6mH', 5.6e-3, 'henry'],
    ['10 M\u03a9', 1e7, 'ohm'],
    ['4.7 k\u2126', 4700, 'ohm'],
    ['1Meg', 1e6, null],
    ['330 ohm', 330, 'ohm'],
    ['.5R', 0.5, 'ohm'],
    ['0,100u', 1e-7, null],
  ])('%s is %d', (text, value, unit) => {
    expect(readComponentValue(text)).toEqual({ value, unit, rest: '' })
  })

  it.each([
    ['100nF/50V', 1e-7, '50V'],
    ['10k, 1%', 1e4, '1%'],
    ['10k 1%', 1e4, '1%'],
    ['100 n X7R', 1e-7, 'X7R'],
    ['47 5%', 47, '5%'],
  ])('%s keeps what follows the value', (text, value, rest) => {
    expect(readComponentValue(text)).toMatchObject({ value, rest })
  })

  it.each(['', 'LM358', 'M3', '1N4148', '8 MHz', '12MHz', '3V3', 'DNP', '-5k', '4.7.k', 'BC547', '5 V'])(
    '%s is no component value',
    (text) => {
      expect(readComponentValue(text)).toMatchObject({ fault: 'not a component value' })
    },
  )

  it('what can be read in two ways is not read', () => {
    expect(readComponentValue('4E7')).toMatchObject({ fault: 'two readings of E' })
    expect(readComponentValue('4,700')).toMatchObject({ fault: 'comma in thousands' })
    expect(readComponentValue('9999999999G')).toMatchObject({ fault: 'out of range' })
  })

  it('every preferred value is read back from both ways of writing it', () => {
    for (const figures of tables.E24)
      for (const [letter, exponent] of [
        ['k', 3],
        ['n', -9],
        ['M', 6],
      ] as const) {
        const [whole, tenth] = [Math.floor(figures / 10), figures % 10]
        const value = Number(`${whole}.${tenth}e${exponent}`)
        expect(readComponentValue(`${whole}${letter}${tenth}`)).toMatchObject({ value })
        expect(readComponentValue(`${whole}.${tenth}${letter}`)).toMatchObject({ value })
      }
  })

  it('any text gives a finite value from 0 up or a fault', () => {
    const signs = fc.string({
      unit: fc.constantFrom(...'0123456789.,kKMmunpRFHegE \u03a9-+/%xV'),
      maxLength: 14,
    })
    fc.assert(
      fc.property(fc.oneof(signs, fc.string()), (text) => {
        const read = readComponentValue(text)
        if (!isFault(read)) expect(Number.isFinite(read.value) && read.value >= 0).toBe(true)
      }),
      { numRuns: 1000 },
    )
  })
})
