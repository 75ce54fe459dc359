import Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import { groupBy } from '../base/group-by.ts'
import { buy } from '../diagnostics/catalogue/buy.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type { Offer, Part, Project } from '../model/project.ts'
import type { Source } from '../source/load.ts'
import type { Context } from './context.ts'
import { knownCurrency } from './offers.ts'
import { moneyIn } from './reading.ts'

const one = new Fraction(1)

/** What one unit of each foreign currency costs in the project's. */
export function exchangeAt(context: Context, source: Source): ReadonlyMap<string, Fraction> {
  const rates = new Map<string, Fraction>()
  for (const [code, spot] of source.sections.exchange) {
    if (!knownCurrency(context, code, spot.keyAt)) continue
    if (code === context.currency) {
      context.report(buy.ownExchange, spot.keyAt, { currency: code })
      continue
    }
    const rate = moneyIn(context, code, spot, context.currency)
    if (rate?.equals(0))
      context.report(qty.outOfBounds, spot.at, { key: code, text: spot.text, bound: 'more than 0' })
    // A rate that is faulted is not a missing one.
    rates.set(code, rate && !rate.equals(0) ? rate : one)
  }
  return rates
}

interface Priced {
  readonly what: string
  readonly offer: Offer
}

function offersOfPart(part: Part): readonly Priced[] {
  const { way } = part
  const said = (what: string, offers: readonly Offer[]): readonly Priced[] =>
    offers.map((offer) => ({ what, offer }))
  if (way.kind === 'assembly') return []
  const outside = way.route.flatMap((step) => (step.kind === 'outside' ? [step.offer] : []))
  const own = way.kind === 'bought' || way.kind === 'board' ? way.offers : []
  const stock = way.kind === 'machined' ? (way.stock?.offers ?? []) : []
  return [
    ...said(`\`${part.id}\``, own),
    ...said(`the stock of \`${part.id}\``, stock),
    ...said(`outside work on \`${part.id}\``, outside),
  ]
}

function pricedIn(project: Project): readonly Priced[] {
  const forms = [...project.materials.values()].flatMap((material) => material.forms)
  return [
    ...[...project.parts.values()].flatMap(offersOfPart),
    ...[...forms, ...project.cutters.values()].flatMap(({ id, offers }) =>
      offers.map((offer) => ({ what: `\`${id}\``, offer })),
    ),
  ]
}

/** BUY04: currencies that are used without a rate, once each. Of what a shop sells only what the project uses counts. */
export function reportExchange(context: Context, project: Project): void {
  const home = project.device.currency
  if (!currencies.has(home)) return
  const unknown = (currency: string): boolean =>
    currency !== home && !project.exchange.has(currency) && currencies.has(currency)
  const vendors = [...project.vendors.values()]
    .filter(({ id }) => context.names.used.has(id))
    .map(({ id, currency, at }) => ({ currency, at, says: `\`${id}\` sells in ${currency}` }))
  const offers = pricedIn(project).map(({ what, offer: { currency, at } }) => ({
    currency,
    at,
    says: `${what} is priced in ${currency}`,
  }))
  const uses = [...vendors, ...offers].filter(({ currency }) => unknown(currency))
  const users = groupBy(uses, ({ currency }) => currency)
  for (const [currency, places] of users)
    context.report(buy.noExchange, places[0]!.at, { currency, home, users: places.slice(1) })
}
