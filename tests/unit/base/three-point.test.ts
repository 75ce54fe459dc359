import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../../src/base/quantity-fault.ts'
import { readSharing, readThreePoint, threePoint } from '../../../src/base/three-point.ts'

function points(text: string): string[] {
  const read = readThreePoint(text, 'time')
  if (isFault(read)) throw new Error(JSON.stringify(read))
  return [read.low, read.likely, read.high, read.mean].map((value) => value.toFraction())
}

describe('readThreePoint', () => {
  it('shares the last unit', () => {
    expect(points('1..1.5..3 h')).toEqual(['3600', '5400', '10800', '6000'])
  })

  it('lets each value carry its own unit', () => {
    expect(points('30 min..1 h..2 h')).toEqual(['1800', '3600', '7200', '3900'])
    expect(points('45 min .. 1 h 30 min .. 3 h')).toEqual(['2700', '5400', '10800', '5850'])
  })

  it('puts the likely value of two in the middle', () => {
    expect(points('10..40 min')).toEqual(['600', '1500', '2400', '1500'])
  })

  it('reads one value as all three', () => {
    expect(points('20 min')).toEqual(['1200', '1200', '1200', '1200'])
  })

  it.each([
    ['3..2..5 h', { fault: 'out of order', points: ['3', '2', '5 h'] }],
    ['2 h..30 min', { fault: 'out of order' }],
    ['1..2..3..4 h', { fault: 'too many points', count: 4 }],
    ['1...5 h', { fault: 'not a number' }],
    ['..3 h', { fault: 'empty' }],
    ['1..2..3', { fault: 'bare', perhaps: ['1..2..3 min'] }],
    ['1 h..3', { fault: 'bare', perhaps: ['1 h..3 h'] }],
    ['1..2 mm', { fault: 'wrong dimension', got: 'length' }],
    ['1,5..2 h', { fault: 'comma' }],
  ])('%s is at fault: %j', (text, fault) => {
    expect(readThreePoint(text, 'time')).toMatchObject(fault)
  })

  it('reads money in the currency given and refuses two currencies', () => {
    expect(readThreePoint('1..2', 'money', 'EUR')).toMatchObject({ dims: 'money:EUR' })
    expect(readThreePoint('1 EUR..2 USD', 'money')).toMatchObject({
      fault: 'two kinds',
      units: ['EUR', 'USD'],
    })
    expect(readThreePoint('EUR 1..2', 'money')).toMatchObject({ fault: 'bare', perhaps: ['1..2 EUR'] })
  })
})

describe('readSharing', () => {
  it('reads the three sizes of a box', () => {
    const read = readSharing(['60', '2 in', '45 mm'], 'length')
    expect(isFault(read) ? read : read.map(({ value }) => value.toFraction())).toEqual(['60', '254/5', '45'])
  })
})

describe('threePoint', () => {
  it('has its mean between its ends', () => {
    const value = fc.integer({ min: -1000, max: 1000 })
    fc.assert(
      fc.property(value, value, value, (a, b, c) => {
        const [low, likely, high] = [a, b, c].sort((x, y) => x - y).map((x) => new Fraction(x))
        const { mean } = threePoint(low!, likely!, high!)
        expect(mean.gte(low!) && mean.lte(high!)).toBe(true)
        expect(mean.mul(6).equals(a + b + c + 3 * likely!.valueOf())).toBe(true)
      }),
    )
  })
})
