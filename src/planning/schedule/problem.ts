/**
 * The scheduling problem, plain data: what any generator, search or bound works on.
 * Knows no parts, vendors or people; times are whole minutes (`Instant`, `Minutes`).
 */
import type { Instant, Minutes } from '../../base/clock.ts'

/** Anything of which only so much is there at once: a person, a machine, a fixture, a tool. */
export interface Resource {
  readonly id: string
  /** Whole number, 0 or more. */
  readonly capacity: number
  /** Stretches, spans as of a calendar, of which a plan of the same finish should use few: a person's evenings. */
  readonly sessions?: Int32Array
}

/**
 * When work can go on: sorted, disjoint, non-touching half-open spans `[open, close)` as
 * `[open0, close0, open1, close1, ...]`. `null` in a mode means always.
 */
export interface Calendar {
  readonly id: string
  readonly spans: Int32Array
}

/** Days that count for lags in working days: sorted day numbers. */
export interface DayCalendar {
  readonly id: string
  readonly days: Int32Array
}

/** An amount of one resource. */
export interface Need {
  readonly resource: number
  readonly amount: number
  /**
   * `span`: from start to finish, pauses included (machine, fixture). `work`: only while the work goes on (person).
   * `ever`: used up; all such amounts of a plan together stay within the capacity, apart from the other kinds.
   */
  readonly during: 'span' | 'work' | 'ever'
}

/**
 * Like a bus: started strictly before `leaveBefore[k]` (the first such k), it finishes at `arrives[k]`.
 * Both sorted ascending. Stands for an order, its lead and its transit.
 */
export interface Timetable {
  readonly leaveBefore: Int32Array
  readonly arrives: Int32Array
}

/** One way to do a task. */
export interface Mode {
  readonly duration: Minutes
  /** Index into `calendars`; `null`: always open. */
  readonly calendar: number | null
  /** Whether a closing of the calendar may interrupt it. */
  readonly pausable: boolean
  /** A piece shorter than this is not begun, unless it ends the task. */
  readonly least: Minutes
  readonly needs: readonly Need[]
  /** Where set, start decides finish by this table; `duration` and `calendar` are ignored. */
  readonly timetable: Timetable | null
  /** What this way costs, in any unit; of plans with the same finish a cheaper one is better. 0 where not said. */
  readonly cost?: number
}

/** One piece of work for the scheduler, in plain ids. */
export interface Task {
  readonly id: string
  /** Not started before this. */
  readonly release: Instant
  /** At least one; the generator picks. */
  readonly modes: readonly Mode[]
  /** Higher goes first among equals. */
  readonly preference: number
  /** Its place where tasks are to go as listed if nothing else tells between them; its number where not said. */
  readonly listed?: number
  /** A finish after this is late; all minutes late together come before the finish of the whole. Never where not said. */
  readonly due?: Instant
  /** Weight with which, of plans with the same finish, an early start is wanted: what may take longer. 0 where not said. */
  readonly uncertain?: number
}

/** finish-start, start-start, finish-finish, start-finish. */
export type LinkType = 'FS' | 'SS' | 'FF' | 'SF'

/** `to` waits for `from`. Lags may be negative. */
export interface Link {
  readonly from: number
  readonly to: number
  readonly type: LinkType
  /** Elapsed minutes, or whole days of a day calendar (same clock time `n` such days later). */
  readonly lag: Minutes | { readonly days: number; readonly calendar: number }
  /** Longest wait, elapsed minutes, measured between the same two events as the lag; `null`: none. */
  readonly longest: Minutes | null
  /** Whether what lies between is half-done work, which should not wait long. */
  readonly halfDone?: boolean
}

/** `amount` of `resource` is kept from the start of `from` to the finish of `to`, idle time between included. */
export interface Hold {
  readonly resource: number
  readonly amount: number
  readonly from: number
  readonly to: number
}

/** Everything the scheduler knows: tasks, links, resources. */
export interface Problem {
  readonly start: Instant
  /** Calendars reach to here; a schedule that needs more is answered with `beyondHorizon`. */
  readonly horizon: Instant
  readonly resources: readonly Resource[]
  readonly calendars: readonly Calendar[]
  readonly dayCalendars: readonly DayCalendar[]
  readonly tasks: readonly Task[]
  readonly links: readonly Link[]
  readonly holds: readonly Hold[]
}

/** Where one task went: its mode and the pieces it is worked in (one piece per unbroken stretch; timetable and zero-minute tasks have one). */
export interface Placement {
  readonly mode: number
  readonly start: Instant
  readonly finish: Instant
  /** `[open, close)` pieces, ascending; their minutes add up to the mode's duration (except with a timetable). */
  readonly pieces: readonly { readonly open: Instant; readonly close: Instant }[]
}

/** One placement per task, in task order. */
export interface Schedule {
  readonly placements: readonly Placement[]
  readonly finish: Instant
}

/** What a generator answers. It never claims impossibility without proof. */
export type ScheduleOutcome =
  | {
      readonly kind: 'found'
      readonly schedule: Schedule
      /** No schedule finishes before this. */
      readonly bound: Instant
      /** Whether no schedule finishes earlier: bound and finish are equal. */
      readonly proved: boolean
      readonly stats: { readonly schedulesTried: number; readonly nodes: number }
    }
  /** No schedule was found; `stuck` are the tasks that could not be placed, `why` a short reason code. */
  | {
      readonly kind: 'none found'
      readonly stuck: readonly number[]
      readonly why: 'beyond horizon' | 'no room' | 'longest wait missed'
    }
  /** Proved by the reason given: precedence alone forms a ring, or a need exceeds a capacity, or no window is long enough. */
  | {
      readonly kind: 'impossible'
      readonly tasks: readonly number[]
      readonly why: 'ring' | 'capacity' | 'no window'
    }
