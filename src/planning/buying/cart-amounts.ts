import Fraction from 'fraction.js'
import { type Cents, majorUnits, minorDigits, roundMoney } from '../../base/money.ts'
import type { Offer, Project, Vendor } from '../../model/project.ts'
import type { Cart, Chosen } from '../../model/purchase.ts'
import { broughtHome, rateOf } from './exchange.ts'

/** A line with its goods, before the cart's own amounts are shared out. */
export interface Goods extends Chosen {
  readonly offer: Offer
  readonly rate: Fraction | null
  readonly goods: Cents | null
}

/** What a cart costs as a whole. */
export type CartAmounts = Pick<
  Cart,
  | 'currency'
  | 'rate'
  | 'goodsForeign'
  | 'freightForeign'
  | 'surchargeForeign'
  | 'clearanceForeign'
  | 'goods'
  | 'freight'
  | 'surcharge'
  | 'duty'
  | 'tax'
  | 'clearance'
  | 'total'
>

/**
 * Freight, minimum-order surcharge, duty, tax and clearance of a cart. Freight, surcharge and clearance are rounded in
 * the vendor's currency, then converted and rounded; duty and tax are reckoned on those converted amounts, as customs
 * at home does: duty on goods, surcharge and freight, tax on all that and duty and clearance.
 * What hangs on an unknown price is `null`: goods and total always; freight only while the known goods stay below the
 * free limit; the surcharge only while they stay below the least order; duty and tax unless their rate is zero.
 * Source: value for duty with freight (CIF) as in the EU and UK, public worked example; from memory in detail.
 */
export function cartAmounts(project: Project, vendor: Vendor, lines: readonly Goods[]): CartAmounts {
  const home = project.device.currency
  const rate = rateOf(project, vendor.currency)
  const complete = lines.every(({ goods }) => goods !== null)
  const known = knownValue(lines, vendor, rate)
  const foreign = foreignAmounts(vendor, known, complete)
  const toHome = (amount: Cents | null): Cents | null => broughtHome(amount, vendor.currency, rate, home)
  const goods = addKnown(lines.map((line) => line.goods))
  const [freight, surcharge, clearance] = [
    toHome(foreign.freightForeign),
    toHome(foreign.surchargeForeign),
    toHome(foreign.clearanceForeign),
  ]
  const duty = levy(vendor.duty, [goods, surcharge, freight], home)
  const tax = levy(vendor.tax, [goods, surcharge, freight, duty, clearance], home)
  const total = addKnown([goods, freight, surcharge, duty, tax, clearance])
  const goodsForeign = complete ? known : null
  return {
    currency: vendor.currency,
    rate,
    goodsForeign,
    ...foreign,
    goods,
    freight,
    surcharge,
    duty,
    tax,
    clearance,
    total,
  }
}

/** The sum, or `null` where one is unknown. */
export function addKnown(amounts: readonly (Cents | null)[]): Cents | null {
  return amounts.reduce<Cents | null>((sum, each) => (sum === null || each === null ? null : sum + each), 0)
}

/** Value of the known goods in the vendor's currency; exact. */
function knownValue(lines: readonly Goods[], vendor: Vendor, rate: Fraction | null): Fraction {
  return lines.reduce((sum, line) => sum.add(worthOf(line, vendor, rate) ?? 0), new Fraction(0))
}

function worthOf(line: Goods, vendor: Vendor, rate: Fraction | null): Fraction | null {
  if (line.goodsForeign === null) return null
  const value = majorUnits(line.goodsForeign, minorDigits(line.offer.currency))
  if (line.offer.currency === vendor.currency) return value
  return line.rate && rate ? value.mul(line.rate).div(rate) : null
}

function foreignAmounts(
  vendor: Vendor,
  known: Fraction,
  complete: boolean,
): Pick<CartAmounts, 'freightForeign' | 'surchargeForeign' | 'clearanceForeign'> {
  const digits = minorDigits(vendor.currency)
  const rounded = (amount: Fraction | null): Cents => (amount ? roundMoney(amount, digits) : 0)
  const { freight, freeOver, minimumOrder } = vendor
  // At the limit itself freight is free; common practice, no source.
  const free = freeOver?.lte(known) ?? false
  const settled = complete || !freeOver || !freight || free
  const reached = !minimumOrder || minimumOrder.lte(known)
  return {
    freightForeign: settled ? (free ? 0 : rounded(freight)) : null,
    surchargeForeign: reached ? 0 : complete ? rounded(minimumOrder.sub(known)) : null,
    clearanceForeign: rounded(vendor.clearance),
  }
}

function levy(rate: Fraction, base: readonly (Cents | null)[], home: string): Cents | null {
  if (rate.equals(0)) return 0
  const sum = addKnown(base)
  const digits = minorDigits(home)
  return sum === null ? null : roundMoney(majorUnits(sum, digits).mul(rate), digits)
}
