/** Metric ISO threads (M) or unified inch threads (UN). */
export type ThreadSystem = 'metric' | 'unified'

/** A nut or tapped hole is internal, a screw external. */
export type ThreadGender = 'internal' | 'external'

/** Tolerance grade and position of one diameter, such as grade 6 at g. */
export interface GradeAndPosition {
  readonly grade: number
  readonly position: 'e' | 'f' | 'g' | 'h' | 'G' | 'H'
}

/** Tolerance class of a metric thread: of the pitch diameter, then of the crest (d outside, D1 inside). */
export interface MetricThreadClass {
  readonly system: 'metric'
  readonly text: string
  readonly gender: ThreadGender
  readonly pitch: GradeAndPosition
  readonly crest: GradeAndPosition
}

/** Tolerance class of a unified thread: 1 loose, 2 usual, 3 close; A outside, B inside. */
export interface UnifiedThreadClass {
  readonly system: 'unified'
  readonly text: string
  readonly gender: ThreadGender
  readonly closeness: 1 | 2 | 3
}

/** Tolerance class of a thread of either system. */
export type ThreadClass = MetricThreadClass | UnifiedThreadClass

/** Length of engagement: short, normal or long. */
export type EngagementGroup = 'S' | 'N' | 'L'

/** A thread as a drawing names it. */
export interface Thread {
  /** Spelled the usual way, depth left out: `M14x1-6H`, `1/4-20 UNC-2B`. */
  readonly text: string
  readonly system: ThreadSystem
  /** `M14`, `1/4` or `#10`. */
  readonly size: string
  readonly majorMm: number
  readonly pitchMm: number
  /** Of unified threads, else `null`. */
  readonly threadsPerInch: number | null
  readonly starts: number
  readonly leadMm: number
  readonly hand: 'right' | 'left'
  readonly series: string | null
  readonly class: ThreadClass | null
  readonly engagement: EngagementGroup | null
  readonly depthMm: number | null
  readonly through: boolean
  /** The pitch was not written: the coarse one is meant. */
  readonly coarseByDefault: boolean
}

/** What keeps a text from being a thread. */
export type ThreadFaultKind =
  | 'empty'
  | 'not a thread'
  /** A decimal comma. */
  | 'comma'
  /** No pitch written and no coarse pitch known for the diameter. */
  | 'no coarse pitch'
  /** Not above 0, or too coarse to leave a core. */
  | 'pitch'
  /** The lead is no whole multiple of the pitch, or the starts written disagree with it. */
  | 'lead'
  | 'class'
  /** Two classes of which each belongs to another part: `6H/6g`. */
  | 'pair of classes'
  /** Diameter and threads per inch do not belong to the series written. */
  | 'series'
  | 'depth'
  /** Said a second time. */
  | 'twice'
  | 'left over'

/** Why a text is no thread, where in the text, and what was likely meant. */
export interface ThreadFault {
  readonly fault: ThreadFaultKind
  /** The part at fault, as typed. */
  readonly text: string
  /** Characters before it, from 0. */
  readonly at: number
  readonly length: number
  /** Spellings likely meant, likeliest first. */
  readonly near: readonly string[]
}
