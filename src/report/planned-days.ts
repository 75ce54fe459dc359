import { type Day, dayOf, formatDay, type Instant, weekday, weekdayNames } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'

/** From when to when some tasks are planned. */
export interface Planned {
  readonly start: Instant
  readonly finish: Instant
}

/** From the first start to the last finish of some tasks; `null`: none of them is planned. */
export function plannedFor({ schedule }: Results, tasks: readonly PlanTask[]): Planned | null {
  const placed = tasks.flatMap(({ id }) => {
    const one = schedule.tasks.get(id)
    return one ? [one] : []
  })
  if (placed.length === 0) return null
  return {
    start: placed.reduce((least, { start }) => Math.min(least, start), placed[0]!.start),
    finish: placed.reduce((most, { finish }) => Math.max(most, finish), placed[0]!.finish),
  }
}

/** A day as a person reads it: `Mon 2026-02-02`. */
export function sayDay(day: Day): string {
  return `${weekdayNames[weekday(day)]} ${formatDay(day)}`
}

/** First and last day: `Mon 2026-02-02`, or `Mon 2026-02-02 to Tue 2026-02-03`. */
export function sayDays({ start, finish }: Planned): string {
  const [first, last] = [dayOf(start), dayOf(Math.max(start, finish - 1))]
  return first === last ? sayDay(first) : `${sayDay(first)} to ${sayDay(last)}`
}

/** The days of several lots or devices, said once where they are alike, and from first to last where they are many. */
export function sayEach(name: string, all: readonly (Planned | null)[], between = ' '): string {
  const known = all.filter((one) => one !== null)
  const said = known.map(sayDays)
  if (new Set(said).size <= 1) return said[0] ?? ''
  if (known.length > 4) {
    return sayDays({
      start: known.reduce((least, { start }) => Math.min(least, start), known[0]!.start),
      finish: known.reduce((most, { finish }) => Math.max(most, finish), known[0]!.finish),
    })
  }
  return all.flatMap((one, at) => (one ? `${name} ${at + 1}: ${sayDays(one)}` : [])).join(between)
}
