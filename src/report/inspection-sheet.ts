import type { InspectionLine } from '../model/results.ts'
import type { Block, Cell, Column, Expression, Row } from './cells.ts'
import { chainBlocks } from './chain-blocks.ts'
import { allOf, choose, isEmpty, words } from './expressions.ts'
import { footOf } from './foot-of.ts'
import { limitCell, sayRequirement } from './inspection-cells.ts'
import { blank, count, line, ref, text, tick, writeHere } from './make-cells.ts'
import type { SheetMaker, Told } from './sheets.ts'

/** Pieces that have a row of their own. */
const mostPieces = 20

const columns: readonly Column[] = [
  { head: 'No.', width: 6, align: 'right' },
  { head: 'Of', width: 18 },
  { head: 'Feature', width: 18 },
  { head: 'Requirement', width: 32 },
  { head: 'Lower', width: 9, align: 'right' },
  { head: 'Upper', width: 9, align: 'right' },
  { head: 'Unit', width: 7 },
  { head: 'How', width: 22 },
  { head: 'Piece', width: 9 },
  { head: 'Measured', width: 13 },
  { head: 'Result', width: 9, align: 'center' },
]

/** The inspection record: what is measured, its limits, and whether each measured value lies within them. */
export const inspectionSheet: SheetMaker = (told) => ({
  name: 'Inspection',
  widths: columns.map(({ width }) => width),
  blocks: [top(told), record(told.results.inspection), ...chainBlocks(told.results.chains)],
  orientation: 'landscape',
  freeze: told.results.inspection.length > 0 ? { block: 'record', columns: 0 } : null,
  guarded: true,
  group: 'making',
  foot: footOf(told.results.project.device),
})

function top({ results }: Told): Block {
  const { device } = results.project
  const revision = device.revision === null ? '' : `, revision ${device.revision}`
  const says =
    results.inspection.length === 0
      ? 'Nothing has to be measured: the project names no features, checks or tests.'
      : 'Type the measured value in the unit of the line: the result says in or out. Where the requirement has no limits in figures, tick the box once it is met.'
  const label = (said: string): Cell => text(said, { span: 2, role: 'label' })
  return {
    kind: 'rows',
    id: 'top',
    rows: [
      line('Inspection', columns.length, 'title'),
      line(`${device.name}${revision}`, columns.length, 'subtitle'),
      line(says, columns.length, 'note'),
      {
        cells: [
          label('Date'),
          writeHere(),
          { ...label('Measured by'), span: 1, align: 'right' },
          writeHere({ span: 3 }),
        ],
      },
    ],
  }
}

function record(lines: readonly InspectionLine[]): Block {
  return {
    kind: 'table',
    id: 'record',
    columns,
    rows: lines.flatMap(pieceRows),
    totals: [],
    filter: true,
  }
}

function pieceRows(one: InspectionLine): readonly Row[] {
  const shown = Math.min(one.pieces, mostPieces)
  const of = one.pieces > mostPieces ? `of ${one.pieces}, first ${mostPieces}` : `of ${one.pieces}`
  return Array.from({ length: shown }, (_, at) =>
    pieceRow(one, at + 1, one.pieces === 1 ? '1' : `${at + 1} ${of}`),
  )
}

function pieceRow(one: InspectionLine, piece: number, said: string): Row {
  const name = (what: string): string => `inspection/${one.number}/${piece}/${what}`
  const figures = one.lower !== null || one.upper !== null
  const least =
    one.lower !== null && one.lower >= 0
      ? ({ kind: 'number', least: 0 } as const)
      : ({ kind: 'any' } as const)
  return {
    cells: [
      count(one.number),
      text(one.of),
      text(one.feature),
      text(sayRequirement(one)),
      limitCell(one, 'lower', null, { name: name('lower') }),
      limitCell(one, 'upper', null, { name: name('upper') }),
      text(one.unit ?? ''),
      text(one.method ?? ''),
      text(said),
      figures ? writeHere({ name: name('measured'), accepts: least, align: 'right' }) : tick(),
      figures ? blank({ live: verdict(one, name), name: name('result'), role: 'strong' }) : blank(),
    ],
  }
}

/** Empty while nothing is measured; a limit that is not given always holds. */
function verdict({ lower, upper }: InspectionLine, name: (what: string) => string): Expression {
  const measured = ref(name('measured'))
  const within: Expression[] = [
    ...(lower === null ? [] : [{ op: '>=', left: measured, right: ref(name('lower')) } as const]),
    ...(upper === null ? [] : [{ op: '<=', left: measured, right: ref(name('upper')) } as const]),
  ]
  return choose(isEmpty(name('measured')), words(''), choose(allOf(...within), words('in'), words('out')))
}
