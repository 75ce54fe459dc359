import type Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { exactText } from '../base/rounding.ts'
import { buy } from '../diagnostics/catalogue/buy.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type { Offer, PriceBreak } from '../model/project.ts'
import type { OfferSource } from '../source/generated/project-types.ts'
import { entries, field, isMapSpot, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { nameAt } from './names.ts'
import { listed, moneyAt, moneyIn, threePointAt, words } from './reading.ts'
import { targetsAt } from './targets.ts'

/** Whether a currency is known; reports where it is not. */
export function knownCurrency(context: Pick<Context, 'report'>, text: string, at: Place): boolean {
  if (currencies.has(text)) return true
  context.report(buy.unknownCurrency, at, { text, near: nearNames(text, currencies.keys()) })
  return false
}

interface Prices {
  readonly prices: readonly PriceBreak[] | null
  readonly currency: string
}

type PriceSpot = Spot<NonNullable<OfferSource['price']>>

function singlePrice(context: Context, spot: PriceSpot, home: string): Prices {
  const money = moneyAt(context, 'price', spot as Spot<string | number>, home)
  return money
    ? { prices: [{ from: 1, price: money.value }], currency: money.currency }
    : { prices: null, currency: home }
}

function breaksAt(context: Context, item: string, spot: PriceSpot, home: string): Prices {
  const breaks: PriceBreak[] = []
  let currency: string | null = null
  let whole = true
  for (const [key, value] of entries(spot as Spot<Record<string, string | number>>)) {
    const from = /^[1-9]\d{0,6}$/.test(key) ? Number(key) : null
    if (from === null)
      context.report(qty.outOfBounds, value.keyAt, {
        key: 'price break',
        text: key,
        bound: 'a whole number of pieces, 1 or more',
      })
    const money = moneyAt(context, `price ${key}`, value, home)
    if (from === null || !money) {
      whole = false
      continue
    }
    currency ??= money.currency
    if (money.currency !== currency)
      context.report(buy.wrongMoney, value.at, { key: `price ${key}`, got: money.currency, wanted: currency })
    const last = breaks.at(-1)
    const now = { from, price: money.value }
    if (last && (last.from >= from || last.price.lt(now.price))) {
      const said = (one: PriceBreak): { from: number; price: string } => ({
        from: one.from,
        price: exactText(one.price),
      })
      context.report(buy.breaksOutOfOrder, value.keyAt, { item, ...said(now), before: said(last) })
      whole = false
    }
    breaks.push(now)
  }
  return { prices: whole && breaks.length > 0 ? breaks : null, currency: currency ?? home }
}

/** One offer for an item named so in messages. */
export function offerAt(
  context: Context,
  item: string,
  spot: Spot<OfferSource>,
  from?: string | null,
): Offer | null {
  const vendorSpot = field(spot, 'vendor')
  const vendor = nameAt(context.names, context.report, vendorSpot, ['vendor'])
  const home = (vendor === null ? undefined : context.vendorCurrency.get(vendor)) ?? context.currency
  const price = field(spot, 'price')
  const read = price
    ? isMapSpot(price)
      ? breaksAt(context, item, price, home)
      : singlePrice(context, price, home)
    : { prices: null, currency: home }
  if (!vendorSpot) return null
  const leadSpot = field(spot, 'lead')
  // An unknown vendor has been reported; the offer stands, so that it does not look as if there were none.
  const seller = vendor ?? vendorSpot.text.trim()
  if (!leadSpot) context.report(buy.noLead, spot.at, { item, vendor: seller })
  if (!price || (isMapSpot(price) && entries(price).length === 0))
    context.report(buy.noPrice, spot.at, { item, vendor: seller })
  const moq = field(spot, 'moq')?.value ?? 1
  const first = read.prices?.[0]?.from ?? 1
  if (first > Math.max(moq, 1)) context.report(buy.priceFromNowhere, price!.at, { item, first, needed: 1 })
  return {
    at: spot.at,
    vendor: seller,
    prices: read.prices,
    currency: read.currency,
    lead: threePointAt(context, 'lead', leadSpot, 'working days'),
    pack: field(spot, 'pack')?.value ?? 1,
    moq,
    minimum: moneyIn(context, 'minimum', field(spot, 'minimum'), read.currency),
    code: words(field(spot, 'code')),
    url: words(field(spot, 'url')),
    cart: words(field(spot, 'cart')),
    needs: targetsAt(context, field(spot, 'needs'), from),
    note: words(field(spot, 'note')),
  }
}

/** All offers of a list, in source order; faulted ones are left out. */
export function offersAt(context: Context, item: string, spot: Spot<OfferSource[]> | null): readonly Offer[] {
  return listed(spot).flatMap((one) => offerAt(context, item, one) ?? [])
}

/** The sum of money wanted in the project's currency, or `null`. */
export function worthAt(context: Context, spot: Spot<string | number> | null): Fraction | null {
  return moneyIn(context, 'worth', spot, context.currency)
}
