/** The Assembly sheet of a device with meshes as an office program prints it: how wide its pictures are, and where. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { picturedReport } from '../../src/compile.ts'
import { svgToPng } from '../../src/emit/pictures/svg-to-png.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { shippedProjects } from '../golden/projects.ts'
import { officePresent } from './harness.ts'

const root = join(import.meta.dirname, '..', '..')
const pointsPerMm = 72 / 25.4

/** A picture on a printed page, in points from its lower left corner. */
interface Printed {
  readonly wide: number
  readonly high: number
  readonly y: number
}

/** The pictures of every page. Source: PDF 32000-1 section 8.9 (`cm`, then `Do`); an image is one unit wide and high. */
function printedPictures(bytes: Uint8Array): readonly Printed[] {
  const folder = mkdtempSync(join(tmpdir(), 'print-'))
  try {
    const file = join(folder, 'book.xlsx')
    writeFileSync(file, bytes)
    const script = join(root, '.dev', 'render.mjs')
    expect(spawnSync(process.execPath, [script, file, folder], { encoding: 'utf8' }).stderr).toBe('')
    return contentsOf(readFileSync(join(folder, 'book.pdf'))).flatMap((content) =>
      [...content.matchAll(/q ([\d.]+) 0 0 ([\d.]+) [\d.]+ ([\d.]+) cm\s*\/Im\d+ Do/g)].map(
        ([, wide, high, y]) => ({ wide: Number(wide), high: Number(high), y: Number(y) }),
      ),
    )
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The packed streams of a PDF that are text. */
function contentsOf(pdf: Buffer): readonly string[] {
  return [...pdf.toString('latin1').matchAll(/(?<!end)stream\r?\n/g)].flatMap(({ index, 0: word }) => {
    try {
      return [inflateSync(pdf.subarray(index + word.length)).toString('latin1')]
    } catch {
      return []
    }
  })
}

describe.skipIf(!officePresent() || !svgToPng())(
  'pictures in print (skipped without office or package)',
  () => {
    it('are 60 mm wide, each whole on one page', async () => {
      const { workbook } = await picturedReport(shippedProjects[0]!, { folder: root, canShow: () => true })
      const sheets = workbook!.sheets.filter(({ name }) => name === 'Assembly')
      const printed = printedPictures(await writeWorkbook({ ...workbook!, sheets }))
      expect(printed).toHaveLength(workbook!.pictures!.size)
      expect(printed.length).toBeGreaterThan(10)
      for (const { wide, y } of printed) {
        expect(Math.abs(wide - 60 * pointsPerMm)).toBeLessThan(0.5)
        // Above the margin of 0.7 inch.
        expect(y).toBeGreaterThan(0.7 * 72)
      }
    })
  },
)
