import type { Workbook } from 'exceljs'
import type { DataRow, SheetData } from './sheet-data.ts'
import { sheetData } from './sheet-data.ts'

/** The library's way of writing a book, of which each step can be taken alone; its own typings leave it out. */
interface BookWriter {
  prepareModel(model: BookModel, options: object): void
  addContentTypes(parts: PartSink, model: BookModel): Promise<void>
  addOfficeRels(parts: PartSink, model: BookModel): Promise<void>
  addWorkbookRels(parts: PartSink, model: BookModel): Promise<void>
  addWorksheets(parts: PartSink, model: BookModel): Promise<void>
  addSharedStrings(parts: PartSink, model: BookModel): Promise<void>
  addThemes(parts: PartSink, model: BookModel): Promise<void>
  addStyles(parts: PartSink, model: BookModel): Promise<void>
  addCore(parts: PartSink, model: BookModel): Promise<void>
  addWorkbook(parts: PartSink, model: BookModel): Promise<void>
}

interface BookModel {
  readonly styles: { addStyleModel(style: object, type: number): number }
  readonly sharedStrings: { add(text: string): number }
}

interface PartSink {
  append(xml: string, to: { readonly name: string }): void
}

/** The library's numbers for what a cell holds. */
const cellTypes = { number: 2, text: 3 } as const

/** The parts of a book as text by their path, and the cells of each sheet, which its part lacks yet. */
export interface BookParts {
  readonly parts: Map<string, string>
  readonly data: readonly SheetData[]
}

/**
 * The parts of a book whose sheets have no rows of their own, with the rows given for each: frames, looks and texts by
 * the library, cells by us. The library's own way would pack the parts, only for us to unpack them.
 */
export async function packageParts(
  book: Workbook,
  rows: readonly (() => readonly DataRow[])[],
): Promise<BookParts> {
  const writer = book.xlsx as unknown as BookWriter
  const model = book.model as unknown as BookModel
  writer.prepareModel(model, {})
  const numbers = {
    style: (style: object, kind: 'number' | 'text') => model.styles.addStyleModel(style, cellTypes[kind]),
    text: (text: string) => model.sharedStrings.add(text),
  }
  const data = rows.map((each) => sheetData(each(), numbers))
  const parts = new Map<string, string>()
  const sink: PartSink = { append: (xml, { name }) => void parts.set(name, xml) }
  await writer.addContentTypes(sink, model)
  await writer.addOfficeRels(sink, model)
  await writer.addWorkbookRels(sink, model)
  await writer.addWorksheets(sink, model)
  await writer.addSharedStrings(sink, model)
  await writer.addThemes(sink, model)
  await writer.addStyles(sink, model)
  await writer.addCore(sink, model)
  await writer.addWorkbook(sink, model)
  return { parts, data }
}
