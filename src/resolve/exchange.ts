import Fraction from 'fraction.js'
import { currencies } from '../base/currencies.ts'
import type { Place } from '../base/place.ts'
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
  const users = new Map<string, { at: Place; says: string }[]>()
  const use = (currency: string, at: Place, says: string): void => {
    if (currency !== home && !project.exchange.has(currency) && currencies.has(currency))
      users.set(currency, [...(users.get(currency) ?? []), { at, says }])
  }
  for (const vendor of project.vendors.values())
    if (context.names.used.has(vendor.id))
      use(vendor.currency, vendor.at, `\`${vendor.id}\` sells in ${vendor.currency}`)
  for (const { what, offer } of pricedIn(project))
    use(offer.currency, offer.at, `${what} is priced in ${offer.currency}`)
  for (const [currency, places] of users)
    context.report(buy.noExchange, places[0]!.at, { currency, home, users: places.slice(1) })
}
