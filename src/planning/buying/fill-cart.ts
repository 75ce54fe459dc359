import { minorDigits } from '../../base/money.ts'
import type { ThreePoint } from '../../base/three-point.ts'
import type { Project, Target, Vendor } from '../../model/project.ts'
import type { Cart, CartLine } from '../../model/purchase.ts'
import { cartAmounts, type Goods } from './cart-amounts.ts'
import { chooseQuantity } from './choose-quantity.ts'
import { broughtHome, rateOf } from './exchange.ts'
import { shareCart } from './share-cart.ts'
import { compareIds } from './started.ts'
import type { Want } from './wants.ts'

type Line = Want & Goods

/**
 * One order filled: amounts chosen, priced, landed, with its lead and transit days.
 * Needs: at least one want, all of one vendor that the project knows.
 */
export function fillCart(project: Project, id: string, wants: readonly Want[]): Cart {
  const vendor = project.vendors.get(wants[0]!.offer.vendor)!
  const lines = [...wants].sort((a, b) => compareIds(a.id, b.id)).map((want) => goodsOf(project, want))
  const amounts = cartAmounts(project, vendor, lines)
  const landed = shareCart(amounts, lines)
  const full = lines.map(({ needs: _, ...line }, k): CartLine => ({ ...line, ...landed[k]! }))
  return { ...amounts, ...identity(id, vendor, lines), ...daysOf(vendor, lines), ...knownOf(full) }
}

function goodsOf(project: Project, want: Want): Line {
  const { currency } = want.offer
  const chosen = chooseQuantity(want.offer, want.needed, minorDigits(currency))
  const rate = rateOf(project, currency)
  const goods = broughtHome(chosen.goodsForeign, currency, rate, project.device.currency)
  return { ...want, ...chosen, rate, goods }
}

function identity(id: string, vendor: Vendor, lines: readonly Line[]) {
  const needs = new Map<string, Target>()
  for (const need of lines.flatMap((line) => line.needs)) {
    const { at: _, ...key } = need
    if (!needs.has(JSON.stringify(key))) needs.set(JSON.stringify(key), need)
  }
  return {
    id,
    vendor: vendor.id,
    at: lines[0]!.at,
    needs: [...needs.values()],
    outside: lines[0]!.what.kind === 'outside',
  }
}

function daysOf(vendor: Vendor, lines: readonly Line[]) {
  const leads = lines.flatMap(({ offer }) => offer.lead ?? [])
  return {
    leads,
    leadDays: Math.max(0, ...leads.map(meanDays)),
    likelyLeadDays: Math.max(0, ...leads.map(likelyDays)),
    transit: vendor.transit,
    transitDays: meanDays(vendor.transit),
    likelyTransitDays: likelyDays(vendor.transit),
  }
}

function meanDays({ mean }: ThreePoint): number {
  return Number(mean.ceil().n)
}

function likelyDays({ likely }: ThreePoint): number {
  return Number(likely.ceil().n)
}

function knownOf(lines: readonly CartLine[]) {
  const known = lines.reduce((sum, line) => sum + line.known, 0)
  return { lines, known, unknown: lines.filter(({ goods }) => goods === null).map(({ id }) => id) }
}
