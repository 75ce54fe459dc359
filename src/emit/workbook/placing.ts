import type { Block, Cell, Column, Row, Sheet } from '../../report/cells.ts'

/** What a row is within its sheet. */
export type Stand = 'free' | 'head' | 'body' | 'total' | 'gap'

/** A cell with its column, counted from 1. */
export interface PlacedCell {
  readonly cell: Cell
  readonly column: number
  readonly span: number
  readonly align: 'left' | 'right' | 'center' | null
}

/** A row with its number, counted from 1. */
export interface PlacedRow {
  readonly number: number
  readonly stand: Stand
  readonly cells: readonly PlacedCell[]
  readonly level: number
  readonly pageBreak: boolean
  readonly keep: boolean
  readonly filtered: boolean
}

/** A sheet whose every cell has its place. */
export interface PlacedSheet {
  readonly sheet: Sheet
  readonly rows: readonly PlacedRow[]
  /** First row of each block, by its id: the head row of a table. */
  readonly starts: ReadonlyMap<string, number>
  /** Head row and last body row of the filtered table. */
  readonly filter: { readonly top: number; readonly bottom: number; readonly columns: number } | null
  readonly columns: number
}

/**
 * Puts the blocks of a sheet one below the other: a thin empty row between blocks, and one between a filtered
 * table and its totals, so that a filter never swallows the totals.
 */
export function place(sheet: Sheet): PlacedSheet {
  const rows: PlacedRow[] = []
  const starts = new Map<string, number>()
  let filter: PlacedSheet['filter'] = null
  for (const block of sheet.blocks) {
    if (rows.length > 0) rows.push(gap(rows.length + 1))
    const top = rows.length + 1
    starts.set(block.id, top)
    for (const draft of drafts(block)) rows.push({ ...draft, number: rows.length + 1 })
    if (block.kind === 'table' && block.filter && block.rows.length > 0 && !filter) {
      filter = { top, bottom: top + block.rows.length, columns: block.columns.length }
    }
  }
  const columns = Math.max(1, sheet.widths.length, ...rows.map(lastColumn))
  return { sheet, rows, starts, filter, columns }
}

function lastColumn(row: PlacedRow): number {
  return row.cells.reduce((last, { column, span }) => Math.max(last, column + span - 1), 0)
}

type Draft = Omit<PlacedRow, 'number'>

function gap(number: number): PlacedRow {
  return { number, stand: 'gap', cells: [], level: 0, pageBreak: false, keep: false, filtered: false }
}

function drafts(block: Block): Draft[] {
  if (block.kind === 'rows') return block.rows.map((row) => draft(row, 'free', []))
  const { columns, filter } = block
  const head: Draft = {
    ...draft({ cells: columns.map(headCell) }, 'head', columns),
    keep: true,
    filtered: filter,
  }
  const body = block.rows.map((row) => draft(row, 'body', columns))
  const totals = block.totals.map((row) => draft(row, 'total', columns))
  const between = filter && totals.length > 0 && body.length > 0 ? [{ ...gap(0), keep: true }] : []
  return [head, ...body, ...between, ...totals]
}

function headCell(column: Column): Cell {
  return { value: { type: 'text', text: column.head }, role: 'head' }
}

function draft(row: Row, stand: Stand, columns: readonly Column[]): Draft {
  const cells: PlacedCell[] = []
  let column = 1
  for (const cell of row.cells) {
    const span = Math.max(1, cell.span ?? 1)
    cells.push({ cell, column, span, align: cell.align ?? columns[column - 1]?.align ?? null })
    column += span
  }
  for (; column <= columns.length; column += 1) {
    cells.push({ cell: { value: { type: 'empty' } }, column, span: 1, align: null })
  }
  const { level = 0, pageBreak = false, keep = false } = row
  return { stand, cells, level: Math.min(7, level), pageBreak, keep, filtered: false }
}
