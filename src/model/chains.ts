/** A dimension chain added up; lengths in millimetres. */
export interface ChainResult {
  readonly chain: string
  readonly must: string
  /** Limits of what must hold. */
  readonly least: number
  readonly most: number
  readonly middle: number
  /** Every part at its worst limit at once. */
  readonly worst: readonly [least: number, most: number]
  /** Root sum of squares about the middle. */
  readonly statistical: readonly [least: number, most: number]
  /** Share of imagined devices outside, 0 to 1, and how many were drawn. */
  readonly outside: number
  readonly drawn: number
  readonly holds: ChainVerdict
  readonly links: readonly ChainShare[]
  readonly worked: readonly string[]
}

/** Whether a chain holds: with every part within its limits, by the odds alone, or not even in the middle. */
export type ChainVerdict = 'always' | 'by the odds' | 'not always' | 'not in the middle'

/** One dimension of a chain. */
export interface ChainShare {
  /** `base.depth`. */
  readonly of: string
  readonly factor: number
  readonly least: number
  readonly most: number
  /** Share of the statistical spread, 0 to 1. */
  readonly share: number
}
