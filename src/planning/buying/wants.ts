import Fraction from 'fraction.js'
import type { Place } from '../../base/place.ts'
import type { Offer, Part, Project, Target } from '../../model/project.ts'
import type { Bought, CutterWear, CuttingPlan, Missing } from '../../model/purchase.ts'
import { byName, lotSizes, routedWay, started } from './started.ts'

/** Something to buy, before it is known how many and from whom else. */
export interface Want {
  readonly id: string
  readonly what: Bought
  readonly title: string
  readonly at: Place
  readonly offer: Offer
  readonly needed: number
  /** Work that the order waits for. */
  readonly needs: readonly Target[]
}

/** What is to be bought, and what cannot be because nobody offers it. */
export interface Wants {
  readonly wants: readonly Want[]
  readonly missing: readonly Missing[]
}

/** A want that may have no offer. */
interface Asked extends Omit<Want, 'offer' | 'needs'> {
  readonly offer: Offer | null
  readonly needs?: readonly Target[]
  readonly kind: Missing['kind']
  /** Whom it is for, where that is not one part. */
  readonly parts: Missing['parts']
}

/**
 * Everything a project buys: bought parts and bare boards, pieces cut to size, whole units of material, cutters, and
 * outside work lot by lot. The first offer is taken.
 */
export function wantsOf(project: Project, cuts: readonly CuttingPlan[], wear: readonly CutterWear[]): Wants {
  const asked = [
    ...byName(project.parts).flatMap((part) => partWants(part, started(project, part))),
    ...cuts.flatMap((cut) => formWants(project, cut)),
    ...wear.flatMap((each) => cutterWants(project, each)),
  ]
  const unmet = (each: Asked): boolean => !each.offer || !project.vendors.has(each.offer.vendor)
  return {
    wants: asked.filter((each) => !unmet(each)).map(wanted),
    missing: asked.filter(unmet).map(unoffered),
  }
}

function wanted({ id, what, title, at, offer, needed, needs }: Asked): Want {
  return { id, what, title, at, offer: offer!, needed, needs: [...offer!.needs, ...(needs ?? [])] }
}

function unoffered({ id, title, at, kind, parts, offer }: Asked): Missing {
  return { id, title, at, kind, parts, why: offer ? 'no vendor' : 'no offer' }
}

function partWants(part: Part, pieces: number): Asked[] {
  const way = routedWay(part.way)
  if (!way || pieces === 0) return []
  return [...wholePart(part, pieces), ...outsideWants(part, pieces)]
}

function wholePart(part: Part, pieces: number): Asked[] {
  const { way } = part
  const common = { at: part.at, needed: pieces, parts: [weigh(part.id, new Fraction(pieces))] }
  if (way.kind === 'bought' || way.kind === 'board') {
    const what: Bought = { kind: 'part', part: part.id }
    return [{ ...common, id: part.id, what, title: part.id, offer: way.offers[0] ?? null, kind: 'part' }]
  }
  const offer = way.kind === 'machined' ? way.stock?.offers[0] : undefined
  if (!offer) return []
  const what: Bought = { kind: 'stock', part: part.id }
  return [
    { ...common, id: `${part.id} / stock`, what, title: `stock for ${part.id}`, offer, kind: 'material' },
  ]
}

function outsideWants(part: Part, pieces: number): Asked[] {
  const way = routedWay(part.way)!
  const lots = lotSizes(pieces, way.lot)
  let ordinal = 0
  return way.route.flatMap((step, routeStep) => {
    if (step.kind !== 'outside') return []
    ordinal += 1
    const { at, offer, needs } = step
    const name = step.what ?? 'outside work'
    return lots.map((size, lot): Asked => {
      const id = `${part.id} / outside ${ordinal} / lot ${lot + 1}`
      const what: Bought = { kind: 'outside', part: part.id, routeStep, lot }
      const parts = [weigh(part.id, new Fraction(size))]
      return {
        id,
        what,
        title: `${name} on ${part.id}`,
        at,
        offer,
        needed: size,
        needs,
        kind: 'outside',
        parts,
      }
    })
  })
}

function formWants(project: Project, cut: CuttingPlan): Asked[] {
  const form = project.materials.get(cut.material)?.forms.find(({ id }) => id === cut.form)
  if (!form || cut.unitsBought === 0) return []
  const parts = cut.pieces.map(({ part, fromBought }) => weigh(part, fromBought))
  const what: Bought = { kind: 'form', material: cut.material, form: form.id }
  const offer = form.offers[0] ?? null
  return [
    {
      id: form.id,
      what,
      title: form.id,
      at: form.at,
      offer,
      needed: cut.unitsBought,
      kind: 'material',
      parts,
    },
  ]
}

function cutterWants(project: Project, wear: CutterWear): Asked[] {
  const cutter = project.cutters.get(wear.cutter)
  if (!cutter || wear.toBuy === 0) return []
  const parts = wear.parts.map(({ part, seconds }) => weigh(part, seconds))
  const what: Bought = { kind: 'cutter', cutter: cutter.id }
  const offer = cutter.offers[0] ?? null
  return [
    {
      id: cutter.id,
      what,
      title: cutter.id,
      at: cutter.at,
      offer,
      needed: wear.toBuy,
      kind: 'cutter',
      parts,
    },
  ]
}

function weigh(part: string, weight: Fraction): Missing['parts'][number] {
  return { part, weight }
}
