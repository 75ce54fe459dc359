import type { Diagnostic } from '../diagnostics/message.ts'
import type { Results } from '../model/results.ts'
import type { Block, Column, Row } from './cells.ts'
import { line, text } from './make-cells.ts'
import type { SheetMaker } from './sheets.ts'

const columns: readonly Column[] = [
  { head: 'Sign', width: 10 },
  { head: 'Code', width: 8 },
  { head: 'Where', width: 34 },
  { head: 'What', width: 56 },
  { head: 'What to type', width: 44 },
]
const wide = columns.length

/** What is doubtful, and what the plan takes for granted because nothing else was said. */
export const findingsSheet: SheetMaker = ({ results, findings }) => ({
  name: 'Findings',
  widths: columns.map(({ width }) => width),
  blocks: [top(results, findings), table(findings), assumptions(results)],
  orientation: 'landscape',
  freeze: null,
  guarded: false,
  group: 'notes',
  foot: `${results.project.device.name}: findings`,
})

function top({ project }: Results, findings: readonly Diagnostic[]): Block {
  const says =
    findings.length === 0
      ? 'Nothing was found that needs a second look.'
      : `${findings.length} ${findings.length === 1 ? 'thing needs' : 'things need'} a second look. \`fettle explain CODE\` tells why it matters.`
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Findings', wide, 'title'),
      line(`${project.device.name}: ${project.file}`, wide, 'subtitle'),
      line(says, wide),
    ],
  }
}

function table(findings: readonly Diagnostic[]): Block {
  const rows = findings.map(
    ({ code, level, at, says, mend }): Row => ({
      cells: [
        text(level === 'warning' ? '! look' : '!! error', { role: level }),
        text(code),
        text(`${at.file}:${at.line}:${at.column}`),
        text(says),
        text(mend),
      ],
    }),
  )
  const none: Row = { cells: [text('none'), text(''), text(''), text(''), text('')] }
  return {
    kind: 'table',
    id: 'findings',
    columns,
    rows: rows.length === 0 ? [none] : rows,
    totals: [],
    filter: false,
  }
}

function assumptions(results: Results): Block {
  const said = assumptionLines(results)
  return {
    kind: 'rows',
    id: 'assumptions',
    rows: [
      line('', wide),
      { cells: [text('What the plan takes for granted', { role: 'heading', span: wide })], keep: true },
      ...said.map((words) => line(words, wide)),
    ],
  }
}

/** What was assumed because the source is silent, one sentence each. */
export function assumptionLines({ project, orders }: Results): readonly string[] {
  const choices = [...project.parts.values()].flatMap(({ id, choice }) =>
    choice
      ? [
          `${id}: the first way, ${choice.taken}, is taken${choice.left.length > 0 ? `; left: ${choice.left.join(', ')}` : ''}.`,
        ]
      : [],
  )
  const several = [...project.parts.values()].flatMap(({ id, way }) => {
    const offers = way.kind === 'bought' || way.kind === 'board' ? way.offers : []
    return offers.length > 1
      ? [`${id}: the first of ${offers.length} offers, from ${offers[0]!.vendor}, is taken.`]
      : []
  })
  const unproved = [...orders.values()].flatMap(({ of, proved }) =>
    proved
      ? []
      : [
          `The assembly order of ${of ?? project.device.name} is a good one, but was not proved to be the best.`,
        ],
  )
  return [
    'Times are planned at their mean, (optimistic + 4 likely + pessimistic) / 6; leads and transit are rounded up to whole days.',
    'Nothing is planned for illness, a lost parcel or a scrapped part unless you gave spares, tries or three-point times.',
    ...choices,
    ...several,
    ...unproved,
  ]
}
