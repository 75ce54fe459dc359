import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import {
  expectLiveCellsAgree,
  expectNoSlips,
  expectOfficeAgrees,
  liveCellDifferences,
  liveCells,
  officePresent,
  partsOf,
  readBack,
  schemaFaults,
  schemaPlace,
} from './harness.ts'
import { bookOf, number, ref, sampleBook } from './sample-book.ts'

let sample: Uint8Array
beforeAll(async () => {
  sample = await writeWorkbook(sampleBook)
})

describe('a workbook with every feature', () => {
  it('gives the written value in every live cell when an independent engine recomputes it', async () => {
    expect(await expectLiveCellsAgree(sample)).toBe(15)
  })

  it('is found out when a live cell was written with a wrong value', async () => {
    const live = { live: { op: '+', left: ref('a'), right: { op: 'number', value: 1 } } } as const
    const wrong = bookOf([
      { cells: [number(2, { as: 'count' }, { name: 'a' }), number(4, { as: 'count' }, live)] },
    ])
    expect(liveCellDifferences(await readBack(await writeWorkbook(wrong)))).toEqual([
      'Only!B1 =A1+1: written 4, computed 3',
    ])
  })

  it('holds no words of a slip and only whole fonts', () => {
    expectNoSlips(sample)
  })

  const place = schemaPlace()
  it.skipIf('missing' in place)(
    `is valid against the format's schemas${'missing' in place ? ` (skipped: ${place.missing})` : ''}`,
    () => {
      if ('folder' in place) expect(schemaFaults(sample, place.folder)).toEqual([])
    },
  )

  it.skipIf('missing' in place)(
    'would be refused by the schemas with two elements out of order',
    async () => {
      if (!('folder' in place)) return
      const { strToU8, zipSync } = await import('fflate')
      const parts = partsOf(sample)
      const sheet = parts['xl/worksheets/sheet3.xml']!
      const turned = sheet.replace(/(<outlinePr[^>]*>)(<pageSetUpPr[^>]*>)/, '$2$1')
      expect(turned).not.toBe(sheet)
      const bytes = zipSync(
        Object.fromEntries(
          Object.entries({ ...parts, 'xl/worksheets/sheet3.xml': turned }).map(([path, xml]) => [
            path,
            strToU8(xml),
          ]),
        ),
      )
      expect(schemaFaults(bytes, place.folder).join()).toContain('outlinePr')
    },
  )

  it.skipIf(!officePresent())('is recomputed alike by an office program', async () => {
    expect(await expectOfficeAgrees(sample)).toBe(15)
  })
})

describe('bytes', () => {
  const zone = process.env.TZ
  afterEach(() => {
    vi.useRealTimers()
    if (zone === undefined) delete process.env.TZ
    else process.env.TZ = zone
  })

  it('are the same in every time zone and at every hour', async () => {
    for (const [name, now] of [
      ['UTC', '2031-01-01T00:00:00Z'],
      ['America/New_York', '2031-06-30T23:59:59Z'],
      ['Asia/Tokyo', '2044-03-04T05:06:07Z'],
    ] as const) {
      process.env.TZ = name
      vi.useFakeTimers({ toFake: ['Date'], now: new Date(now) })
      expect(new Date().getTimezoneOffset() === 0).toBe(name === 'UTC')
      const again = await writeWorkbook(sampleBook)
      vi.useRealTimers()
      expect(Buffer.compare(again, sample), name).toBe(0)
    }
  })

  it('hold a fixed date on every entry and no folder entries', () => {
    const view = new DataView(sample.buffer, sample.byteOffset)
    let entries = 0
    for (let at = 0; at + 46 < sample.length; at += 1) {
      // Source: APPNOTE.TXT 4.3.12, central directory header: signature, date at 14, name length at 28, name at 46.
      if (view.getUint32(at, true) !== 0x02014b50) continue
      entries += 1
      expect(view.getUint16(at + 14, true)).toBe((1 << 5) | 1)
      expect(sample[at + 46 + view.getUint16(at + 28, true) - 1]).not.toBe('/'.charCodeAt(0))
    }
    expect(entries).toBe(Object.keys(partsOf(sample)).length)
  })
})

describe('what a person meets', () => {
  it('finds live cells live, and linked cells linked within the book', async () => {
    const book = await readBack(sample)
    expect(liveCells(book).map(({ formula }) => formula)).toContain("'Money'!$E$10")
    expect(partsOf(sample)['xl/worksheets/sheet1.xml']).toContain(`location="'Money'!E10"`)
    expect(partsOf(sample)['xl/worksheets/_rels/sheet1.xml.rels']).toContain(
      'a=1&amp;b=2" TargetMode="External"',
    )
  })

  it('may type in the inputs of a guarded sheet and nowhere else', async () => {
    const ws = (await readBack(sample)).getWorksheet('Money')!
    expect(ws.getCell('C4').protection.locked).toBe(false)
    expect(ws.getCell('G4').protection.locked).toBe(false)
    expect(ws.getCell('E4').protection?.locked ?? true).toBe(true)
    const guard = /<sheetProtection[^>]*>/.exec(partsOf(sample)['xl/worksheets/sheet2.xml']!)![0]
    expect(guard).toContain('sheet="1"')
    expect(guard).toContain('autoFilter="0"')
    expect(guard).toContain('formatColumns="0"')
    expect(guard).not.toMatch(/password|hashValue|saltValue/)
  })

  it('filters the rows of a table but never its totals', async () => {
    const ws = (await readBack(sample)).getWorksheet('Money')!
    expect(ws.autoFilter).toBe('A3:G8')
    expect(ws.getCell('A10').value).toBe('Total')
  })

  it('sees heads frozen and printed on every page of one long table', async () => {
    const ws = (await readBack(sample)).getWorksheet('Structure')!
    expect(ws.views[0]).toMatchObject({ state: 'frozen', ySplit: 1, xSplit: 0 })
    expect(ws.pageSetup).toMatchObject({ paperSize: 9, fitToWidth: 1, fitToHeight: 0, printTitlesRow: '1:1' })
  })

  it('folds parts under their assembly, the sign above, nothing folded yet', () => {
    const xml = partsOf(sample)['xl/worksheets/sheet3.xml']!
    expect(xml).toContain('<outlinePr summaryBelow="0"')
    expect(xml).toMatch(/<sheetFormatPr[^>]*outlineLevelRow="2"/)
    expect(xml).not.toContain('collapsed')
  })

  it('gets rules for inputs as ranges that do not overlap', () => {
    const ranges = [
      ...partsOf(sample)['xl/worksheets/sheet2.xml']!.matchAll(/<dataValidation [^>]*sqref="([^"]*)"/g),
    ].map((found) => found[1])
    expect(ranges).toEqual(['C4:C8', 'D4:D8', 'F4:F8', 'G4:G8'])
    expect(partsOf(sample)['xl/worksheets/sheet6.xml']).toContain('&apos;about&apos;!$D$1:$D$2')
  })

  it('chooses from a list with signs that XML would trip over', async () => {
    const ws = (await readBack(sample)).getWorksheet('Money')!
    expect(ws.getCell('F5').dataValidation.formulae).toEqual(['"open,ordered & <paid>,here"'])
  })

  it('reads days and instants as the wall clock says', async () => {
    const ws = (await readBack(sample)).getWorksheet('Overview')!
    expect(ws.getCell('B7').value).toEqual(new Date('2026-02-02T00:00:00Z'))
    expect(ws.getCell('D7').value).toEqual(new Date('2026-02-02T19:30:00Z'))
    expect(ws.getCell('B7').numFmt).toContain('yyyy')
  })

  it('never meets the hidden sheet, which says what the file is', async () => {
    const ws = (await readBack(sample)).getWorksheet('about')!
    expect(ws.state).toBe('hidden')
    expect(ws.getCell('B4').value).toBe('f00d-2026')
  })

  it('sees a letter in every marked cell of the chart', async () => {
    const ws = (await readBack(sample)).getWorksheet('Chart')!
    expect([5, 6, 7, 8, 9, 10, 11].map((row, at) => ws.getCell(row, 3 + at * 4).value)).toEqual([
      'w',
      'C',
      'u',
      'a',
      'h',
      '·',
      '|',
    ])
  })
})
