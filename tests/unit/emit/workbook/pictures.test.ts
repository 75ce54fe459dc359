import { strFromU8, unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { svgToPng } from '../../../../src/emit/pictures/svg-to-png.ts'
import { pageScale } from '../../../../src/emit/workbook/page-room.ts'
import { pageStarts } from '../../../../src/emit/workbook/pages.ts'
import { paginate } from '../../../../src/emit/workbook/paginate.ts'
import { place } from '../../../../src/emit/workbook/placing.ts'
import { writeWorkbook } from '../../../../src/emit/workbook/write-workbook.ts'
import type { Drawing, Row } from '../../../../src/report/cells.ts'
import { bookOf, text } from '../../../workbook/sample-book.ts'

const pointsPerMm = 72 / 25.4
const empty = { value: { type: 'empty' } } as const
const svg = (heightMm: number) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="${heightMm}mm" viewBox="0 0 60 ${heightMm}"><path stroke="#000" stroke-width="0.5" d="M2 2L58 ${heightMm - 2}"/></svg>`
const drawing = (heightMm: number): Drawing => ({
  svg: svg(heightMm),
  sizeMm: 60,
  heightMm,
  says: 'a part & its "way"',
})
const pictures = new Map([
  ['tall', drawing(60)],
  ['flat', drawing(40)],
])

/** A step of so many lines with a picture beside it. */
function step(id: string, lines: number, words = 'do it'): readonly Row[] {
  return Array.from(
    { length: lines + 1 },
    (_, at): Row => ({
      cells: [
        at === 0 ? { ...empty, picture: id, down: lines + 1 } : empty,
        at < lines ? text(words) : empty,
      ],
      keep: at < lines,
      ...(at < lines ? {} : { fills: true }),
    }),
  )
}

const widths = [36, 90]
const bookWith = (rows: readonly Row[]) => ({
  ...bookOf(rows, { widths, orientation: 'landscape' }),
  pictures,
})
const pagedOf = (rows: readonly Row[]) => paginate(place(bookWith(rows).sheets[0]!), pictures)

describe('pictures beside their rows', () => {
  it('get the rows as high together as they are in print', () => {
    const paged = pagedOf(step('tall', 2))
    const high = paged.sizes.reduce((sum, { height }) => sum + height, 0)
    const printed = high * pageScale(paged.placed, paged.widths)
    expect(printed).toBeGreaterThan(60 * pointsPerMm)
    expect(printed).toBeLessThan(64 * pointsPerMm)
  })

  it('leave rows alone that are high enough without', () => {
    const long = 'a long sentence that goes on '.repeat(60)
    const { sizes } = pagedOf(step('flat', 2, long))
    expect(sizes.at(-1)!.height).toBeLessThan(5)
  })

  it('stay on one page with all their rows', () => {
    const rows = Array.from({ length: 9 }, (_, at) => step(at % 2 === 0 ? 'tall' : 'flat', 3)).flat()
    const starts = pageStarts(pagedOf(rows).placed.rows)
    expect(starts.length).toBeGreaterThan(1)
    for (const row of starts) expect((row - 1) % 4).toBe(0)
  })

  it('stand on a page as many as it holds', () => {
    // A4 (ISO 216), 297 mm high, less margins of 0.55 and 0.7 inch, of which 97 % is used: 257 mm; each step has 40 mm
    // of picture between two rims of 3 points, and heights are rounded up to quarter points: 42.2 mm.
    const rows = Array.from({ length: 13 }, () => step('flat', 1)).flat()
    const sheet = bookOf(rows, { widths: [36, 50], orientation: 'portrait' }).sheets[0]!
    const starts = pageStarts(paginate(place(sheet), pictures).placed.rows)
    expect(starts).toEqual([6 * 2 + 1, 12 * 2 + 1])
  })

  it('are one cell with all the rows that they lie over', async () => {
    const parts = unzipSync(await writeWorkbook(bookWith([...step('tall', 2), ...step('flat', 1)])))
    const xml = strFromU8(parts['xl/worksheets/sheet1.xml']!)
    expect([...xml.matchAll(/<mergeCell ref="([^"]+)"/g)].map(([, range]) => range)).toEqual([
      'A1:A3',
      'A4:A5',
    ])
  })

  it.skipIf(!svgToPng())(
    'are in the file as PNG, anchored to their first row (skipped without the package)',
    async () => {
      const parts = unzipSync(await writeWorkbook(bookWith([...step('tall', 2), ...step('flat', 2)])))
      const media = Object.keys(parts).filter((path) => path.startsWith('xl/media/'))
      expect(media.sort()).toEqual(['xl/media/image1.png', 'xl/media/image2.png'])
      expect(Buffer.from(parts['xl/media/image2.png']!)).toEqual(Buffer.from(svgToPng()!(svg(40), 60)))
      const xml = strFromU8(parts['xl/drawings/drawing1.xml']!)
      expect([...xml.matchAll(/<xdr:row>(\d+)<\/xdr:row>/g)].map(([, row]) => Number(row))).toEqual([0, 3])
      const sizes = [...xml.matchAll(/<xdr:ext cx="(\d+)" cy="(\d+)"/g)].map(
        ([, x, y]) => Number(y) / Number(x),
      )
      expect(sizes[0]).toBeCloseTo(1, 3)
      expect(sizes[1]).toBeCloseTo(2 / 3, 3)
      expect(xml).toContain('descr="a part &amp; its &quot;way&quot;"')
      expect(strFromU8(parts['xl/worksheets/sheet1.xml']!)).toContain('<drawing r:id=')
      expect(strFromU8(parts['[Content_Types].xml']!)).toContain('Extension="png"')
    },
  )

  it('leave no trace in a book without any', async () => {
    const parts = Object.keys(unzipSync(await writeWorkbook(bookOf([{ cells: [text('plain')] }]))))
    expect(parts.filter((path) => /drawing|media/.test(path))).toEqual([])
  })
})
