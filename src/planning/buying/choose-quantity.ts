import type Fraction from 'fraction.js'
import { roundMoney } from '../../base/money.ts'
import type { Offer, PriceBreak } from '../../model/project.ts'
import type { Chosen, MoreWhy } from '../../model/purchase.ts'

/**
 * How many to buy of an offer for a need: whole packs, at least the least order, and more where the larger amount
 * costs less (a price break, or a minimum charge that covers more). Equal cost: the smaller amount.
 * Within one break the cost never falls with the amount, so the least amount of each break is all there is to try.
 * Needs: `need` at least 1; `digits` of the offer's currency. Cost: O(breaks).
 * Source: all-units price breaks, common practice; the figures tested are those of a published exercise.
 */
export function chooseQuantity(offer: Offer, need: number, digits: number): Chosen {
  return quantitiesWorthTrying(offer, need, digits).reduce((a, b) =>
    b.goodsForeign !== null && a.goodsForeign !== null && b.goodsForeign < a.goodsForeign ? b : a,
  )
}

/** The least amount that serves a need, and the least of each price break above it, smallest first. */
export function quantitiesWorthTrying(
  offer: Offer,
  need: number,
  digits: number,
): readonly [Chosen, ...Chosen[]] {
  const least = wholePacks(offer, need)
  const { prices } = offer
  if (!prices || prices.length === 0) return [unpriced(offer, need, least)]
  const larger = prices.filter(({ from }) => from > least).map(({ from }) => wholePacks(offer, from))
  return [
    { ...priced(offer, prices, least, digits), more: whyMore(offer, need, least) },
    ...larger.map((quantity) => ({ ...priced(offer, prices, quantity, digits), more: 'cheaper' as const })),
  ]
}

/** Whole packs, and not below the least order. */
function wholePacks(offer: Offer, need: number): number {
  return offer.pack * Math.ceil(Math.max(need, offer.moq) / offer.pack)
}

function whyMore(offer: Offer, need: number, least: number): MoreWhy | null {
  if (least === need) return null
  return least > offer.pack * Math.ceil(need / offer.pack) ? 'least order' : 'pack'
}

function unpriced(offer: Offer, need: number, least: number): Chosen {
  return {
    quantity: least,
    more: whyMore(offer, need, least),
    unitPrice: null,
    breakFrom: 1,
    goodsForeign: null,
  }
}

function priced(offer: Offer, prices: readonly PriceBreak[], quantity: number, digits: number) {
  // Fewer than the first break are taken to be sold at its price; a warning says so.
  const taken = prices.findLast(({ from }) => from <= quantity) ?? prices[0]!
  const extended = taken.price.mul(quantity)
  return {
    quantity,
    unitPrice: taken.price,
    breakFrom: taken.from,
    goodsForeign: roundMoney(atLeast(extended, offer.minimum), digits),
  }
}

function atLeast(amount: Fraction, minimum: Fraction | null): Fraction {
  return minimum?.gt(amount) ? minimum : amount
}
