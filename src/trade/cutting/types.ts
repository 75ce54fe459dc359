import type { CutterTool, MaterialGroup } from './kinds.ts'
import type { Trouble } from './trouble.ts'

export type { CutterTool, MaterialGroup }

/** A cutter as it stands on the bench; what is not known is absent or `null`. */
export interface Cutter {
  readonly diameterMm?: number | null
  readonly flutes?: number | null
  /** Usable depth below the holder. */
  readonly reachMm?: number | null
  /** How far it stands out of the holder; as far as it reaches when silent. */
  readonly stickOutMm?: number | null
  /** Length that cuts. */
  readonly fluteLengthMm?: number | null
  /** Corner or nose radius; half the diameter for a ball. */
  readonly cornerRadiusMm?: number | null
  /** Point angle of a drill or whole angle of a chamfer cutter. */
  readonly pointAngleDeg?: number | null
  /** Smallest and largest pitch that a thread mill cuts. */
  readonly pitchFromMm?: number | null
  readonly pitchToMm?: number | null
  /** Thickest chip a tooth stands, where the maker says so. */
  readonly mostChipMm?: number | null
  readonly tool?: CutterTool | null
}

/** What cutting needs to know of a work material. */
export interface WorkMaterial {
  readonly group?: MaterialGroup | null
  /** Cutting force for a chip of 1 mm x 1 mm. */
  readonly kc11NPerMm2?: number | null
  /** Exponent by which the specific force falls as chips grow thicker. */
  readonly mc?: number | null
}

/** What a machine can do; what is not known is absent or `null` and sets no limit. */
export interface CuttingMachine {
  readonly leastRpm?: number | null
  readonly mostRpm?: number | null
  /** Power of the spindle motor. */
  readonly powerW?: number | null
  readonly torqueNm?: number | null
  readonly mostFeedMmPerMin?: number | null
  /** Share of the motor power that reaches the cut. */
  readonly efficiencyRatio?: number | null
  /** Time of a whole run over the time in cut. */
  readonly airFactor?: number | null
  readonly toolChangeSeconds?: number | null
}

/** Speed and feed a person may state; what is stated is used, what is not is taken from the starting tables. */
export interface StatedCut {
  /** Cutting speed. */
  readonly speedMPerMin?: number | null
  /** Spindle speed; wins over the cutting speed. */
  readonly rpm?: number | null
  readonly feedMmPerMin?: number | null
  /** Feed of one turn; for milling cutters shared by the teeth. */
  readonly feedMmPerRev?: number | null
  /** Feed of one tooth; for milling cutters. */
  readonly chipLoadMm?: number | null
}

/** A figure nobody stated, with where it comes from. */
export interface Assumed {
  readonly what: string
  readonly value: string
  readonly source: string
}

/** Where the time of a cut goes. */
export interface CutTime {
  /** Chips are made: what wears the cutter. */
  readonly inCut: number
  /** Approach, point of a drill, lead-in and lead-out, retracts between pecks. */
  readonly entry: number
  /** Moves through air, corners, slowing down. */
  readonly air: number
}

/** One cut worked out: what to set, what it takes, how long it lasts, and what stands against it. */
export interface Cut {
  /** `null` where nothing turns at a speed worth setting, as on a saw. */
  readonly rpm: number | null
  /** At the centre of the tool; `null` where a rate of area rules, as on a saw. */
  readonly feedMmPerMin: number | null
  /** Mean thickness of the chip; `null` where it is not known. */
  readonly chipMm: number | null
  readonly removalMm3PerMin: number | null
  /** Power at the cut, an estimate; `null` where force or removal is not known. */
  readonly powerW: number | null
  readonly torqueNm: number | null
  /** In cut, entry and air together; without the tool change. */
  readonly seconds: number
  readonly timeSeconds: CutTime
  /** One change to this cutter, beside `seconds`; `null` where the machine says nothing. */
  readonly toolChangeSeconds: number | null
  /** Passes, layers, pecks or turns counted on the way, all together. */
  readonly passes: number
  readonly worked: readonly string[]
  readonly assumed: readonly Assumed[]
  readonly troubles: readonly Trouble[]
}

/** Why a cut cannot be worked out. */
export type CuttingFault =
  | { readonly fault: 'missing'; readonly what: readonly string[] }
  | { readonly fault: 'out of domain'; readonly what: string; readonly least: number; readonly most: number }
  | { readonly fault: 'no such shape'; readonly what: string }

/** How every operation is asked: job, cutter, material, machine; the answer, or why there is none. */
export type CutQuestion<Job> = (
  job: Job,
  cutter: Cutter,
  material: WorkMaterial,
  machine: CuttingMachine,
) => Cut | CuttingFault
