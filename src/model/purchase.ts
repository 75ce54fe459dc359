import type Fraction from 'fraction.js'
import type { Cents } from '../base/money.ts'
import type { Place } from '../base/place.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { Offer, Target } from './project.ts'

export type { Cents } from '../base/money.ts'

/** What a line of a cart buys. */
export type Bought =
  | { readonly kind: 'part'; readonly part: string }
  /** A whole bar, plate, bottle or spool. */
  | { readonly kind: 'form'; readonly material: string; readonly form: string }
  /** A piece cut to size for one part. */
  | { readonly kind: 'stock'; readonly part: string }
  | { readonly kind: 'cutter'; readonly cutter: string }
  /** Outside work on one lot of a part: which route step (index) and which lot (from 0). */
  | { readonly kind: 'outside'; readonly part: string; readonly routeStep: number; readonly lot: number }

/** Why more is bought than needed. */
export type MoreWhy = 'pack' | 'least order' | 'cheaper'

/** What one offer charges for an amount chosen. Money in the offer's currency. */
export interface Chosen {
  /** What is bought: whole packs, least orders and cheaper larger amounts considered. */
  readonly quantity: number
  /** Why more is bought than needed; `null`: nothing more. */
  readonly more: MoreWhy | null
  /** Unit price at that quantity, major units of the offer's currency; `null`: unknown. */
  readonly unitPrice: Fraction | null
  /** Quantity from which that price holds. */
  readonly breakFrom: number
  /** round(max(quantity x unit price, minimum charge)); `null`: unknown. */
  readonly goodsForeign: Cents | null
}

/**
 * One line of an order. Shares of the cart's amounts are differences of rounded running totals over the cart's lines
 * in their order, weighed by `goods`; equal where every line's goods are zero.
 */
export interface CartLine extends Chosen {
  /** Unique: `magnet`, `al-6082 bar 20 mm`, `base / stock`, `base / outside 1 / lot 1`. */
  readonly id: string
  readonly what: Bought
  readonly title: string
  readonly at: Place
  readonly offer: Offer
  /** What the plan needs (pieces or whole units). */
  readonly needed: number
  /** Project currency for one unit of the offer's; `null`: no rate is known. */
  readonly rate: Fraction | null
  /** `goodsForeign` converted to the project's currency and rounded again; `null`: unknown. */
  readonly goods: Cents | null
  /** `null`: the cart's amount, or this line's part of it, hangs on an unknown price. */
  readonly freight: Cents | null
  readonly surcharge: Cents | null
  readonly duty: Cents | null
  readonly tax: Cents | null
  readonly clearance: Cents | null
  /** goods + shares; `null`: one of them is unknown. */
  readonly landed: Cents | null
  /**
   * `landed`, or where that is unknown what is known of it: its goods, and the cart's known amounts divided over the
   * lines with known goods. Adds up to the cart's `known`.
   */
  readonly known: Cents
}

/** One order to one vendor on one date. */
export interface Cart {
  /** `vendor`, or `vendor / cart name`, or the outside lot. */
  readonly id: string
  readonly vendor: string
  readonly at: Place
  /** Sorted by id. */
  readonly lines: readonly CartLine[]
  /** Work and parts it waits for. */
  readonly needs: readonly Target[]
  /** The longest lead of its lines: vendor working days, whole, mean rounded up; the likely value beside it. */
  readonly leadDays: number
  readonly likelyLeadDays: number
  readonly leads: readonly ThreePoint[]
  /** Carrier working days, whole, mean rounded up. */
  readonly transitDays: number
  readonly likelyTransitDays: number
  readonly transit: ThreePoint
  /** Out and back for outside work: parts travel there first. */
  readonly outside: boolean
  /** Of the vendor, in which freight, minimum order and clearance are stated. */
  readonly currency: string
  /** Project currency for one unit of the vendor's; `null`: no rate is known. */
  readonly rate: Fraction | null
  /** Value of the goods in the vendor's currency, against which the vendor's limits are held; `null`: unknown. */
  readonly goodsForeign: Fraction | null
  /** Rounded, in the vendor's currency; `null`: unknown. */
  readonly freightForeign: Cents | null
  readonly surchargeForeign: Cents | null
  readonly clearanceForeign: Cents | null
  /** All in the project's currency, rounded; `null`: unknown because a line is. */
  readonly goods: Cents | null
  readonly freight: Cents | null
  readonly surcharge: Cents | null
  /** Rate x (goods + surcharge + freight). */
  readonly duty: Cents | null
  /** Rate x (goods + surcharge + freight + duty + clearance). */
  readonly tax: Cents | null
  readonly clearance: Cents | null
  readonly total: Cents | null
  /** Sum of what is known, and the lines whose price (or exchange rate) is not. */
  readonly known: Cents
  readonly unknown: readonly string[]
}

/** All that is bought: carts, and what is cut from bars and plates. */
export interface Purchase {
  /** Sorted by id. */
  readonly carts: readonly Cart[]
  /** How whole bars, plates, bottles and spools are shared by the pieces cut from them; sorted by form. */
  readonly cuts: readonly CuttingPlan[]
  /** How long each cutter cuts; sorted by cutter. */
  readonly wear: readonly CutterWear[]
  /** What must be got and cannot be, so that its money is unknown; sorted by id. */
  readonly missing: readonly Missing[]
}

/** The pieces that share one form of a material. */
export interface CuttingPlan {
  readonly material: string
  readonly form: string
  /** One entry per part, sorted. */
  readonly pieces: readonly CutPieces[]
  /** Every bar or plate begun, own ones first; empty for what is taken by volume or mass. */
  readonly units: readonly CutUnit[]
  /** Taken from units, and how much of that from what is here; in units. */
  readonly unitsUsed: Fraction
  readonly fromStock: Fraction
  /** Whole units that must be bought. */
  readonly unitsBought: number
  /** Parts that no unit is large enough for. */
  readonly tooLarge: readonly string[]
  /** Whether no plan of less money exists; `null`: nothing is sawn. */
  readonly proved: boolean | null
}

/** What one part takes of a form. */
export interface CutPieces {
  readonly part: string
  /** Pieces started. */
  readonly count: number
  /** One piece with its cut as a share of one unit, at most 1. The last piece of a unit may take less. */
  readonly share: Fraction
  /** Units taken by all its pieces. */
  readonly fromStock: Fraction
  readonly fromBought: Fraction
}

/** One bar or plate, and the pieces cut from it in order. */
export interface CutUnit {
  readonly own: boolean
  /** As a share of a whole one: 1, or what is left of an own one. */
  readonly size: Fraction
  readonly pieces: readonly { readonly part: string; readonly share: Fraction }[]
  /** What is left of it: millimetres of a bar, a share of a plate; `null`: nothing is sawn. */
  readonly rest?: Fraction | null
}

/** How long a cutter cuts, by part. */
export interface CutterWear {
  readonly cutter: string
  /** Sorted by part. */
  readonly parts: readonly { readonly part: string; readonly seconds: Fraction }[]
  readonly seconds: Fraction
  /** Seconds; `null`: not stated, so no wear is charged. */
  readonly life: Fraction | null
  /** Cutters worn: seconds / life; 0 without a life. */
  readonly worn: Fraction
  /** Those here, and whole ones to buy: enough to wear, at least one where none is here. */
  readonly have: number
  readonly toBuy: number
}

/** Something to get for which there is no way, or no measure. */
export interface Missing {
  /** Unique; as the line would be called. */
  readonly id: string
  readonly title: string
  readonly at: Place
  readonly why: 'no offer' | 'no vendor' | 'no stock' | 'no volume' | 'no density' | 'no form' | 'too large'
  readonly kind: 'part' | 'material' | 'cutter' | 'outside'
  /** Whom it is for, each with its weight. */
  readonly parts: readonly { readonly part: string; readonly weight: Fraction }[]
}
