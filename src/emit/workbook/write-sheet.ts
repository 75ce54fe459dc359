import type { Worksheet } from 'exceljs'
import type { Cell, CellName } from '../../report/cells.ts'
import { type Address, a1, addressOf, fixedA1, quotedSheet } from './addresses.ts'
import type { SheetMarks } from './finish.ts'
import { formulaText } from './formula.ts'
import { markLooks } from './marks.ts'
import { stored } from './number-formats.ts'
import { setPages } from './pages.ts'
import type { PagedSheet } from './paginate.ts'
import type { PlacedCell, PlacedRow, PlacedSheet } from './placing.ts'
import type { RowSize } from './room.ts'
import { ruleCharts } from './rule-charts.ts'
import { safeText, safeUrl } from './safe-text.ts'
import type { DataCell, DataRow } from './sheet-data.ts'
import type { StyleBook } from './styles.ts'
import { addValidations, type ListKeeper } from './validations.ts'

/** What the sheets of a book share. */
export interface Shared {
  readonly book: ReadonlyMap<CellName, Address>
  readonly style: StyleBook
  readonly keepList: ListKeeper
}

/** What of a sheet the finished file takes in besides its frame. */
export interface WrittenSheet {
  /** Made when asked for, so that the cells of only one sheet are in memory at once. */
  readonly rows: () => readonly DataRow[]
  readonly marks: SheetMarks
}

/** Writes the frame of a paged sheet into an empty worksheet, and gives its rows and marks. */
export async function writeSheet(ws: Worksheet, paged: PagedSheet, shared: Shared): Promise<WrittenSheet> {
  const { placed, widths, sizes } = paged
  for (const [at, width] of widths.entries()) ws.getColumn(at + 1).width = width
  outline(ws, placed)
  ruleCharts(ws, placed)
  if (placed.filter) ws.autoFilter = filterRange(placed.filter)
  addValidations(ws, placed, shared.keepList)
  setPages(
    ws,
    placed,
    sizes.map(({ height }) => height),
  )
  if (placed.sheet.guarded) await guard(ws, placed.filter !== null)
  const rows = () => placed.rows.map((row, at) => rowOf(ws.name, row, sizes[at]!, shared))
  return { rows, marks: { ...linksOf(placed, shared.book), merged: mergedOf(placed) } }
}

function rowOf(sheet: string, row: PlacedRow, size: RowSize, shared: Shared): DataRow {
  const cells: DataCell[] = []
  for (const placed of row.cells) {
    const style = shared.style(row, placed, size.lines)
    cells.push(cellOf(sheet, row, placed, style, shared))
    // The cells that a wide one covers have its look too, so that rules and fills run on.
    for (let at = 1; at < placed.span; at++)
      cells.push({ column: placed.column + at, style, value: null, formula: null })
  }
  return { number: row.number, height: size.height, level: row.level, cells }
}

function cellOf(
  sheet: string,
  row: PlacedRow,
  { cell, column }: PlacedCell,
  style: DataCell['style'],
  shared: Shared,
): DataCell {
  const formula = cell.live ? formulaText(cell.live, { sheet, row: row.number, book: shared.book }) : null
  return { column, style, value: contentOf(cell), formula }
}

function contentOf(cell: Cell): string | number | null {
  const value = stored(cell.value)
  if (typeof value === 'number') return value
  const text = value === null || value === '' ? (cell.mark ? markLooks[cell.mark].sign : '') : value
  return text === '' ? null : safeText(text)
}

/** Parents stand above their children, so the fold signs go there too. */
function outline(ws: Worksheet, { rows }: PlacedSheet): void {
  const deepest = rows.reduce((level, row) => Math.max(level, row.level), 0)
  if (deepest === 0) return
  ws.properties.outlineLevelRow = deepest
  ws.properties.outlineProperties = { summaryBelow: false, summaryRight: false }
}

function filterRange({ top, bottom, columns }: NonNullable<PlacedSheet['filter']>): string {
  return `${a1(top, 1)}:${a1(bottom, columns)}`
}

/** A guard against slips, without password; a person may still widen columns and use the filter. */
async function guard(ws: Worksheet, filtered: boolean): Promise<void> {
  await ws.protect('', { formatColumns: true, formatRows: true, ...(filtered ? { autoFilter: true } : {}) })
}

function mergedOf({ rows }: PlacedSheet): string[] {
  return rows.flatMap(({ number, cells }) =>
    cells.flatMap(({ cell, column, span }) => {
      const down = coveredRows(rows, number, cell)
      return span > 1 || down > 1 ? [`${a1(number, column)}:${a1(number + down - 1, column + span - 1)}`] : []
    }),
  )
}

/** A cell that covers rows below is one cell with theirs, unless a page begins among them. */
function coveredRows(rows: PlacedSheet['rows'], number: number, { down = 1 }: Cell): number {
  return rows.slice(number, number + down - 1).some(({ pageBreak }) => pageBreak) ? 1 : down
}

function linksOf({ rows }: PlacedSheet, book: ReadonlyMap<CellName, Address>): Omit<SheetMarks, 'merged'> {
  const inside: { cell: string; place: string }[] = []
  const outside: { cell: string; url: string }[] = []
  for (const row of rows) {
    for (const { cell, column } of row.cells) {
      const from = a1(row.number, column)
      const url = cell.url === undefined ? null : safeUrl(cell.url)
      if (cell.link !== undefined) inside.push({ cell: from, place: placeOf(addressOf(book, cell.link)) })
      else if (url !== null) outside.push({ cell: from, url })
    }
  }
  return { inside, outside }
}

function placeOf({ sheet, row, column }: Address): string {
  return `${quotedSheet(sheet)}!${fixedA1(row, column).replace(/\$/g, '')}`
}
