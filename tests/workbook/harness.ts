/**
 * What any test may ask of a written workbook: that its live cells agree, that the format's schemas accept it, that
 * no part holds words of a slip, and that an office program recomputes it alike.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { strFromU8, unzipSync } from 'fflate'
import { expect } from 'vitest'
import { agrees, liveCells, readBack } from './recalculate.ts'

export { expectLiveCellsAgree, liveCellDifferences, liveCells, readBack } from './recalculate.ts'
export { schemaFaults, schemaPlace } from './schema-valid.ts'

/** The XML parts of a workbook as text, by path; its pictures are left out. */
export function partsOf(bytes: Uint8Array): Record<string, string> {
  const parts = Object.entries(unzipSync(bytes)).filter(([path]) => !path.endsWith('.png'))
  return Object.fromEntries(parts.map(([path, part]) => [path, strFromU8(part)]))
}

/**
 * No part holds NaN, Infinity, undefined or [object, every font has a name and a size, and no text is longer than a cell
 * may hold (32,767 characters, Microsoft, "Excel specifications and limits").
 */
export function expectNoSlips(bytes: Uint8Array): void {
  const parts = partsOf(bytes)
  for (const [path, xml] of Object.entries(parts)) {
    expect(xml.match(/\bNaN\b|\bInfinity\b|\bundefined\b|\[object/g), path).toBeNull()
  }
  const fonts = parts['xl/styles.xml']!.match(/<font>.*?<\/font>/gs) ?? []
  expect(fonts.length).toBeGreaterThan(0)
  for (const font of fonts) expect(font).toMatch(/<sz val="[\d.]+"\/>.*<name val="\w+"\/>/s)
  const longest = Math.max(
    0,
    ...(parts['xl/sharedStrings.xml']?.match(/<t[^>]*>[^<]*/g) ?? []).map(({ length }) => length),
  )
  expect(longest).toBeLessThanOrEqual(32_767 * 6)
}

/** Whether LibreOffice is here to recompute and to draw. */
export function officePresent(): boolean {
  return spawnSync('soffice', ['--version']).error === undefined
}

/**
 * Recomputes the workbook in LibreOffice with recalculation forced on load, and compares every live cell that is shown
 * as number or text with the value written beside its formula. Takes some seconds. Gives: how many were compared.
 */
export async function expectOfficeAgrees(bytes: Uint8Array): Promise<number> {
  const cells = liveCells(await readBack(bytes))
  const sheets = recalculatedSheets(bytes)
  const differences = cells.flatMap(({ sheet, address, row, column, formula, cached }) => {
    const said = sheets.get(sheet)?.[row - 1]?.[column - 1]
    const computed = typeof cached === 'number' ? asNumber(said) : said
    return agrees(computed, cached)
      ? []
      : [`${sheet}!${address} =${formula}: written ${cached}, recomputed ${said}`]
  })
  expect(differences).toEqual([])
  return cells.length
}

/** Percentages and dates are written in their form even where plain numbers are asked for. */
function asNumber(said = ''): number {
  if (said.endsWith('%')) return Number(said.slice(0, -1)) / 100
  const [, month, day, year, hour = '0', minute = '0', half] =
    /^(\d\d)\/(\d\d)\/(\d{4})(?: (\d\d):(\d\d):\d\d ?([AP]M)?)?$/.exec(said) ?? []
  if (!year) return Number(said)
  const hours = (half ? Number(hour) % 12 : Number(hour)) + (half === 'PM' ? 12 : 0)
  return 25_569 + Date.UTC(Number(year), Number(month) - 1, Number(day), hours, Number(minute)) / 86_400_000
}

/** Every sheet as LibreOffice shows it after a forced recalculation: rows of cells as text. */
export function recalculatedSheets(bytes: Uint8Array): Map<string, string[][]> {
  const folder = mkdtempSync(join(tmpdir(), 'recalc-'))
  try {
    const file = join(folder, 'book.xlsx')
    writeFileSync(file, bytes)
    const script = join(import.meta.dirname, '..', '..', '.dev', 'render.mjs')
    const run = spawnSync(process.execPath, [script, '--recalc', file, folder], { encoding: 'utf8' })
    expect(run.stderr).toBe('')
    const names = readdirSync(folder).filter((name) => name.endsWith('.csv'))
    return new Map(
      names.map((name) => [
        name.slice('book-'.length, -'.csv'.length),
        csvRows(readFileSync(join(folder, name), 'utf8')),
      ]),
    )
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Rows of comma-separated text. Source: RFC 4180. */
function csvRows(text: string): string[][] {
  const rows: string[][] = [[]]
  for (const [, quoted, bare, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\r?\n|$)/g)) {
    rows.at(-1)!.push(quoted?.replaceAll('""', '"') ?? bare ?? '')
    if (end !== ',') rows.push([])
  }
  return rows
}
