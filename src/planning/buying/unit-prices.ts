import { minorDigits } from '../../base/money.ts'
import type { Offer, Project } from '../../model/project.ts'
import { chooseQuantity } from './choose-quantity.ts'
import type { UnitPrice } from './choose-units.ts'
import { broughtHome, rateOf } from './exchange.ts'

/**
 * What so many whole units of an offer cost in the project's currency: goods alone, with packs, least order, price
 * breaks and minimum charge; without a price, rate or vendor every unit counts as unpriced.
 * Gives: never less for more units, because buying more where more is cheaper is considered.
 */
export function unitPrices(project: Project, offer: Offer | null): (units: number) => UnitPrice {
  return (units) => {
    if (units === 0) return { unpriced: 0, money: 0 }
    if (!offer || !project.vendors.has(offer.vendor)) return { unpriced: units, money: 0 }
    const { goodsForeign } = chooseQuantity(offer, units, minorDigits(offer.currency))
    const rate = rateOf(project, offer.currency)
    const money = broughtHome(goodsForeign, offer.currency, rate, project.device.currency)
    return money === null ? { unpriced: units, money: 0 } : { unpriced: 0, money }
  }
}
