import { buildSync } from 'esbuild'
import { strToU8, unzipSync, zipSync } from 'fflate'
import { beforeAll, describe, expect, it } from 'vitest'
import { isOurs, readStamp } from '../../../../src/emit/workbook/stamp.ts'
import { writeWorkbook } from '../../../../src/emit/workbook/write-workbook.ts'
import { readBack } from '../../../workbook/harness.ts'
import { bookOf, text } from '../../../workbook/sample-book.ts'

let bytes: Uint8Array
beforeAll(async () => {
  bytes = await writeWorkbook(bookOf([{ cells: [text('as written')] }]))
})

function changed(path: string, change: (xml: string) => string): Uint8Array {
  const parts = unzipSync(bytes)
  return zipSync({ ...parts, [path]: strToU8(change(Buffer.from(parts[path]!).toString('utf8'))) })
}

describe('the stamp of a workbook', () => {
  it('names the source and tells an untouched file', () => {
    expect(readStamp(bytes)).toMatchObject({
      fingerprint: 'one',
      contentHash: expect.stringMatching(/^(?!0{64})[0-9a-f]{64}$/),
    })
    expect(isOurs(bytes)).toBe('untouched')
  })

  it('keeps a fingerprint of any letters', async () => {
    const book = { ...bookOf([{ cells: [text('a')] }]), fingerprint: 'sha 1:ä/content="(x)' }
    expect(readStamp(await writeWorkbook(book))?.fingerprint.startsWith('sha 1:ä/content="')).toBe(true)
  })

  it('survives another compression of the same parts', () => {
    expect(isOurs(zipSync(unzipSync(bytes), { level: 0 }))).toBe('untouched')
  })

  it('shows one changed letter, one added part and one part gone', () => {
    expect(isOurs(changed('xl/sharedStrings.xml', (xml) => xml.replace('as written', 'as Written')))).toBe(
      'changed',
    )
    expect(isOurs(changed('docProps/core.xml', (xml) => xml.replace('One', 'Two')))).toBe('changed')
    expect(isOurs(zipSync({ ...unzipSync(bytes), 'xl/more.xml': strToU8('<x/>') }))).toBe('changed')
    const { 'xl/theme/theme1.xml': _, ...fewer } = unzipSync(bytes)
    expect(isOurs(zipSync(fewer))).toBe('changed')
  })

  it('shows a save by another program', async () => {
    const book = await readBack(bytes)
    expect(isOurs(new Uint8Array(await book.xlsx.writeBuffer()))).toBe('changed')
  })

  it('is missing from everything else', () => {
    expect(isOurs(changed('docProps/core.xml', (xml) => xml.replace('fettle-workbook', 'x')))).toBe(
      'not ours',
    )
    expect(isOurs(new Uint8Array())).toBe('not ours')
    expect(isOurs(strToU8('PK\u0003\u0004 not a zip'))).toBe('not ours')
    expect(readStamp(bytes.slice(0, bytes.length / 2))).toBeNull()
  })

  it('is read without loading the writing library', () => {
    const entryPoints = ['src/emit/workbook/stamp.ts']
    const { metafile } = buildSync({
      entryPoints,
      bundle: true,
      platform: 'node',
      format: 'esm',
      metafile: true,
      write: false,
    })
    const used = Object.keys(metafile.inputs).map((path) =>
      path.replace(/^.*node_modules\/([^/]+)\/.*$/, '$1'),
    )
    expect(used.sort()).toEqual(['fflate', 'src/emit/workbook/stamp.ts'])
  })
})
