import Fraction from 'fraction.js'
import type { Project, Size } from '../../model/project.ts'
import type { CutPieces, CuttingPlan, Missing } from '../../model/purchase.ts'
import { amountPlans, summed } from './amounts.ts'
import { cutBars } from './cut-bars.ts'
import { cutPlates, widestCut } from './cut-plates.ts'
import { type AmountNeed, type CutNeed, materialNeeds, missingMaterial } from './material-needs.ts'
import { type Packing, smaller } from './packing.ts'
import { compareIds, started } from './started.ts'

/**
 * How bars, plates, bottles and spools are shared by all that is made from them, and the parts for which that cannot
 * be said: no stock, no form, no volume, no density, or too large for every unit.
 */
export function cuttingPlans(project: Project): { cuts: CuttingPlan[]; missing: Missing[] } {
  const needs = materialNeeds(project)
  const cut = grouped(needs.cuts, ({ form }) => form.id).map(cutPlan)
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
  const groups = new Map<string, T[]>()
  for (const each of all) groups.set(key(each), [...(groups.get(key(each)) ?? []), each])
  return [...groups.values()]
}

function cutPlan(needs: readonly CutNeed[]): CuttingPlan {
  const { material, form } = needs[0]!
  const packing = pack(needs, form.size, form.have)
  const large = new Set(packing.tooLarge)
  const pieces = needs
    .filter(({ part }) => !large.has(part))
    .map((need) => piecesOf(need, packing, shareOf(need, form.size, widestCut(needs))))
  const { units, tooLarge } = packing
  return summed({ material: material.id, form: form.id, pieces, units, tooLarge })
}

function pack(needs: readonly CutNeed[], size: Size, have: Fraction): Packing {
  const zero = new Fraction(0)
  const pieces = needs.flatMap(({ part, count, length, width, kerf }) =>
    Array.from({ length: count }, () => ({ part, length, width: width ?? zero, kerf })),
  )
  if (size.shape === 'bar') return cutBars(pieces, size.length.value, have)
  if (size.shape !== 'plate' && size.shape !== 'block') throw new Error(`nothing is cut from a ${size.shape}`)
  return cutPlates(pieces, { length: size.length.value, width: size.width.value }, have)
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

function piecesOf({ part, count }: CutNeed, packing: Packing, share: Fraction): CutPieces {
  const taken = (own: boolean): Fraction =>
    packing.units
      .filter((unit) => unit.own === own)
      .flatMap(({ pieces }) => pieces.filter((piece) => piece.part === part))
      .reduce((sum, piece) => sum.add(piece.share), new Fraction(0))
  return { part, count, share, fromStock: taken(true), fromBought: taken(false) }
}
