import { strFromU8, unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { addressBook, columnLetters } from '../../../../src/emit/workbook/addresses.ts'
import { markLooks } from '../../../../src/emit/workbook/marks.ts'
import { formatCode } from '../../../../src/emit/workbook/number-formats.ts'
import { pageStarts } from '../../../../src/emit/workbook/pages.ts'
import { paginate } from '../../../../src/emit/workbook/paginate.ts'
import { place } from '../../../../src/emit/workbook/placing.ts'
import { looks } from '../../../../src/emit/workbook/roles.ts'
import { columnWidths, rowSize } from '../../../../src/emit/workbook/room.ts'
import { mendSheet } from '../../../../src/emit/workbook/sheet-xml.ts'
import { wrappedLines } from '../../../../src/emit/workbook/text-width.ts'
import { writeWorkbook } from '../../../../src/emit/workbook/write-workbook.ts'
import type { Block, Row, Sheet } from '../../../../src/report/cells.ts'
import { bookOf, number, sampleBook, text } from '../../../workbook/sample-book.ts'

const empty = { value: { type: 'empty' } } as const
const sheetOf = (rows: readonly Row[], more: Partial<Sheet> = {}): Sheet => bookOf(rows, more).sheets[0]!

describe('addresses', () => {
  it('count columns in letters past Z', () => {
    expect([1, 26, 27, 52, 702, 703].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'ZZ', 'AAA'])
  })

  it('count a spanning cell for all its columns', () => {
    const sheet = sheetOf([{ cells: [text('wide', { span: 2 }), text('next', { name: 'next' })] }])
    expect(addressBook([place(sheet)]).get('next')).toMatchObject({ row: 1, column: 3 })
  })

  it('refuse a name used twice', () => {
    const sheet = sheetOf([{ cells: [text('a', { name: 'x' }), text('b', { name: 'x' })] }])
    expect(() => addressBook([place(sheet)])).toThrow('two cells are named x')
  })
})

describe('sheet names', () => {
  it.each(['', 'a'.repeat(32), "Bob's", 'a/b', 'History', 'about', 'Ü'])('refuse %j', async (name) => {
    await expect(writeWorkbook({ ...sampleBook, sheets: [sheetOf([], { name })] })).rejects.toThrow()
  })

  it('refuse the same name in another case', async () => {
    const sheets = [sheetOf([], { name: 'Parts' }), sheetOf([], { name: 'PARTS' })]
    await expect(writeWorkbook({ ...sampleBook, sheets })).rejects.toThrow('PARTS')
  })
})

describe('room', () => {
  it('is given to every number, so that none shows as hashes', () => {
    const wide = number(1_234_567.891, { as: 'money', currency: 'EUR', digits: 2 })
    expect(columnWidths(place(sheetOf([{ cells: [wide] }], { widths: [4] })))[0]).toBeGreaterThan(
      '1,234,567.89 EUR'.length * 0.9,
    )
  })

  it('grows with the lines of the text, over all columns that the cell covers', () => {
    const long = 'one two three four five six seven eight nine ten '.repeat(4)
    const heights = [1, 3].map((span) => {
      const placed = place(sheetOf([{ cells: [text(long, { span })] }]))
      return rowSize(placed.rows[0]!, columnWidths(placed)).height
    })
    expect(heights[0]!).toBeGreaterThan(2 * heights[1]!)
    expect(heights[1]!).toBeGreaterThan(30)
  })

  it('never passes 409 points, the tallest row of the format', () => {
    const placed = place(sheetOf([{ cells: [text('line\n'.repeat(100))] }]))
    expect(rowSize(placed.rows[0]!, columnWidths(placed)).height).toBe(409)
  })

  it('counts lines by whole words and breaks a word that is too long', () => {
    expect(wrappedLines('', 50, 10, false)).toBe(1)
    expect(wrappedLines('one\ntwo', 500, 10, false)).toBe(2)
    expect(wrappedLines('aaaa aaaa', 30, 10, false)).toBe(2)
    expect(wrappedLines('a'.repeat(50), 55, 10, false)).toBeGreaterThanOrEqual(5)
  })
})

describe('pages', () => {
  const rows = (keep: (at: number) => boolean): Row[] =>
    Array.from({ length: 120 }, (_, at) => ({
      cells: [text(`row ${at + 1}`)],
      keep: keep(at),
      pageBreak: at === 110,
    }))
  const breaksOf = (list: readonly Row[]): number[] => pageStarts(paginate(place(sheetOf(list))).placed.rows)

  it('end where the report says so and where they are full', () => {
    const breaks = breaksOf(rows(() => false))
    expect(breaks).toContain(111)
    expect(breaks.length).toBeGreaterThan(2)
  })

  it('never part a row from the next that it must stay with', () => {
    const free = breaksOf(rows(() => false))[0]!
    const kept = breaksOf(rows((at) => at + 1 === free - 1 || at + 1 === free - 2))[0]!
    expect(kept).toBe(free - 2)
  })

  const section = { continued: 'hub, continued', whole: true }
  const lines = (count: number): Row[] =>
    Array.from({ length: count }, (_, at) => ({ cells: [text(`line ${at + 1}`)] }))
  const tableOf = (count: number): Block => ({
    kind: 'table',
    id: 'steps',
    section,
    columns: [{ head: 'Do', width: 20 }],
    rows: lines(count),
    totals: [],
    filter: false,
  })
  const headOf: Block = { kind: 'rows', id: 'head', section, rows: [{ cells: [text('hub')] }] }
  const paged = (blocks: readonly Block[]) => paginate(place(sheetOf([], { blocks }))).placed
  const saidBy = ({ rows }: ReturnType<typeof paged>): readonly string[] =>
    rows.map(({ cells }) => (cells[0]?.cell.value.type === 'text' ? cells[0].cell.value.text : ''))

  it('begin before a section that fits on one page but not on the rest of this one', () => {
    const free: Block = { kind: 'rows', id: 'free', rows: lines(40) }
    const { rows } = paged([free, headOf, tableOf(20)])
    const said = saidBy(paged([free, headOf, tableOf(20)]))
    expect(pageStarts(rows)).toEqual([said.indexOf('hub') + 1])
    expect(said.filter((words) => words === 'hub, continued')).toEqual([])
  })

  it('begin with the name and the heads of a section that is longer than a page', () => {
    const placed = paged([headOf, tableOf(120)])
    const starts = pageStarts(placed.rows)
    expect(starts.length).toBeGreaterThan(1)
    for (const start of starts)
      expect(saidBy(placed).slice(start - 1, start + 1)).toEqual(['hub, continued', 'Do'])
    expect(saidBy(placed).filter((words) => words.startsWith('line'))).toHaveLength(120)
    expect(placed.rows.map(({ number }) => number)).toEqual(placed.rows.map((_, at) => at + 1))
  })

  it('leave named cells where the address book finds them, below rows that are said again', () => {
    const named: Block = { kind: 'rows', id: 'after', rows: [{ cells: [text('end', { name: 'end' })] }] }
    const placed = paged([headOf, tableOf(120), named])
    expect(addressBook([placed]).get('end')!.row).toBe(placed.starts.get('after'))
    expect(saidBy(placed)[placed.starts.get('after')! - 1]).toBe('end')
  })

  it('repeat the head of an only table by its print title, not by rows', () => {
    const placed = paginate(
      place(sheetOf([], { blocks: [tableOf(120)], freeze: { block: 'steps', columns: 0 } })),
    ).placed
    expect(saidBy(placed).filter((words) => words === 'Do')).toHaveLength(1)
  })
})

describe('charts', () => {
  const chart: Block = {
    kind: 'table',
    id: 'chart',
    columns: [
      { head: 'What', width: 20 },
      ...[1, 2, 3].map((day) => ({ head: `${day}`, width: 2, chart: true })),
    ],
    rows: [{ cells: [text('a'), empty, { ...empty, mark: 'held' }, empty] }],
    totals: [],
    filter: false,
  }

  it('write no cell that shows nothing, and rule all of them by one condition', async () => {
    const bytes = await writeWorkbook({ ...sampleBook, sheets: [sheetOf([], { blocks: [chart] })] })
    const xml = strFromU8(unzipSync(bytes)['xl/worksheets/sheet1.xml']!)
    expect([...xml.matchAll(/<c r="([A-Z]+2)"/g)].map(([, cell]) => cell)).toEqual(['A2', 'C2'])
    expect(xml).toContain('<conditionalFormatting sqref="B2:D2">')
    expect(xml).toContain('<formula>B2=&quot;&quot;</formula>')
  })
})

describe('looks', () => {
  it('give every mark a sign of its own, and every mark and role a whole font', () => {
    const marks = Object.values(markLooks)
    expect(new Set(marks.map(({ sign }) => sign)).size).toBe(marks.length)
    for (const { font } of [...marks, ...Object.values(looks)]) {
      expect(font).toMatchObject({
        name: 'Calibri',
        family: 2,
        size: expect.any(Number),
        color: { argb: expect.any(String) },
      })
    }
  })

  it('tell work, critical, unattended, away, held and closed apart without colour', () => {
    const drawn = (mark: keyof typeof markLooks) => {
      const { fill, border } = markLooks[mark]
      if (fill.type !== 'pattern') throw new Error('a mark is drawn with an even fill or a pattern')
      return JSON.stringify([
        fill.pattern,
        fill.pattern === 'solid' && luminance(fill.fgColor!.argb!),
        border?.top?.style,
      ])
    }
    const marks = ['work', 'critical', 'unattended', 'away', 'held', 'closed'] as const
    expect(new Set(marks.map(drawn)).size).toBe(marks.length)
  })

  /** Source: ITU-R BT.601 luma, in tenths, as a grey print shows it. */
  function luminance(argb: string): number {
    const [red, green, blue] = [2, 4, 6].map((at) => Number.parseInt(argb.slice(at, at + 2), 16)) as [
      number,
      number,
      number,
    ]
    return Math.round((0.299 * red + 0.587 * green + 0.114 * blue) / 25.5)
  }
})

describe('number formats', () => {
  it('put units in quotes and name no locale but for the weekday', () => {
    expect(formatCode({ as: 'money', currency: 'EUR', digits: 2 })).toBe('#,##0.00\\ "EUR"_w')
    expect(formatCode({ as: 'money', currency: 'JPY', digits: 0 })).toBe('#,##0\\ "JPY"_w')
    expect(formatCode({ as: 'price', currency: 'EUR', digits: 4 })).toBe('#,##0.00??\\ "EUR"_w')
    expect(formatCode({ as: 'price', currency: 'JPY', digits: 2, least: 0 })).toBe('#,##0.00\\ "JPY"_w')
    expect(formatCode({ as: 'number', digits: 1, unit: '"' })).toBe('#,##0.0\\ "″"_w')
    expect(formatCode({ as: 'percent', digits: 0 })).toBe('#,##0%_w')
    expect(formatCode({ as: 'instant' })).toBe('[$-409]ddd\\ yyyy\\-mm\\-dd\\ hh:mm')
    expect(formatCode({ as: 'instant', short: true })).toBe('[$-409]ddd\\ mm\\-dd\\ hh:mm')
  })
})

describe('the XML of a sheet', () => {
  it('is put in the order of the schema, with its rows, merged cells and links', () => {
    const xml =
      '<worksheet a="b"><sheetPr><pageSetUpPr/><outlinePr/></sheetPr><dimension ref="A1"/><sheetData/><pageMargins/><autoFilter/></worksheet>'
    const data = { xml: '<sheetData><row r="1"><c/></row></sheetData>', used: 'A1:B2' }
    const links = [{ cell: 'A1', place: "'A & B'!C3" }]
    expect(mendSheet(xml, { data, merged: ['A2:B2'], links })).toBe(
      '<worksheet a="b"><sheetPr><outlinePr/><pageSetUpPr/></sheetPr><dimension ref="A1:B2"/><sheetData><row r="1"><c/></row></sheetData><autoFilter/>' +
        '<mergeCells count="1"><mergeCell ref="A2:B2"/></mergeCells><hyperlinks><hyperlink ref="A1" location="\'A &amp; B\'!C3"/></hyperlinks><pageMargins/>' +
        '<ignoredErrors><ignoredError sqref="A1:B2" numberStoredAsText="1"/></ignoredErrors></worksheet>',
    )
  })

  it('is refused where it holds an element of unknown order', () => {
    expect(() =>
      mendSheet('<worksheet><surprise/></worksheet>', {
        data: { xml: '', used: 'A1' },
        merged: [],
        links: [],
      }),
    ).toThrow('surprise')
  })
})
