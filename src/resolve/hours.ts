import { type Day, parseDay, parseTimeOfDay } from '../base/clock.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import { qty } from '../diagnostics/catalogue/qty.ts'
import type { DayPattern, DayRange, DaySpan, Hours } from '../model/project.ts'
import { entries, type Spot } from '../source/spot.ts'
import { listed, type Reading } from './reading.ts'

const dayKeys = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']

/** Weekdays of `mon-fri`, `mon,wed`, `sat` or `daily`, as seven flags from Monday; `null` where it is none. */
export function weekdaysOf(text: string): readonly boolean[] | null {
  const flags = dayKeys.map(() => false)
  for (const piece of text.toLowerCase().split(',')) {
    const [first, last] = piece.trim() === 'daily' ? ['mon', 'sun'] : twoEnds(piece)
    const [from, to] = [dayKeys.indexOf(first), dayKeys.indexOf(last)]
    if (from < 0 || to < 0) return null
    for (let day = from; ; day = (day + 1) % 7) {
      flags[day] = true
      if (day === to) break
    }
  }
  return flags
}

function twoEnds(piece: string): [string, string] {
  const [first = '', last = first] = piece
    .trim()
    .split('-')
    .map((end) => end.trim())
  return [first, last]
}

/** Spans of clock time `19:30-22:30`, several with commas between; `null` where one is none. */
function spansOf(texts: readonly string[]): readonly DaySpan[] | null {
  const spans: DaySpan[] = []
  for (const piece of texts.flatMap((text) => text.split(','))) {
    const [from, to] = piece.split('-')
    const [open, close] = [parseTimeOfDay(from ?? ''), parseTimeOfDay(to ?? '')]
    if (open === null || close === null || close <= open || piece.split('-').length !== 2) return null
    spans.push({ open, close })
  }
  return spans
}

function joined(spans: readonly DaySpan[]): readonly DaySpan[] {
  const sorted = [...spans].sort((a, b) => a.open - b.open)
  const out: DaySpan[] = []
  for (const span of sorted) {
    const last = out.at(-1)
    if (last && span.open <= last.close)
      out[out.length - 1] = { open: last.open, close: Math.max(last.close, span.close) }
    else out.push(span)
  }
  return out
}

type HoursSpot = Spot<{ readonly [k: string]: string | string[] }>

function textsOf(spot: Spot<string | string[]>): readonly string[] {
  return listed(spot).map((one) => one.text)
}

function weeklyAt(reading: Reading, spot: HoursSpot): readonly (readonly DaySpan[])[] {
  const weekly: DaySpan[][] = dayKeys.map(() => [])
  for (const [key, value] of entries(spot)) {
    const [days, spans] = [weekdaysOf(key), spansOf(textsOf(value))]
    if (!days || !spans)
      reading.report(cal.hoursUnread, value.keyAt, { key, text: textsOf(value).join(', ') })
    else for (const [day, on] of days.entries()) if (on) weekly[day]!.push(...spans)
  }
  return weekly.map(joined)
}

/** One day or a range of days written with `..`. */
export function dayRangesAt(reading: Reading, key: string, spot: Spot<string[]> | null): readonly DayRange[] {
  return listed(spot).flatMap((one) => {
    const [from = '', to = from] = one.text.split('..').map((end) => end.trim())
    const [first, last] = [parseDay(from), parseDay(to)]
    if (first !== null && last !== null && first <= last) return [{ first, last }]
    const perhaps = first !== null && last !== null ? `${to}..${from}` : null
    reading.report(cal.noSuchDay, one.at, { key, text: one.text, perhaps })
    return []
  })
}

/** The day at a place; `null` where absent or faulted (reported). */
export function dayAt(reading: Reading, key: string, spot: Spot<string> | null): Day | null {
  if (!spot) return null
  const day = parseDay(spot.text)
  if (/^([013-9]\d|2[2-9])\d\d-\d\d-\d\d$/.test(spot.text)) {
    reading.report(qty.outOfBounds, spot.at, { key, text: spot.text, bound: 'a day from 2000 to 2199' })
    return null
  }
  if (day === null) reading.report(cal.noSuchDay, spot.at, { key, text: spot.text, perhaps: null })
  return day
}

/** The time of day at a place, in minutes; `otherwise` where absent or faulted. */
export function timeOfDayAt(
  reading: Reading,
  key: string,
  spot: Spot<string> | null,
  otherwise: number,
): number {
  if (!spot) return otherwise
  const minutes = parseTimeOfDay(spot.text)
  if (minutes === null) reading.report(cal.timeOfDayUnread, spot.at, { key, text: spot.text })
  return minutes ?? otherwise
}

function extraAt(reading: Reading, spot: HoursSpot | null): ReadonlyMap<Day, readonly DaySpan[]> {
  const extra = new Map<Day, readonly DaySpan[]>()
  for (const [key, value] of spot ? entries(spot) : []) {
    const [day, spans] = [parseDay(key), spansOf(textsOf(value))]
    if (day === null) reading.report(cal.noSuchDay, value.keyAt, { key: 'extra', text: key, perhaps: null })
    else if (!spans) reading.report(cal.hoursUnread, value.keyAt, { key, text: textsOf(value).join(', ') })
    else extra.set(day, joined(spans))
  }
  return extra
}

/** Weekly hours with days off and extra dates; `null` where no hours are given. */
export function hoursAt(
  reading: Reading,
  hours: HoursSpot | null,
  off: Spot<string[]> | null,
  extra: HoursSpot | null,
): Hours | null {
  if (!hours && !extra) {
    // Days off alone still close a machine that is otherwise always open.
    const closed = dayRangesAt(reading, 'off', off)
    return closed.length === 0
      ? null
      : { weekly: dayKeys.map(() => [{ open: 0, close: 1440 }]), off: closed, extra: new Map() }
  }
  return {
    weekly: hours ? weeklyAt(reading, hours) : dayKeys.map(() => []),
    off: dayRangesAt(reading, 'off', off),
    extra: extraAt(reading, extra),
  }
}

/** Which days count: weekdays less days off. */
export function dayPatternAt(
  reading: Reading,
  days: Spot<string> | null,
  off: Spot<string[]> | null,
): DayPattern {
  const weekly = weekdaysOf(days?.text ?? 'mon-fri')
  if (days && !weekly) reading.report(cal.daysUnread, days.at, { key: 'days', text: days.text })
  return { weekly: weekly ?? weekdaysOf('mon-fri')!, off: dayRangesAt(reading, 'off', off) }
}
