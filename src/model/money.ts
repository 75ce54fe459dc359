import type Fraction from 'fraction.js'
import type { Cents } from './purchase.ts'

/** Three views of the money, in the project's currency. `null` amounts are unknown because a price is. */
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
  /** What these devices used. */
  readonly charges: readonly Charge[]
  readonly leftovers: readonly LeftOver[]
  readonly drawn: readonly Drawn[]
  readonly byPart: readonly Share[]
  readonly byProcess: readonly Share[]
  readonly byVendor: readonly Share[]
  /** Charged, one per device; they add up. */
  readonly byDevice: readonly Share[]
  /** Attempt cost x (1 / yield - 1), beside the balance. */
  readonly expectedLoss: readonly { readonly part: string; readonly amount: Cents | null }[]
}

/** A sum that says what it misses. */
export interface Total {
  readonly known: Cents
  /** Ids of lines without a price; empty: the total is complete. */
  readonly unknown: readonly string[]
}

/** One reason these devices cost something. */
export interface Charge {
  readonly id: string
  readonly part: string | null
  readonly work: string | null
  /** Bought, material, outside, machine, hands, cutter. */
  readonly process: ChargeKind
  readonly title: string
  /** What it was computed from: a share of a cart line, of own stock, or hours at a rate. */
  readonly from: ChargeFrom
  readonly amount: Cents | null
}

export type ChargeKind = 'bought' | 'material' | 'outside' | 'machine' | 'hands' | 'cutter'

export type ChargeFrom =
  | {
      readonly kind: 'line'
      readonly cart: string
      readonly line: string /** Of the landed line. */
      readonly share: Fraction
    }
  | {
      readonly kind: 'own stock'
      readonly item: string
      readonly units: Fraction
      readonly worth: Fraction | null
    }
  | {
      readonly kind: 'hours'
      readonly resource: string
      readonly minutes: number /** Per hour. */
      readonly rate: Fraction
    }

export interface LeftOver {
  readonly id: string
  readonly title: string
  /** Pieces or units left. */
  readonly quantity: Fraction
  readonly amount: Cents | null
  readonly from: 'line' | 'spare'
}

export interface Drawn {
  readonly id: string
  readonly title: string
  readonly quantity: Fraction
  readonly amount: Cents | null
}

export interface Share {
  readonly id: string
  readonly amount: Cents
  readonly unknown: boolean
}
