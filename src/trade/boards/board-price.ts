import { firstOutside, type OutOfDomain } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** A line of a board maker's price list: holds for boards up to an area, from a number of pieces. */
export interface PriceTier {
  readonly mostAreaCm2: number
  readonly fromQuantity: number
  /** Whole minor units of the currency. */
  readonly centsEach: number
}

/** What is asked for. */
export interface BoardOrder {
  readonly areaCm2: number
  readonly quantity: number
  /** Once an order, in whole minor units; 0 where there is none. */
  readonly setupCents: number
}

/** Price of an order, and larger orders that cost less. */
export interface BoardPrice {
  readonly tier: PriceTier
  readonly totalCents: number
  readonly cheaper: readonly { readonly quantity: number; readonly totalCents: number }[]
  readonly worked: readonly string[]
}

/** Why a price list has no price for an order. */
export type NoPrice =
  | { readonly fault: 'too large for the list'; readonly areaCm2: number; readonly mostCm2: number }
  | { readonly fault: 'fewer than sold'; readonly quantity: number; readonly least: number }
  | { readonly fault: 'empty list' }

/**
 * Price of boards from a list by area and quantity: the smallest area that holds the board, then the largest quantity
 * reached. Source: common practice, no source: how board makers print their lists.
 */
export function boardPrice(
  list: readonly PriceTier[],
  order: BoardOrder,
): BoardPrice | NoPrice | OutOfDomain {
  const outside = whyOutside(list, order)
  if (outside) return outside
  if (list.length === 0) return { fault: 'empty list' }
  const { areaCm2, quantity, setupCents } = order
  const areas = list.map(({ mostAreaCm2 }) => mostAreaCm2)
  const fitting = areas.filter((most) => most >= areaCm2 * (1 - 1e-12))
  if (fitting.length === 0) return { fault: 'too large for the list', areaCm2, mostCm2: Math.max(...areas) }
  const area = Math.min(...fitting)
  const rows = list
    .filter(({ mostAreaCm2 }) => mostAreaCm2 === area)
    .sort((a, b) => a.fromQuantity - b.fromQuantity)
  const tier = rows.filter(({ fromQuantity }) => fromQuantity <= quantity).at(-1)
  if (!tier) return { fault: 'fewer than sold', quantity, least: rows[0]!.fromQuantity }
  const totalCents = quantity * tier.centsEach + setupCents
  const cheaper = rows
    .filter(({ fromQuantity }) => fromQuantity > quantity)
    .map(({ fromQuantity, centsEach }) => ({
      quantity: fromQuantity,
      totalCents: fromQuantity * centsEach + setupCents,
    }))
    .filter((more) => more.totalCents < totalCents)
  return {
    tier,
    totalCents,
    cheaper,
    worked: [
      `board of ${figure(areaCm2)} cm2 in the row up to ${figure(area)} cm2, from ${tier.fromQuantity} pieces`,
      `price = ${quantity} x ${tier.centsEach} + ${setupCents} setup = ${totalCents} (minor units)`,
      ...cheaper.map(
        (more) => `${more.quantity} pieces would cost ${more.totalCents}, less than ${quantity}`,
      ),
    ],
  }
}

function whyOutside(list: readonly PriceTier[], order: BoardOrder): OutOfDomain | null {
  for (const tier of list) {
    const outside = firstOutside(tier, {
      mostAreaCm2: 'above 0',
      fromQuantity: 'whole, 1 or more',
      centsEach: 'whole, 0 or more',
    })
    if (outside) return outside
  }
  return firstOutside(order, {
    areaCm2: 'above 0',
    quantity: 'whole, 1 or more',
    setupCents: 'whole, 0 or more',
  })
}
