/**
 * Every shipped project compiled and compared with what was accepted: the report in facts, and the workbook as one line
 * per cell. `npm run accept` writes them anew; the difference is to be read before it is kept.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import ExcelJS from 'exceljs'
import { describe, expect, it } from 'vitest'
import { type PlanReport, picturedReport } from '../../src/compile.ts'
import { reportJson } from '../../src/emit/json/report-json.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { shippedProjects } from './projects.ts'

const root = join(import.meta.dirname, '../..')
const accepting = process.env.FETTLE_ACCEPT === '1'

/** What a cell holds, in one line: its value as JSON, then its formula and format where it has one. */
function cellLine(sheet: string, cell: ExcelJS.Cell): string {
  const { value } = cell
  const formula = cell.formula ? `  =${cell.formula}` : ''
  const format = cell.numFmt && cell.numFmt !== 'General' ? `  [${cell.numFmt}]` : ''
  const shown = cell.formula ? (cell.result ?? null) : value
  return `${sheet}!${cell.address}  ${JSON.stringify(shown)}${formula}${format}`
}

/** The workbook as text: one line per cell that holds something, sheet by sheet, row by row. */
async function workbookLines(bytes: Uint8Array): Promise<string> {
  const book = new ExcelJS.Workbook()
  await book.xlsx.load(Buffer.from(bytes) as unknown as ArrayBuffer)
  const lines: string[] = []
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        // A cell that another one covers repeats its value.
        const covered = cell.isMerged && cell.master.address !== cell.address
        if (cell.value !== null && !covered) lines.push(cellLine(sheet.name, cell))
      })
    })
  }
  return `${lines.join('\n')}\n`
}

/** The report in facts; the tables are in the workbook's own golden. */
function facts({ report }: PlanReport): string {
  return reportJson({ ...report!, tables: [] })
}

/** Compares with the accepted text, or accepts. */
function expectGolden(project: string, name: string, text: string): void {
  const folder = join(import.meta.dirname, basename(project, '.yaml'))
  const file = join(folder, name)
  if (accepting) {
    mkdirSync(folder, { recursive: true })
    writeFileSync(file, text)
  }
  expect(existsSync(file), `${file} is not there: \`npm run accept\` writes it`).toBe(true)
  expect(text).toBe(readFileSync(file, 'utf8'))
}

describe.each(shippedProjects)('%s', async (project) => {
  const planned = await picturedReport(project, { folder: root, canShow: () => true })

  it('plans without an error and without a warning', () => {
    expect(planned.diagnostics.map(({ code, says }) => `${code} ${says}`)).toEqual([])
    expect(planned.results).not.toBeNull()
  })

  it('reports what was accepted', () => {
    expectGolden(project, 'report.json', facts(planned))
  })

  it('fills its workbook as was accepted', async () => {
    expectGolden(project, 'workbook.txt', await workbookLines(await writeWorkbook(planned.workbook!)))
  })
})
