import type Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import type { Cents } from '../model/purchase.ts'

/** An exact amount of major units in minor units of a currency, a half away from zero; `null`: no such currency. */
export function minorUnits(numerator: bigint, denominator: bigint, currency: string): Cents | null {
  const digits = currencies.get(currency)
  if (digits === undefined) return null
  return halfAway(numerator * 10n ** BigInt(digits), denominator)
}

/** Minor units of one currency at `rate` major units of the other for each of the first; `null`: not known. */
export function exchanged(
  cents: Cents | null,
  from: string,
  rate: Fraction | null,
  to: string,
): Cents | null {
  const digits = currencies.get(from)
  if (cents === null || rate === null || digits === undefined) return null
  return minorUnits(BigInt(cents) * signed(rate), rate.d * 10n ** BigInt(digits), to)
}

/** A whole amount times an exact ratio, a half away from zero. */
export function portion(cents: Cents, ratio: Fraction): Cents {
  return halfAway(BigInt(cents) * signed(ratio), ratio.d)
}

/** The nearest whole number to a ratio, a half away from zero. Needs: a denominator above zero. */
export function halfAway(numerator: bigint, denominator: bigint): number {
  const size = numerator < 0n ? -numerator : numerator
  const twice = (size * 2n + denominator) / (denominator * 2n)
  return Number(numerator < 0n ? -twice : twice)
}

/** Numerator with its sign. */
export function signed(value: Fraction): bigint {
  return value.s * value.n
}

/** The sum, or `null` where one of them is unknown. */
export function sumKnown(amounts: readonly (Cents | null)[]): Cents | null {
  return amounts.includes(null) ? null : sumOf(amounts)
}

/** The sum of what is known. */
export function sumOf(amounts: readonly (Cents | null)[]): Cents {
  return amounts.reduce<number>((sum, amount) => sum + (amount ?? 0), 0)
}

/** Whether two lists hold the same ids, in any order, doubles counted once. */
export function sameIds(a: readonly string[], b: readonly string[]): boolean {
  const [left, right] = [new Set(a), new Set(b)]
  return left.size === right.size && [...left].every((id) => right.has(id))
}

/** Ids as a person reads them. */
export function idList(ids: readonly string[]): string {
  const once = [...new Set(ids)].sort()
  return once.length === 0 ? 'nothing' : once.map((id) => `\`${id}\``).join(', ')
}
