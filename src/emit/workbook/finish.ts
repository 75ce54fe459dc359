import { strToU8, zipSync } from 'fflate'
import type { BookParts } from './package-parts.ts'
import type { SheetData } from './sheet-data.ts'
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
const linkType = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink'
const extendedSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/extended-properties'

/**
 * The file as it leaves fettle: the writer's parts mended against the format's schemas, with the cells, links and merged
 * cells of each sheet, stamped with the hash of their content and zipped with fixed dates and without folder entries.
 * Gives: the same bytes for the same content, whatever the clock and the time zone.
 */
export function finish({ parts, data }: BookParts, marks: readonly SheetMarks[]): Uint8Array {
  for (const [at, sheetMarks] of marks.entries())
    fillSheet(parts, `sheet${at + 1}.xml`, data[at]!, sheetMarks)
  parts.set(
    'docProps/app.xml',
    `${xmlHead}<Properties xmlns="${extendedSpace}"><Application>fettle</Application></Properties>`,
  )
  const bytes = [...parts].map(([path, xml]) => [path, strToU8(xml)] as const)
  return zipped(stamped(Object.fromEntries(bytes)))
}

function fillSheet(parts: BookParts['parts'], file: string, data: SheetData, marks: SheetMarks): void {
  const { inside, outside, merged } = marks
  const path = `xl/worksheets/${file}`
  const sheet = parts.get(path)
  if (sheet === undefined) throw new Error(`the workbook lacks ${path}`)
  const outer: Link[] = outside.map(({ cell }, at) => ({ cell, relationship: `rIdLink${at + 1}` }))
  parts.set(path, mendSheet(sheet, { data, merged, links: [...inside, ...outer] }))
  if (outside.length > 0) parts.set(`xl/worksheets/_rels/${file}.rels`, relationships(outside))
}

/** Needs: the sheet has no relationships yet, which holds as long as no table, note or picture is written. */
function relationships(outside: SheetMarks['outside']): string {
  const one = ({ url }: { url: string }, at: number): string =>
    `<Relationship Id="rIdLink${at + 1}" Type="${linkType}" Target="${attribute(url)}" TargetMode="External"/>`
  return `${xmlHead}<Relationships xmlns="${relationshipsSpace}">${outside.map(one).join('')}</Relationships>`
}

/** fflate writes the local clock fields of `mtime`, so the fixed date is built from local fields too. */
function zipped(parts: Parts): Uint8Array {
  const mtime = new Date(1980, 0, 1, 12)
  const paths = Object.keys(parts).sort()
  return zipSync(Object.fromEntries(paths.map((path) => [path, [parts[path]!, { mtime, level: 4 }]])))
}
