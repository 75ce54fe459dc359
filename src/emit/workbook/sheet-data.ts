import type { Style } from 'exceljs'
import { a1, columnLetters } from './addresses.ts'

/** A cell as it is written; `formula` beside the value that it gives today. */
export interface DataCell {
  readonly column: number
  /** Equal looks are the same object. */
  readonly style: Partial<Style>
  readonly value: string | number | null
  readonly formula: string | null
}

/** A row with its cells from left to right; a height of `null` is the reader's own. */
export interface DataRow {
  readonly number: number
  readonly height: number | null
  readonly level: number
  readonly cells: readonly DataCell[]
}

/** Numbers that looks and texts go by within the file. */
export interface Numbering {
  readonly style: (style: Partial<Style>, kind: 'number' | 'text') => number
  readonly text: (text: string) => number
}

/** The cells of a sheet as XML, and the range that they take. */
export interface SheetData {
  readonly xml: string
  readonly used: string
}

/**
 * The rows of a sheet as XML. The library would keep an object of many fields for each cell, which makes a large book
 * slow and takes hundreds of megabytes.
 * Source: ISO/IEC 29500-1 section 18.3.1.80 (`sheetData`), `row`, `c`, `f`, `v`.
 */
export function sheetData(rows: readonly DataRow[], numbers: Numbering): SheetData {
  const letters: string[] = []
  const lettersOf = (column: number): string => {
    letters[column] ??= columnLetters(column)
    return letters[column]
  }
  const written = rows.map((row) => rowXml(row, numbers, lettersOf))
  return { xml: `<sheetData>${written.join('')}</sheetData>`, used: usedRange(rows) }
}

function usedRange(rows: readonly DataRow[]): string {
  const filled = rows.filter(({ cells }) => cells.length > 0)
  if (filled.length === 0) return 'A1'
  const left = filled.reduce(
    (least, { cells }) => Math.min(least, cells[0]!.column),
    Number.POSITIVE_INFINITY,
  )
  const right = filled.reduce((most, { cells }) => Math.max(most, cells.at(-1)!.column), 1)
  return `${a1(filled[0]!.number, left)}:${a1(filled.at(-1)!.number, right)}`
}

function rowXml(row: DataRow, numbers: Numbering, lettersOf: (column: number) => string): string {
  const { number, height, level, cells } = row
  const high = height === null ? '' : ` ht="${height}" customHeight="1"`
  const spans = cells.length === 0 ? '' : ` spans="${cells[0]!.column}:${cells.at(-1)!.column}"`
  const outline = level > 0 ? ` outlineLevel="${level}"` : ''
  const head = `<row r="${number}"${high}${spans} x14ac:dyDescent="0.25"${outline}`
  if (cells.length === 0) return `${head}/>`
  let xml = `${head}>`
  for (const cell of cells) xml += cellXml(cell, lettersOf(cell.column) + number, numbers)
  return `${xml}</row>`
}

function cellXml({ style, value, formula }: DataCell, address: string, numbers: Numbering): string {
  const look = numbers.style(style, typeof value === 'string' ? 'text' : 'number')
  const head = `<c r="${address}" s="${look}"`
  if (formula !== null) {
    const type = typeof value === 'number' ? '' : ' t="str"'
    return `${head}${type}><f>${xmlText(formula)}</f><v>${xmlText(String(value ?? ''))}</v></c>`
  }
  if (value === null) return `${head}/>`
  return typeof value === 'number'
    ? `${head}><v>${value}</v></c>`
    : `${head} t="s"><v>${numbers.text(value)}</v></c>`
}

const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
}

/** Text between tags; safe text has no letters that XML forbids. */
function xmlText(text: string): string {
  return text.replace(/[&<>"']/g, (letter) => escapes[letter]!)
}
