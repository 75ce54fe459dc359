import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate'
import { attribute, type Link, mendSheet } from './sheet-xml.ts'
import { type Parts, stamped } from './stamp.ts'

/** The links of a sheet: cell, and where it leads, inside by place or outside by address. */
export interface SheetLinks {
  readonly inside: readonly { readonly cell: string; readonly place: string }[]
  readonly outside: readonly { readonly cell: string; readonly url: string }[]
}

const xmlHead = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n'
/** Source: ISO/IEC 29500-2 (package relationships) and 29500-4 (transitional relationship types). */
const relationshipsSpace = 'http://schemas.openxmlformats.org/package/2006/relationships'
const linkType = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink'
const extendedSpace = 'http://schemas.openxmlformats.org/officeDocument/2006/extended-properties'

/**
 * The file as it leaves fettle: the writer's package mended against the format's schemas, its links added, stamped with
 * the hash of its content and zipped with fixed dates and without folder entries.
 * Gives: the same bytes for the same content, whatever the clock and the time zone.
 */
export function finish(bytes: Uint8Array, links: readonly SheetLinks[]): Uint8Array {
  const parts: Record<string, Uint8Array> = {}
  for (const [path, content] of Object.entries(unzipSync(bytes))) {
    if (!path.endsWith('/')) parts[path] = content
  }
  for (const [at, sheetLinks] of links.entries()) linkSheet(parts, `sheet${at + 1}.xml`, sheetLinks)
  parts['docProps/app.xml'] = strToU8(
    `${xmlHead}<Properties xmlns="${extendedSpace}"><Application>fettle</Application></Properties>`,
  )
  return zipped(stamped(parts))
}

function linkSheet(parts: Record<string, Uint8Array>, file: string, { inside, outside }: SheetLinks): void {
  const path = `xl/worksheets/${file}`
  const sheet = parts[path]
  if (!sheet) throw new Error(`the workbook lacks ${path}`)
  const outer: Link[] = outside.map(({ cell }, at) => ({ cell, relationship: `rIdLink${at + 1}` }))
  parts[path] = strToU8(mendSheet(strFromU8(sheet), [...inside, ...outer]))
  if (outside.length > 0) parts[`xl/worksheets/_rels/${file}.rels`] = strToU8(relationships(outside))
}

/** Needs: the sheet has no relationships yet, which holds as long as no table, note or picture is written. */
function relationships(outside: SheetLinks['outside']): string {
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
