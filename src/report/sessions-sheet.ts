import {
  dayOf,
  formatDay,
  type Instant,
  instantOf,
  minutesPerDay,
  sayInstant,
  weekday,
  weekdayNames,
} from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Session } from '../model/schedule.ts'
import type { Block, Row } from './cells.ts'
import { line, minutes, sayMinutes, text, tick } from './make-cells.ts'
import { sayClock } from './say-clock.ts'
import type { SheetMaker } from './sheets.ts'
import { tasksById } from './task-words.ts'

const widths = [6, 7, 7, 60, 10, 30]
const wide = widths.length

/** What to do in which session: one block each, in order, with boxes to tick. */
export const sessionsSheet: SheetMaker = ({ results }) => ({
  name: 'Sessions',
  widths,
  blocks: [top(results), ...results.sessions.map((session, at) => block(results, session, at))],
  orientation: 'portrait',
  freeze: null,
  guarded: false,
  group: 'time',
  foot: `${results.project.device.name}: sessions`,
})

function top(results: Results): Block {
  const { sessions, project } = results
  const hands = sessions.reduce(
    (sum, { work }) => sum + work.reduce((all, { open, close }) => all + close - open, 0),
    0,
  )
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Sessions', wide, 'title'),
      line(
        `${project.device.name}: ${sessions.length} sessions with ${sayMinutes(hands)} of hands work`,
        wide,
        'subtitle',
      ),
      line(
        'A session is one unbroken time at the bench, setting up and cleaning up taken off. What runs by itself is named where it is started.',
        wide,
        'note',
      ),
    ],
  }
}

const clock = (at: Instant): string => sayClock(at - instantOf(dayOf(at), 0))

function sayDay(at: Instant): string {
  const day = dayOf(at)
  return `${weekdayNames[weekday(day)]} ${formatDay(day)}`
}

/** Close of a session that ends at midnight reads 24:00, not 00:00 of the next day. */
const closing = (open: Instant, close: Instant): string =>
  close === instantOf(dayOf(open) + 1, 0) ? sayClock(minutesPerDay) : clock(close)

function block(results: Results, session: Session, at: number): Block {
  const { person, open, close, work } = session
  const busy = work.reduce((sum, piece) => sum + piece.close - piece.open, 0)
  const head = `${sayDay(open)}   ${clock(open)} to ${closing(open, close)}   ${person}`
  const free = close - open - busy
  return {
    kind: 'rows',
    id: `session ${at + 1}`,
    rows: [
      line('', wide),
      { cells: [text(head, { role: 'heading', span: wide, name: `session/${at + 1}` })], keep: true },
      {
        cells: ['', 'from', 'to', 'what', 'work', 'with'].map((word) => text(word, { role: 'label' })),
        keep: true,
      },
      ...work.flatMap((piece, index) => workRows(results, piece, index < work.length - 1)),
      line(
        free > 0
          ? `${sayMinutes(busy)} of work, ${sayMinutes(free)} free or waiting`
          : `${sayMinutes(busy)} of work, nothing free`,
        wide,
        'note',
      ),
    ],
  }
}

function workRows(results: Results, piece: Session['work'][number], keep: boolean): readonly Row[] {
  const task = tasksById(results).get(piece.task)!
  const placed = results.schedule.tasks.get(piece.task)!
  const part =
    placed.pieces.length > 1
      ? ` (part ${placed.pieces.findIndex(({ open }) => open === piece.open) + 1} of ${placed.pieces.length})`
      : ''
  const withWhat = [...(task.machine === null ? [] : [task.machine]), ...task.tools, ...task.fixtures].join(
    ', ',
  )
  const main: Row = {
    keep,
    cells: [
      tick(),
      text(clock(piece.open), { align: 'right' }),
      text(clock(piece.close), { align: 'right' }),
      text(`${task.title}${part}`),
      minutes(piece.close - piece.open),
      text(withWhat),
    ],
  }
  const started = startedBy(results, piece)
  return [
    main,
    ...started.map(
      (words): Row => ({
        keep,
        cells: [text(''), text(''), text(''), text(words, { role: 'note', span: 3 })],
      }),
    ),
  ]
}

/** What begins to run or to be away when a piece of work is done. */
function startedBy(results: Results, piece: Session['work'][number]): readonly string[] {
  const placed = results.schedule.tasks.get(piece.task)!
  if (piece.close !== placed.finish) return []
  return results.network.links.flatMap((link) => {
    if (link.from !== piece.task) return []
    const next = tasksById(results).get(link.to)!
    const when = results.schedule.tasks.get(link.to)!
    if (next.attention === 'hands' || when.start < piece.close) return []
    if (next.delivery)
      return [`here on ${sayInstant(when.finish)} if ordered before ${cutoff(results, next.delivery.vendor)}`]
    return when.start === piece.close ? [`then runs: ${next.title}, until ${sayInstant(when.finish)}`] : []
  })
}

function cutoff({ project }: Results, vendor: string): string {
  return `${sayClock(project.vendors.get(vendor)!.cutoff)} on a day ${vendor} works; later counts for the next`
}
