import { type Day, type Instant, instantOf, type Span, weekday } from '../base/clock.ts'
import type { DayRange, DaySpan, Hours, Person } from '../model/project.ts'

/**
 * The unbroken open intervals of weekly hours from `first` to `last`: hours that touch, over midnight too, are one.
 * A date under `extra` has its own hours, even within days off; days off are shut.
 * Gives: intervals in time order, disjoint and not touching.
 */
export function openIntervals(hours: Hours, first: Day, last: Day): Span[] {
  const spans: Span[] = []
  for (let day = first; day <= last; day++) {
    for (const { open, close } of hoursOfDay(hours, day)) {
      spans.push({ open: instantOf(day, open), close: instantOf(day, close) })
    }
  }
  return joined(spans)
}

/** The sessions of a person: open intervals less set-up at their start and clean-up at their end. */
export function sessionsOf(person: Person, first: Day, last: Day): Span[] {
  if (!person.hours) return []
  return openIntervals(person.hours, first, last)
    .map(({ open, close }) => ({ open: open + person.setUp, close: close - person.cleanUp }))
    .filter(({ open, close }) => open < close)
}

/** Times in some of the intervals given, in time order, overlapping and touching ones made one. */
export function joined(spans: readonly Span[]): Span[] {
  const sorted = [...spans].filter((s) => s.open < s.close).sort((a, b) => a.open - b.open)
  const result: { open: Instant; close: Instant }[] = []
  for (const { open, close } of sorted) {
    const last = result.at(-1)
    if (last && open <= last.close) last.close = Math.max(last.close, close)
    else result.push({ open, close })
  }
  return result
}

/** Times in both. Needs: both in time order and disjoint. Cost: O(a + b). */
export function common(a: readonly Span[], b: readonly Span[]): Span[] {
  const result: Span[] = []
  let [i, j] = [0, 0]
  while (i < a.length && j < b.length) {
    const [x, y] = [a[i]!, b[j]!]
    const both = { open: Math.max(x.open, y.open), close: Math.min(x.close, y.close) }
    if (both.open < both.close) result.push(both)
    if (x.close < y.close) i++
    else j++
  }
  return result
}

/** The intervals that share time with `span`. Needs: intervals in time order and disjoint. */
export function meeting(intervals: readonly Span[], span: Span): Span[] {
  let [low, high] = [0, intervals.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (intervals[middle]!.close <= span.open) low = middle + 1
    else high = middle
  }
  const found: Span[] = []
  for (let i = low; i < intervals.length && intervals[i]!.open < span.close; i++) found.push(intervals[i]!)
  return found
}

/** Whether one interval holds the whole of `span`. */
export function holds(intervals: readonly Span[], span: Span): boolean {
  if (span.open === span.close) return true
  const [first] = meeting(intervals, span)
  return first !== undefined && first.open <= span.open && span.close <= first.close
}

/** Whether a day lies in one of the ranges, both ends included. */
export function inRanges(ranges: readonly DayRange[], day: Day): boolean {
  return ranges.some(({ first, last }) => first <= day && day <= last)
}

function hoursOfDay(hours: Hours, day: Day): readonly DaySpan[] {
  const own = hours.extra.get(day)
  if (own) return own
  return inRanges(hours.off, day) ? [] : (hours.weekly[weekday(day)] ?? [])
}
