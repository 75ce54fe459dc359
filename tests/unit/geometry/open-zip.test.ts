import { zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { crc32 } from '../../../src/geometry/crc32.ts'
import { openZip } from '../../../src/geometry/open-zip.ts'

const content = new TextEncoder().encode('x="10" '.repeat(40))
const packed = (level: 0 | 6 = 6) => zipSync({ 'a.txt': content, 'b.txt': new Uint8Array(3) }, { level })
const open = (bytes: Uint8Array) => openZip(bytes, 1_000_000)!.unpack('a.txt')

/** Changes bytes of the first entry of the list, counted from its mark. */
function listed(at: number, values: readonly number[]): Uint8Array {
  const bytes = packed()
  const list = Buffer.from(bytes).indexOf('PK\u0001\u0002', 0, 'latin1')
  bytes.set(values, list + at)
  return bytes
}

describe('a zip file', () => {
  it('has the check sums of its kind', () => {
    // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms (Cook): CBF43926.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926)
  })

  it('gives what another program packed, by deflate or not at all', () => {
    for (const level of [0, 6] as const) expect(open(packed(level))).toEqual(content)
    expect(openZip(packed(), 1_000_000)!.names).toEqual(['a.txt', 'b.txt'])
  })

  it('with a byte changed is damaged', () => {
    const bytes = packed(0)
    bytes[Buffer.from(bytes).indexOf('10"')] = '9'.charCodeAt(0)
    expect(open(bytes)).toMatchObject({ fault: 'damaged', what: 'its check sum is wrong' })
  })

  it.each([
    ['too small', [100, 0, 0, 0]],
    ['too large', [200, 3, 0, 0]],
    ['far too large', [255, 255, 255, 127]],
  ])('that lists a size %s is damaged or too large', (_, size) => {
    expect(openZip(listed(24, size), 4_000_000_000)!.unpack('a.txt')).toMatchObject({ fault: 'damaged' })
  })

  it('that unpacks to far more than it lists is left at once', () => {
    const zeros = zipSync({ 'a.txt': new Uint8Array(50_000_000) })
    const list = Buffer.from(zeros).indexOf('PK\u0001\u0002', 0, 'latin1')
    zeros.set([100, 0, 0, 0], list + 24)
    expect(open(zeros)).toMatchObject({ fault: 'damaged', what: 'its size is not as listed' })
  })

  it('locked by a password is told as such', () => {
    expect(open(listed(8, [1]))).toEqual({ fault: 'locked', path: 'a.txt' })
  })

  it('is bounded in what it unpacks to by the sizes listed', () => {
    expect(openZip(packed(), 100)!.unpack('a.txt')).toEqual({ fault: 'too large', bytes: 280, most: 100 })
  })

  it('of wide sizes is read where only the extra field holds them', () => {
    const bytes = packed(0)
    const buffer = Buffer.from(bytes)
    const list = buffer.indexOf('PK\u0001\u0002', 0, 'latin1')
    const extra = Buffer.alloc(4 + 16)
    extra.writeUInt16LE(1, 0)
    extra.writeUInt16LE(16, 2)
    extra.writeBigUInt64LE(280n, 4)
    extra.writeBigUInt64LE(280n, 12)
    const nameEnd = list + 46 + 'a.txt'.length
    const wide = Buffer.concat([buffer.subarray(0, nameEnd), extra, buffer.subarray(nameEnd)])
    wide.writeUInt16LE(extra.length, list + 30)
    wide.writeUInt32LE(0xffffffff, list + 20)
    wide.writeUInt32LE(0xffffffff, list + 24)
    expect(open(Uint8Array.from(wide))).toEqual(content)
  })

  it('cut short is none', () => {
    const whole = packed()
    for (let length = 0; length < whole.length; length++)
      expect(openZip(whole.subarray(0, length), 1_000_000)).toBeNull()
  })
})
