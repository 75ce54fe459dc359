import { exactText } from '../base/rounding.ts'
import type { Offer } from '../model/project.ts'

/** What an offer asks a piece, by quantity where there are breaks, and its least charge. */
export function sayPrice({ prices, currency, minimum }: Offer, pieces: number): string {
  if (prices === null) return 'price unknown'
  const holds = prices.filter(({ from }) => from <= Math.max(1, pieces)).at(-1) ?? prices[0]
  const price = holds ? `${exactText(holds.price)} ${currency} a piece` : 'price unknown'
  return minimum === null ? price : `${price}, at least ${exactText(minimum)} ${currency} a lot`
}
