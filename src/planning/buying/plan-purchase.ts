import { groupBy } from '../../base/group-by.ts'
import type { Project } from '../../model/project.ts'
import type { Cart, Purchase } from '../../model/purchase.ts'
import { cutterWear } from './cutter-wear.ts'
import { cuttingPlans } from './cutting-plans.ts'
import { fillCart } from './fill-cart.ts'
import { compareIds } from './started.ts'
import { type Want, wantsOf } from './wants.ts'

/**
 * What is bought, from whom, in which carts, for how much, and how material is shared by what is cut from it.
 * Gives: nothing depends on the order in which a source lists its parts, vendors or materials.
 */
export function planPurchase(project: Project): Purchase {
  const { cuts, missing } = cuttingPlans(project)
  const wear = cutterWear(project)
  const wants = wantsOf(project, cuts, wear)
  return {
    carts: cartsOf(project, wants.wants),
    cuts,
    wear,
    missing: [...missing, ...wants.missing].sort((a, b) => compareIds(a.id, b.id)),
  }
}

function cartsOf(project: Project, wants: readonly Want[]): Cart[] {
  return [...groupBy(wants, cartOf)]
    .sort(([a], [b]) => compareIds(a, b))
    .map(([id, wanted]) => fillCart(project, id, wanted))
}

/** Each outside lot is a cart of its own; else one per vendor and cart name. */
function cartOf({ id, what, offer }: Want): string {
  if (what.kind === 'outside') return id
  return offer.cart === null ? offer.vendor : `${offer.vendor} / ${offer.cart}`
}
