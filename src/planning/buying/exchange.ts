import Fraction from 'fraction.js'
import { type Cents, convert, minorDigits } from '../../base/money.ts'
import type { Project } from '../../model/project.ts'

/** Project currency for one unit of another; `null`: no rate is known. */
export function rateOf(project: Project, currency: string): Fraction | null {
  if (currency === project.device.currency) return new Fraction(1)
  return project.exchange.get(currency) ?? null
}

/** A rounded amount brought into the project's currency and rounded again; `null` where amount or rate is unknown. */
export function broughtHome(
  amount: Cents | null,
  currency: string,
  rate: Fraction | null,
  home: string,
): Cents | null {
  if (amount === null || rate === null) return amount === 0 ? 0 : null
  return convert(amount, minorDigits(currency), rate, minorDigits(home))
}
