import type Fraction from 'fraction.js'
import type { UnitPrice } from './choose-units.ts'

/** Millimetres. */
export interface PlateSize {
  readonly length: Fraction
  readonly width: Fraction
}

/** Plates of one size that can be bought, and those that are here. */
export interface PlateStock extends PlateSize {
  readonly id: string
  /** Whole plates and the share of a begun one, which has the full width. */
  readonly have: Fraction
  /** Needs: never less for more plates. */
  readonly price: (plates: number) => UnitPrice
}

/** How pieces may lie, and how long a best plan is looked for. */
export interface PlateRules {
  /** Whether a piece may be turned by a quarter; no where grain or rolling direction matters. */
  readonly turn: boolean
  /** Steps of the search. */
  readonly effort: number
}
