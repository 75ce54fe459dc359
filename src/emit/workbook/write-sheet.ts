import type { Worksheet } from 'exceljs'
import type { Cell, CellName } from '../../report/cells.ts'
import { type Address, a1, addressOf, fixedA1, quotedSheet } from './addresses.ts'
import type { SheetLinks } from './finish.ts'
import { formulaText } from './formula.ts'
import { markLooks } from './marks.ts'
import { stored } from './number-formats.ts'
import { setPages } from './pages.ts'
import type { PagedSheet } from './paginate.ts'
import type { PlacedCell, PlacedRow, PlacedSheet } from './placing.ts'
import type { RowSize } from './room.ts'
import { ruleCharts } from './rule-charts.ts'
import { safeText, safeUrl } from './safe-text.ts'
import type { StyleBook } from './styles.ts'
import { addValidations, type ListKeeper } from './validations.ts'

/** What the sheets of a book share. */
export interface Shared {
  readonly book: ReadonlyMap<CellName, Address>
  readonly style: StyleBook
  readonly keepList: ListKeeper
}

/** Writes a paged sheet into an empty worksheet. Gives: the sheet's links, which the finished file takes. */
export async function writeSheet(ws: Worksheet, paged: PagedSheet, shared: Shared): Promise<SheetLinks> {
  const { placed, widths, sizes } = paged
  for (const [at, width] of widths.entries()) ws.getColumn(at + 1).width = width
  for (const [at, row] of placed.rows.entries()) {
    writeRow(ws, row, sizes[at]!, shared)
  }
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
  return linksOf(placed, shared.book)
}

function writeRow(ws: Worksheet, row: PlacedRow, size: RowSize, shared: Shared): void {
  const written = ws.getRow(row.number)
  written.height = size.height
  if (row.level > 0) written.outlineLevel = row.level
  for (const placed of row.cells) {
    ws.getCell(row.number, placed.column).style = shared.style(row, placed, size.lines)
    writeCell(ws, row, placed, shared)
  }
}

function writeCell(ws: Worksheet, row: PlacedRow, placed: PlacedCell, shared: Shared): void {
  const { cell, column, span } = placed
  const target = ws.getCell(row.number, column)
  const value = contentOf(cell)
  const formula = cell.live
    ? formulaText(cell.live, { sheet: ws.name, row: row.number, book: shared.book })
    : null
  target.value = formula === null ? value : { formula, result: value ?? '', date1904: false }
  if (span > 1) ws.mergeCells(row.number, column, row.number, column + span - 1)
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

function linksOf({ rows }: PlacedSheet, book: ReadonlyMap<CellName, Address>): SheetLinks {
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
