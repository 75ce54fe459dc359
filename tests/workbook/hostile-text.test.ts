import { beforeAll, describe, expect, it } from 'vitest'
import { longestText } from '../../src/emit/workbook/safe-text.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import {
  expectNoSlips,
  liveCells,
  officePresent,
  partsOf,
  readBack,
  recalculatedSheets,
  schemaFaults,
  schemaPlace,
} from './harness.ts'
import { bookOf, text } from './sample-book.ts'

/** Text that a careless writer turns into a formula, a number, a date, a control character or broken XML. */
const hostile: readonly string[] = [
  '=1+1',
  '+49 89 1234',
  '-5 dB',
  '@SUM(A1)',
  '\t=cmd|x!A1',
  '00123',
  '1e5',
  '3/4',
  'TRUE',
  '2026-03-02',
  "'quoted",
  '=HYPERLINK("http://example.org","x")',
  '<c t="s"><v>1</v></c> & ]]>',
  '_x000D_ and _x0041_',
  '_x005F_',
  '  two blanks each side  ',
  'one\ntwo',
  '漢字 😀 é́',
  '{"formula":"1+1"}',
  '#REF!',
  '__proto__',
]

let bytes: Uint8Array
beforeAll(async () => {
  bytes = await writeWorkbook(bookOf(hostile.map((value) => ({ cells: [text(value)] }))))
})

describe('hostile text', () => {
  it('comes back letter for letter, as text and never as a formula', async () => {
    const book = await readBack(bytes)
    const ws = book.getWorksheet('Only')!
    expect(hostile.map((_, at) => ws.getCell(at + 1, 1).value)).toEqual(hostile)
    expect(liveCells(book)).toEqual([])
  })

  it.skipIf(!officePresent())('is shown letter for letter by an office program', () => {
    const shown = recalculatedSheets(bytes).get('Only')!
    expect(hostile.map((_, at) => shown[at]![0])).toEqual(hostile)
  })

  it('leaves the file valid', () => {
    expectNoSlips(bytes)
    const place = schemaPlace()
    if ('folder' in place) expect(schemaFaults(bytes, place.folder)).toEqual([])
  })

  it('loses control characters and half letters, not its neighbours', async () => {
    const cells = ['a\u0000b\u001bc', 'x\ud83dy', 'one\r\ntwo\rthree'].map((value) => text(value))
    const ws = (await readBack(await writeWorkbook(bookOf([{ cells }])))).getWorksheet('Only')!
    expect([1, 2, 3].map((column) => ws.getCell(1, column).value)).toEqual([
      'abc',
      'x\ufffdy',
      'one\ntwo\nthree',
    ])
  })

  it('longer than a cell may hold is cut with a visible mark', async () => {
    const ws = (
      await readBack(await writeWorkbook(bookOf([{ cells: [text('é'.repeat(40_000))] }])))
    ).getWorksheet('Only')!
    const held = String(ws.getCell('A1').value)
    expect(held.length).toBe(longestText)
    expect(held.endsWith('[cut: too long for one cell]')).toBe(true)
  })

  it('in a formula stays one text constant, and its result is escaped as the format asks', async () => {
    const said = 'say "hi" & _x0041_ =1+1'
    const live = { op: 'join', of: [{ op: 'text', value: said }] } as const
    const book = await writeWorkbook(bookOf([{ cells: [text(said, { live })] }]))
    const ws = (await readBack(book)).getWorksheet('Only')!
    expect(ws.getCell('A1').formula).toBe('"say ""hi"" & _"&"x0041_ =1+1"&""')
    // Source: `v` is of type ST_Xstring in sml.xsd (ISO/IEC 29500-4), so readers decode `_x005F_` there too.
    expect(partsOf(book)['xl/worksheets/sheet1.xml']).toContain(
      '<v>say &quot;hi&quot; &amp; _x005F_x0041_ =1+1</v>',
    )
  })
})

describe('an address that a person could be led to', () => {
  it('is linked only where it is http, https or mailto', async () => {
    const urls = [
      'https://example.org/a b',
      'javascript:alert(1)',
      'file:///etc/passwd',
      'HTTP://example.org/é',
      'mailto:a@example.org',
      '\\\\server\\x',
    ]
    const rows = urls.map((url) => ({ cells: [text('to', { url })] }))
    const parts = partsOf(await writeWorkbook(bookOf(rows)))
    const targets = [...parts['xl/worksheets/_rels/sheet1.xml.rels']!.matchAll(/Target="([^"]*)"/g)].map(
      (found) => found[1],
    )
    expect(targets).toEqual(['http://example.org/%C3%A9', 'mailto:a@example.org'])
  })
})
