import type { Workbook as Book } from 'exceljs'
import type { Sheet, Workbook } from '../../report/cells.ts'
import type { ToPng } from '../pictures/svg-to-png.ts'
import { addressBook } from './addresses.ts'
import { finish } from './finish.ts'
import { hiddenSheet, hiddenSheetName } from './hidden-sheet.ts'
import { packageParts } from './package-parts.ts'
import { paginate } from './paginate.ts'
import { tabColours } from './palette.ts'
import { place } from './placing.ts'
import { safeText } from './safe-text.ts'
import { pictureParts } from './sheet-pictures.ts'
import { blankStamp } from './stamp.ts'
import { styleBook } from './styles.ts'
import { type Shared, type WrittenSheet, writeSheet } from './write-sheet.ts'

/** Beyond this the writer takes seconds and hundreds of megabytes; no plan for one person comes near. */
const mostRows = 20_000

/**
 * The spreadsheet file of a finished workbook, as bytes.
 * Needs: sheet names and cell names unique, every name that is pointed to present; else a fault in fettle. Without the
 * optional package that makes PNG the places of pictures stay empty.
 * Gives: the same bytes for the same book on every machine. Cost: about O(cells); the writing library loads on the
 * first call, so that commands which write no workbook never pay for it.
 */
export async function writeWorkbook(book: Workbook): Promise<Uint8Array> {
  checkSheets(book.sheets)
  const { default: BookOfCells } = await import('exceljs/lib/doc/workbook.js')
  const out = new BookOfCells()
  describe(out, book)
  const pictures = book.pictures ?? new Map()
  const paged = book.sheets.map((sheet) => paginate(place(sheet), pictures))
  const placed = paged.map((each) => each.placed)
  const worksheets = placed.map(({ sheet }) =>
    out.addWorksheet(sheet.name, { properties: { tabColor: { argb: tabColours[sheet.group] } } }),
  )
  const hidden = hiddenSheet(out.addWorksheet(hiddenSheetName), book)
  const shared: Shared = { book: addressBook(placed), style: styleBook(), keepList: hidden.keepList }
  const written: WrittenSheet[] = []
  for (const [at, sheet] of paged.entries()) written.push(await writeSheet(worksheets[at]!, sheet, shared))
  written.push({ rows: hidden.rows, marks: { inside: [], outside: [], merged: [] } })
  const parts = await packageParts(
    out,
    written.map(({ rows }) => rows),
  )
  return finish(
    parts,
    written.map(({ marks }) => marks),
    pictureParts(paged, pictures, pictures.size > 0 ? await painter() : null),
  )
}

/** Asked for where there is something to paint, so that nothing else waits for it. */
async function painter(): Promise<ToPng | null> {
  const { svgToPng } = await import('../pictures/svg-to-png.ts')
  return svgToPng()
}

/** Dates come from the project, never from the clock. */
function describe(out: Book, { title, subject, day, fingerprint }: Workbook): void {
  const written = new Date(day * 86_400_000)
  Object.assign(out, { creator: 'fettle', lastModifiedBy: 'fettle', created: written, modified: written })
  Object.assign(out, {
    title: safeText(title),
    subject: safeText(subject),
    keywords: blankStamp(fingerprint),
  })
  out.calcProperties.fullCalcOnLoad = true
  out.views = [
    { x: 0, y: 0, width: 24_000, height: 16_000, firstSheet: 0, activeTab: 0, visibility: 'visible' },
  ]
}

/** Names come from our own fixed list; these are the rules of the format that a new one might break. */
function checkSheets(sheets: readonly Sheet[]): void {
  const taken = new Set([hiddenSheetName, 'history'])
  if (sheets.length === 0) throw new Error('a workbook needs a sheet')
  for (const { name, blocks } of sheets) {
    if (!/^[A-Za-z0-9][A-Za-z0-9 _.-]{0,30}$/.test(name)) throw new Error(`no sheet can be named ${name}`)
    if (taken.has(name.toLowerCase())) throw new Error(`two sheets are named ${name}`)
    taken.add(name.toLowerCase())
    const rows = blocks.reduce((sum, block) => sum + block.rows.length, 0)
    if (rows > mostRows) throw new Error(`the sheet ${name} has ${rows} rows, more than ${mostRows}`)
  }
}
