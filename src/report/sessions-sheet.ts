import { dayOf, formatInstant, weekday } from '../base/clock.ts'
import { groupBy } from '../base/group-by.ts'
import type { Results } from '../model/results.ts'
import type { Session } from '../model/schedule.ts'
import type { PlanTask, TaskHold } from '../model/tasks.ts'
import type { Block, Column, Row } from './cells.ts'
import { footOf } from './foot-of.ts'
import { blank, line, minutes, sayMinutes, text, tick } from './make-cells.ts'
import { nextCutoff } from './next-cutoff.ts'
import { sayShort } from './say-because.ts'
import { sayTitle, sayWith, stepOf } from './say-task.ts'
import type { SheetMaker } from './sheets.ts'
import { startedIn } from './started-in.ts'
import type { PlacedTask } from './task-groups.ts'

const columns: readonly Column[] = [
  { head: 'Done', width: 5, align: 'center' },
  { head: 'Time', width: 13 },
  { head: 'Minutes', width: 8, align: 'right' },
  { head: 'What', width: 42 },
  { head: 'With', width: 18 },
  { head: 'Mind', width: 42 },
]
const wide = columns.length

/** What is done in each session, in order, with boxes to tick; a new page for each week. */
export const sessionsSheet: SheetMaker = ({ results }) => ({
  name: 'Sessions',
  widths: columns.map(({ width }) => width),
  blocks: [top(results), ...sessionBlocks(results)],
  orientation: 'portrait',
  freeze: null,
  guarded: true,
  group: 'time',
  foot: footOf(results.project.device),
})

function top({ project, sessions }: Results): Block {
  const says =
    sessions.length === 0
      ? 'There is nothing to do.'
      : 'Times of day are what the plan counts with, not a race. Times in between, such as setting up and cleaning up, are left free.'
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text('Sessions', { role: 'title', span: wide, name: 'top/sessions' })] },
      line(`${project.device.name}: who does what, evening by evening, day by day`, wide, 'subtitle'),
      line(says, wide, 'note'),
    ],
  }
}

interface Bench {
  readonly results: Results
  readonly tasks: ReadonlyMap<string, PlanTask>
  readonly holds: ReadonlyMap<string, readonly TaskHold[]>
  readonly started: ReadonlyMap<Session, readonly PlacedTask[]>
}

function sessionBlocks(results: Results): readonly Block[] {
  const tasks = new Map(results.network.tasks.map((task) => [task.id, task]))
  const holds = groupBy(results.network.holds, ({ from }) => from)
  const bench: Bench = { results, tasks, holds, started: startedIn(results) }
  return results.sessions.flatMap((session, at) => {
    const before = results.sessions[at - 1]
    const newWeek = before !== undefined && weekOf(before) !== weekOf(session)
    return sessionBlocksOf(bench, session, at + 1, newWeek)
  })
}

/** Number of the week, counted from Monday 1970-01-05. */
const weekOf = ({ open }: Session): number => {
  const day = dayOf(open)
  return (day - weekday(day) - 4) / 7
}

function sessionBlocksOf(
  bench: Bench,
  session: Session,
  number: number,
  pageBreak: boolean,
): readonly Block[] {
  const { person, open, close } = session
  const title = `${number}.  ${sayShort(open)} to ${clockOf(close)}   ${person}`
  const head: Row = {
    keep: true,
    pageBreak,
    cells: [text(title, { role: 'heading', span: wide, name: `session/${number}` })],
  }
  const section = { continued: `${title}, continued`, whole: true }
  const rows = inOrder(bench, session)
  return [
    { kind: 'rows', id: `session ${number}`, section, rows: [head] },
    { kind: 'table', id: `work ${number}`, section, columns, rows, totals: [], filter: false },
  ]
}

/** Work of the hands and what runs beside it, by time. */
function inOrder(bench: Bench, session: Session): readonly Row[] {
  const work = session.work.map((piece) => ({ open: piece.open, row: workRow(bench, piece) }))
  const alone = (bench.started.get(session) ?? []).map((placed) => ({
    open: placed.at.start,
    row: aloneRow(placed),
  }))
  return [...work, ...alone].sort((a, b) => a.open - b.open).map(({ row }) => row)
}

const clockOf = (instant: number): string => formatInstant(instant).slice(11)

type Piece = Session['work'][number]

function workRow(bench: Bench, piece: Piece): Row {
  const task = bench.tasks.get(piece.task)
  if (!task) return { cells: [tick(), text(piece.task, { span: wide - 1 })] }
  return {
    cells: [
      tick(),
      text(`${clockOf(piece.open)} to ${clockOf(piece.close)}`),
      minutes(piece.close - piece.open),
      text(sayTitle(bench.results, task), task.kind === 'order' ? { role: 'strong' } : {}),
      text(sayWith(bench.results, task, bench.holds.get(task.id) ?? [])),
      text(mindOf(bench.results, task, piece).join('; ')),
    ],
  }
}

/** What to mind: when an order must be out, what is left for later, what runs meanwhile, what to check. */
function mindOf(results: Results, task: PlanTask, piece: Piece): readonly string[] {
  const step = stepOf(results, task)
  const near = task.attention === 'nearby' ? ['stay near, hands are free'] : []
  const check = step?.check ? [`check: ${step.check}`] : []
  const cautions = step && step.cautions.length > 0 ? [`caution: ${step.cautions.join('; ')}`] : []
  return [...orderBy(results, task), ...partOf(results, piece), ...near, ...cautions, ...check]
}

function orderBy({ project, purchase, schedule }: Results, task: PlanTask): readonly string[] {
  if (task.kind !== 'order') return []
  const cart = purchase.carts.find(({ id }) => id === task.subject.cart)
  const vendor = cart && project.vendors.get(cart.vendor)
  const at = schedule.tasks.get(task.id)
  if (!vendor || !at) return []
  const cutoff = nextCutoff(vendor, at.finish)
  const counted = cutoff === null ? [] : [`be out before ${sayShort(cutoff)}`]
  const goods = at.latestAlone > at.latestStart ? `, for the goods alone ${sayShort(at.latestAlone)}` : ''
  return [...counted, `latest, as planned: ${sayShort(at.latestStart)}${goods}`]
}

function partOf({ schedule }: Results, piece: Piece): readonly string[] {
  const pieces = schedule.tasks.get(piece.task)?.pieces ?? []
  if (pieces.length < 2) return []
  const at = pieces.findIndex(({ open }) => open === piece.open)
  const left = pieces.slice(at + 1).reduce((sum, { open, close }) => sum + close - open, 0)
  return [
    `part ${at + 1} of ${pieces.length}${left > 0 ? `, ${sayMinutes(left)} left for later` : ', done then'}`,
  ]
}

/** A run beside the work of the hands, or one that goes on when everybody has left. */
function aloneRow({ task, at }: PlacedTask): Row {
  const done = dayOf(at.finish) === dayOf(at.start) ? clockOf(at.finish) : sayShort(at.finish)
  const says =
    task.attention === 'nearby'
      ? `runs meanwhile, somebody stays near; done ${done}`
      : `goes on by itself, done ${done}`
  return {
    cells: [
      blank(),
      text(`from ${clockOf(at.start)}`),
      text('runs', { role: 'note', align: 'right' }),
      text(task.title),
      text(task.machine ?? ''),
      text(says, task.attention === 'none' ? { role: 'strong' } : {}),
    ],
  }
}
