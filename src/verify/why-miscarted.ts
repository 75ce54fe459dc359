import type { Offer, Project } from '../model/project.ts'
import type { Cart, CartLine, Cents, Purchase } from '../model/purchase.ts'
import { exchanged, minorUnits, signed, sumKnown, sumOf } from './exact.ts'
import { first } from './why-misplaced.ts'

/** Amounts that both a line and its cart carry. */
const columns = ['goods', 'freight', 'surcharge', 'duty', 'tax', 'clearance'] as const

/**
 * Why a line is not price times quantity and its shares, or a cart not the sum of its lines, or `null`.
 * Unknown stays unknown: a line without a price has no amount, and its cart no total but names it.
 */
export function whyMiscarted(project: Project, purchase: Purchase): string | null {
  const seen = new Set<string>()
  return first(purchase.carts, (cart) => {
    const twice = cart.lines.find(({ id }) => seen.size === seen.add(id).size)
    if (twice) return `line \`${twice.id}\` of cart \`${cart.id}\` stands twice in the carts`
    return first(cart.lines, (line) => whyLineWrong(project, cart, line)) ?? whyCartWrong(cart)
  })
}

function whyLineWrong(project: Project, cart: Cart, line: CartLine): string | null {
  const said =
    whyQuantityWrong(line) ?? whyPriceWrong(line) ?? whyGoodsWrong(project, line) ?? whyLandedWrong(line)
  return said === null ? null : `line \`${line.id}\` of cart \`${cart.id}\` ${said}`
}

function whyQuantityWrong({ needed, quantity, offer, more }: CartLine): string | null {
  if (quantity < needed) return `buys ${quantity} and needs ${needed}`
  if (quantity % offer.pack !== 0)
    return `buys ${quantity}, which is no whole number of packs of ${offer.pack}`
  if (quantity < offer.moq) return `buys ${quantity}, below the least order ${offer.moq}`
  if ((more === null) !== (quantity === needed))
    return `buys ${quantity} for ${needed} and gives no fitting reason`
  return null
}

function whyPriceWrong({ quantity, offer, unitPrice, breakFrom }: CartLine): string | null {
  const holding = offer.prices?.filter(({ from }) => from <= quantity) ?? []
  if (holding.length === 0) return unitPrice === null ? null : 'has a unit price that its offer does not give'
  const own = holding.reduce((a, b) => (b.from > a.from ? b : a))
  if (unitPrice === null || !unitPrice.equals(own.price))
    return `does not have the unit price from ${own.from}`
  return breakFrom === own.from ? null : `has its price from ${own.from}, not from ${breakFrom}`
}

function whyGoodsWrong(project: Project, line: CartLine): string | null {
  const foreign = extended(line)
  if (line.goodsForeign !== foreign)
    return `says goods ${line.goodsForeign} in its currency; they are ${foreign}`
  const home = atHome(project, line.offer, foreign)
  return line.goods === home ? null : `says goods ${line.goods}; converted they are ${home}`
}

/** Price times quantity in the offer's currency, rounded once, not less than the offer's least charge. */
function extended({ unitPrice, quantity, offer }: CartLine): Cents | null {
  if (unitPrice === null) return null
  const goods = minorUnits(signed(unitPrice) * BigInt(quantity), unitPrice.d, offer.currency)
  if (goods === null || offer.minimum === null) return goods
  return Math.max(goods, minorUnits(signed(offer.minimum), offer.minimum.d, offer.currency)!)
}

function atHome(project: Project, { currency }: Offer, foreign: Cents | null): Cents | null {
  if (foreign === null || currency === project.device.currency) return foreign
  const rate = project.exchange.get(currency)
  return rate ? exchanged(foreign, currency, rate, project.device.currency) : null
}

function whyLandedWrong(line: CartLine): string | null {
  const landed = sumKnown(columns.map((column) => line[column]))
  return line.landed === landed
    ? null
    : `says it lands at ${line.landed}; goods and shares add up to ${landed}`
}

function whyCartWrong(cart: Cart): string | null {
  const says = `cart \`${cart.id}\``
  for (const column of columns) {
    const sum = sumKnown(cart.lines.map((line) => line[column]))
    if (cart[column] !== sum) return `${says} says ${column} ${cart[column]}; its lines add up to ${sum}`
  }
  const landed = cart.lines.map((line) => line.landed)
  if (cart.total !== sumKnown(landed))
    return `${says} says total ${cart.total}; its lines land at ${sumKnown(landed)}`
  if (cart.known !== sumOf(landed))
    return `${says} says known ${cart.known}; its lines land at ${sumOf(landed)}`
  const unknown = cart.lines.filter((line) => line.landed === null).map(({ id }) => id)
  return sameIds(unknown, cart.unknown)
    ? null
    : `${says} names as unknown ${list(cart.unknown)}, not ${list(unknown)}`
}

/** Whether two lists hold the same ids, in any order. */
export function sameIds(a: readonly string[], b: readonly string[]): boolean {
  return JSON.stringify([...a].sort()) === JSON.stringify([...b].sort())
}

/** Ids as a person reads them. */
export function list(ids: readonly string[]): string {
  return ids.length === 0 ? 'nothing' : ids.map((id) => `\`${id}\``).join(', ')
}
