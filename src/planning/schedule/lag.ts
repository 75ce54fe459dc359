/** Waiting between two tasks as arcs from one event to another: how early the second may be, how late the first. */
import { dayOf, type Instant, minutesPerDay } from '../../base/clock.ts'
import type { DayCalendar, Link } from './problem.ts'
import { never } from './work-time.ts'

/**
 * `to`'s event is not before `from`'s event plus the lag. A link gives one arc; its longest wait gives a second,
 * turned round with the wait negated: the first task may not be so early that the second comes too late.
 */
export interface Arc {
  readonly from: number
  readonly to: number
  /** Whether the event is the finish (else the start). */
  readonly fromFinish: boolean
  readonly toFinish: boolean
  readonly lag: number
  /** Counted days for a lag in days, else `null`. */
  readonly days: Int32Array | null
  /** Index into the problem's links; -1 for the arc of a hold. */
  readonly link: number
  /** Whether it stands for a longest wait. */
  readonly turned: boolean
}

const finishOf = { FS: [true, false], SS: [false, false], FF: [true, true], SF: [false, true] } as const

/** The arcs of a link: its lag and, where it has one, its longest wait. All arcs name their facts in one order, for speed. */
export function arcsOf(link: Link, index: number, calendars: readonly DayCalendar[]): Arc[] {
  const [fromFinish, toFinish] = finishOf[link.type]
  const inDays = typeof link.lag === 'object' ? link.lag : null
  const lag = typeof link.lag === 'object' ? link.lag.days : link.lag
  const days = inDays === null ? null : calendars[inDays.calendar]!.days
  const { from, to, longest } = link
  const there: Arc = { from, to, fromFinish, toFinish, lag, days, link: index, turned: false }
  if (longest === null) return [there]
  return [
    there,
    {
      from: to,
      to: from,
      fromFinish: toFinish,
      toFinish: fromFinish,
      lag: -longest,
      days: null,
      link: index,
      turned: true,
    },
  ]
}

/** Number of days at or before `day`. */
function countUpTo(days: Int32Array, day: number): number {
  let low = 0
  let high = days.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (days[middle]! > day) high = middle
    else low = middle + 1
  }
  return low
}

/** The same clock time `n` counted days later (earlier where negative); no shift for 0; out of the calendar is `never`. */
export function shiftDays(days: Int32Array, at: Instant, n: number): Instant {
  if (n === 0) return at
  const day = dayOf(at)
  const index = n > 0 ? countUpTo(days, day) + n - 1 : countUpTo(days, day - 1) + n
  if (index < 0) return -never
  if (index >= days.length) return never
  return days[index]! * minutesPerDay + (at - day * minutesPerDay)
}

/** The latest instant whose shift by `n` counted days is at or before `bound`; `-never` where there is none. */
export function latestShifted(days: Int32Array, bound: Instant, n: number): Instant {
  if (n === 0) return bound
  const day = dayOf(bound)
  const index = countUpTo(days, day) - 1
  const clock = index >= 0 && days[index] === day ? bound - day * minutesPerDay : minutesPerDay - 1
  // For n > 0 the days that lead to `index` end on the eve of the counted day n - 1 before it.
  const last = n > 0 ? index - n + 1 : index - n
  if (n > 0 && last < 0) return -never
  if (last >= days.length) return never
  const source = n > 0 ? days[last]! - 1 : days[last]!
  return source * minutesPerDay + clock
}

/** The earliest instant of an arc's second event when the first is at `at`. */
export function arcBound(arc: Arc, at: Instant): Instant {
  return arc.days === null ? at + arc.lag : shiftDays(arc.days, at, arc.lag)
}

/** The latest instant of an arc's first event when the second is at `at`. */
export function arcLatest(arc: Arc, at: Instant): Instant {
  return arc.days === null ? at - arc.lag : latestShifted(arc.days, at, arc.lag)
}

/**
 * The earliest instant of an arc's second event when the first is at `at` or later. Differs from `arcBound` only for
 * lags in counted days: from Friday 18:00 one day leads to Monday 18:00, but from Saturday 0:00 to Monday 0:00.
 */
export function arcLeast(arc: Arc, at: Instant): Instant {
  const bound = arcBound(arc, at)
  if (arc.days === null || arc.lag === 0 || Math.abs(bound) >= never) return bound
  const tomorrow = (dayOf(at) + 1) * minutesPerDay
  return Math.min(bound, arcBound(arc, tomorrow))
}
