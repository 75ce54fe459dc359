import type Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import type { Project, Vendor } from '../model/project.ts'
import type { Cart, CartLine, Cents, Purchase } from '../model/purchase.ts'
import {
  exchanged,
  halfAway,
  idList,
  minorUnits,
  portion,
  sameIds,
  signed,
  sumKnown,
  sumOf,
} from './exact.ts'
import { first } from './why-misplaced.ts'

/** What a cart adds to its goods, shared out over its lines. */
const added = ['freight', 'surcharge', 'duty', 'tax', 'clearance'] as const
const columns = ['goods', ...added] as const

/**
 * Why what a cart adds to its goods is not what the vendor asks, is not shared out by value, or does not add up, or
 * `null`. Reading: goods of exactly `free over` may or may not pay freight.
 */
export function whyMiscarted(project: Project, purchase: Purchase): string | null {
  return first(purchase.carts, (cart) => {
    const vendor = project.vendors.get(cart.vendor)
    if (!vendor) return `cart \`${cart.id}\` is for \`${cart.vendor}\`, which is no vendor of the project`
    const said =
      whyAddedWrong(vendor, cart) ??
      whyConvertedWrong(project, vendor, cart) ??
      whyTaxedWrong(vendor, cart) ??
      whySharedWrong(cart) ??
      whySumsWrong(cart)
    return said === null ? null : `cart \`${cart.id}\` ${said}`
  })
}

/** Freight, minimum order and clearance in the vendor's currency, from the value of the goods. */
function whyAddedWrong(vendor: Vendor, cart: Cart): string | null {
  const goods = cart.goodsForeign
  if (cart.currency !== vendor.currency) return `counts in ${cart.currency}, its vendor in ${vendor.currency}`
  const clearance = inMinor(vendor.clearance, vendor.currency)
  if (cart.clearanceForeign !== clearance) return `says clearance ${cart.clearanceForeign}, not ${clearance}`
  if (goods === null) return null
  const own = sumInVendorCurrency(cart)
  if (own !== null && inMinor(goods, cart.currency) !== own)
    return `says its goods are worth ${goods}, not ${own}`
  const short = vendor.minimumOrder?.sub(goods)
  const surcharge = short && short.s > 0n ? inMinor(short, vendor.currency) : 0
  if (cart.surchargeForeign !== surcharge) return `says surcharge ${cart.surchargeForeign}, not ${surcharge}`
  const asked = inMinor(vendor.freight, vendor.currency)
  const allowed = vendor.freeOver === null || goods.lt(vendor.freeOver) ? [asked] : [0]
  if (vendor.freeOver?.equals(goods)) allowed.push(asked)
  return allowed.includes(cart.freightForeign)
    ? null
    : `says freight ${cart.freightForeign}, not ${allowed[0]}`
}

/** Sum of the lines, where all are priced in the vendor's own currency. */
function sumInVendorCurrency({ lines, currency }: Cart): Cents | null {
  if (!currencies.has(currency) || lines.some(({ offer }) => offer.currency !== currency)) return null
  return sumKnown(lines.map(({ goodsForeign }) => goodsForeign))
}

function whyConvertedWrong({ device, exchange }: Project, vendor: Vendor, cart: Cart): string | null {
  const rate = exchange.get(vendor.currency) ?? null
  const home = (cents: Cents | null): Cents | null =>
    vendor.currency === device.currency ? cents : exchanged(cents, vendor.currency, rate, device.currency)
  for (const column of ['freight', 'surcharge', 'clearance'] as const) {
    const own = home(cart[`${column}Foreign`])
    if (cart[column] !== own) return `says ${column} ${cart[column]}; converted it is ${own}`
  }
  return null
}

function whyTaxedWrong(vendor: Vendor, cart: Cart): string | null {
  const value = sumKnown([cart.goods, cart.surcharge, cart.freight])
  const duty = rated(value, vendor.duty)
  if (!agrees(cart.duty, duty, vendor.duty)) return `says duty ${cart.duty}; at its rate it is ${duty}`
  const tax = rated(sumKnown([value, cart.duty, cart.clearance]), vendor.tax)
  return agrees(cart.tax, tax, vendor.tax) ? null : `says tax ${cart.tax}; at its rate it is ${tax}`
}

function rated(value: Cents | null, ratio: Fraction): Cents | null {
  return value === null ? null : portion(value, ratio)
}

/** At a rate of nothing, nothing is due on what is not known either. */
function agrees(said: Cents | null, due: Cents | null, ratio: Fraction): boolean {
  return said === due || (due === null && ratio.equals(0) && said === 0)
}

/** By value, each share the difference of two rounded running totals; alike where all goods are worth nothing. */
function whySharedWrong(cart: Cart): string | null {
  const goods = cart.lines.map((line) => line.goods)
  const whole = sumKnown(goods)
  for (const column of added) {
    const amount = cart[column]
    let before = 0
    for (const [i, line] of cart.lines.entries()) {
      const upTo = whole === 0 ? i + 1 : sumOf(goods.slice(0, i + 1))
      const of = whole === 0 ? cart.lines.length : whole
      const running =
        amount === null || of === null ? null : halfAway(BigInt(amount) * BigInt(upTo), BigInt(of))
      const said = whyShareWrong(line, column, running === null ? null : running - before, amount)
      if (said !== null) return said
      before = running ?? 0
    }
  }
  return null
}

function whyShareWrong(
  line: CartLine,
  column: (typeof added)[number],
  share: Cents | null,
  amount: Cents | null,
) {
  // Of nothing every line has nothing, whatever its goods are worth.
  if (line[column] === share || (amount === 0 && line[column] === 0)) return null
  return `gives line \`${line.id}\` ${line[column]} of the ${column}, not ${share}`
}

function whySumsWrong(cart: Cart): string | null {
  const goods = sumKnown(cart.lines.map((line) => line.goods))
  if (cart.goods !== goods) return `says goods ${cart.goods}; its lines add up to ${goods}`
  for (const line of cart.lines) {
    const landed = sumKnown(columns.map((column) => line[column]))
    if (line.landed !== landed) return `lands line \`${line.id}\` at ${line.landed}; its parts make ${landed}`
    const least = landed ?? line.goods ?? 0
    if (landed === null ? line.known < least : line.known !== least) {
      return `knows ${line.known} of line \`${line.id}\`, and ${least} is known`
    }
  }
  const total = sumKnown(columns.map((column) => cart[column]))
  if (cart.total !== total) return `says total ${cart.total}; its parts make ${total}`
  return whyKnownWrong(cart)
}

function whyKnownWrong(cart: Cart): string | null {
  const known = sumOf(cart.lines.map((line) => line.known))
  if (cart.known !== known) return `knows ${cart.known}; of its lines ${known} is known`
  if (cart.total !== null && cart.known !== cart.total) return `knows ${cart.known} of a total ${cart.total}`
  const unknown = cart.lines.filter((line) => line.goods === null).map(({ id }) => id)
  return sameIds(unknown, cart.unknown)
    ? null
    : `names as unknown ${idList(cart.unknown)}, not ${idList(unknown)}`
}

function inMinor(value: Fraction | null, currency: string): Cents | null {
  return value === null ? 0 : minorUnits(signed(value), value.d, currency)
}
