import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { strFromU8, unzipSync } from 'fflate'

/** Where the format's schemas lie, or why the check cannot run here. */
export type SchemaPlace = { readonly folder: string } | { readonly missing: string }

/** Looks for `shared/ooxml-xsd` beside this folder or one above it, and for xmllint. */
export function schemaPlace(): SchemaPlace {
  const folder = folderAbove(join('shared', 'ooxml-xsd'))
  if (!folder)
    return { missing: 'no shared/ooxml-xsd beside the project: schemas of ISO/IEC 29500 are not here' }
  if (spawnSync('xmllint', ['--version']).error) return { missing: 'xmllint is not here' }
  return { folder }
}

function folderAbove(name: string): string | null {
  for (let at = import.meta.dirname; ; at = dirname(at)) {
    if (existsSync(join(at, name))) return join(at, name)
    if (dirname(at) === at) return null
  }
}

const sml = 'ISO-IEC-29500-4/xsd/sml.xsd'
/** Which schema judges which part. Source: ISO/IEC 29500-4 (transitional) and ISO/IEC 29500-2 (package). */
const judges: readonly (readonly [RegExp, string | null])[] = [
  [/^\[Content_Types\]\.xml$/, 'ISO-IEC-29500-2/opc-xsd/opc-contentTypes.xsd'],
  [/\.rels$/, 'ISO-IEC-29500-2/opc-xsd/opc-relationships.xsd'],
  [/^docProps\/app\.xml$/, 'ISO-IEC-29500-4/xsd/shared-documentPropertiesExtended.xsd'],
  // The schema of the core properties fetches others from the network; the theme is the writing library's constant.
  [/^docProps\/core\.xml$/, null],
  [/^xl\/theme\/theme1\.xml$/, null],
  [/^xl\/(workbook|styles|sharedStrings)\.xml$/, sml],
  [/^xl\/worksheets\/sheet\d+\.xml$/, sml],
  [/^xl\/drawings\/drawing\d+\.xml$/, 'ISO-IEC-29500-4/xsd/dml-spreadsheetDrawing.xsd'],
]

/**
 * What the format's own schemas find wrong in a workbook, a line each; none where it is valid.
 * Needs: `folder` from `schemaPlace`. Parts without a schema here are checked to be well-formed.
 */
export function schemaFaults(bytes: Uint8Array, folder: string): string[] {
  const work = mkdtempSync(join(tmpdir(), 'parts-'))
  try {
    const bySchema = new Map<string | null, string[]>()
    for (const [path, content] of Object.entries(unzipSync(bytes))) {
      // A picture is bytes, no XML.
      if (/^xl\/media\/image\d+\.png$/.test(path)) continue
      const judge = judges.find(([pattern]) => pattern.test(path))
      if (!judge) return [`${path}: no schema is named for this part`]
      const file = join(work, path.replaceAll('/', '__'))
      writeFileSync(file, stripped(strFromU8(content)))
      bySchema.set(judge[1], [...(bySchema.get(judge[1]) ?? []), file])
    }
    return [...bySchema].flatMap(([schema, files]) => lint(schema && join(folder, schema), files))
  } finally {
    rmSync(work, { recursive: true, force: true })
  }
}

function lint(schema: string | null, files: readonly string[]): string[] {
  try {
    execFileSync('xmllint', ['--noout', '--nonet', ...(schema ? ['--schema', schema] : []), ...files], {
      stdio: 'pipe',
    })
    return []
  } catch (fault) {
    const said = String((fault as { stderr?: Buffer }).stderr ?? fault)
    return said.split('\n').filter((line) => line !== '' && !line.endsWith(' validates'))
  }
}

/** Extension attributes that the schemas leave to `mc:Ignorable`, and `xml:space`, go before the check. */
function stripped(xml: string): string {
  const ignorable = /mc:Ignorable="([^"]*)"/.exec(xml)?.[1]?.split(' ') ?? []
  const spaces = ignorable.map((prefix) => new RegExp(` ${prefix}:\\w+="[^"]*"`, 'g'))
  const bare = xml.replace(/ mc:Ignorable="[^"]*"/g, '').replace(/ xml:space="[^"]*"/g, '')
  return spaces.reduce((text, space) => text.replace(space, ''), bare)
}
