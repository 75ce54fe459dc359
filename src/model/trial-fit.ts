import type { Day } from '../base/clock.ts'
import type { Step } from './assembly.ts'
import type { Join } from './joins.ts'

/** What can go together and apart again without harm on a day, from what is here by then. */
export interface TrialFit {
  readonly day: Day
  /** Subassemblies first. */
  readonly legs: readonly TrialLeg[]
  /** Dimension chains of which all parts are there. */
  readonly chains: readonly string[]
}

/** The longest stretch of one assembly. */
export interface TrialLeg {
  /** `null`: the device. */
  readonly assembly: string | null
  /** In order; apart again the other way round. */
  readonly steps: readonly Step[]
  /** Those of them that cannot be done for good yet. */
  readonly early: readonly Step[]
  /** Those of them that come apart only with care. */
  readonly care: readonly Step[]
  /** Whether nothing but tests is left out. */
  readonly whole: boolean
  /** Fits and threads that meet. */
  readonly joins: readonly Join[]
  /** Tests that can be made on it. */
  readonly tests: readonly Step[]
}
