import type { CellValue, Workbook, Worksheet } from 'exceljs'
import { HyperFormula, type RawCellContent } from 'hyperformula'
import { expect } from 'vitest'
import { decimalRound, withDecimalRound } from './decimal-round.ts'

/** A live cell of a written workbook, with the value written beside its formula. */
export interface LiveCell {
  readonly sheet: string
  readonly address: string
  readonly row: number
  readonly column: number
  readonly formula: string
  readonly cached: string | number | boolean | null
}

/** The workbook as exceljs reads it back from its bytes. */
export async function readBack(bytes: Uint8Array): Promise<Workbook> {
  const { default: Book } = await import('exceljs/lib/doc/workbook.js')
  const book = new Book()
  await book.xlsx.load(bytes.slice().buffer as unknown as Parameters<Workbook['xlsx']['load']>[0])
  return book
}

/** Every live cell of the workbook. */
export function liveCells(book: Workbook): LiveCell[] {
  const found: LiveCell[] = []
  for (const ws of book.worksheets) {
    ws.eachRow((row) => {
      row.eachCell((cell) => {
        if (!cell.formula || (cell.isMerged && cell.master !== cell)) return
        const { row: at, col } = cell.fullAddress
        const cached = plain(cell.result as CellValue)
        found.push({
          sheet: ws.name,
          address: cell.address,
          row: at,
          column: col,
          formula: cell.formula,
          cached,
        })
      })
    })
  }
  return found
}

/** Dates come back as Date; the sheet itself holds a serial number, 25569 of which is 1970-01-01. */
function plain(value: CellValue | undefined): string | number | boolean | null {
  if (value instanceof Date) return 25_569 + value.getTime() / 86_400_000
  if (typeof value === 'object' || value === undefined) return null
  return value
}

/**
 * Recomputes every live cell with an independent formula engine and compares it with the value written beside its
 * formula. Reference: HyperFormula 3.5.0, which shares no code with the compiler.
 * Gives: the number of live cells compared.
 */
export async function expectLiveCellsAgree(bytes: Uint8Array): Promise<number> {
  const book = await readBack(bytes)
  expect(liveCellDifferences(book)).toEqual([])
  return liveCells(book).length
}

/** What differs between the written values and those that the engine computes, a line each. */
export function liveCellDifferences(book: Workbook): string[] {
  withDecimalRound()
  const sheets = Object.fromEntries(book.worksheets.map((ws) => [ws.name, contents(ws)]))
  const engine = HyperFormula.buildFromSheets(sheets, { licenseKey: 'gpl-v3', precisionRounding: 14 })
  const differences = liveCells(book).flatMap((cell) => {
    const sheet = engine.getSheetId(cell.sheet)!
    const computed = engine.getCellValue({ sheet, row: cell.row - 1, col: cell.column - 1 })
    const said = `${cell.sheet}!${cell.address} =${cell.formula}: written ${cell.cached}, computed ${JSON.stringify(computed)}`
    return agrees(computed, cell.cached) ? [] : [said]
  })
  engine.destroy()
  return differences
}

/** Equal text, or numbers equal to 12 digits. */
export function agrees(computed: unknown, cached: unknown): boolean {
  if (typeof computed === 'number' && typeof cached === 'number') {
    return Math.abs(computed - cached) <= 1e-12 * Math.max(1, Math.abs(computed), Math.abs(cached))
  }
  return (computed ?? '') === (cached ?? '')
}

/** A leading apostrophe keeps text text: the engine would read `00123` as a number. */
function contents(ws: Worksheet): RawCellContent[][] {
  const rows: RawCellContent[][] = []
  ws.eachRow({ includeEmpty: true }, (row, at) => {
    const cells: RawCellContent[] = []
    row.eachCell({ includeEmpty: true }, (cell, column) => {
      cells[column - 1] = cell.isMerged && cell.master !== cell ? null : content(cell.formula, cell.value)
    })
    rows[at - 1] = Array.from(cells, (value) => value ?? null)
  })
  return Array.from(rows, (row) => row ?? [])
}

function content(formula: string | undefined, value: CellValue): RawCellContent {
  if (formula) return `=${inEngineWords(formula)}`
  const bare = value && typeof value === 'object' && 'hyperlink' in value ? value.text : value
  const held = plain(bare as CellValue)
  return typeof held === 'string' ? `'${held}` : held
}

/**
 * The formula in the engine's dialect: spreadsheets double a quote within a text constant, the engine wants a backslash
 * before it; and ROUND is the spreadsheets' own.
 */
function inEngineWords(formula: string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part) =>
      part.startsWith('"')
        ? `"${part.slice(1, -1).replaceAll('""', '\\"')}"`
        : part.replace(/\bROUND\(/g, `${decimalRound}(`),
    )
    .join('')
}
