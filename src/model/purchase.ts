import type Fraction from 'fraction.js'
import type { Place } from '../base/place.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { Offer, Target } from './project.ts'

/** Integer minor units of a currency. */
export type Cents = number

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

/** One line of an order. Money is in the offer's currency until the cart converts it. */
export interface CartLine {
  /** Unique: `magnet`, `al-6082 bar 20 mm`, `base / outside 1 / lot 1`. */
  readonly id: string
  readonly what: Bought
  readonly title: string
  readonly at: Place
  readonly offer: Offer
  /** What the plan needs (pieces or whole units). */
  readonly needed: number
  /** What is bought: whole packs, least orders and cheaper larger amounts considered. */
  readonly quantity: number
  /** Why more is bought than needed: `pack`, `least order`, `cheaper`; `null`: nothing more. */
  readonly more: 'pack' | 'least order' | 'cheaper' | null
  /** Unit price at that quantity, major units of the offer's currency; `null`: unknown. */
  readonly unitPrice: Fraction | null
  /** Quantity from which that price holds. */
  readonly breakFrom: number
  /** Extended line in the offer's currency, rounded; minimum charge applied. */
  readonly goodsForeign: Cents | null
  /** The same converted to the project's currency and rounded again. */
  readonly goods: Cents | null
  /** Shares of the cart's freight, minimum-order surcharge, duty, tax and clearance, by value. */
  readonly freight: Cents | null
  readonly surcharge: Cents | null
  readonly duty: Cents | null
  readonly tax: Cents | null
  readonly clearance: Cents | null
  /** goods + shares; `null`: unknown. */
  readonly landed: Cents | null
}

/** One order to one vendor on one date. */
export interface Cart {
  /** `vendor`, or `vendor / cart name`, or the outside lot. */
  readonly id: string
  readonly vendor: string
  readonly at: Place
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
  /** All in the project's currency, rounded; `null`: unknown because a line is. */
  readonly goods: Cents | null
  readonly freight: Cents | null
  readonly surcharge: Cents | null
  readonly duty: Cents | null
  readonly tax: Cents | null
  readonly clearance: Cents | null
  readonly total: Cents | null
  /** Sum of what is known, and which lines are not. */
  readonly known: Cents
  readonly unknown: readonly string[]
}

export interface Purchase {
  /** Sorted by id. */
  readonly carts: readonly Cart[]
  /** How whole bars, plates, bottles and spools are shared by the pieces cut from them. */
  readonly cuts: readonly CuttingPlan[]
}

/** The pieces that share one form of a material. */
export interface CuttingPlan {
  readonly material: string
  readonly form: string
  /** One entry per part and lot-independent: how many pieces, and the share of one unit each piece takes (kerf included). */
  readonly pieces: readonly {
    readonly part: string
    readonly count: number
    readonly share: Fraction
  }[]
  /** Units used up or opened (whole and part), and how much of that came from own stock, in units. */
  readonly unitsUsed: Fraction
  readonly fromStock: Fraction
  readonly unitsBought: number
  /** Pieces that no unit is large enough for. */
  readonly tooLarge: readonly string[]
}
