import {
  type Day,
  dayOf,
  type Instant,
  instantOf,
  minutesPerDay,
  type Span,
  weekday,
} from '../../base/clock.ts'
import { intersect, listSpans, type Spans, spansOf, unite } from '../../base/spans.ts'
import type { DayRange, Hours, Machine, Person, Tool } from '../../model/project.ts'

const within = (ranges: readonly DayRange[], day: Day): boolean =>
  ranges.some(({ first, last }) => first <= day && day <= last)

/** Open hours between two instants; a date's extra hours replace its weekday's and win over days off. */
export function openHours(hours: Hours, from: Instant, to: Instant): Spans {
  const loose: Span[] = []
  for (let day = dayOf(from); instantOf(day, 0) < to; day++) {
    const extra = hours.extra.get(day)
    if (!extra && within(hours.off, day)) continue
    for (const { open, close } of extra ?? hours.weekly[weekday(day)] ?? []) {
      loose.push({ open: instantOf(day, open), close: instantOf(day, close) })
    }
  }
  return intersect(spansOf(loose), Int32Array.of(from, to))
}

/** A person's sessions: each unbroken open interval less setting up at its start and cleaning up at its end. */
export function sessionsOf(person: Person, from: Instant, to: Instant): Spans {
  if (!person.hours) return new Int32Array()
  // Hours are cut at whole days, so that a session is not begun in the middle because the project starts there.
  const start = instantOf(dayOf(from), 0)
  const open = listSpans(openHours(person.hours, start, to))
  const worked = open.map((span) => ({ open: span.open + person.setUp, close: span.close - person.cleanUp }))
  return intersect(spansOf(worked), Int32Array.of(from, to))
}

/** A machine's open hours; `null`: always. */
export function machineHours(machine: Machine, from: Instant, to: Instant): Spans | null {
  return machine.hours ? openHours(machine.hours, from, to) : null
}

/** When a tool is here; `null`: always. */
export function toolDates(tool: Tool, from: Instant, to: Instant): Spans | null {
  if (tool.from === null && tool.until === null) return null
  const open = tool.from === null ? from : instantOf(tool.from, 0)
  const close = tool.until === null ? to : instantOf(tool.until, minutesPerDay)
  return intersect(spansOf([{ open, close }]), Int32Array.of(from, to))
}

/** Times in all of the calendars, `null` standing for always. */
export function meet(calendars: readonly (Spans | null)[]): Spans | null {
  return calendars.reduce((sum, one) => (sum && one ? intersect(sum, one) : (sum ?? one)), null)
}

/** Times in any of the calendars. */
export function join(calendars: readonly Spans[]): Spans {
  return calendars.reduce((sum, one) => unite(sum, one), new Int32Array() as Spans)
}
