import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import type { Block, Cell, Column, Mark, Row } from './cells.ts'
import { instant, line, minutes, text } from './make-cells.ts'
import { type Chart, chartOf, groupMarks, taskMarks } from './schedule-chart.ts'
import type { SheetMaker } from './sheets.ts'
import { aboutOf, sayWho } from './task-words.ts'

const leading: readonly Column[] = [
  { head: 'What', width: 42 },
  { head: 'Who, on what', width: 22 },
  { head: 'Work', width: 9, align: 'right' },
  { head: 'Start', width: 20 },
  { head: 'Finish', width: 20 },
  { head: 'Latest start', width: 20 },
  { head: 'Float', width: 10, align: 'right' },
  { head: 'Sets the date', width: 9, align: 'center' },
]
const chartWidth = 2.6
/** Past so many tasks only the things themselves are drawn, not their every task. */
const mostDrawn = 800

/** When everything happens, thing by thing, with a chart drawn in cells. */
export const scheduleSheet: SheetMaker = ({ results }) => {
  const chart = chartOf(results)
  const wide = leading.length + chart.heads.length
  return {
    name: 'Schedule',
    widths: [...leading.map(({ width }) => width), ...chart.heads.map(() => chartWidth)],
    blocks: [top(results, chart, wide), table(results, chart)],
    orientation: 'landscape',
    freeze: { block: 'schedule', columns: 1 },
    guarded: true,
    group: 'time',
    foot: `${results.project.device.name}: schedule`,
  }
}

const legend: readonly (readonly [Mark, string])[] = [
  ['work', 'work at the bench or near a machine'],
  ['critical', 'the same, and it sets the date'],
  ['unattended', 'runs or cures with nobody needed'],
  ['away', 'away: in the post or at a vendor'],
  ['held', 'interrupted, machine or fixture kept'],
  ['closed', 'weekend'],
  ['wanted', 'wanted by the end of this day'],
]

function top(results: Results, chart: Chart, wide: number): Block {
  const signs = legend.map(
    ([mark, words]): Row => ({
      cells: [text('', { mark }), text(words, { span: 4, role: 'note' })],
    }),
  )
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Schedule', Math.min(wide, 8), 'title'),
      line(
        `${results.project.device.name}: ${results.network.tasks.length} tasks, one column of the chart for ${chart.says}`,
        8,
        'subtitle',
      ),
      line(
        'Latest start: later than this and the whole plan finishes later. Float: open hours by which a task alone could slip if nobody and no machine were short.',
        8,
        'note',
      ),
      ...signs.map(({ cells }): Row => ({ cells: [{ ...cells[0]!, align: 'center' }, cells[1]!] })),
    ],
  }
}

const groupNames = { orders: 'Orders', work: 'Work', making: 'Making', assembly: 'Assembly' } as const

interface Thing {
  readonly group: keyof typeof groupNames
  readonly name: string
  readonly tasks: readonly PlanTask[]
}

/** Tasks by what they are about, in the order in which the first of each begins. */
function thingsOf({ network, schedule }: Results): readonly Thing[] {
  const startOf = (task: PlanTask): number => schedule.tasks.get(task.id)!.start
  const byKey = new Map<string, { group: Thing['group']; name: string; tasks: PlanTask[] }>()
  for (const task of network.tasks) {
    const { group, name } = aboutOf(task)
    const key = `${group} ${name}`
    const thing = byKey.get(key) ?? { group, name, tasks: [] }
    thing.tasks.push(task)
    byKey.set(key, thing)
  }
  const order = Object.keys(groupNames)
  const things = [...byKey.values()].map((thing) => ({
    ...thing,
    tasks: thing.tasks.sort((a, b) => startOf(a) - startOf(b) || (a.id < b.id ? -1 : 1)),
  }))
  return things.sort(
    (a, b) =>
      order.indexOf(a.group) - order.indexOf(b.group) ||
      startOf(a.tasks[0]!) - startOf(b.tasks[0]!) ||
      (a.name < b.name ? -1 : 1),
  )
}

function table(results: Results, chart: Chart): Block {
  const things = thingsOf(results)
  const drawn = results.network.tasks.length <= mostDrawn
  const chain = new Set(results.schedule.drivingChain.map(({ task }) => task))
  const rows = things.flatMap((thing) => [
    thingRow(results, chart, thing, chain),
    ...thing.tasks.map((task) => taskRow(results, drawn ? chart : null, task, chain.has(task.id))),
  ])
  const heads = chart.heads.map((head): Column => ({ head, width: chartWidth, align: 'center' }))
  return { kind: 'table', id: 'schedule', columns: [...leading, ...heads], rows, totals: [], filter: false }
}

const marked = (marks: readonly (Mark | null)[]): readonly Cell[] =>
  marks.map((mark) => (mark === null ? text('') : text('', { mark, align: 'center' })))

function thingRow(
  results: Results,
  chart: Chart,
  { group, name, tasks }: Thing,
  chain: ReadonlySet<string>,
): Row {
  const placed = tasks.map(({ id }) => results.schedule.tasks.get(id)!)
  const start = Math.min(...placed.map((one) => one.start))
  const finish = Math.max(...placed.map((one) => one.finish))
  const work = tasks.reduce((sum, task) => sum + task.handsMinutes, 0)
  return {
    keep: true,
    cells: [
      text(`${groupNames[group]}: ${name}`, { role: 'strong' }),
      text(work > 0 ? 'hands in all' : '', { role: 'note' }),
      minutes(work, { role: 'strong' }),
      instant(start, { role: 'strong' }),
      instant(finish, { role: 'strong' }),
      text(''),
      text(''),
      text(tasks.some(({ id }) => chain.has(id)) ? 'yes' : '', { align: 'center' }),
      ...marked(groupMarks(chart, tasks, results, chain)),
    ],
  }
}

function taskRow(results: Results, chart: Chart | null, task: PlanTask, driving: boolean): Row {
  const placed = results.schedule.tasks.get(task.id)!
  return {
    level: 1,
    cells: [
      text(task.title, { indent: 1, name: `task/${task.id}` }),
      text(task.delivery ? task.delivery.vendor : sayWho(results, task)),
      task.delivery ? text('') : minutes(task.minutes),
      instant(placed.start),
      instant(placed.finish),
      instant(placed.latestStart),
      { value: { type: 'number', value: placed.float / 60, format: { as: 'hours' } }, align: 'right' },
      text(driving ? 'yes' : '', { align: 'center' }),
      ...(chart ? marked(taskMarks(chart, task, placed, driving)) : []),
    ],
  }
}
