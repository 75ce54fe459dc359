import type { CellName } from '../../report/cells.ts'
import type { PlacedSheet } from './placing.ts'

/** Where a cell stands; rows and columns count from 1, sheets from 0 in their order. */
export interface Address {
  readonly sheet: string
  readonly order: number
  readonly row: number
  readonly column: number
}

/** The column's letters: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  const rest = (column - 1) % 26
  const before = Math.floor((column - 1) / 26)
  return (before > 0 ? columnLetters(before) : '') + String.fromCharCode(65 + rest)
}

/** The address within its sheet, `B7`. */
export function a1(row: number, column: number): string {
  return `${columnLetters(column)}${row}`
}

/** The address within its sheet that stays when copied, `$B$7`. */
export function fixedA1(row: number, column: number): string {
  return `$${columnLetters(column)}$${row}`
}

/** The sheet's name as a formula writes it. Needs: a name from our fixed list, without apostrophes. */
export function quotedSheet(name: string): string {
  return `'${name}'`
}

/**
 * The address of every named cell of the book.
 * Needs: names unique over the book; a name used twice is a fault in fettle.
 */
export function addressBook(sheets: readonly PlacedSheet[]): ReadonlyMap<CellName, Address> {
  const book = new Map<CellName, Address>()
  for (const [order, { sheet, rows }] of sheets.entries()) {
    for (const row of rows) {
      for (const { cell, column } of row.cells) {
        if (cell.name === undefined) continue
        if (book.has(cell.name)) throw new Error(`two cells are named ${cell.name}`)
        book.set(cell.name, { sheet: sheet.name, order, row: row.number, column })
      }
    }
  }
  return book
}

/** The address of a name. Needs: the name stands in the book; a missing one is a fault in fettle. */
export function addressOf(book: ReadonlyMap<CellName, Address>, name: CellName): Address {
  const address = book.get(name)
  if (!address) throw new Error(`no cell is named ${name}`)
  return address
}
