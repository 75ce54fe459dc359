import { minorDigits } from '../../base/money.ts'
import type { ThreePoint } from '../../base/three-point.ts'
import type { Project, Target, Vendor } from '../../model/project.ts'
import type { Cart, CartLine, Chosen } from '../../model/purchase.ts'
import { cartAmounts, type Goods } from './cart-amounts.ts'
import { chooseQuantity, quantitiesWorthTrying } from './choose-quantity.ts'
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
  const lines = cheapestLines(
    project,
    vendor,
    [...wants].sort((a, b) => compareIds(a.id, b.id)),
  )
  const amounts = cartAmounts(project, vendor, lines)
  const landed = shareCart(amounts, lines)
  const full = lines.map(({ needs: _, ...line }, k): CartLine => ({ ...line, ...landed[k]! }))
  return { ...amounts, ...identity(id, vendor, lines), ...daysOf(vendor, lines), ...knownOf(full) }
}

/**
 * The amounts with which the cart as a whole costs least: a larger amount that is cheaper by itself can lose free
 * freight, and one that is dearer can gain it. All combinations are tried where they are few; else one line after the
 * other is changed while that saves money.
 */
function cheapestLines(project: Project, vendor: Vendor, wants: readonly Want[]): readonly Line[] {
  const choices = wants.map((want) =>
    quantitiesWorthTrying(want.offer, want.needed, minorDigits(want.offer.currency)).map((chosen) =>
      goodsOf(project, want, chosen),
    ),
  )
  const start = wants.map((want) =>
    goodsOf(project, want, chooseQuantity(want.offer, want.needed, minorDigits(want.offer.currency))),
  )
  if (vendor.freeOver === null && vendor.minimumOrder === null) return start
  if (choices.reduce((product, { length }) => product * length, 1) <= mostCombinations)
    return combinations(choices).reduce(
      (best, lines) => (costOf(project, vendor, lines) < costOf(project, vendor, best) ? lines : best),
      start,
    )
  const least = choices.map(([first]) => first!)
  const [a, b] = [start, least].map((lines) => improved(project, vendor, lines, choices))
  return costOf(project, vendor, b!) < costOf(project, vendor, a!) ? b! : a!
}

/** Combinations of amounts that are all tried. */
const mostCombinations = 500

function combinations(choices: readonly (readonly Line[])[]): readonly (readonly Line[])[] {
  return choices.reduce<readonly (readonly Line[])[]>(
    (all, options) => all.flatMap((lines) => options.map((option) => [...lines, option])),
    [[]],
  )
}

const costOf = (project: Project, vendor: Vendor, lines: readonly Line[]): number =>
  cartAmounts(project, vendor, lines).total ?? Number.POSITIVE_INFINITY

function improved(
  project: Project,
  vendor: Vendor,
  lines: readonly Line[],
  choices: readonly (readonly Line[])[],
): readonly Line[] {
  let best = lines
  let cost = costOf(project, vendor, best)
  for (let again = Number.isFinite(cost); again; ) {
    again = false
    for (const [at, options] of choices.entries())
      for (const option of options) {
        const tried = best.map((line, k) => (k === at ? option : line))
        const next = costOf(project, vendor, tried)
        if (next < cost) {
          best = tried
          cost = next
          again = true
        }
      }
  }
  return best
}

function goodsOf(project: Project, want: Want, chosen: Chosen): Line {
  const { currency } = want.offer
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
