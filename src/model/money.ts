import type Fraction from 'fraction.js'
import type { Cents, Missing } from './purchase.ts'

/**
 * Three views of the money, in the project's currency. Every amount comes from one source (a landed line, a draw from
 * own stock, hours at a rate) and is a part of it: source x `upTo` rounded, less source x `after` rounded. So the
 * parts of a source add up to it, and a spreadsheet can compute each from the source's cell alone.
 */
export interface Money {
  readonly currency: string
  readonly digits: number
  readonly cash: Total
  readonly charged: Total
  readonly leftOver: Total
  readonly fromOwnStock: Total
  readonly hoursAtRate: Total
  /** cash + drawn from own stock + hours at rate - charged - left over: 0 whatever is known. */
  readonly difference: Cents
  /** Where money comes from, sorted by id. */
  readonly sources: readonly Source[]
  /** What these devices used, by source and then in the order of their shares. */
  readonly charges: readonly Charge[]
  readonly leftovers: readonly LeftOver[]
  /** Charged, one per cause; they add up. */
  readonly byPart: readonly CauseShare[]
  /** Charged, one per kind; they add up. */
  readonly byProcess: readonly ProcessShare[]
  /** Cash, one per vendor; they add up. `vendor: null` is what nobody is known to sell. */
  readonly byVendor: readonly VendorShare[]
  /** Charged, one per device; they add up. */
  readonly byDevice: readonly DeviceShare[]
  /** Attempt cost x (1 / yield - 1), beside the balance; sorted by part. */
  readonly expectedLoss: readonly ExpectedLoss[]
}

/** A sum that says what it misses. */
export interface Total {
  readonly known: Cents
  /** Ids of sources without a price; empty: the total is complete. */
  readonly unknown: readonly string[]
}

/** Where money comes from. */
export type Source = LineSource | MissingSource | OwnStockSource | HoursSource

interface SourceMoney {
  /** Unique over all sources. */
  readonly id: string
  readonly title: string
  /** `null`: unknown. */
  readonly amount: Cents | null
  /** The amount, or what is known of it. */
  readonly known: Cents
}

/** A landed line of a cart. */
export interface LineSource extends SourceMoney {
  readonly kind: 'line'
  readonly cart: string
  readonly vendor: string
  readonly line: string
}

/** Something to buy that nobody is known to sell, or whose amount is unknown. */
export interface MissingSource extends SourceMoney {
  readonly kind: 'missing'
  readonly why: Missing['why']
}

/** Taken from what is here: round(units x worth). */
export interface OwnStockSource extends SourceMoney {
  readonly kind: 'own stock'
  readonly of: 'part' | 'form' | 'cutter'
  readonly item: string
  readonly units: Fraction
  /** Of one unit, major units of the project's currency: as stated, else of the first offer; `null`: unknown. */
  readonly worth: Fraction | null
  readonly worthFrom: 'stated' | 'offer' | 'unknown'
}

/** Hours of a machine or a person for one cause: round(minutes x rate / 60). */
export interface HoursSource extends SourceMoney {
  readonly kind: 'hours'
  readonly of: 'machine' | 'hands'
  readonly resource: string
  readonly minutes: number
  /** Major units of the project's currency per hour; `null`: unknown. */
  readonly rate: Fraction | null
}

/** What a charge is for. */
export type Cause =
  | { readonly kind: 'part'; readonly id: string }
  | { readonly kind: 'work'; readonly id: string }
  /** Ordering and receiving a cart. */
  | { readonly kind: 'cart'; readonly id: string }
  /** Assembling and testing the device itself. */
  | { readonly kind: 'device' }

/** Which part of a source: round(source x upTo) - round(source x after), to the currency's digits. */
export interface Slice {
  readonly source: string
  /** Running share before and behind this part, from 0 to 1, exact. */
  readonly after: Fraction
  readonly upTo: Fraction
  /**
   * The same in units: pieces, whole bars, plates, bottles or cutters, minutes, or the weights that divide a plate's
   * print job among its parts; `of` is the whole source.
   */
  readonly units: Fraction
  readonly of: Fraction
}

/** One reason these devices cost something. */
export interface Charge {
  readonly id: string
  readonly cause: Cause
  readonly process: ChargeKind
  readonly slice: Slice
  /** `null`: unknown because the source is. */
  readonly amount: Cents | null
  readonly known: Cents
}

/** What a charged line is for. */
export type ChargeKind = 'bought' | 'material' | 'outside' | 'machine' | 'hands' | 'cutter'

/** What is still there when the devices are done, at landed price or making cost. */
export interface LeftOver {
  readonly id: string
  /** Of a spare or tool the part; `null` for what was bought over. */
  readonly part: string | null
  /** Kept as a spare, kept as a tool, or bought over: rest of a pack, bar, bottle or cutter. */
  readonly why: 'spare' | 'tool' | 'over'
  readonly process: ChargeKind
  readonly slice: Slice
  readonly amount: Cents | null
  readonly known: Cents
}

/** Part of a total; all shares of a table add up to what is known of it. */
export interface Share {
  readonly known: Cents
  /** Ids of sources without a price. */
  readonly unknown: readonly string[]
}

/** What one cause bears of the charged money. */
export interface CauseShare extends Share {
  readonly cause: Cause
}

/** What one kind of process bears of the charged money. */
export interface ProcessShare extends Share {
  readonly process: ChargeKind
}

/** What one vendor bears of the charged money. */
export interface VendorShare extends Share {
  /** `null`: nobody is known to sell it. */
  readonly vendor: string | null
}

/** What one device of the batch bears of the charged money. */
export interface DeviceShare extends Share {
  /** From 0. */
  readonly device: number
}

/** What tries that come out bad may cost on average. */
export interface ExpectedLoss {
  readonly part: string
  /** Own cost elements of the pieces asked for, one try each; `null`: unknown. */
  readonly attempts: Cents | null
  readonly yield: Fraction
  readonly amount: Cents | null
}
