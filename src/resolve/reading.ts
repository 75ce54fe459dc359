import Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import type { DimensionName } from '../base/dimension-names.ts'
import { currencyOf } from '../base/dims.ts'
import { type Quantity, readAs } from '../base/quantity.ts'
import { isFault } from '../base/quantity-fault.ts'
import {
  readSharing,
  readThreePoint,
  type ThreePoint,
  type ThreePointFault,
  threePoint,
} from '../base/three-point.ts'
import { buy } from '../diagnostics/catalogue/buy.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type { Report } from '../diagnostics/message.ts'
import { type ItemOf, items, type Spot } from '../source/spot.ts'

/** What every reader needs at hand. */
export interface Reading {
  readonly report: Report
  /** The project's currency. */
  readonly currency: string
}

/** A scalar of the source that should be a quantity. */
export type QuantitySpot = Spot<string | number> | null
/** What a quantity may be, so that a slip of sign is caught where it is written. */
export type Bound = 'any' | 'from 0' | 'above 0'

const zero = new Fraction(0)

/** Reports why a text is no such quantity. */
function reportFault(
  reading: Reading,
  key: string,
  spot: Spot<unknown>,
  fault: ThreePointFault,
  wanted: readonly DimensionName[],
): void {
  const facts = { key, fault: inCurrency(fault, reading.currency), wanted }
  if (fault.fault === 'bare') reading.report(qty.bareNumber, spot.at, facts)
  else if (fault.fault === 'unknown unit' || fault.fault === 'two quotients')
    reading.report(qty.unknownUnit, spot.at, facts)
  else if (fault.fault === 'wrong dimension') reading.report(qty.wrongDimension, spot.at, facts)
  else if (fault.fault === 'out of order')
    reading.report(qty.pointsOutOfOrder, spot.at, { key, text: fault.text, points: fault.points })
  else reading.report(qty.unreadable, spot.at, facts)
}

/** Money in what is proposed is in the project's own currency. */
function inCurrency(fault: ThreePointFault, currency: string): ThreePointFault {
  return fault.fault === 'bare'
    ? { ...fault, perhaps: fault.perhaps.map((text) => text.replace('EUR', currency)) }
    : fault
}

function within(reading: Reading, key: string, spot: Spot<unknown>, least: Fraction, bound: Bound): boolean {
  const fine = bound === 'any' || (bound === 'from 0' ? least.gte(zero) : least.gt(zero))
  if (!fine)
    reading.report(qty.outOfBounds, spot.at, {
      key,
      text: spot.text,
      bound: bound === 'from 0' ? '0 or more' : 'more than 0',
    })
  return fine
}

/** The quantity at a place, of one of several dimensions, in base units; `null` where absent or faulted (reported). */
export function quantityAt(
  reading: Reading,
  key: string,
  spot: QuantitySpot,
  wanted: DimensionName | readonly DimensionName[],
  bound: Bound = 'from 0',
): Quantity | null {
  if (!spot) return null
  const all = [wanted].flat()
  const [first, ...others] = all.map((one) => readAs(spot.text, one))
  const read = isFault(first!) ? (others.find((one) => !isFault(one)) ?? first!) : first!
  if (isFault(read)) {
    reportFault(reading, key, spot, read, all)
    return null
  }
  return within(reading, key, spot, read.value, bound) && notBeyond(reading, key, spot, read) ? read : null
}

/** Ten to the fifteenth of whatever base unit: past anything on a bench, and sums of it stay exact. */
const beyond = new Fraction('1000000000000000')
const farthest = new Fraction('100000000')

function notBeyond(
  reading: Reading,
  key: string,
  spot: Spot<unknown>,
  { value, dims, text }: Quantity,
): boolean {
  const money = currencyOf(dims) !== null
  if (value.lte(money ? farthest : beyond)) return true
  const bound = money ? 'at most 100000000' : 'of a size that a bench can hold'
  reading.report(qty.outOfBounds, spot.at, { key, text, bound })
  return false
}

/** The three-point value at a place, in base units; `null` where absent or faulted (reported). */
export function threePointAt(
  reading: Reading,
  key: string,
  spot: QuantitySpot,
  wanted: DimensionName,
  bound: Bound = 'from 0',
): ThreePoint | null {
  if (!spot) return null
  const read = readThreePoint(spot.text, wanted)
  if (isFault(read)) {
    reportFault(reading, key, spot, read, [wanted])
    return null
  }
  return within(reading, key, spot, read.low, bound) && notTooLong(reading, key, spot, read, wanted)
    ? read
    : null
}

/** Longest time in seconds and longest count of working days that a plan of at most twenty years can mean. */
const longest: Partial<Record<DimensionName, { readonly most: number; readonly says: string }>> = {
  time: { most: 20_000 * 3600, says: 'at most 20000 h' },
  'working days': { most: 1500, says: 'at most 1500 wd' },
}

function notTooLong(
  reading: Reading,
  key: string,
  spot: Spot<unknown>,
  { high }: ThreePoint,
  wanted: DimensionName,
): boolean {
  const limit = longest[wanted]
  if (!limit || high.lte(limit.most)) return true
  reading.report(qty.outOfBounds, spot.at, { key, text: spot.text, bound: limit.says })
  return false
}

/** Money at a place with its currency; bare is `home`. */
export function moneyAt(
  reading: Reading,
  key: string,
  spot: QuantitySpot,
  home: string,
): { readonly value: Fraction; readonly currency: string } | null {
  if (!spot) return null
  // A currency that is not known has been reported; here it would only be said again.
  const read = readAs(spot.text, 'money', currencies.has(home) ? home : 'EUR')
  if (isFault(read)) {
    reportFault(reading, key, spot, read, ['money'])
    return null
  }
  if (!within(reading, key, spot, read.value, 'from 0') || !notBeyond(reading, key, spot, read)) return null
  return { value: read.value, currency: currencies.has(home) ? (currencyOf(read.dims) ?? home) : home }
}

/** Money that must be in one currency, major units. */
export function moneyIn(
  reading: Reading,
  key: string,
  spot: QuantitySpot,
  currency: string,
): Fraction | null {
  const money = moneyAt(reading, key, spot, currency)
  if (!money) return null
  if (money.currency === currency) return money.value
  reading.report(buy.wrongMoney, spot!.at, { key, got: money.currency, wanted: currency })
  return null
}

/** A rate in the project's currency per hour; 0 where silent or faulted. */
export function hourlyRate(reading: Reading, key: string, spot: QuantitySpot): Fraction {
  const rate = quantityAt(reading, key, spot, 'money per time')
  if (!rate) return zero
  const currency = currencyOf(rate.dims) ?? reading.currency
  if (currency !== reading.currency && currencies.has(reading.currency)) {
    reading.report(buy.wrongMoney, spot!.at, { key, got: currency, wanted: reading.currency })
    return zero
  }
  return rate.value.mul(3600)
}

/** Whole minutes, rounded up, of a time at a place. */
export function minutesAt(reading: Reading, key: string, spot: QuantitySpot): number | null {
  const time = quantityAt(reading, key, spot, 'time')
  return time ? Number(time.value.div(60).ceil().valueOf()) : null
}

/** A ratio between 0 and 1. */
export function ratioAt(
  reading: Reading,
  key: string,
  spot: QuantitySpot,
  least: 'from 0' | 'above 0' = 'from 0',
): Fraction | null {
  const ratio = quantityAt(reading, key, spot, 'ratio', least)
  if (!ratio) return null
  if (ratio.value.lte(1)) return ratio.value
  reading.report(qty.outOfBounds, spot!.at, { key, text: spot!.text, bound: 'at most 100 %' })
  return null
}

/** How often a test fails; `null` where absent or faulted (reported): one that always fails is never done. */
export function failsAt(reading: Reading, spot: QuantitySpot): Fraction | null {
  const ratio = ratioAt(reading, 'fails', spot)
  if (!ratio?.equals(1)) return ratio
  reading.report(qty.outOfBounds, spot!.at, { key: 'fails', text: spot!.text, bound: 'less than 100 %' })
  return null
}

/** Lengths written as `65 x 65 x 15 mm`; `null` where faulted (reported). */
export function sizeAt(
  reading: Reading,
  key: string,
  spot: Spot<string> | null,
  parts: 2 | 3,
): readonly Quantity[] | null {
  if (!spot) return null
  const texts = spot.text.split(/\s+[x×]\s+/)
  if (texts.length !== parts) {
    reading.report(qty.sizeUnread, spot.at, { key, text: spot.text, parts })
    return null
  }
  const read = readSharing(texts, 'length')
  if (isFault(read)) {
    reportFault(reading, key, spot, read, ['length'])
    return null
  }
  return read.every((one) => within(reading, key, spot, one.value, 'above 0')) ? read : null
}

/** The entries of a list, or of one value that may stand without a list; none where absent. */
export function listed<V>(spot: Spot<V> | null): readonly Spot<ItemOf<V>>[] {
  return spot ? items(spot) : []
}

/** Words as typed; `null` where absent. */
export function words(spot: Spot<unknown> | null): string | null {
  return spot ? spot.text.trim() || String(spot.value) : null
}

/** A three-point value that is certain: all three alike. */
export function certain(value: number, unit: string, text: string): ThreePoint {
  const exact = new Fraction(value)
  return { ...threePoint(exact, exact, exact), dims: unit === 'wd' ? 'workingDays' : 'time', unit, text }
}
