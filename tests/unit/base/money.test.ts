import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { convert, decimal, formatMoney, majorUnits, roundMoney, shareOut } from '../../../src/base/money.ts'
import { exactText, roundHalfAway, toDecimals } from '../../../src/base/rounding.ts'

const fractions = fc
  .tuple(fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 4n }))
  .map(([above, below]) => new Fraction(above, below))

describe('roundMoney', () => {
  it.each([
    ['1.005', 2, 101],
    ['-1.005', 2, -101],
    ['1.0049999', 2, 100],
    ['2.5', 0, 3],
    ['-2.5', 0, -3],
    ['0.0005', 3, 1],
    ['0', 2, 0],
  ])('rounds %s to %i digits as %i minor units', (value, digits, cents) => {
    expect(roundMoney(new Fraction(value), digits)).toBe(cents)
  })

  it('is never more than half a minor unit off, and a half goes away from zero', () => {
    fc.assert(
      fc.property(fractions, (value) => {
        const off = new Fraction(roundHalfAway(value)).sub(value)
        expect(off.abs().lte(new Fraction(1, 2))).toBe(true)
        if (off.abs().equals(new Fraction(1, 2))) expect(off.s).toBe(value.s)
      }),
    )
  })

  it('refuses amounts too large to count exactly', () => {
    expect(() => roundMoney(new Fraction(10n ** 18n), 2)).toThrow(RangeError)
  })
})

describe('shareOut', () => {
  const weights = fc.array(
    fc.tuple(fc.nat(50), fc.integer({ min: 1, max: 9 })).map(([above, below]) => new Fraction(above, below)),
    { minLength: 1, maxLength: 12 },
  )
  const totals = fc.integer({ min: -1_000_000, max: 1_000_000 })

  it('gives shares that add up to the total', () => {
    fc.assert(
      fc.property(totals, weights, (total, parts) => {
        expect(shareOut(total, parts).reduce((a, b) => a + b, 0)).toBe(total)
      }),
    )
  })

  it('gives each share within one minor unit of its exact part, and nothing to a zero weight among others', () => {
    fc.assert(
      fc.property(totals, weights, (total, parts) => {
        const sum = parts.reduce((a, b) => a.add(b), new Fraction(0))
        fc.pre(sum.gt(0))
        for (const [i, share] of shareOut(total, parts).entries()) {
          expect(parts[i]!.mul(total).div(sum).sub(share).abs().lte(1)).toBe(true)
          if (parts[i]!.equals(0)) expect(share).toBe(0)
        }
      }),
    )
  })

  it('treats all alike where every weight is zero', () => {
    const zero = new Fraction(0)
    expect(shareOut(100, [zero, zero, zero])).toEqual([33, 34, 33])
  })

  it('shares nothing among nobody, and refuses to lose money', () => {
    expect(shareOut(0, [])).toEqual([])
    expect(() => shareOut(5, [])).toThrow(RangeError)
    expect(() => shareOut(5, [new Fraction(-1), new Fraction(2)])).toThrow(RangeError)
  })
})

describe('money as text', () => {
  it('shows the minor digits of its currency', () => {
    expect(formatMoney(1250, 'EUR')).toBe('12.50 EUR')
    expect(formatMoney(-5, 'EUR')).toBe('-0.05 EUR')
    expect(formatMoney(1300, 'JPY')).toBe('1300 JPY')
    expect(formatMoney(1, 'KWD')).toBe('0.001 KWD')
  })

  it('reads back exactly', () => {
    fc.assert(
      fc.property(fc.maxSafeInteger(), fc.constantFrom(0, 2, 3), (cents, digits) => {
        const text = decimal(cents, digits)
        expect(new Fraction(text).equals(majorUnits(cents, digits))).toBe(true)
        expect(text.split('.')[1]?.length ?? 0).toBe(digits)
      }),
    )
  })

  it('prints any fraction so that it reads back', () => {
    fc.assert(fc.property(fractions, (value) => new Fraction(exactText(value)).equals(value)))
    expect(exactText(new Fraction(1, 3))).toBe('1/3')
    expect(toDecimals(new Fraction('1.005'), 2)).toBe('1.01')
    expect(toDecimals(new Fraction('-0.004'), 2)).toBe('0.00')
  })
})

describe('convert', () => {
  it('rounds again in the new currency', () => {
    expect(convert(1999, 2, new Fraction('0.9175'), 2)).toBe(1834)
    expect(convert(1999, 2, new Fraction('161.35'), 0)).toBe(3225)
    expect(convert(1234, 2, new Fraction(1), 2)).toBe(1234)
  })
})
