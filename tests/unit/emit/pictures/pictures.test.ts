import { describe, expect, it } from 'vitest'
import { namedPictures } from '../../../../src/emit/pictures/named-pictures.ts'
import { isOurPicture, stampSvg } from '../../../../src/emit/pictures/stamp-svg.ts'
import { svgToPng } from '../../../../src/emit/pictures/svg-to-png.ts'

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)
const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">\n<path d="M10 10L50 10 50 50Z"/>\n</svg>\n'

describe('the stamp of a picture', () => {
  it('knows a picture of ours that nobody changed', () => {
    expect(isOurPicture(bytes(stampSvg(svg)))).toBe('untouched')
  })

  it('knows one that was changed, and one that is not ours', () => {
    expect(isOurPicture(bytes(stampSvg(svg).replace('50 50', '50 51')))).toBe('changed')
    expect(isOurPicture(bytes(`${stampSvg(svg)}\n`))).toBe('changed')
    expect(isOurPicture(bytes(svg))).toBe('not ours')
    expect(isOurPicture(new Uint8Array([255, 254, 0, 60]))).toBe('not ours')
  })
})

describe('names of pictures', () => {
  const step = (of: string | null, name: string, number: number) => ({
    of,
    step: name,
    number,
    svg,
    sizeMm: 60,
  })

  it('are plain, sort in the order of steps, and no two are alike', () => {
    const names = namedPictures({
      steps: [
        step('Kopf größer', 'Deckel / oben', 3),
        step(null, '../..', 7),
        step(null, '蓋', 10),
        step('kopf größer', 'deckel oben', 3),
      ],
      wholes: [
        { of: 'Deckel', svg, sizeMm: 160 },
        { of: null, svg, sizeMm: 160 },
      ],
    }).map(({ name }) => name)
    expect(names).toEqual([
      'kopf-gro-er-003-deckel-oben',
      'step-007-x',
      'step-010-x',
      'kopf-gro-er-003-deckel-oben-2',
      'deckel-taken-apart',
      'whole-taken-apart',
    ])
  })

  it('stay short', () => {
    const [file] = namedPictures({ steps: [step(null, 'a'.repeat(500), 1)], wholes: [] })
    expect(file!.name.length).toBeLessThan(60)
  })
})

describe.skipIf(svgToPng() === null)('PNG (skipped where the optional package is not installed)', () => {
  it('is 709 pixels on a side at 60 mm and 300 to the inch, and the same bytes each time', () => {
    const toPng = svgToPng()!
    const png = toPng(svg, 60)
    const view = new DataView(png.buffer, png.byteOffset)
    // Signature and place of width and height: PNG specification, W3C 2003, sections 5.2 and 11.2.2, from memory.
    expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10])
    expect([view.getUint32(16), view.getUint32(20)]).toEqual([709, 709])
    expect(Buffer.from(toPng(svg, 60)).equals(Buffer.from(png))).toBe(true)
  })
})
