import { dayOf, formatDay } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Block, Cell, Column, Mark, Row } from './cells.ts'
import { chartCells, heldIn, stretchesOf } from './chart-marks.ts'
import { type ChartScale, chartScale } from './chart-scale.ts'
import { footOf } from './foot-of.ts'
import { blank, hours, line, minutes, shortInstant, text } from './make-cells.ts'
import type { SheetMaker } from './sheets.ts'
import { type PlacedTask, type TaskGroup, taskGroups } from './task-groups.ts'

const facts: readonly Column[] = [
  { head: 'What', width: 36 },
  { head: 'Who, on what', width: 13 },
  { head: 'Work', width: 8, align: 'right' },
  { head: 'Start', width: 13 },
  { head: 'Finish', width: 13 },
  { head: 'Latest start', width: 13 },
  { head: 'Float', width: 8, align: 'right' },
  { head: 'C', width: 2, align: 'center' },
]
/** Rows with a chart of their own, and rows at all: beyond this a reader is slow, and a book is no help. */
const mostCharted = 1_500
const mostListed = 15_000

/** Every task under what it is about, with its times and a chart of them. */
export const scheduleSheet: SheetMaker = ({ results }) => {
  const scale = chartScale(results)
  const chart = scale.columns.map(({ head }): Column => ({ head, width: 1.4, align: 'center', chart: true }))
  const columns = [...facts, ...chart]
  return {
    name: 'Schedule',
    widths: columns.map(({ width }) => width),
    blocks: [
      top(results, scale),
      legend(results, scale),
      { kind: 'table', id: 'tasks', columns, rows: groupRows(results, scale), totals: [], filter: false },
    ],
    orientation: 'landscape',
    freeze: { block: 'tasks', columns: 1 },
    guarded: true,
    group: 'time',
    foot: footOf(results.project.device),
  }
}

function top({ project, network }: Results, scale: ChartScale): Block {
  const many = network.tasks.length > mostListed
  const cut = many ? ` Only ${mostListed} of ${network.tasks.length} tasks are listed.` : ''
  const chart =
    network.tasks.length > mostCharted ? ` Beyond ${mostCharted} tasks only whole groups are drawn.` : ''
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text('Schedule', { role: 'title', span: facts.length, name: 'top/schedule' })] },
      line(`${project.device.name}: one chart column is ${scale.says}`, facts.length, 'subtitle'),
      line(
        `Latest start: begun later, the plan's finish is lost, with machines and people as busy as they are planned. Float: open hours to spare with nobody and nothing else busy. C: critical, which may still have float up to the hour at which the next task begins.${cut}${chart}`,
        facts.length,
        'note',
      ),
    ],
  }
}

const meanings: readonly (readonly [Mark, string])[] = [
  ['work', 'w: work, someone is at it or near'],
  ['critical', 'C: critical, on a chain of waits to the end'],
  ['unattended', 'u: runs, cures or dries by itself'],
  ['away', 'a: ordered or sent out, on its way'],
  ['held', 'h: machine or fixture kept, nothing moves'],
  ['closed', 'dot: nobody has hours that day'],
  ['wanted', 'bar: the wanted date'],
]

/** What the marks mean, and the months over the chart. */
function legend({ project, schedule }: Results, scale: ChartScale): Block {
  const rows = meanings.map(
    ([mark, says]): Row => ({
      keep: true,
      cells: [text(says, { align: 'right' }), blank({ mark })],
    }),
  )
  const wanted = project.device.wanted?.day ?? null
  const beyond =
    wanted !== null && wanted > dayOf(schedule.finish - 1) && !scale.columns.some((c) => c.wanted)
  const note = beyond ? [line(`wanted ${formatDay(wanted)}, after the chart ends`, facts.length, 'note')] : []
  const months: Row = {
    keep: true,
    cells: [
      blank({ span: facts.length }),
      // A month of one or two columns has no room for its name.
      ...scale.months.map(({ label, columns }) =>
        columns > 2 ? text(label, { span: columns, role: 'strong' }) : blank({ span: columns }),
      ),
    ],
  }
  return { kind: 'rows', id: 'legend', rows: [...rows, ...note, months] }
}

function groupRows(results: Results, scale: ChartScale): readonly Row[] {
  const rows: Row[] = []
  let listed = 0
  for (const group of taskGroups(results)) {
    const room = group.tasks.slice(0, Math.max(0, mostListed - listed))
    if (room.length === 0) break
    rows.push(groupRow(results, group, scale))
    for (const placed of room) {
      rows.push(taskRow(placed, listed < mostCharted ? scale : null))
      listed += 1
    }
  }
  return rows
}

const bold = { role: 'strong' } as const

function groupRow(results: Results, { label, tasks }: TaskGroup, scale: ChartScale): Row {
  const ids = new Set(tasks.map(({ task }) => task.id))
  const worked = tasks.reduce((sum, { task }) => sum + task.minutes, 0)
  const stretches = [...tasks.flatMap(stretchesOf), ...heldIn(results, ids)]
  const first = tasks[0]!.at
  const finish = tasks.reduce((last, { at }) => Math.max(last, at.finish), first.finish)
  const float = tasks.reduce((least, { at }) => Math.min(least, at.float), first.float)
  return {
    keep: true,
    cells: [
      text(label, bold),
      blank(),
      minutes(worked, bold),
      shortInstant(first.start, bold),
      shortInstant(finish, bold),
      shortInstant(first.latestStart, bold),
      hours(float, bold),
      criticalCell(tasks.some(({ at }) => at.critical)),
      ...chartCells(scale.columns, stretches),
    ],
  }
}

function taskRow(placed: PlacedTask, scale: ChartScale | null): Row {
  const { task, at } = placed
  const who = [...at.people, ...(task.machine === null ? [] : [task.machine])].join(', ')
  return {
    level: 1,
    cells: [
      text(task.title, { indent: 1 }),
      text(task.delivery?.vendor ?? who),
      task.kind === 'delivery' ? text('') : minutes(task.minutes),
      shortInstant(at.start),
      shortInstant(at.finish),
      shortInstant(at.latestStart),
      hours(at.float),
      criticalCell(at.critical),
      ...(scale ? chartCells(scale.columns, stretchesOf(placed)) : []),
    ],
  }
}

function criticalCell(critical: boolean): Cell {
  return text(critical ? 'C' : '', { role: 'strong', align: 'center' })
}
