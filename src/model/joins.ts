/** What meets in one assembly step, and what the two features make of it. */
export interface Join {
  /** `null`: the device. */
  readonly assembly: string | null
  readonly step: string
  readonly first: JoinSide
  readonly second: JoinSide
  readonly sort: 'thread' | 'fit'
  /** Whether `mates` names the pair; otherwise it was found. */
  readonly written: boolean
  /** Of a fit: clearances in micrometres of diameter, below 0 where metal overlaps. */
  readonly fit: {
    readonly kind: 'clearance' | 'transition' | 'interference'
    readonly largestClearanceUm: number
    readonly smallestClearanceUm: number
  } | null
  /** Of a press fit of which length, outer diameter and both materials are known. */
  readonly press: JoinPress | null
  /** What to know at the bench, one sentence each. */
  readonly says: readonly string[]
  /** The sums, one line each. */
  readonly worked: readonly string[]
  /** What nobody stated, and where it is from. */
  readonly assumed: readonly string[]
}

/** One of the two features that meet. */
export interface JoinSide {
  readonly part: string
  readonly feature: string
  readonly text: string
}

/** A press fit at the looser and at the tighter end of its tolerances. */
export interface JoinPress {
  readonly pressureMpa: readonly [least: number, most: number]
  readonly forceN: readonly [least: number, most: number]
  readonly torqueNm: readonly [least: number, most: number]
  /** Pull around the bore of the part outside. */
  readonly hoopMpa: readonly [least: number, most: number]
}
