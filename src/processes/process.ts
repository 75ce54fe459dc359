import type { Attention } from '../model/project.ts'
import type { CautionKey } from '../trade/cautions.ts'

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
  /** Minutes for each named feature, where no time is stated; absent: a time must be stated. */
  readonly minutesPerFeature?: number
  readonly cautions: readonly CautionKey[]
}

/** One process kind; the wrapper checks its shape where it is written. */
export function defineProcess(process: Process): Process {
  return process
}
