import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isFault } from '../../../src/base/quantity-fault.ts'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import type { Mesh } from '../../../src/geometry/mesh.ts'
import { readStl } from '../../../src/geometry/read-stl.ts'
import { binaryStl, box, prism, ring, textStl } from './solids.ts'

const whole = (bytes: Uint8Array): Mesh => {
  const read = readStl(bytes)
  if (isFault(read)) throw new Error(JSON.stringify(read))
  return read
}
const text = (words: string) => readStl(new TextEncoder().encode(words))
const facet = 'facet normal 0 0 1 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 endloop endfacet'

describe('reading STL', () => {
  it('a binary file gives its triangles in the order written', () => {
    expect([...whole(binaryStl(box(2, 3, 4))).corners]).toEqual([...box(2, 3, 4).corners])
  })

  it('a text file gives the same triangles as the binary one', () => {
    const mesh = prism(ring(9, 4.25), 7)
    const single = { corners: Float64Array.from(Float32Array.from(mesh.corners)) }
    expect(whole(textStl(single)).corners).toEqual(whole(binaryStl(mesh)).corners)
    expect(measureMesh(whole(textStl(mesh))).closed).toBe(true)
  })

  it('a binary file whose header says `solid` is still binary', () => {
    expect(whole(binaryStl(box(1, 1, 1), 'solid made by a program facet normal')).corners).toHaveLength(108)
  })

  it('a binary file whose header says `solid` and whose count is wrong is told as binary where it holds zeros', () => {
    const mesh = prism(ring(5, 1), 1)
    expect(readStl(binaryStl(mesh, 'solid', 15))).toEqual({
      fault: 'wrong triangle count',
      declared: 15,
      room: 16,
      spareBytes: 0,
    })
  })

  it('text is read with any line end, a mark of UTF-8, capitals and several solids', () => {
    const mesh = box(1, 2, 3)
    for (const end of ['\n', '\r\n', '\r'])
      expect(whole(textStl(mesh, 'x', end)).corners).toEqual(mesh.corners)
    const marked = Uint8Array.from([0xef, 0xbb, 0xbf, ...textStl(mesh)])
    expect(whole(marked).corners).toEqual(mesh.corners)
    const two = `SOLID one\n${facet.toUpperCase()}\nENDSOLID one\nsolid\n${facet}\nendsolid\n`
    expect(whole(new TextEncoder().encode(two)).corners).toHaveLength(18)
  })

  it('an empty file, a scrap and a file without triangles each have their own fault', () => {
    expect(readStl(new Uint8Array(0))).toEqual({ fault: 'empty file' })
    expect(readStl(new Uint8Array(83))).toEqual({ fault: 'not STL', bytes: 83 })
    expect(readStl(new Uint8Array(84))).toEqual({ fault: 'no triangles' })
    expect(text('solid nothing\nendsolid nothing\n')).toEqual({ fault: 'no triangles' })
    expect(text('not a mesh')).toEqual({ fault: 'other kind', kind: 'text' })
  })

  it.each([
    ['zip', 'PK\u0003\u0004\u0014\u0000'],
    ['web page', '<!DOCTYPE html>\n<html>'],
    ['XML', '<?xml version="1.0"?><amf>'],
    ['OBJ', '# made by a program\nmtllib a.mtl\nv 0 0 0\n'],
    ['PLY', 'ply\nformat ascii 1.0\n'],
    ['STEP', 'ISO-10303-21;\nHEADER;'],
    ['UTF-16 text', '\u00ff\u00fes\u0000o\u0000'],
    ['text', '; made by a program\nsolid a\n'],
  ])('a file of another kind is told by it: %s', (kind, head) => {
    const letters = [...head.padEnd(200, ' x')].map((letter) => letter.charCodeAt(0))
    expect(readStl(Uint8Array.from(letters))).toEqual({ fault: 'other kind', kind })
  })

  it('a tail behind complete data is passed where it can be no triangle', () => {
    const mesh = box(1, 2, 3)
    const tailed = (bytes: Uint8Array, tail: readonly number[]) => Uint8Array.from([...bytes, ...tail])
    for (const tail of [[97], [0, 0, 0], Array<number>(49).fill(7)])
      expect(whole(tailed(binaryStl(mesh), tail)).corners).toEqual(mesh.corners)
    expect(readStl(tailed(binaryStl(mesh), Array<number>(50).fill(0)))).toMatchObject({
      fault: 'wrong triangle count',
      room: 13,
    })
    for (const tail of [[26], [10, 0, 0], [0]])
      expect(whole(tailed(textStl(mesh), tail)).corners).toEqual(mesh.corners)
    expect(readStl(tailed(textStl(mesh), [65]))).toMatchObject({ fault: 'unexpected word', wanted: 'solid' })
  })

  it('a text with a zero in its name is read as text', () => {
    const bytes = textStl(box(1, 2, 3), 'na?me')
    bytes[bytes.indexOf('?'.charCodeAt(0))] = 0
    expect(whole(bytes).corners).toEqual(box(1, 2, 3).corners)
  })

  it('a text cut within a word ends early', () => {
    const text = textStl(box(1, 1, 1))
    const cut = text.subarray(0, Buffer.from(text).indexOf('normal') + 2)
    expect(readStl(cut)).toMatchObject({ fault: 'ends early', wanted: 'normal' })
  })

  it('a count too high, too low or zero is told with what is there', () => {
    const mesh = box(1, 1, 1)
    expect(readStl(binaryStl(mesh, '', 13))).toMatchObject({
      fault: 'wrong triangle count',
      declared: 13,
      room: 12,
    })
    expect(readStl(binaryStl(mesh, '', 0))).toMatchObject({
      fault: 'wrong triangle count',
      declared: 0,
      room: 12,
    })
    expect(readStl(binaryStl(mesh, '', 4_294_967_295))).toMatchObject({ declared: 4_294_967_295 })
    const cut = binaryStl(mesh).subarray(0, 84 + 50 * 11 + 7)
    expect(readStl(cut)).toEqual({ fault: 'wrong triangle count', declared: 12, room: 11, spareBytes: 7 })
  })

  it('a coordinate that is no number or endless is told with its triangle', () => {
    const bytes = binaryStl(box(1, 1, 1))
    new DataView(bytes.buffer).setFloat32(84 + 50 * 4 + 12, Number.NaN, true)
    expect(readStl(bytes)).toEqual({ fault: 'bad coordinate', triangle: 5, found: 'NaN' })
    new DataView(bytes.buffer).setFloat32(84 + 50 * 4 + 12, Number.NEGATIVE_INFINITY, true)
    expect(readStl(bytes)).toEqual({ fault: 'bad coordinate', triangle: 5, found: '-Infinity' })
    for (const word of ['nan', 'inf', '1e300', '1000001', '-1.1e6', '1,5', '0x10', '-'])
      expect(text(`solid a\n${facet.replace('vertex 1 0', `vertex ${word} 0`)}\nendsolid`)).toEqual({
        fault: 'bad coordinate',
        triangle: 1,
        found: word,
      })
  })

  it('a normal that is no number does not matter, since it is not used', () => {
    const bytes = binaryStl(box(1, 1, 1))
    new DataView(bytes.buffer).setFloat32(84, Number.NaN, true)
    expect(whole(bytes).corners).toEqual(box(1, 1, 1).corners)
    expect(text(`solid\n${facet.replace('0 0 1', 'nan nan nan')}\nendsolid`)).not.toHaveProperty('fault')
  })

  it('a wrong word is told with its line and the word that belongs there', () => {
    expect(text('solid a\n facet normal 0 0 1\n  outer lop\n')).toEqual({
      fault: 'unexpected word',
      line: 3,
      found: 'lop',
      wanted: 'loop',
    })
    expect(text('solid a\r\n\r\n facte\r\n')).toMatchObject({ line: 3, found: 'facte', wanted: 'endsolid' })
  })

  it('a text that stops is told with its line and what should follow', () => {
    expect(text('solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0')).toEqual({
      fault: 'ends early',
      line: 4,
      wanted: 'a coordinate',
    })
    expect(text(`solid a\n${facet}\n`)).toMatchObject({ fault: 'ends early', wanted: 'endsolid' })
  })

  it('bytes and triangles are bounded before anything is read', () => {
    const bounds = { mostBytes: 684, mostTriangles: 11 }
    expect(readStl(new Uint8Array(685), bounds)).toEqual({ fault: 'too many bytes', bytes: 685, most: 684 })
    expect(readStl(binaryStl(box(1, 1, 1)), bounds)).toEqual({
      fault: 'too many triangles',
      triangles: 12,
      most: 11,
    })
    const wide = { mostBytes: 1e6, mostTriangles: 11 }
    expect(readStl(textStl(box(1, 1, 1)), wide)).toEqual({
      fault: 'too many triangles',
      triangles: 12,
      most: 11,
    })
  })

  it('a part of a larger buffer is read from its own start', () => {
    const bytes = binaryStl(box(1, 2, 3))
    const padded = new Uint8Array(bytes.length + 31)
    padded.set(bytes, 13)
    expect(whole(padded.subarray(13, 13 + bytes.length)).corners).toEqual(box(1, 2, 3).corners)
  })

  it('any bytes give a mesh of finite numbers or a fault, never an exception', () => {
    const start = fc.constantFrom(new Uint8Array(0), textStl(box(1, 1, 1)), binaryStl(box(1, 1, 1)))
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 60 }), fc.nat(700), (base, noise, at) => {
        const bytes = new Uint8Array(Math.max(base.length, at + noise.length))
        bytes.set(base)
        bytes.set(noise, at)
        const read = readStl(bytes)
        if (isFault(read)) return
        const { volumeMm3, areaMm2 } = measureMesh(read)
        expect(Number.isFinite(volumeMm3) && volumeMm3 >= 0 && Number.isFinite(areaMm2)).toBe(true)
      }),
      { numRuns: 400 },
    )
  })
})
