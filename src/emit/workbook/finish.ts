import { strToU8, zipSync } from 'fflate'
import type { BookParts } from './package-parts.ts'
import type { SheetData } from './sheet-data.ts'
import { type PictureParts, withPictureTypes } from './sheet-pictures.ts'
import { attribute, type Link, mendSheet } from './sheet-xml.ts'
import { type Parts, stamped } from './stamp.ts'

/** What a sheet holds beside its cells: links by cell, inside by place or outside by address, and merged ranges. */
export interface SheetMarks {
  readonly inside: readonly { readonly cell: string; readonly place: string }[]
  readonly outside: readonly { readonly cell: string; readonly url: string }[]
  readonly merged: readonly string[]
}

const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
/** Source: ISO/IEC 29500-2 (package relationships) and 29500-4 (transitional relationship types). */
const relationshipsSpace = 'http://schemas.openxmlformats.org/package/2006/relationships'
const typeSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
const extendedSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/extended-properties'

/**
 * The file as it leaves fettle: the writer's parts mended against the format's schemas, with the cells, links and merged
 * cells of each sheet, stamped with the hash of their content and zipped with fixed dates and without folder entries.
 * Gives: the same bytes for the same content, whatever the clock and the time zone.
 */
export function finish(
  { parts, data }: BookParts,
  marks: readonly SheetMarks[],
  pictures: PictureParts,
): Uint8Array {
  for (const [at, sheetMarks] of marks.entries())
    fillSheet(parts, `sheet${at + 1}.xml`, data[at]!, sheetMarks, pictures.drawingOf.get(at))
  for (const [path, xml] of pictures.texts) parts.set(path, xml)
  const types = '[Content_Types].xml'
  parts.set(types, withPictureTypes(parts.get(types)!, pictures))
  parts.set(
    'docProps/app.xml',
    `${xmlHead}<Properties xmlns="${extendedSpace}"><Application>fettle</Application></Properties>`,
  )
  const bytes = [...parts].map(([path, xml]) => [path, strToU8(xml)] as const)
  return zipped(stamped(Object.fromEntries([...bytes, ...pictures.bytes])))
}

function fillSheet(
  parts: BookParts['parts'],
  file: string,
  data: SheetData,
  marks: SheetMarks,
  drawing: string | undefined,
): void {
  const { inside, outside, merged } = marks
  const path = `xl/worksheets/${file}`
  const sheet = parts.get(path)
  if (sheet === undefined) throw new Error(`the workbook lacks ${path}`)
  const outer: Link[] = outside.map(({ cell }, at) => ({ cell, relationship: `rIdLink${at + 1}` }))
  const links = [...inside, ...outer]
  parts.set(
    path,
    mendSheet(sheet, { data, merged, links, ...(drawing === undefined ? {} : { drawing: drawingId }) }),
  )
  const own = relationships(outside, drawing)
  if (own !== '') parts.set(`xl/worksheets/_rels/${file}.rels`, own)
}

const drawingId = 'rIdDrawing'

/** Needs: the sheet has no relationships yet, which holds as long as no table or note is written. */
function relationships(outside: SheetMarks['outside'], drawing: string | undefined): string {
  const link = ({ url }: { url: string }, at: number): string =>
    `<Relationship Id="rIdLink${at + 1}" Type="${typeSpace}/hyperlink" Target="${attribute(url)}" TargetMode="External"/>`
  const all = outside.map(link)
  if (drawing !== undefined)
    all.push(`<Relationship Id="${drawingId}" Type="${typeSpace}/drawing" Target="${drawing}"/>`)
  return all.length === 0
    ? ''
    : `${xmlHead}<Relationships xmlns="${relationshipsSpace}">${all.join('')}</Relationships>`
}

/** fflate writes the local clock fields of `mtime`, so the fixed date is built from local fields too. */
function zipped(parts: Parts): Uint8Array {
  const mtime = new Date(1980, 0, 1, 12)
  const paths = Object.keys(parts).sort()
  return zipSync(Object.fromEntries(paths.map((path) => [path, [parts[path]!, { mtime, level: 4 }]])))
}
