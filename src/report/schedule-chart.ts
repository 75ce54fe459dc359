import { type Day, dayOf, type Instant, weekday } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ScheduledTask } from '../model/schedule.ts'
import type { PlanTask } from '../model/tasks.ts'
import type { Mark } from './cells.ts'

/** The time axis of the chart: one column for each stretch of days. */
export interface Chart {
  readonly first: Day
  /** Days in one column. */
  readonly step: number
  readonly heads: readonly string[]
  /** In words: `a day`. */
  readonly says: string
  readonly wanted: Day | null
}

/** Most columns that a landscape page still shows. */
const mostColumns = 56

/** The axis from the project's start to its finish, or to the wanted day where that is later. */
export function chartOf({ project, schedule }: Results): Chart {
  const first = project.device.start
  const wanted = project.device.wanted?.day ?? null
  const last = Math.max(dayOf(schedule.finish - 1), Math.min(wanted ?? first, first + mostColumns - 1))
  const days = last - first + 1
  const step = days <= mostColumns ? 1 : 7 * Math.ceil(days / (7 * mostColumns))
  const heads = Array.from({ length: Math.ceil(days / step) }, (_, at) =>
    headOf(first + at * step, at === 0, step),
  )
  const says = step === 1 ? 'a day' : step === 7 ? 'a week' : `${step / 7} weeks`
  return { first, step, heads, says, wanted }
}

const letters = ['M', 'T', 'W', 'T', 'F', 'S', 'S']

/** The day of the month, with the month where it is new, and the weekday where a column is a day. */
function headOf(day: Day, begins: boolean, step: number): string {
  const date = new Date(day * 86_400_000)
  const [number, month] = [date.getUTCDate(), date.getUTCMonth() + 1]
  const name = begins || number <= step ? `${month}/` : ''
  return step === 1 ? `${name}\n${number}\n${letters[weekday(day)]}` : `${name}\n${number}`
}

const columnOf = ({ first, step }: Chart, at: Instant): number => Math.floor((dayOf(at) - first) / step)

function background(chart: Chart): (Mark | null)[] {
  return chart.heads.map((_, at) => {
    const day = chart.first + at * chart.step
    if (chart.wanted !== null && day <= chart.wanted && chart.wanted < day + chart.step) return 'wanted'
    return chart.step === 1 && weekday(day) >= 5 ? 'closed' : null
  })
}

function lay(chart: Chart, marks: (Mark | null)[], open: Instant, close: Instant, mark: Mark): void {
  const last = Math.min(columnOf(chart, Math.max(open, close - 1)), marks.length - 1)
  for (let at = columnOf(chart, open); at <= last; at++) marks[at] = mark
}

function markOf(task: PlanTask, driving: boolean): Mark {
  if (task.delivery) return 'away'
  if (task.attention === 'none') return 'unattended'
  return driving ? 'critical' : 'work'
}

/** Marks of one task's row: its pieces over what is kept between them over weekends and the wanted day. */
export function taskMarks(
  chart: Chart,
  task: PlanTask,
  placed: ScheduledTask,
  driving: boolean,
): readonly (Mark | null)[] {
  const marks = background(chart)
  if (placed.pieces.length > 1) lay(chart, marks, placed.start, placed.finish, 'held')
  for (const { open, close } of placed.pieces) lay(chart, marks, open, close, markOf(task, driving))
  return marks
}

const weight: Readonly<Record<Mark, number>> = {
  closed: 0,
  wanted: 0,
  held: 1,
  away: 2,
  unattended: 3,
  work: 4,
  critical: 5,
}

/** Marks of a thing's row: in each column the strongest of its tasks'. */
export function groupMarks(
  chart: Chart,
  tasks: readonly PlanTask[],
  { schedule }: Results,
  chain: ReadonlySet<string>,
): readonly (Mark | null)[] {
  const marks = background(chart)
  for (const task of tasks) {
    const own = taskMarks(chart, task, schedule.tasks.get(task.id)!, chain.has(task.id))
    for (const [at, mark] of own.entries()) {
      const before = marks[at] ?? null
      if (mark !== null && (before === null || weight[mark] > weight[before])) marks[at] = mark
    }
  }
  return marks
}
