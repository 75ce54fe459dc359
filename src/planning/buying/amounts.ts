import Fraction from 'fraction.js'
import type { Material, MaterialForm } from '../../model/project.ts'
import type { CutPieces, CuttingPlan } from '../../model/purchase.ts'
import type { AmountNeed } from './material-needs.ts'
import { smaller } from './packing.ts'
import { compareIds } from './started.ts'

/** What a bottle, spool or bag holds, in the measure of the need; `null`: the density is not known. */
type Contents = Fraction | null

/** Plans for a material taken by volume or mass, and the parts for which there is none. */
export interface AmountPlans {
  readonly plans: readonly CuttingPlan[]
  readonly unplanned: readonly { readonly part: string; readonly why: 'no density' | 'no form' }[]
}

/** So much of the forms of one material, still to be met. */
interface Left {
  readonly need: AmountNeed
  /** In g or mm3, of all pieces. */
  amount: Fraction
}

/**
 * Bottles, spools and bags of one material for the parts that use it. What is here is used first, form by form as
 * written; the rest comes from whole units of the first form with an offer (of the first form where none has).
 * Parts are served by name. Needs: all needs name this material.
 */
export function amountPlans(material: Material, needs: readonly AmountNeed[]): AmountPlans {
  const forms = material.forms.filter(({ size }) => size.shape === 'volume' || size.shape === 'mass')
  const bought = forms.find(({ offers }) => offers.length > 0) ?? forms[0]
  if (!bought) return { plans: [], unplanned: needs.map(({ part }) => ({ part, why: 'no form' })) }
  const served = needs.filter((need) => forms.every((form) => contents(material, form, need) !== null))
  const unplanned = needs.filter((need) => !served.includes(need))
  const left = served.map((need) => ({ need, amount: need.amount.mul(need.count) }))
  const own = forms.map((form) => ({ form, drawn: drawOwn(material, form, left) }))
  const plans = own.map(({ form, drawn }) => planOf(material, form, left, drawn, form === bought))
  return {
    plans: plans.filter(({ pieces }) => pieces.length > 0),
    unplanned: unplanned.map(({ part }) => ({ part, why: 'no density' })),
  }
}

function contents(material: Material, form: MaterialForm, need: AmountNeed): Contents {
  const { size } = form
  if (size.shape === 'volume' && need.measure === 'volume') return size.volume.value
  if (size.shape === 'mass' && need.measure === 'mass') return size.mass.value
  const density = material.density?.value
  if (!density?.gt(0)) return null
  if (size.shape === 'volume') return size.volume.value.mul(density)
  return size.shape === 'mass' ? size.mass.value.div(density) : null
}

/** Units that each part draws from what is here of one form; what is met is taken off `left`. */
function drawOwn(material: Material, form: MaterialForm, left: readonly Left[]): Map<string, Fraction> {
  const drawn = new Map<string, Fraction>()
  let here = form.have
  for (const each of left) {
    const unit = contents(material, form, each.need)!
    const units = smaller(each.amount.div(unit), here)
    here = here.sub(units)
    each.amount = each.amount.sub(units.mul(unit))
    drawn.set(each.need.part, units)
  }
  return drawn
}

function planOf(
  material: Material,
  form: MaterialForm,
  left: readonly Left[],
  drawn: ReadonlyMap<string, Fraction>,
  buys: boolean,
): CuttingPlan {
  const pieces = left.map(({ need, amount }): CutPieces => {
    const unit = contents(material, form, need)!
    const fromStock = drawn.get(need.part) ?? new Fraction(0)
    const fromBought = buys ? amount.div(unit) : new Fraction(0)
    return { part: need.part, count: need.count, share: need.amount.div(unit), fromStock, fromBought }
  })
  const used = pieces.filter(({ fromStock, fromBought }) => fromStock.add(fromBought).gt(0))
  return summed({ material: material.id, form: form.id, pieces: used, units: [], tooLarge: [] })
}

/** A cutting plan with its totals: what is used, what of it is here, and whole units to buy. */
export function summed(
  plan: Pick<CuttingPlan, 'material' | 'form' | 'units' | 'tooLarge'> & { pieces: readonly CutPieces[] },
): CuttingPlan {
  const zero = new Fraction(0)
  const fromStock = plan.pieces.reduce((sum, piece) => sum.add(piece.fromStock), zero)
  const fromBought = plan.pieces.reduce((sum, piece) => sum.add(piece.fromBought), zero)
  const begun = plan.units.filter(({ own }) => !own).length
  const unitsBought = plan.units.length > 0 ? begun : Number(fromBought.ceil().n)
  const pieces = [...plan.pieces].sort((a, b) => compareIds(a.part, b.part))
  return { ...plan, proved: null, pieces, fromStock, unitsUsed: fromStock.add(fromBought), unitsBought }
}
