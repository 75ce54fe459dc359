import type { Results } from '../model/results.ts'
import type { Risk, TonightAction } from '../model/risk.ts'
import type { Block, Column, Row } from './cells.ts'
import { footOf } from './foot-of.ts'
import { count, instant, line, number, text } from './make-cells.ts'
import { sayShort, sayTask } from './say-because.ts'
import { sayDoubt, sayLever, saySearchAlone, saySpread, saySure, sayWorth } from './say-risk.ts'
import type { SheetMaker } from './sheets.ts'

const widths = [62, 22, 22, 62]
const wide = widths.length
/** Most tasks told of those that set the date. */
const mostTasks = 20

/** How sure the date is: dates by chance, what spreads them, what to do tonight, which tasks set the date how often. */
export const riskSheet: SheetMaker = ({ results }) => ({
  name: 'How sure',
  widths,
  blocks: [top(results), ...(results.risk ? blocksOf(results, results.risk) : [])],
  orientation: 'landscape',
  freeze: null,
  guarded: true,
  group: 'time',
  foot: footOf(results.project.device),
})

const how =
  'The plan was laid out again in its own order of work, each time with working times, parcels, failing tests and bad pieces as they may turn out. What a person would change on the way is not in it.'

function top({ project, risk }: Results): Block {
  const { name } = project.device
  const says = risk
    ? `${how} Laid out ${risk.samples} times: a share is good to about ${sayDoubt(risk.samples)}.`
    : 'The plan was not laid out with other times: it was asked for without samples.'
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      { cells: [text('How sure', { role: 'title', span: wide, name: 'top/risk' })] },
      line(risk ? `${name}: ${saySure(risk)}` : name, wide, 'subtitle'),
      line(says, wide, 'note'),
    ],
  }
}

function blocksOf(results: Results, risk: Risk): readonly Block[] {
  return [
    dates(results, risk),
    ...tonight(results, risk),
    table('spread', 'What spreads the date', spreadColumns, spreadRows(results, risk)),
    table('critical', 'What sets the date how often', criticalColumns, criticalRows(results, risk)),
  ]
}

const shareCell = (share: number) => count(Math.round(100 * share))

function dates({ project, schedule }: Results, risk: Risk): Block {
  const { wanted } = project.device
  const never = text('never done in so many', { align: 'right' })
  const rows = risk.finishBy.map(
    ({ chance, finish }): Row => ({
      cells: [
        text(`Done by, ${Math.round(100 * chance)} of 100 times`, { role: 'label' }),
        finish === null
          ? never
          : instant(finish, { role: chance === 0.8 ? 'strong' : 'body', align: 'right' }),
      ],
    }),
  )
  const share = (label: string, of: number): Row => ({
    cells: [text(`${label}, times of 100`, { role: 'label' }), shareCell(of)],
  })
  const plan: Row = {
    cells: [
      text('The plan, with mean times', { role: 'label' }),
      instant(schedule.finish, { align: 'right' }),
    ],
  }
  return {
    kind: 'rows',
    id: 'dates',
    rows: [
      line('When it works', wide, 'heading'),
      ...rows,
      plan,
      share('Done as planned or earlier', risk.asPlanned),
      ...(wanted && risk.wanted !== null ? [share('Done on the wanted day or earlier', risk.wanted)] : []),
      ...(risk.unplaced > 0
        ? [share('Never done, for something fits no session', risk.unplaced / risk.samples)]
        : []),
    ],
  }
}

/** Actions by session, sessions by time. */
function tonight(results: Results, { tonight: actions }: Risk): readonly Block[] {
  const sessions = new Map<string, TonightAction[]>()
  for (const action of actions) {
    const says = `Worth doing in the next session of ${action.person}, ${sayShort(action.open)}`
    sessions.set(says, [...(sessions.get(says) ?? []), action])
  }
  if (sessions.size === 0) return [table('tonight', 'Worth doing in the next session', tonightColumns, [])]
  return [...sessions].map(([says, some], at) =>
    table(
      `tonight ${at + 1}`,
      says,
      tonightColumns,
      some.map((action) => tonightRow(results, action)),
    ),
  )
}

const tonightRow = (results: Results, action: TonightAction): Row => ({
  cells: [
    text(sayTask(results, action.task)),
    number(action.days, 1, null),
    shareCell(action.share),
    text(sayWorth(results, action)),
  ],
})

const tonightColumns: readonly Column[] = [
  { head: 'What', width: widths[0]! },
  { head: 'Days it saves, mean', width: widths[1]!, align: 'right' },
  { head: 'Times of 100', width: widths[2]!, align: 'right' },
  { head: 'Why', width: widths[3]! },
]

const spreadColumns: readonly Column[] = [
  { head: 'What is uncertain', width: widths[0]! },
  { head: 'Days later, long to short', width: widths[1]!, align: 'right' },
  { head: 'Rank correlation', width: widths[2]!, align: 'right' },
  { head: 'What the days say', width: widths[3]! },
]

function spreadRows(results: Results, { spread }: Risk): readonly Row[] {
  return spread.map((one) => ({
    cells: [
      text(saySpread(results, one)),
      number(one.days, 1, null),
      number(one.correlation, 2, null),
      text('mean date in its longest fifth of the samples, less that in its shortest'),
    ],
  }))
}

const criticalColumns: readonly Column[] = [
  { head: 'Task', width: widths[0]! },
  { head: 'Times of 100', width: widths[1]!, align: 'right' },
  { head: 'In the plan', width: widths[2]! },
]

function criticalRows(results: Results, { critical }: Risk): readonly Row[] {
  const planned = new Set(results.schedule.drivingChain.map(({ task }) => task))
  return [...critical]
    .filter(([, share]) => share > 0)
    .sort(
      ([a, shareA], [b, shareB]) =>
        shareB - shareA || startOf(results, a) - startOf(results, b) || (a < b ? -1 : 1),
    )
    .slice(0, mostTasks)
    .map(([task, share]) => ({
      cells: [text(sayTask(results, task)), shareCell(share), text(planned.has(task) ? 'sets the date' : '')],
    }))
}

function startOf({ schedule }: Results, task: string): number {
  return schedule.tasks.get(task)!.start
}

/** A headed table under its title; a sentence where it has no row. */
function table(id: string, title: string, columns: readonly Column[], rows: readonly Row[]): Block {
  const heading = line(title, wide, 'heading')
  if (rows.length === 0)
    return { kind: 'rows', id, rows: [heading, line('Nothing stands out in these samples.', wide)] }
  const heads: Row = {
    keep: true,
    cells: columns.map(({ head, align }) => text(head, { role: 'head', ...(align ? { align } : {}) })),
  }
  return {
    kind: 'rows',
    id,
    section: { continued: `${title}, continued`, whole: false },
    rows: [heading, heads, ...rows.map((row) => ({ ...row, ruled: true }))],
  }
}

/** What would bring the date nearer, for the sheet that says what sets it; none where nothing was asked. */
export function leverBlocks({ risk }: Results, wide: number): readonly Block[] {
  if (!risk) return []
  const rows = risk.levers.map(
    (lever): Row => ({
      cells: [
        instant(lever.finish),
        text(`${lever.days.toFixed(1)} days earlier`),
        text(''),
        text(sayLever(lever), { span: wide - 3 }),
      ],
    }),
  )
  const none =
    'No gain of half a day was found: not by one more evening a week, a second machine, a machine at any hour, one more person on it, nor one cart a day earlier.'
  const alone = saySearchAlone(risk)
  return [
    {
      kind: 'rows',
      id: 'levers',
      rows: [
        line('What would bring it nearer, each planned again', wide, 'heading'),
        ...(rows.length > 0 ? rows : [line(none, wide)]),
        ...(alone === '' ? [] : [line(alone, wide, 'note')]),
      ],
    },
  ]
}
