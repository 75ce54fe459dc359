import Fraction from 'fraction.js'
import { currencies } from './currencies.ts'
import { placePoint, roundHalfAway } from './rounding.ts'

/** Money in whole minor units of its currency (cents, yen, fils): the sum of printed lines is exact. */
export type Cents = number

/**
 * An amount in major units, rounded to the currency's minor unit, a half away from zero.
 * Needs: the result fits a safe integer (below 9e15), else a RangeError: a fault in fettle.
 */
export function roundMoney(value: Fraction, digits: number): Cents {
  return toCents(roundHalfAway(value.mul(10n ** BigInt(digits))))
}

/**
 * `total` divided over weights so that the shares add up to it exactly: each share is the difference of two rounded
 * running totals. A zero weight gets nothing; where all weights are zero, all count alike.
 * Needs: no weight below zero; some weight unless the total is zero. Gives: each share within one minor unit of its
 * exact part.
 */
export function shareOut(total: Cents, weights: readonly Fraction[]): Cents[] {
  if (weights.some((weight) => weight.s < 0n)) throw new RangeError('a share has a weight below zero')
  if (weights.length === 0 && total !== 0) throw new RangeError('money to share out, and nobody to take it')
  const sum = weights.reduce((a, b) => a.add(b), new Fraction(0))
  const parts = sum.equals(0)
    ? weights.map(() => new Fraction(1, weights.length))
    : weights.map((w) => w.div(sum))
  let running = new Fraction(0)
  let given = 0
  return parts.map((part) => {
    running = running.add(part)
    const upTo = toCents(roundHalfAway(running.mul(total)))
    const share = upTo - given
    given = upTo
    return share
  })
}

/** Money converted at `rate` (major units of the new currency for one of the old), rounded again. */
export function convert(cents: Cents, digitsFrom: number, rate: Fraction, digitsTo: number): Cents {
  return roundMoney(majorUnits(cents, digitsFrom).mul(rate), digitsTo)
}

/** Money in major units, exact. */
export function majorUnits(cents: Cents, digits: number): Fraction {
  return new Fraction(BigInt(cents), 10n ** BigInt(digits))
}

/** Money as plain decimal text: 1250 with two digits is `12.50`. */
export function decimal(cents: Cents, digits: number): string {
  return placePoint(BigInt(cents), digits)
}

/** Money as a person writes it: `12.50 EUR`, `1300 JPY`. Needs: a currency of the list. */
export function formatMoney(cents: Cents, currency: string): string {
  return `${decimal(cents, minorDigits(currency))} ${currency}`
}

/** Minor digits of a currency. Needs: a currency of the list, else a RangeError. */
export function minorDigits(currency: string): number {
  const digits = currencies.get(currency)
  if (digits === undefined) throw new RangeError(`no currency ${currency} in the list`)
  return digits
}

function toCents(whole: bigint): Cents {
  const cents = Number(whole)
  if (!Number.isSafeInteger(cents)) throw new RangeError(`${whole} minor units are too many to count exactly`)
  return cents
}
