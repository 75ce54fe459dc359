import type { Attention } from '../model/project.ts'
import type { CautionKey } from '../trade/cautions.ts'
import type {
  Cut,
  Cutter,
  CuttingFault,
  CuttingMachine,
  StatedCut,
  WorkMaterial,
} from '../trade/cutting/types.ts'
import type { Thread } from '../trade/threads/thread.ts'

/** What an operation says of its cut; lengths in mm, areas in mm2, volumes in mm3. */
export interface CutFacts {
  /** Speed and feed, where they are stated. */
  readonly stated: StatedCut
  /** The quantity behind a key; `null` where silent. */
  readonly number: (key: string) => number | null
  /** The count behind a key. */
  readonly count: (key: string) => number | null
  /** The lengths behind a key such as `40 x 25 x 8 mm`. */
  readonly size: (key: string) => readonly number[] | null
  /** Diameter and length of the bar the part is cut from. */
  readonly bar: { readonly acrossMm: number; readonly lengthMm: number } | null
  /** Length, width and height of the plate or block the part is cut from. */
  readonly block: readonly [number, number, number] | null
  /** Stock less the finished part, mm3, where this operation alone clears it away; `null`: not known. */
  readonly removedMm3: number | null
  /** The thread it cuts: as stated, of its feature or of its cutter. */
  readonly thread: Thread | null
  /** The size its feature has on the drawing. */
  readonly featureMm: number | null
}

/** The cutter, the work material and the machine of a cut. */
export interface CutBench {
  readonly cutter: Cutter
  readonly material: WorkMaterial
  readonly machine: CuttingMachine
}

/** What a kind of process brings where the person is silent. */
export interface Process {
  /** Key in the source: `thread mill`. */
  readonly key: string
  /** Imperative, for route sheets. */
  readonly title: string
  /** Inside a setup on a machine, or at the bench. */
  readonly place: 'machine' | 'bench'
  readonly attention: Attention
  readonly pausable: boolean
  /** Whether its time is for each piece; otherwise once for the lot. */
  readonly each: boolean
  /** Its time is worked out elsewhere, once more is known; absent: here. */
  readonly timedLater?: boolean
  /** Minutes for each named feature, where no time is stated; absent: a time must be stated. */
  readonly minutesPerFeature?: number
  readonly cautions: readonly CautionKey[]
  /** Speed, feed, force and time from what it says; absent: nothing is cut, or not by a formula. */
  readonly cutting?: (facts: CutFacts, bench: CutBench) => Cut | CuttingFault
}

/** One process kind; the wrapper checks its shape where it is written. */
export function defineProcess(process: Process): Process {
  return process
}
