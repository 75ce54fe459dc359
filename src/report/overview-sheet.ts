import { dayOf, formatDay, sayInstant, weekday, weekdayNames } from '../base/clock.ts'
import type { Diagnostic } from '../diagnostics/message.ts'
import type { Results } from '../model/results.ts'
import type { Block, Cell, Row } from './cells.ts'
import { choose, joined, words } from './expressions.ts'
import { constant, count, instant, line, moneyValue, ref, sayMinutes, text } from './make-cells.ts'
import { sayBecause } from './say-because.ts'
import { sayGap } from './say-gap.ts'
import type { SheetMaker } from './sheets.ts'
import { tasksById, titleOf } from './task-words.ts'

const widths = [24, 17, 22, 22, 44]
const wide = widths.length

/** What it costs, when it works, what sets the date, what to do next and what is doubtful, in one screen. */
export const overviewSheet: SheetMaker = ({ results, findings }) => ({
  name: 'Overview',
  widths,
  blocks: [
    head(results),
    cost(results),
    dates(results),
    drivers(results),
    next(results),
    doubts(results, findings),
  ],
  orientation: 'portrait',
  freeze: null,
  guarded: true,
  group: 'overview',
  foot: `${results.project.device.name}: overview`,
})

const heading = (words_: string): Row => ({
  keep: true,
  cells: [text(words_, { role: 'heading', span: wide })],
})
const pair = (label: string, value: Cell, note = ''): Row => ({
  cells: [text(label, { role: 'label' }), { ...value, span: 2 }, text(note, { role: 'note', span: 2 })],
})

function head({ project }: Results): Block {
  const { name, revision, qty, description } = project.device
  const rev = revision === null ? '' : ` revision ${revision}`
  const many = qty === 1 ? 'one to build' : `${qty} to build`
  return {
    kind: 'rows',
    id: 'head',
    rows: [
      line(`${name}${rev}`, wide, 'title'),
      line(description === null ? many : `${description}; ${many}`, wide, 'subtitle'),
    ],
  }
}

function cost({ money, project }: Results): Block {
  const link = (label: string, name: string, known: number, unknown: number, note: string): Row => {
    const cell: Cell = {
      value: moneyValue(known, money.currency),
      live: ref(`money/${name}`),
      name,
      role: 'figure',
      align: 'left',
      link: `money/${name}`,
    }
    const missing =
      unknown === 0 ? '' : `; ${unknown} ${unknown === 1 ? 'price is' : 'prices are'} unknown and not in it`
    return pair(label, cell, `${note}${missing}`)
  }
  const device = money.byDevice[0]
  return {
    kind: 'rows',
    id: 'cost',
    rows: [
      heading('What it costs'),
      link(
        'Cash',
        'cash',
        money.cash.known,
        money.cash.unknown.length,
        'what leaves the wallet: whole packs and bars, freight, duty, tax',
      ),
      link(
        'Charged',
        'charged',
        money.charged.known,
        money.charged.unknown.length,
        'what the devices use up, with machine hours and hands',
      ),
      link(
        'Left over',
        'left over',
        money.leftOver.known,
        money.leftOver.unknown.length,
        'still there afterwards: rests of packs and bars, spares',
      ),
      ...(device && project.device.qty > 1
        ? [
            link(
              'Each device',
              'per device',
              device.known,
              device.unknown.length,
              'charged, divided by the devices',
            ),
          ]
        : []),
    ],
  }
}

const sayDay = (day: number): string => `${weekdayNames[weekday(day)]} ${formatDay(day)}`

function against({ project, schedule }: Results): string {
  const { wanted } = project.device
  if (!wanted) return 'no day is wanted'
  const late = dayOf(schedule.finish - 1) - wanted.day
  const days = `${Math.abs(late)} ${Math.abs(late) === 1 ? 'day' : 'days'}`
  if (late > 0) return `! ${days} later than wanted, ${sayDay(wanted.day)}`
  return late === 0
    ? `on the day wanted, ${sayDay(wanted.day)}`
    : `${days} before the day wanted, ${sayDay(wanted.day)}`
}

function dates(results: Results): Block {
  const { schedule, sessions } = results
  const gap = sayGap(schedule)
  const hands = sessions.reduce(
    (sum, { work }) => sum + work.reduce((all, { open, close }) => all + close - open, 0),
    0,
  )
  const stale: Cell = {
    value: { type: 'text', text: 'dates are as planned' },
    name: 'stale',
    live: choose(
      { op: '=', left: ref('money/minutes changed'), right: constant(0) },
      words('dates are as planned'),
      joined(words('! dates not recomputed: run plan')),
    ),
    role: 'strong',
  }
  return {
    kind: 'rows',
    id: 'dates',
    rows: [
      heading('When it works'),
      pair(
        'Finished',
        instant(schedule.finish, { role: 'figure', align: 'left', name: 'finish' }),
        against(results),
      ),
      pair(
        'Earlier?',
        text(gap.says),
        `calendars and links alone would allow ${gap.finish.replace('T', ' ')}`,
      ),
      pair('Hands', text(`${sayMinutes(hands)} in ${sessions.length} sessions`), 'see Sessions'),
      pair('These dates', stale),
    ],
  }
}

/** Most elements of the driving chain shown here; the whole is in the JSON report. */
const mostDrivers = 8

function drivers(results: Results): Block {
  const { drivingChain } = results.schedule
  const longest = [...drivingChain]
    .sort((a, b) => b.finish - b.start - (a.finish - a.start) || a.start - b.start)
    .slice(0, mostDrivers)
  const shown = drivingChain.filter((step) => longest.includes(step))
  return {
    kind: 'rows',
    id: 'drivers',
    rows: [
      heading('What sets the date'),
      line(
        `The finish hangs on a chain of ${drivingChain.length} tasks, each kept back by the one before; ${shown.length < drivingChain.length ? `the ${shown.length} longest` : 'all'} are shown.`,
        wide,
        'note',
      ),
      ...shown.map(
        (step): Row => ({
          cells: [
            text(titleOf(results, step.task), { span: 2, link: `task/${step.task}` }),
            instant(step.start),
            instant(step.finish),
            text(sayBecause(results, step), { role: 'note' }),
          ],
        }),
      ),
    ],
  }
}

function next(results: Results): Block {
  const orders = results.network.tasks
    .filter(({ kind }) => kind === 'order')
    .map((task) => ({ task, placed: results.schedule.tasks.get(task.id)! }))
    .sort((a, b) => a.placed.latestStart - b.placed.latestStart || (a.task.id < b.task.id ? -1 : 1))
    .slice(0, 4)
  const [first] = results.sessions
  const work = first?.work ?? []
  return {
    kind: 'rows',
    id: 'next',
    rows: [
      heading('What to do next'),
      ...(first ? [line(`First session: ${sayInstant(first.open)}, ${first.person}`, wide, 'strong')] : []),
      ...work.slice(0, 5).map(
        (piece): Row => ({
          cells: [
            text(titleOf(results, piece.task), { span: 3, indent: 1 }),
            text(`${sayMinutes(piece.close - piece.open)}`),
            text(''),
          ],
        }),
      ),
      ...(work.length > 5 ? [line(`and ${work.length - 5} more: see Sessions`, wide, 'note')] : []),
      ...(orders.length > 0 ? [line('Orders, the most urgent first', wide, 'strong')] : []),
      ...orders.map(
        ({ task, placed }): Row => ({
          cells: [
            text(task.title, { span: 3, indent: 1 }),
            instant(placed.latestStart),
            text('at the latest', { role: 'note' }),
          ],
        }),
      ),
    ],
  }
}

function doubts(results: Results, findings: readonly Diagnostic[]): Block {
  const { money } = results
  const assumed =
    [...tasksById(results).values()].length === 0 ? 0 : findings.filter(({ code }) => code === 'QTY10').length
  const shown = findings.slice(0, 4).map(({ says, code }) => line(`! ${says} [${code}]`, wide, 'warning'))
  return {
    kind: 'rows',
    id: 'doubts',
    rows: [
      heading('What is doubtful'),
      pair(
        'Findings',
        count(findings.length, { align: 'left' }),
        findings.length === 0 ? 'nothing needs a second look' : 'see Findings',
      ),
      pair(
        'Unknown prices',
        count(money.cash.unknown.length, { align: 'left' }),
        money.cash.unknown.length === 0 ? 'every total is complete' : 'totals with them are marked',
      ),
      pair(
        'Assumed times',
        count(assumed, { align: 'left' }),
        assumed === 0 ? 'every step has a time' : 'see Assembly',
      ),
      ...shown,
      ...(findings.length > 4 ? [line(`and ${findings.length - 4} more: see Findings`, wide, 'note')] : []),
    ],
  }
}
