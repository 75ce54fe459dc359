import Fraction from 'fraction.js'
import { groupBy } from '../../base/group-by.ts'
import type { Material, MaterialForm, Project, Size } from '../../model/project.ts'
import type { CutPieces, CuttingPlan, Missing } from '../../model/purchase.ts'
import { amountPlans, summed } from './amounts.ts'
import type { ChoicePrice } from './choose-units.ts'
import { type BarPlan, type CutBar, planBars, usualRules } from './cut-bars.ts'
import { type PlatePlan, planPlates } from './cut-plates.ts'
import { type AmountNeed, type CutNeed, materialNeeds, missingMaterial } from './material-needs.ts'
import { type PackedUnit, smaller } from './packing.ts'
import { widestCut } from './plate-shop.ts'
import type { CutPlate } from './sawn-plates.ts'
import { compareIds, started } from './started.ts'
import { unitPrices } from './unit-prices.ts'

/** The pieces that share a form of bar or plate, what is left of each unit, and whether less money could do. */
export interface SawnPlan extends CuttingPlan {
  readonly units: readonly (CutBar | CutPlate)[]
  readonly proof: CutProof
}

/** What the units bought cost, over all forms from which the same pieces can be cut. */
export interface CutProof {
  /** No plan costs less: neither fewer units of unknown price, nor less money for goods. */
  readonly proved: boolean
  readonly price: ChoicePrice
  /** No plan can go below this. */
  readonly least: ChoicePrice
}

/**
 * How bars, plates, bottles and spools are shared by all that is made from them, and the parts for which that cannot
 * be said: no stock, no form, no volume, no density, or too large for every unit. Pieces are cut from whichever forms
 * of the same section or thickness cost the least; freight and charges of an order are not weighed in that choice.
 */
export function cuttingPlans(project: Project): { cuts: (CuttingPlan | SawnPlan)[]; missing: Missing[] } {
  const needs = materialNeeds(project)
  const cut = grouped(needs.cuts, ({ material, form }) => sharedForm(material, form)).flatMap((each) =>
    cutPlan(project, each),
  )
  const amounts = grouped(needs.amounts, ({ material }) => material.id).map((group: AmountNeed[]) =>
    amountPlans(group[0]!.material, group),
  )
  const unplanned = [
    ...amounts.flatMap((each) => each.unplanned),
    ...cut.flatMap(({ tooLarge }) => tooLarge.map((part) => ({ part, why: 'too large' as const }))),
  ]
  const missing = unplanned.map(({ part, why }) => {
    const found = project.parts.get(part)!
    return missingMaterial(found, why, started(project, found))
  })
  const cuts = [...cut, ...amounts.flatMap(({ plans }) => plans)]
  return {
    cuts: cuts.sort((a, b) => compareIds(a.form, b.form)),
    missing: [...needs.missing, ...missing],
  }
}

function grouped<T>(all: readonly T[], key: (each: T) => string): T[][] {
  return [...groupBy(all, key).values()]
}

/** All pieces that can share forms, cut at once; one plan for each form from which something is cut. */
function cutPlan(project: Project, needs: readonly CutNeed[]): SawnPlan[] {
  const { material, form } = needs[0]!
  const forms = likeForms(material, form)
  const plan = planOver(project, needs, forms)
  const { proved, price, least, tooLarge } = plan
  return forms.flatMap(({ id, size }, k) => {
    const units = plan.units.filter((unit) => unit.form === id)
    const large = k === 0 ? tooLarge : []
    if (units.length === 0 && large.length === 0) return []
    const pieces = needs.flatMap((need) => piecesOf(need, units, shareOf(need, size, widestCut(needs))))
    const summary = summed({ material: material.id, form: id, pieces, units, tooLarge: large })
    return [{ ...summary, units, proved, proof: { proved, price, least } }]
  })
}

/** One name for all forms from which the same pieces can be cut. */
function sharedForm(material: Material, form: MaterialForm): string {
  return likeForms(material, form)
    .map(({ id }) => id)
    .sort(compareIds)[0]!
}

/** The forms from which the same pieces can be cut: bars of the same section, plates of the same thickness. */
function likeForms(material: Material, form: MaterialForm): MaterialForm[] {
  const like = material.forms.filter(
    ({ id, size }, k, all) => isLike(size, form.size) && all.findIndex((each) => each.id === id) === k,
  )
  return [form, ...like.filter(({ id }) => id !== form.id)]
}

function isLike(size: Size, other: Size): boolean {
  if (size.shape === 'bar') return other.shape === 'bar' && size.across.value.equals(other.across.value)
  return (
    size.shape === 'plate' && other.shape === 'plate' && size.thickness.value.equals(other.thickness.value)
  )
}

function planOver(
  project: Project,
  needs: readonly CutNeed[],
  forms: readonly MaterialForm[],
): BarPlan | PlatePlan {
  const zero = new Fraction(0)
  const pieces = needs.flatMap(({ part, count, length, width, kerf }) =>
    Array.from({ length: count }, () => ({ part, length, width: width ?? zero, kerf })),
  )
  const stocks = forms.map(({ id, size, have, offers }) => {
    if (size.shape !== 'bar' && size.shape !== 'plate' && size.shape !== 'block')
      throw new Error(`nothing is cut from a ${size.shape}`)
    const width = size.shape === 'bar' ? zero : size.width.value
    return { id, length: size.length.value, width, have, price: unitPrices(project, offers[0] ?? null) }
  })
  const { grip } = needs[0]!.material
  return forms[0]!.size.shape === 'bar'
    ? planBars(pieces, stocks, { ...usualRules, grip: grip.value })
    : planPlates(pieces, stocks)
}

/** One piece with its cut as a share of a whole unit, never above 1. */
function shareOf({ length, width, kerf }: CutNeed, size: Size, widest: Fraction): Fraction {
  const one = new Fraction(1)
  if (size.shape === 'bar') return smaller(length.add(kerf).div(size.length.value), one)
  if (size.shape !== 'plate' && size.shape !== 'block') return one
  const area = size.length.value.mul(size.width.value)
  return smaller(
    length
      .add(widest)
      .mul((width ?? length).add(widest))
      .div(area),
    one,
  )
}

function piecesOf({ part }: CutNeed, units: readonly PackedUnit[], share: Fraction): CutPieces[] {
  const cut = units.flatMap(({ own, pieces }) =>
    pieces.filter((piece) => piece.part === part).map((piece) => ({ own, share: piece.share })),
  )
  const taken = (own: boolean): Fraction =>
    cut.filter((each) => each.own === own).reduce((sum, each) => sum.add(each.share), new Fraction(0))
  return cut.length === 0
    ? []
    : [{ part, count: cut.length, share, fromStock: taken(true), fromBought: taken(false) }]
}
