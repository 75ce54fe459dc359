import { type Day, dayOf, type Instant } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { Risk } from '../model/risk.ts'
import { assumptionsOf } from './assumptions.ts'
import type { Block, Cell, CellName, Row } from './cells.ts'
import { chainPhases, daysBetween } from './chain-phases.ts'
import { choose } from './expressions.ts'
import { footOf } from './foot-of.ts'
import { blank, constant, count, day, instant, line, ref, text } from './make-cells.ts'
import { datesStale, viewsBlock } from './money-views.ts'
import { sayShort } from './say-because.ts'
import { sayGap } from './say-gap.ts'
import { sayShare, saySure } from './say-risk.ts'
import type { SheetMaker, Told } from './sheets.ts'

const widths = [25, 20, 20, 20, 20, 20]
const wide = widths.length
/** Most lines of a list, so that the whole stays one page. */
const mostPhases = 8
const mostOrders = 6
const mostActions = 6

/** The whole plan on one page: cost, date, what sets it, what to do next, and what is doubtful. */
export const overviewSheet: SheetMaker = (told) => ({
  name: 'Overview',
  widths,
  blocks: [
    top(told.results),
    costBlock(told.results),
    timeBlock(told.results),
    chainBlock(told.results),
    ordersBlock(told.results),
    sessionsBlock(told.results),
    doubtBlock(told),
    linksBlock(told.results),
  ],
  orientation: 'portrait',
  freeze: null,
  guarded: true,
  group: 'overview',
  foot: `${footOf(told.results.project.device)}; made with fettle ${told.fettle}`,
})

const heading = (words: string): Row => line(words, wide, 'heading')

function top({ project }: Results): Block {
  const { name, revision, qty, description } = project.device
  const what = [
    ...(revision === null ? [] : [`revision ${revision}`]),
    qty === 1 ? 'one device' : `${qty} devices`,
  ].join(', ')
  const changed = { op: '>', left: ref('money/minutes changed'), right: constant(0) } as const
  const planned = 'dates are as planned'
  const live = choose(changed, { op: 'text', value: datesStale }, { op: 'text', value: planned })
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text(name, { role: 'title', span: wide, name: 'top/overview' })] },
      line(what, wide, 'subtitle'),
      ...(description === null ? [] : [line(description, wide)]),
      { cells: [text(planned, { name: 'stale', role: 'warning', span: wide, live })] },
    ],
  }
}

const costs: readonly (readonly [string, CellName, CellName, string])[] = [
  ['Cash', 'cash', 'money/cash', 'leaves the wallet'],
  ['Charged', 'charged', 'money/charged', 'used by these devices'],
  ['Left over', 'left over', 'money/left over', 'spares, tools and rests that stay'],
  ['Charged per device', 'per device', 'money/per device', ''],
]

function costBlock(results: Results): Block {
  const cells = namedCells(viewsBlock(results))
  const rows = costs.map(([label, name, source, note]): Row => {
    const { value } = cells.get(source)!
    const mark = cells.get(`${source}/mark`)
    const marked = mark
      ? { ...text('', { role: 'warning', span: 2, live: ref(`${source}/mark`) }), value: mark.value }
      : blank({ span: 2 })
    return {
      keep: true,
      cells: [
        text(label, { role: 'label' }),
        { value, name, role: 'strong', align: 'right', live: ref(source), link: source },
        text(note, { role: 'note', span: 2 }),
        marked,
      ],
    }
  })
  return { kind: 'rows', id: 'costs', rows: [heading('What it costs'), ...rows] }
}

function namedCells(block: Block): ReadonlyMap<CellName, Cell> {
  const cells = block.rows.flatMap((row) => row.cells)
  return new Map(cells.flatMap((cell) => (cell.name === undefined ? [] : [[cell.name, cell] as const])))
}

function timeBlock({ project, schedule, risk }: Results): Block {
  const wanted = project.device.wanted?.day ?? null
  const finish = dayOf(schedule.finish - 1)
  const late = wanted === null ? [] : [wantedRow(wanted, finish)]
  return {
    kind: 'rows',
    id: 'times',
    rows: [
      heading('When it works'),
      fact('Finished', instant(schedule.finish, { role: 'strong' }), ''),
      ...late,
      ...(risk ? sureRows(risk) : []),
      fact('Cannot be before', instant(schedule.lowerBound), sayGap(schedule).says),
    ],
  }
}

/** The date that 80 % of the samples keep. */
function sureRows(risk: Risk): readonly Row[] {
  const finish = risk.finishBy.find(({ chance }) => chance === 0.8)?.finish ?? null
  if (finish === null) return [line(saySure(risk), wide, 'warning')]
  const wanted = risk.wanted === null ? '' : `; the wanted day is kept in ${sayShare(risk.wanted)}`
  const says = `in 80 % of ${risk.samples} samples; as planned in ${sayShare(risk.asPlanned)}${wanted}`
  return [fact('80 % sure by', instant(finish), says)]
}

function fact(label: string, cell: Cell, note: string): Row {
  return {
    keep: true,
    cells: [text(label, { role: 'label' }), { ...cell, align: 'right' }, text(note, { span: 4, indent: 1 })],
  }
}

function wantedRow(wanted: Day, finish: Day): Row {
  const days = Math.abs(wanted - finish)
  const said = days === 1 ? '1 day' : `${days} days`
  const says =
    days === 0
      ? 'finished on that day'
      : finish < wanted
        ? `${said} early`
        : `${said} late: see what sets the date`
  return fact('Wanted', day(wanted), says)
}

function chainBlock(results: Results): Block {
  const phases = chainPhases(results)
  const rows = phases.slice(0, mostPhases).map(
    ({ label, start, finish, says }): Row => ({
      cells: [
        text(`${sayShort(start)} to ${sayShort(finish)}${sayDays(start, finish)}`, { span: 2 }),
        text(`${label}: ${says}`, { span: 4 }),
      ],
    }),
  )
  const more = phases.length - mostPhases
  const rest = more > 0 ? `and ${more} more; all, with their reasons` : 'all of it, task by task'
  return {
    kind: 'rows',
    id: 'chain',
    rows: [
      heading('What sets the date'),
      ...rows,
      { cells: [text(rest, { span: wide, link: 'top/chain' })] },
    ],
  }
}

/** How many days lie between, where it is more than one. */
function sayDays(start: Instant, finish: Instant): string {
  const days = daysBetween(start, finish)
  return days > 1 ? `, ${days} days` : ''
}

interface ToOrder {
  readonly id: string
  readonly start: Instant
  readonly latest: Instant
  readonly forGoods: Instant
  /** The last safe evening in words; empty where it was not asked for. */
  readonly safe: string
}

/** Orders by the latest moment that keeps the date. */
function ordersByDate({ network, schedule, risk }: Results): readonly ToOrder[] {
  return network.tasks
    .flatMap(({ id, kind, subject }): readonly ToOrder[] => {
      const at = schedule.tasks.get(id)
      if (kind !== 'order' || subject.cart === null || !at) return []
      const found = risk?.safe.get(subject.cart)
      const safe = found ? (found.order === null ? 'none' : sayShort(found.order)) : ''
      return [{ id: subject.cart, start: at.start, latest: at.latestStart, forGoods: at.latestAlone, safe }]
    })
    .sort((a, b) => a.latest - b.latest || a.start - b.start || (a.id < b.id ? -1 : 1))
}

function ordersBlock(results: Results): Block {
  const orders = ordersByDate(results)
  const linked = new Set(results.purchase.carts.map(({ id }) => id))
  const rows = orders.slice(0, mostOrders).map(
    ({ id, start, latest, forGoods, safe }): Row => ({
      cells: [
        text(id, { span: 2, ...(linked.has(id) ? { link: `order/${id}` } : {}) }),
        text(sayShort(start)),
        text(sayShort(latest), { role: 'strong' }),
        text(sayShort(forGoods)),
        text(safe),
      ],
    }),
  )
  const more = orders.length - rows.length
  const rest = more > 0 ? [line(`and ${more} more, with later dates`, wide, 'note')] : []
  const none = orders.length === 0 ? [line('Nothing has to be ordered.', wide)] : []
  const heads: Row = {
    keep: true,
    cells: [
      blank({ span: 2 }),
      ...['planned', 'latest, as planned', 'for the goods alone', results.risk ? 'safe: 80 % sure' : ''].map(
        (words) => text(words, { role: 'note' }),
      ),
    ],
  }
  const shown = rows.length > 0 ? [heads, ...rows] : none
  return { kind: 'rows', id: 'orders', rows: [heading('Order first'), ...shown, ...rest] }
}

function sessionsBlock(results: Results): Block {
  const titles = new Map(results.network.tasks.map(({ id, title }) => [id, title]))
  const rows = results.sessions.slice(0, 2).flatMap(({ person, open, work }, at): readonly Row[] => {
    const does = work.slice(0, mostActions).map(({ task }) => titles.get(task) ?? task)
    const more = work.length > mostActions ? ` and ${work.length - mostActions} more` : ''
    return [
      {
        cells: [
          text(`${sayShort(open)}, ${person}`, { span: 2, link: `session/${at + 1}` }),
          text(`${does.join('; ')}${more}`, { span: 4 }),
        ],
      },
    ]
  })
  const none = rows.length === 0 ? [line('There is nothing to do.', wide)] : []
  return { kind: 'rows', id: 'sessions', rows: [heading('The first two sessions'), ...rows, ...none] }
}

function doubtBlock({ results, findings }: Told): Block {
  const all = assumptionsOf(results)
  const of = (kind: string): number => all.filter((each) => each.kind === kind).length
  const counts: readonly (readonly [string, number, CellName])[] = [
    ['Findings to look at', findings.length, 'findings/head'],
    ['Unknown prices', of('price'), 'assumptions/head'],
    ['Assumed times', of('time'), 'assumptions/head'],
    ['Ways still open', of('choice'), 'assumptions/head'],
  ]
  const pairs = counts.map(([label, value, link]) => [
    text(label, { role: 'label', link }),
    count(value, { role: 'strong' }),
  ])
  const rows = [0, 2].map((at): Row => ({ cells: [...pairs[at]!, blank(), ...pairs[at + 1]!] }))
  return { kind: 'rows', id: 'doubts', rows: [heading('What is doubtful'), ...rows] }
}

/** Where to read on. */
function linksBlock({ purchase }: Results): Block {
  const cart = purchase.carts[0]
  const links: readonly (readonly [string, CellName])[] = [
    ['Money', 'money/cash'],
    ...(cart ? [['Orders', `order/${cart.id}`] as const] : []),
    ['Schedule', 'top/schedule'],
    ['Sessions', 'top/sessions'],
    ['How sure', 'top/risk'],
    ['Findings', 'top/findings'],
  ]
  const row: Row = { cells: links.map(([words, link]) => text(words, { link })) }
  return { kind: 'rows', id: 'links', rows: [heading('Read on'), row] }
}
