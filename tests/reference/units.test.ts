import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { currencies } from '../../src/base/currencies.ts'
import { inUnit, readQuantity } from '../../src/base/quantity.ts'
import { isFault } from '../../src/base/quantity-fault.ts'

function exact(text: string, unit: string): string {
  const read = readQuantity(text)
  if (isFault(read)) throw new Error(JSON.stringify(read))
  return inUnit(read.value, unit)!.toFraction()
}

const plain = (text: string) => new Fraction(text).toFraction()

describe('conversion factors', () => {
  // Source: NIST SP 811 (2008) appendix B.8, the factors printed bold there because exact; from memory.
  // Inch, pound and foot by the international agreement of 1959.
  it.each([
    ['1 in', 'mm', '25.4'],
    ['1 mil', 'mm', '0.0254'],
    ['1 thou', 'mm', '0.0254'],
    ['1 ft', 'm', '0.3048'],
    ['1 yd', 'm', '0.9144'],
    ['1 in2', 'mm2', '645.16'],
    ['1 in3', 'cm3', '16.387064'],
    ['1 L', 'cm3', '1000'],
    ['1 lb', 'kg', '0.45359237'],
    ['1 oz', 'g', '28.349523125'],
    ['1 kgf', 'N', '9.80665'],
    ['1 lbf', 'N', '4.4482216152605'],
    ['1 bar', 'kPa', '100'],
    ['1 kWh', 'J', '3600000'],
    ['1 d', 's', '86400'],
    ['1 ft/min', 'm/s', '0.00508'],
    ['1 V', 'W/A', '1'],
    ['1 ohm', 'V/A', '1'],
    ['1 F', 's/ohm', '1'],
    ['1 Pa', 'N/m2', '1'],
    ['1 MPa', 'N/mm2', '1'],
    ['1 J', 'N m', '1'],
    ['1 W', 'J/s', '1'],
    ['1 mAh', 'mA/Hz', '3600'],
    ['1 rpm', 'rev/min', '1'],
    ['360 deg', 'rev', '1'],
  ])('%s is exactly %s %s', (text, unit, factor) => {
    expect(exact(text, unit)).toBe(plain(factor))
  })

  // Source: NIST SP 811 (2008) appendix B.8, factors printed to seven figures; from memory. The first four were run
  // again with scipy.constants 1.17.1 (pound, psi, inch, ounce).
  it.each([
    ['1 psi', 'Pa', 6894.757],
    ['1 in lb', 'N m', 0.1129848],
    ['1 ft lb', 'N m', 1.355818],
    ['1 oz in', 'N m', 0.007061552],
    ['1 kgf cm', 'N m', 0.0980665],
  ])('%s is %s %f to seven figures', (text, unit, factor) => {
    expect(Number(new Fraction(exact(text, unit)).valueOf().toPrecision(7))).toBe(factor)
  })

  // Source: SI brochure, 0 °C = 273.15 K; from memory.
  it('puts 0 °C at 273.15 K', () => {
    expect(exact('0 °C', 'K')).toBe(plain('273.15'))
  })
})

describe('currencies', () => {
  // Source: ISO 4217 list one as published 2024-06-25 (seen): the codes of this list without two minor digits.
  it('have the minor digits of ISO 4217', () => {
    const digits = (count: number) => [...currencies].filter(([, own]) => own === count).map(([code]) => code)
    expect(digits(0)).toEqual(['CLP', 'ISK', 'JPY', 'KRW', 'VND'])
    expect(digits(3)).toEqual(['BHD', 'JOD', 'KWD', 'TND'])
    expect(digits(2)).toHaveLength(currencies.size - 9)
    expect(currencies.size).toBeGreaterThanOrEqual(40)
  })

  // Source: the currency data of the runtime, which ECMA-402 takes from ISO 4217, save four where it follows daily
  // use (no minor digits) and list one says two.
  it('have the minor digits the runtime knows', () => {
    for (const [currency, digits] of currencies) {
      if (['COP', 'HUF', 'IDR', 'PKR'].includes(currency)) continue
      const options = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions()
      expect([currency, options.maximumFractionDigits]).toEqual([currency, digits])
    }
  })

  it('are codes in use', () => {
    const known = new Set(Intl.supportedValuesOf('currency'))
    expect([...currencies.keys()].filter((code) => !known.has(code))).toEqual([])
  })
})
