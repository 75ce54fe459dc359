import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { dimensionNames, likelyUnit } from '../../../src/base/dimension-names.ts'
import { formatQuantity, inUnit, type Quantity, readAs, readQuantity } from '../../../src/base/quantity.ts'
import { isFault, type QuantityFault } from '../../../src/base/quantity-fault.ts'
import { findUnit, unitSymbols } from '../../../src/base/units.ts'

function good(read: Quantity | QuantityFault): Quantity {
  if (isFault(read)) throw new Error(JSON.stringify(read))
  return read
}

const baseValue = (text: string) => good(readQuantity(text)).value.toFraction()
const faultOf = (text: string) => {
  const read = readQuantity(text)
  return isFault(read) ? read : null
}

describe('readQuantity', () => {
  it.each([
    ['25 mm', '25', 'length'],
    ['25mm', '25', 'length'],
    ['.5 mm', '1/2', 'length'],
    ['1e-3 m', '1', 'length'],
    ['1/8 in', '127/40', 'length'],
    ['1 1/8 in', '1143/40', 'length'],
    ['-1 1/8 in', '-1143/40', 'length'],
    ['20 thou', '127/250', 'length'],
    ['5 µm', '1/200', 'length'],
    ['5 μm', '1/200', 'length'],
    ['8 in/min', '254/75', 'length time^-1'],
    ['0.1 mm/rev', '1/10', 'length turn^-1'],
    ['0.02 mm/tooth', '1/50', 'length'],
    ['0.4 mL', '400', 'length^3'],
    ['2 cm³', '2000', 'length^3'],
    ['3 d', '259200', 'time'],
    ['1 h 30 min', '5400', 'time'],
    ['-1 h 30 min', '-5400', 'time'],
    ['5 wd', '5', 'workingDays'],
    ['1200 rpm', '20', 'time^-1 turn'],
    ['0.15 N·m', '150000000', 'length^2 mass time^-2'],
    ['12.50 EUR', '25/2', 'money:EUR'],
    ['EUR 4.20', '21/5', 'money:EUR'],
    ['EUR 20/h', '1/180', 'money:EUR time^-1'],
    ['20 EUR/h', '1/180', 'money:EUR time^-1'],
    ['40 %', '2/5', ''],
    ['25 °C', '5963/20', 'temperature'],
    ['1 K', '1', 'temperature'],
  ])('%s is %s in base units of [%s]', (text, value, dims) => {
    const read = good(readQuantity(text))
    expect([read.value.toFraction(), read.dims]).toEqual([value, dims])
  })

  it('keeps the text and the unit as typed', () => {
    expect(readQuantity('  1/8 in ')).toMatchObject({ text: '1/8 in', unit: 'in' })
    expect(readQuantity('5 µm')).toMatchObject({ text: '5 µm', unit: 'µm' })
  })

  it('tells metres from minutes and case from case', () => {
    expect(baseValue('2 m')).toBe('2000')
    expect(baseValue('2 min')).toBe('120')
    expect(baseValue('1 mN')).toBe('1000')
    expect(baseValue('1 MPa')).toBe('1000000')
    expect(faultOf('25 MM')).toMatchObject({ fault: 'unknown unit', unit: 'MM', near: ['mm'] })
  })

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['25', 'bare'],
    ['mm', 'not a number'],
    ['1.2.3 mm', 'not a number'],
    ['1 000 mm', 'not a number'],
    ['1/0 in', 'not finite'],
    ['.inf', 'not finite'],
    ['NaN mm', 'not finite'],
    ['1e31 mm', 'out of range'],
    [`${'9'.repeat(41)} mm`, 'out of range'],
    [`1${' '.repeat(300)}mm`, 'too long'],
    ['1 mm/s/s', 'two quotients'],
    ['5 ft 3 in', 'not a time sum'],
    ['1 d 2 wd', 'not a time sum'],
    ['1 h -30 min', 'not a time sum'],
    ['1 h 30', 'not a time sum'],
    ['5 constructor', 'unknown unit'],
    ['5 __proto__', 'unknown unit'],
  ])('%s is at fault: %s', (text, fault) => {
    expect(faultOf(text)?.fault).toBe(fault)
  })

  it('offers what a comma may have meant, both ways where it cannot tell', () => {
    expect(faultOf('1,5 mm')).toMatchObject({ fault: 'comma', perhaps: ['1.5 mm'] })
    expect(faultOf('1,000 mm')).toMatchObject({ fault: 'comma', perhaps: ['1.000 mm', '1000 mm'] })
    expect(faultOf('1,250.50 EUR')).toMatchObject({ fault: 'comma', perhaps: ['1250.50 EUR'] })
  })

  it('refuses times that run together and shows them apart', () => {
    for (const text of ['2h30m', '2 h 30 m', '2h30min', '2h 30m']) {
      expect(faultOf(text)).toMatchObject({ fault: 'run together', perhaps: ['2 h 30 min'] })
    }
  })

  it.each([
    ['5 inch', ['in']],
    ['5 hours', ['h']],
    ['25 C', ['°C']],
    ['12 €/h', ['EUR/h']],
    ['8 in/MIN', ['in/min']],
    ['5 mmm', ['mm']],
  ])('%s is met with %j', (text, near) => {
    const fault = faultOf(text)
    expect(fault?.fault === 'unknown unit' && fault.near.slice(0, near.length)).toEqual(near)
  })

  it('never throws and never hangs, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 300, unit: 'binary' }),
        (text) => typeof readQuantity(text) === 'object',
      ),
    )
    const near = fc.array(fc.constantFrom(...'0123456789 ./,-e%hmind'.split('')), { maxLength: 60 })
    fc.assert(fc.property(near, (letters) => typeof readQuantity(letters.join('')) === 'object'))
  })
})

describe('readAs', () => {
  it('gives the quantity where the dimension fits', () => {
    expect(good(readAs('1/8 in', 'length')).value.toFraction()).toBe('127/40')
    expect(good(readAs('2 wd', ['time', 'working days'])).dims).toBe('workingDays')
    expect(good(readAs('20 USD/h', 'money per time')).dims).toBe('money:USD time^-1')
  })

  it('names both dimensions where it does not, and the unit that was meant where that is known', () => {
    expect(readAs('3 mm', 'time')).toMatchObject({
      fault: 'wrong dimension',
      wanted: ['time'],
      got: 'length',
      perhaps: [],
    })
    expect(readAs('90 m', 'time')).toMatchObject({ got: 'length', perhaps: ['90 min'] })
    expect(readAs('5 d', 'working days')).toMatchObject({ got: 'time', perhaps: ['5 wd'] })
  })

  it('shows the likely unit of a bare number', () => {
    expect(readAs('25', 'length')).toMatchObject({ fault: 'bare', perhaps: ['25 mm'] })
    expect(readAs('25', 'time')).toMatchObject({ fault: 'bare', perhaps: ['25 min'] })
  })

  it('takes a bare number as a ratio, or as money where a currency is given', () => {
    expect(good(readAs('0.4', 'ratio')).value.toFraction()).toBe('2/5')
    expect(readAs('12.50', 'money', 'EUR')).toMatchObject({ dims: 'money:EUR', unit: 'EUR', text: '12.50' })
    expect(good(readAs('20', 'money per time', 'EUR/h')).value.toFraction()).toBe('1/180')
  })

  it('has a likely unit of the right dimension for every name', () => {
    for (const name of dimensionNames)
      expect(isFault(readAs(`1 ${likelyUnit(name)}`, name)), name).toBe(false)
  })
})

describe('formatQuantity', () => {
  it('prints in the unit the person wrote', () => {
    const read = good(readQuantity('1/8 in'))
    expect(formatQuantity(inUnit(read.value, read.unit)!, read.unit)).toBe('0.125 in')
    expect(formatQuantity(inUnit(read.value.div(3), 'in')!, 'in')).toBe('1/24 in')
    expect(inUnit(read.value, 'parsec')).toBeNull()
  })

  it('reads back as the same quantity in every unit', () => {
    const symbols = unitSymbols.filter((symbol) => findUnit(symbol))
    const units = fc.oneof(
      fc.constantFrom(...symbols),
      fc
        .tuple(fc.constantFrom(...symbols), fc.constantFrom(...symbols))
        .map(([above, below]) => `${above}/${below}`),
    )
    const amounts = fc
      .tuple(fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 6n }))
      .map(([above, below]) => new Fraction(above, below))
    fc.assert(
      fc.property(amounts, units, (amount, unit) => {
        const read = good(readQuantity(formatQuantity(amount, unit)))
        expect(inUnit(read.value, unit)!.equals(amount)).toBe(true)
      }),
      { numRuns: 500 },
    )
  })
})
