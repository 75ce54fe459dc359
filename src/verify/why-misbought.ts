import type { Project } from '../model/project.ts'
import type { Cart, CartLine, Cents, Purchase } from '../model/purchase.ts'
import { exchanged, minorUnits, signed } from './exact.ts'
import { first } from './why-misplaced.ts'

/**
 * Why a line does not buy enough in whole packs at the price its offer gives for the amount, or is not price times
 * amount, or `null`. A line without a price or without a rate of exchange has no amount; it is never zero.
 */
export function whyMisbought(project: Project, purchase: Purchase): string | null {
  const seen = new Set<string>()
  return first(purchase.carts, (cart) =>
    first(cart.lines, (line) => {
      if (seen.has(line.id)) return `line \`${line.id}\` stands twice in the carts`
      seen.add(line.id)
      const said = whyLineWrong(project, cart, line)
      return said === null ? null : `line \`${line.id}\` of cart \`${cart.id}\` ${said}`
    }),
  )
}

function whyLineWrong(project: Project, cart: Cart, line: CartLine): string | null {
  if (line.offer.vendor !== cart.vendor)
    return `is an offer of \`${line.offer.vendor}\`, not of \`${cart.vendor}\``
  return whyQuantityWrong(line) ?? whyPriceWrong(line) ?? whyGoodsWrong(project, line)
}

function whyQuantityWrong({ needed, quantity, offer, more }: CartLine): string | null {
  if (quantity < needed) return `buys ${quantity} and needs ${needed}`
  if (quantity % offer.pack !== 0)
    return `buys ${quantity}, which is no whole number of packs of ${offer.pack}`
  if (quantity < offer.moq) return `buys ${quantity}, below the least order ${offer.moq}`
  if ((more === null) === (quantity === needed)) return null
  return `buys ${quantity} for ${needed} and gives as reason for more: ${more ?? 'none'}`
}

function whyPriceWrong({ quantity, offer, unitPrice, breakFrom }: CartLine): string | null {
  const prices = offer.prices ?? []
  if (prices.length === 0) return unitPrice === null ? null : 'has a unit price that its offer does not give'
  // Below the first break the first price holds (a warning says that the source is silent there).
  const first = prices.reduce((a, b) => (b.from < a.from ? b : a))
  const holding = [first, ...prices.filter(({ from }) => from <= quantity)]
  const own = holding.reduce((a, b) => (b.from > a.from ? b : a))
  if (unitPrice === null || !unitPrice.equals(own.price))
    return `does not have the unit price from ${own.from}`
  return breakFrom === own.from ? null : `has its price from ${own.from}, not from ${breakFrom}`
}

function whyGoodsWrong({ device, exchange }: Project, line: CartLine): string | null {
  const { currency } = line.offer
  const rate = currency === device.currency ? null : (exchange.get(currency) ?? null)
  const foreign = extended(line)
  if (line.goodsForeign !== foreign)
    return `says goods ${line.goodsForeign} in ${currency}; they are ${foreign}`
  const home = currency === device.currency ? foreign : exchanged(foreign, currency, rate, device.currency)
  return line.goods === home ? null : `says goods ${line.goods} in ${device.currency}; they are ${home}`
}

/** Price times amount in the offer's currency, rounded once, not less than the offer's least charge. */
function extended({ unitPrice, quantity, offer }: CartLine): Cents | null {
  if (unitPrice === null) return null
  const goods = minorUnits(signed(unitPrice) * BigInt(quantity), unitPrice.d, offer.currency)
  const least = offer.minimum && minorUnits(signed(offer.minimum), offer.minimum.d, offer.currency)
  return goods === null ? null : Math.max(goods, least ?? 0)
}
