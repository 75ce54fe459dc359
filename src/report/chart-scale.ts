import { type Day, dayOf, formatDay, type Instant, instantOf, minutesPerDay, weekday } from '../base/clock.ts'
import type { Person } from '../model/project.ts'
import type { Results } from '../model/results.ts'

/** Most columns of the chart: more do not fit across a page. */
const mostColumns = 40
const letters = ['M', 'T', 'W', 'T', 'F', 'S', 'S'] as const

/** One column of the chart. */
export interface ChartColumn {
  readonly open: Instant
  readonly close: Instant
  readonly head: string
  readonly closed: boolean
  readonly wanted: boolean
}

/** How the chart divides time. */
export interface ChartScale {
  readonly columns: readonly ChartColumn[]
  /** In words: what one column stands for. */
  readonly says: string
  /** Months over their columns. */
  readonly months: readonly { readonly label: string; readonly columns: number }[]
}

/** Columns from the project's start to its finish: half days, days, two days, or so many weeks that they fit across a page. */
export function chartScale({ project, schedule }: Results): ChartScale {
  const first = project.device.start
  const last = Math.max(first, dayOf(schedule.finish - 1))
  const days = last - first + 1
  const people = [...project.people.values()]
  const wanted = project.device.wanted?.day ?? null
  const cut = (step: number, says: string): ChartScale =>
    scaleOf(first, Math.ceil((days * minutesPerDay) / step), step, says, people, wanted)
  if (days * 2 <= mostColumns) return cut(minutesPerDay / 2, 'half a day')
  if (days <= mostColumns) return cut(minutesPerDay, 'a day')
  if (days <= mostColumns * 2) return cut(minutesPerDay * 2, 'two days from the day shown')
  const monday = first - weekday(first)
  const weeks = Math.ceil((last - monday + 1) / 7)
  const each = Math.ceil(weeks / mostColumns)
  const says = each === 1 ? 'a week from the day shown' : `${each} weeks from the day shown`
  return scaleOf(monday, Math.ceil(weeks / each), each * 7 * minutesPerDay, says, people, wanted)
}

function scaleOf(
  first: Day,
  count: number,
  step: number,
  says: string,
  people: readonly Person[],
  wanted: Day | null,
): ChartScale {
  const columns = Array.from({ length: count }, (_, at): ChartColumn => {
    const open = instantOf(first, at * step)
    const close = open + step
    const day = dayOf(open)
    const inside = wanted !== null && dayOf(close - 1) >= wanted && day <= wanted
    return {
      open,
      close,
      head: headOf(open, step),
      closed: step <= minutesPerDay && !people.some((person) => worksOn(person, day)),
      wanted: inside && (step >= minutesPerDay || dayOf(open - 1) !== day),
    }
  })
  return { columns, says, months: monthsOf(columns) }
}

function headOf(open: Instant, step: number): string {
  const day = dayOf(open)
  if (dayOf(open - 1) === day) return ''
  const date = `${Number(formatDay(day).slice(8))}`
  return step > minutesPerDay ? date : `${letters[weekday(day)]}\n${date}`
}

function monthsOf(columns: readonly ChartColumn[]): ChartScale['months'] {
  const months: { label: string; columns: number }[] = []
  for (const { open } of columns) {
    const label = formatDay(dayOf(open)).slice(0, 7)
    const last = months.at(-1)
    if (last?.label === label) last.columns += 1
    else months.push({ label, columns: 1 })
  }
  return months
}

/** Whether a person has any hours on a day. */
function worksOn({ hours }: Person, day: Day): boolean {
  if (!hours) return false
  const extra = hours.extra.get(day)
  if (extra) return extra.length > 0
  const off = hours.off.some(({ first, last }) => first <= day && day <= last)
  return !off && (hours.weekly[weekday(day)] ?? []).length > 0
}
