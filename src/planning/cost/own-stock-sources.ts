import Fraction from 'fraction.js'
import { roundMoney } from '../../base/money.ts'
import type { OwnStockSource } from '../../model/money.ts'
import type { Offer, Part, Project } from '../../model/project.ts'
import type { CutterWear, CuttingPlan, Purchase } from '../../model/purchase.ts'
import { rateOf } from '../buying/exchange.ts'
import { byName } from '../buying/started.ts'
import { type Claim, type Claimed, partClaims, unitsOf } from './claim.ts'
import type { Fate } from './fates.ts'

type Fates = ReadonlyMap<string, Fate>

/**
 * What is drawn from here: parts built in, shares of bars, plates and bottles, and the wear of own cutters. Each at its
 * stated worth, else at the first price of its first offer, else unknown. What is not used is not drawn.
 */
export function ownStockSources(
  project: Project,
  purchase: Purchase,
  digits: number,
  fates: Fates,
): Claimed[] {
  const drawn = [
    ...byName(project.parts).flatMap((part) => partDraw(part, fates.get(part.id))),
    ...purchase.cuts.flatMap((cut) => formDraw(project, cut, fates)),
    ...purchase.wear.flatMap((wear) => cutterDraw(project, wear, fates)),
  ]
  return drawn.map((draw) => drawnSource(project, draw, digits))
}

interface Draw {
  readonly of: OwnStockSource['of']
  readonly item: string
  readonly worth: Fraction | null
  readonly offer: Offer | undefined
  readonly claims: readonly Claim[]
}

function drawnSource(project: Project, { of, item, worth, offer, claims }: Draw, digits: number): Claimed {
  const units = unitsOf(claims)
  const unit = worth ?? offerPrice(project, offer)
  const amount = unit && roundMoney(unit.mul(units), digits)
  const source: OwnStockSource = {
    kind: 'own stock',
    id: `own / ${item}`,
    title: item,
    amount,
    known: amount ?? 0,
    of,
    item,
    units,
    worth: unit,
    worthFrom: worth ? 'stated' : unit ? 'offer' : 'unknown',
  }
  return { source, claims }
}

function offerPrice(project: Project, offer: Offer | undefined): Fraction | null {
  const price = offer?.prices?.[0]?.price
  const rate = offer && rateOf(project, offer.currency)
  return price && rate ? price.mul(rate) : null
}

function partDraw(part: Part, fate: Fate | undefined): Draw[] {
  if (!fate || fate.drawn === 0) return []
  const { way } = part
  const offer = way.kind === 'bought' || way.kind === 'board' ? way.offers[0] : undefined
  const claims = partClaims(part.id, 'bought', new Fraction(fate.drawn), fate.drawnKept, fate.why)
  return [{ of: 'part', item: part.id, worth: part.worth, offer, claims }]
}

function formDraw(project: Project, cut: CuttingPlan, fates: Fates): Draw[] {
  const form = project.materials.get(cut.material)?.forms.find(({ id }) => id === cut.form)
  if (!form || cut.fromStock.equals(0)) return []
  const claims = cut.pieces.flatMap(({ part, fromStock }) => madeClaims(part, 'material', fromStock, fates))
  return [{ of: 'form', item: form.id, worth: form.worth, offer: form.offers[0], claims }]
}

function cutterDraw(project: Project, wear: CutterWear, fates: Fates): Draw[] {
  const cutter = project.cutters.get(wear.cutter)
  if (!cutter || wear.have === 0 || !wear.life || wear.worn.equals(0)) return []
  const { life } = wear
  const claims = wear.parts.flatMap(({ part, seconds }) =>
    madeClaims(part, 'cutter', seconds.div(life), fates),
  )
  return [{ of: 'cutter', item: cutter.id, worth: cutter.worth, offer: cutter.offers[0], claims }]
}

function madeClaims(part: string, process: 'material' | 'cutter', units: Fraction, fates: Fates): Claim[] {
  const fate = fates.get(part)
  return partClaims(part, process, units, fate?.kept ?? new Fraction(0), fate?.why ?? 'spare')
}
