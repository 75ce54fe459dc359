import type { Worksheet } from 'exceljs'
import { formatDay } from '../../base/clock.ts'
import type { Workbook } from '../../report/cells.ts'
import { columnLetters, quotedSheet } from './addresses.ts'
import { font } from './palette.ts'
import { safeText } from './safe-text.ts'
import type { DataCell, DataRow } from './sheet-data.ts'
import { layoutVersion } from './stamp.ts'
import type { ListKeeper } from './validations.ts'

/** Name of the hidden sheet that says what the file is; no sheet of the report may be called so. */
export const hiddenSheetName = 'about'

/** First column of the lists that input cells choose from. */
const firstListColumn = 4

/** The hidden sheet while it is written. */
export interface HiddenSheet {
  /** Keeps each list once, a column for each, and answers with the range it stands in. */
  readonly keepList: ListKeeper
  /** All that it holds by now. */
  readonly rows: () => readonly DataRow[]
}

/** Sets up the sheet that says what the file is, pairs in the first two columns, and keeps the lists that rules point to. */
export function hiddenSheet(ws: Worksheet, book: Workbook): HiddenSheet {
  ws.state = 'hidden'
  ws.getColumn(1).width = 14
  ws.getColumn(2).width = 70
  const rows: DataCell[][] = []
  const put = (row: number, column: number, value: string | number): void => {
    while (rows.length < row) rows.push([])
    rows[row - 1]!.push({ column, style: plain, value, formula: null })
  }
  const pairs: [string, string | number][] = [
    ['title', safeText(book.title)],
    ['subject', safeText(book.subject)],
    ['day', formatDay(book.day)],
    ['fingerprint', safeText(book.fingerprint)],
    ['layout', layoutVersion],
  ]
  for (const [at, [key, value]] of pairs.entries()) {
    put(at + 1, 1, key)
    put(at + 1, 2, value)
  }
  return {
    keepList: listKeeper(put),
    rows: () => rows.map((cells, at) => ({ number: at + 1, height: null, level: 0, cells })),
  }
}

const plain = { font: font(10) }

function listKeeper(put: (row: number, column: number, value: string) => void): ListKeeper {
  const kept = new Map<string, string>()
  return (values) => {
    const key = JSON.stringify(values)
    const known = kept.get(key)
    if (known) return known
    const column = firstListColumn + kept.size
    for (const [at, value] of values.entries()) put(at + 1, column, safeText(value))
    const letters = columnLetters(column)
    const range = `${quotedSheet(hiddenSheetName)}!$${letters}$1:$${letters}$${Math.max(1, values.length)}`
    kept.set(key, range)
    return range
  }
}
