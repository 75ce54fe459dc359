import type { Block, Cell, Column, Row, Section, Sheet } from '../../report/cells.ts'

/** What a row is within its sheet. */
export type Stand = 'free' | 'head' | 'body' | 'total' | 'gap'

/** A cell with its column, counted from 1. */
export interface PlacedCell {
  readonly cell: Cell
  readonly column: number
  readonly span: number
  readonly align: 'left' | 'right' | 'center' | null
  /** Stands in a narrow column of a chart. */
  readonly chart: boolean
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
  readonly fills: boolean
  readonly section: Section | null
  /** The heads of the table that a row below them stands in. */
  readonly heads: readonly PlacedCell[] | null
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
    if (rows.length > 0) rows.push(gap(rows.length + 1, sectionBetween(rows.at(-1)!, block)))
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

const plain = {
  level: 0,
  pageBreak: false,
  keep: false,
  filtered: false,
  fills: false,
  section: null,
  heads: null,
}

function gap(number: number, section: Section | null): PlacedRow {
  return { ...plain, number, stand: 'gap', cells: [], section }
}

/** The gap between two blocks of a section is part of it. */
function sectionBetween({ section }: PlacedRow, next: Block): Section | null {
  return section && section.continued === next.section?.continued ? section : null
}

function drafts(block: Block): Draft[] {
  const section = block.section ?? null
  if (block.kind === 'rows')
    return block.rows.map((row) => ({ ...draft(row, row.ruled ? 'body' : 'free', []), section }))
  const { columns, filter } = block
  const head: Draft = {
    ...draft({ cells: columns.map(headCell) }, 'head', columns),
    keep: true,
    filtered: filter,
    section,
  }
  const below = { section, heads: head.cells }
  const body = block.rows.map((row) => ({ ...draft(row, 'body', columns), ...below }))
  const totals = block.totals.map((row) => ({ ...draft(row, 'total', columns), ...below }))
  const between = filter && totals.length > 0 && body.length > 0 ? [{ ...gap(0, section), keep: true }] : []
  return [head, ...body, ...between, ...totals]
}

function headCell(column: Column): Cell {
  return { value: { type: 'text', text: column.head }, role: 'head' }
}

/** A cell of a chart that shows nothing has no place of its own: thousands of them would make a book slow. */
const shows = ({ mark, value }: Cell): boolean => mark !== undefined || value.type !== 'empty'

function draft(row: Row, stand: Stand, columns: readonly Column[]): Draft {
  const cells: PlacedCell[] = []
  let column = 1
  for (const cell of row.cells) {
    const span = Math.max(1, cell.span ?? 1)
    const { align = null, chart = false } = columns[column - 1] ?? {}
    if (!chart || shows(cell)) cells.push({ cell, column, span, align: cell.align ?? align, chart })
    column += span
  }
  for (; column <= columns.length; column += 1) {
    const { chart = false } = columns[column - 1]!
    if (!chart) cells.push({ cell: { value: { type: 'empty' } }, column, span: 1, align: null, chart })
  }
  const { level = 0, pageBreak = false, keep = false, fills = false } = row
  return { ...plain, stand, cells, level: Math.min(7, level), pageBreak, keep, fills }
}
