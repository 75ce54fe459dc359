import type { Instant, Minutes } from '../base/clock.ts'

/** Where every task went in time. */
export interface PlanSchedule {
  readonly finish: Instant
  readonly tasks: ReadonlyMap<string, ScheduledTask>
  /** From the project's start to the finish: what set it. */
  readonly drivingChain: readonly ChainStep[]
  readonly criticalChains: readonly (readonly string[])[]
  readonly criticalChainCount: bigint
  /** No schedule finishes earlier: by links and calendars, and by the work there is for the hours that are open. */
  readonly lowerBound: Instant
  readonly schedulesTried: number
}

/** One task placed in time, in the pieces it is worked in. */
export interface ScheduledTask {
  readonly id: string
  readonly start: Instant
  readonly finish: Instant
  readonly pieces: readonly { readonly open: Instant; readonly close: Instant }[]
  /** Who does it; empty where nobody is needed. */
  readonly people: readonly string[]
  /** Latest start and finish that keep the plan's finish. */
  readonly latestStart: Instant
  readonly latestFinish: Instant
  /** The latest start that keeps the plan's finish by links and hours alone, whoever and whatever is busy left out. */
  readonly latestAlone: Instant
  /** Plain critical path: calendars kept, capacities dropped. */
  readonly earlyStart: Instant
  readonly earlyFinish: Instant
  readonly lateStart: Instant
  readonly lateFinish: Instant
  /** Open minutes of the task's own calendar between early and late start. */
  readonly float: Minutes
  readonly freeFloat: Minutes
  readonly critical: boolean
}

/** One element of the driving chain and why it could not begin earlier. */
export interface ChainStep {
  readonly task: string
  readonly start: Instant
  readonly finish: Instant
  /** Its cause first, then what kept it from there to its start, in order of time and without a gap; at least one. */
  readonly because: readonly ChainReason[]
}

/** One stretch of waiting, and what it was for. */
export type ChainReason = HeldFor & {
  /** In whose way it stood: the element itself, or a task that must follow it closely. */
  readonly task: string
  /** When that task could have begun as far as this goes. */
  readonly at: Instant
  /** When the element could have. */
  readonly until: Instant
}

/** What a task waited for. */
export type HeldFor =
  | { readonly kind: 'start' }
  | { readonly kind: 'link'; readonly from: string }
  /** `from` had it before; `null` where that leads back into the chain. */
  | { readonly kind: 'resource'; readonly resource: string; readonly from: string | null }
  /** Nobody was there, or a machine or tool was not to be had: `closed` all the time, or never open together. */
  | { readonly kind: 'hours'; readonly closed: readonly HoursOf[] }
  /** Open, but never so long: `asks` minutes in one go, or as the least that is begun where it may `pause`. */
  | {
      readonly kind: 'no room'
      readonly asks: Minutes
      readonly pause: boolean
      readonly whose: readonly HoursOf[]
    }
  /** Nothing known: it could have begun. */
  | { readonly kind: 'idle' }

/** Whose hours, by name; of people any one will do. */
export interface HoursOf {
  readonly kind: 'people' | 'machine' | 'tool'
  readonly names: readonly string[]
}

/** An unbroken open interval of one person, and what is done in it. */
export interface Session {
  readonly person: string
  readonly open: Instant
  readonly close: Instant
  readonly work: readonly { readonly task: string; readonly open: Instant; readonly close: Instant }[]
}

/** Why there is no schedule. */
export interface NoSchedule {
  readonly kind: 'none found' | 'impossible'
  readonly why: 'beyond horizon' | 'no room' | 'longest wait missed' | 'ring' | 'capacity' | 'no window'
  readonly tasks: readonly string[]
}

/** A task that no window is long enough for. */
export interface TooLong {
  readonly task: string
  readonly minutes: Minutes
  /** Longest window it could have. */
  readonly longest: Minutes
  /** Whose windows: people and machine, in words. */
  readonly whose: string
  /** A run that nobody attends; otherwise work that may not pause. */
  readonly unattended: boolean
}
