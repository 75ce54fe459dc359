/** How one operation cuts, worked out from what is known of cutter, work and machine. */
export interface Cutting {
  readonly rpm: number | null
  readonly feedMmPerMin: number | null
  readonly chipMm: number | null
  /** Power and torque at the cut, estimates. */
  readonly powerW: number | null
  readonly torqueNm: number | null
  /** Chips are made: what wears the cutter, for one piece. */
  readonly inCutSeconds: number
  /** With entry and air, without the tool change, for one piece. */
  readonly seconds: number
  readonly passes: number
  /** The sums, one line each, to be followed by hand. */
  readonly worked: readonly string[]
  /** What nobody stated, and where it is from. */
  readonly assumed: readonly { readonly what: string; readonly value: string; readonly source: string }[]
}
