import type Fraction from 'fraction.js'
import type { UnitPrice } from './choose-units.ts'

/** A piece to cut from a bar. Millimetres. */
export interface BarPiece {
  readonly part: string
  readonly length: Fraction
  readonly kerf: Fraction
  /** Added to the length for facing both ends; silent: the length has it already. */
  readonly facing?: Fraction
}

/** Bars of one length that can be bought, and those that are here. */
export interface BarStock {
  readonly id: string
  /** Millimetres. */
  readonly length: Fraction
  /** Whole bars and the share of a begun one. */
  readonly have: Fraction
  /** Needs: never less for more bars. */
  readonly price: (bars: number) => UnitPrice
}

/** How bars are held, and how long a best plan is looked for. */
export interface BarRules {
  /** Millimetres of every bar begun that vice or chuck holds and no piece can take; 0: the end can be used up. */
  readonly grip: Fraction
  /** Steps of the search. */
  readonly effort: number
}
