/** Sign between the cells of a line. */
export type CsvSeparator = ',' | ';' | '\t'

/** A cell with the place where it begins, from 1. */
export interface CsvCell {
  readonly text: string
  readonly line: number
  readonly column: number
}

/** Why a text is no table; line and column from 1. */
export interface CsvFault {
  readonly fault: 'quote left open' | 'text after a quote' | 'quote inside a cell' | 'too long'
  readonly line: number
  readonly column: number
}

/** Most letters read of one table. Common practice, no source. */
const mostLetters = 10_000_000

/**
 * The rows of a table as text, empty lines left out. Cells may stand in double quotes, with `""` for a quote inside and
 * line ends kept; a mark before the text is passed. Cells are not trimmed.
 * Source: RFC 4180 section 2 (from memory), with LF or CR alone also taken as line ends, and other separators.
 */
export function readCsv(text: string, separator: CsvSeparator): readonly (readonly CsvCell[])[] | CsvFault {
  if (text.length > mostLetters) return { fault: 'too long', line: 1, column: 1 }
  const walk: Walk = { text, at: text.startsWith('\uFEFF') ? 1 : 0, line: 1, lineStart: 0 }
  walk.lineStart = walk.at
  const rows: CsvCell[][] = []
  while (walk.at < text.length) {
    const row = readRow(walk, separator)
    if ('fault' in row) return row
    if (row.length > 1 || row[0]!.text !== '') rows.push(row)
  }
  return rows
}

interface Walk {
  readonly text: string
  at: number
  line: number
  lineStart: number
}

function readRow(walk: Walk, separator: CsvSeparator): CsvCell[] | CsvFault {
  const cells: CsvCell[] = []
  for (;;) {
    const place = placeOf(walk)
    const cell = walk.text[walk.at] === '"' ? readQuoted(walk) : readPlain(walk, separator)
    if (typeof cell !== 'string') return cell
    cells.push({ text: cell, ...place })
    if (walk.text[walk.at] === separator) walk.at++
    else if (walk.at >= walk.text.length || passLineEnd(walk)) return cells
    else return { fault: 'text after a quote', ...placeOf(walk) }
  }
}

function readPlain(walk: Walk, separator: CsvSeparator): string | CsvFault {
  const start = walk.at
  for (; walk.at < walk.text.length; walk.at++) {
    const sign = walk.text[walk.at]!
    if (sign === separator || sign === '\n' || sign === '\r') break
    if (sign === '"') return { fault: 'quote inside a cell', ...placeOf(walk) }
  }
  return walk.text.slice(start, walk.at)
}

function readQuoted(walk: Walk): string | CsvFault {
  const opening = placeOf(walk)
  let cell = ''
  walk.at++
  while (walk.at < walk.text.length) {
    const start = walk.at
    if (walk.text[walk.at] === '"') {
      walk.at++
      if (walk.text[walk.at] !== '"') return cell
      cell += '"'
      walk.at++
    } else {
      if (!passLineEnd(walk)) walk.at++
      cell += walk.text.slice(start, walk.at)
    }
  }
  return { fault: 'quote left open', ...opening }
}

function passLineEnd(walk: Walk): boolean {
  const sign = walk.text[walk.at]
  if (sign !== '\n' && sign !== '\r') return false
  walk.at += sign === '\r' && walk.text[walk.at + 1] === '\n' ? 2 : 1
  walk.line++
  walk.lineStart = walk.at
  return true
}

function placeOf({ line, at, lineStart }: Walk): { readonly line: number; readonly column: number } {
  return { line, column: at - lineStart + 1 }
}
