import type { Place } from '../base/place.ts'

/** Whether a plan can be trusted (warning) or not (error). */
export type Level = 'error' | 'warning'

/** A further place that belongs to a message. */
export interface Note {
  readonly at: Place
  readonly says: string
}

/** One entry of the catalogue: facts in, words out. */
export interface Message<Facts> {
  /** Three letters and two digits, never reused. */
  readonly code: string
  readonly level: Level
  /** The fact, with both numbers. No capital at the start, no full stop. */
  readonly says: (facts: Facts) => string
  /** What to type. */
  readonly mend: (facts: Facts) => string
  readonly notes?: (facts: Facts) => readonly Note[]
  /** Why it matters: what `fettle explain` says. */
  readonly why: string
}

/** A catalogue entry; the wrapper lets the facts be inferred where it is used. */
export function message<Facts>(entry: Message<Facts>): Message<Facts> {
  return entry
}

/** What was found, in finished words. */
export interface Diagnostic {
  readonly code: string
  readonly level: Level
  readonly at: Place
  readonly says: string
  readonly mend: string
  readonly notes: readonly Note[]
}

/** Hands one finding to the collector. */
export type Report = <Facts>(entry: Message<Facts>, at: Place, facts: Facts) => void
