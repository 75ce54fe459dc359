import type { Worksheet } from 'exceljs'
import { formatDay } from '../../base/clock.ts'
import type { Workbook } from '../../report/cells.ts'
import { columnLetters, quotedSheet } from './addresses.ts'
import { font } from './palette.ts'
import { safeText } from './safe-text.ts'
import { layoutVersion } from './stamp.ts'
import type { ListKeeper } from './validations.ts'

/** Name of the hidden sheet that says what the file is; no sheet of the report may be called so. */
export const hiddenSheetName = 'about'

/** First column of the lists that input cells choose from. */
const firstListColumn = 4

/** Writes what the file is: pairs in the first two columns, later the lists that rules point to. */
export function writeHiddenSheet(ws: Worksheet, book: Workbook): void {
  ws.state = 'hidden'
  const pairs: [string, string | number][] = [
    ['title', safeText(book.title)],
    ['subject', safeText(book.subject)],
    ['day', formatDay(book.day)],
    ['fingerprint', safeText(book.fingerprint)],
    ['layout', layoutVersion],
  ]
  for (const [at, [key, value]] of pairs.entries()) {
    put(ws, at + 1, 1, key)
    put(ws, at + 1, 2, value)
  }
  ws.getColumn(1).width = 14
  ws.getColumn(2).width = 70
}

/** Keeps each list once, a column for each, and answers with the range it stands in. */
export function listKeeper(ws: Worksheet): ListKeeper {
  const kept = new Map<string, string>()
  return (values) => {
    const key = JSON.stringify(values)
    const known = kept.get(key)
    if (known) return known
    const column = firstListColumn + kept.size
    for (const [at, value] of values.entries()) put(ws, at + 1, column, safeText(value))
    const letters = columnLetters(column)
    const range = `${quotedSheet(hiddenSheetName)}!$${letters}$1:$${letters}$${Math.max(1, values.length)}`
    kept.set(key, range)
    return range
  }
}

function put(ws: Worksheet, row: number, column: number, value: string | number): void {
  const cell = ws.getCell(row, column)
  cell.font = font(10)
  cell.value = value
}
