import { zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import type { NamedBody } from '../../../src/geometry/flatten-model.ts'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import { readThreeMf } from '../../../src/geometry/read-three-mf.ts'

// Source of the format: 3MF core specification 1.4.0.
const bytesOf = (text: string) => new TextEncoder().encode(text)
const archive = (model: string, path = '3D/3dmodel.model') => zipSync({ [path]: bytesOf(model) })

const corners = [
  [0, 0, 0],
  [2, 0, 0],
  [0, 3, 0],
  [0, 0, 4],
]
const faces = [
  [0, 2, 1],
  [0, 1, 3],
  [0, 3, 2],
  [1, 2, 3],
]
/** A tetrahedron of 2 x 3 x 4 / 6 = 4 units of volume. */
const mesh = `<mesh><vertices>${corners.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}" />`).join('')}</vertices>
<triangles>${faces.map(([a, b, c]) => `<triangle v1="${a}" v2='${b}' v3="${c}"/>`).join('\n')}</triangles></mesh>`
const object = (id: number, name: string, inside = mesh) =>
  `<object id="${id}" name="${name}" type="model">${inside}</object>`
const model = (resources: string, build: string, unit = 'millimeter') =>
  `<?xml version="1.0"?>\n<!-- <object id="9"> --><model unit="${unit}" xml:lang="en"><resources>${resources}</resources><build>${build}</build></model>`

function bodies(text: string): readonly NamedBody[] {
  const read = readThreeMf(archive(text))
  if ('fault' in read) throw new Error(JSON.stringify(read))
  return read
}
const faultOf = (bytes: Uint8Array) => {
  const read = readThreeMf(bytes)
  return 'fault' in read ? read.fault : 'none'
}

describe('a 3MF file', () => {
  it('gives its objects with names, in millimetres', () => {
    const [one] = bodies(model(object(1, 'gear &amp; hub'), '<item objectid="1"/>'))
    expect(one!.holders[0]!.name).toBe('gear & hub')
    expect(measureMesh(one!).volumeMm3).toBeCloseTo(4, 9)
  })

  it.each([
    ['inch', 25.4],
    ['micron', 0.001],
    ['meter', 1000],
  ])('is read in its unit, %s', (unit, millimetres) => {
    const [one] = bodies(model(object(1, 'a'), '<item objectid="1"/>', unit))
    expect(measureMesh(one!).box.sizeMm[2]).toBeCloseTo(4 * millimetres, 9)
  })

  it('places a component in its object and that in the build: rows times matrix', () => {
    const inner = `<components><component objectid="1" transform="0 1 0 -1 0 0 0 0 1 10 0 0"/></components>`
    const text = model(
      object(1, 'pin') + object(2, 'head', inner),
      '<item objectid="2" transform="1 0 0 0 1 0 0 0 1 0 0 5"/>',
    )
    const [one] = bodies(text)
    // (2, 0, 0) turns to (0, 2, 0), moves to (10, 2, 0), then to (10, 2, 5); (0, 3, 0) turns to (-3, 0, 0).
    const { box } = measureMesh(one!)
    expect(box.lowMm).toEqual([7, 0, 5])
    expect(box.highMm).toEqual([10, 2, 9])
    expect(one!.holders.map(({ name }) => name)).toEqual(['pin', 'head'])
  })

  it('gives a component used twice twice, in instances of their own', () => {
    const inner =
      '<components><component objectid="1"/><component objectid="1" transform="1 0 0 0 1 0 0 0 1 9 0 0"/></components>'
    const read = bodies(model(object(1, 'pin') + object(2, 'head', inner), '<item objectid="2"/>'))
    expect(read).toHaveLength(2)
    expect(new Set(read.map(({ holders }) => holders[0]!.instance)).size).toBe(2)
    expect(new Set(read.map(({ holders }) => holders[1]!.instance)).size).toBe(1)
  })

  it('is found under the name that the package gives', () => {
    const rels = `<Relationships><Relationship Target="/3D/lamp.model" Id="r" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`
    const zipped = zipSync({
      '_rels/.rels': bytesOf(rels),
      '3D/lamp.model': bytesOf(model(object(1, 'a'), '<item objectid="1"/>')),
    })
    expect(readThreeMf(zipped)).toHaveLength(1)
  })

  it.each<[string, () => Uint8Array]>([
    ['not a zip', () => bytesOf('solid lamp')],
    ['no model', () => zipSync({ 'readme.txt': bytesOf('nothing') })],
    ['no triangles', () => archive(model('', ''))],
    ['unknown object', () => archive(model(object(1, 'a'), '<item objectid="7"/>'))],
    ['unknown unit', () => archive(model(object(1, 'a'), '<item objectid="1"/>', 'cubit'))],
    [
      'bad number',
      () => archive(model(object(1, 'a', mesh.replace('x="2"', 'x="two"')), '<item objectid="1"/>')),
    ],
    [
      'bad number',
      () => archive(model(object(1, 'a', mesh.replace('v1="1"', 'v1="4"')), '<item objectid="1"/>')),
    ],
    ['bad number', () => archive(model(object(1, 'a'), '<item objectid="1" transform="1 0 0"/>'))],
    [
      'in itself',
      () =>
        archive(
          model(object(1, 'a', '<components><component objectid="1"/></components>'), '<item objectid="1"/>'),
        ),
    ],
    [
      'several files',
      () =>
        archive(
          model(
            object(1, 'a', '<components><component p:path="/3D/b.model" objectid="1"/></components>'),
            '<item objectid="1"/>',
          ),
        ),
    ],
  ])('is refused: %s', (fault, bytes) => {
    expect(faultOf(bytes())).toBe(fault)
  })

  it('is bounded in what it unpacks to, and in its triangles', () => {
    const large = archive(model(object(1, 'a'), '<item objectid="1"/>') + ' '.repeat(2_000_000))
    expect(large.length).toBeLessThan(20_000)
    expect(readThreeMf(large, { mostUnpackedBytes: 1_000_000, mostTriangles: 100 })).toMatchObject({
      fault: 'too large',
    })
    const many = archive(model(object(1, 'a'), '<item objectid="1"/>'.repeat(30)))
    expect(readThreeMf(many, { mostUnpackedBytes: 1_000_000, mostTriangles: 100 })).toMatchObject({
      fault: 'too many triangles',
    })
  })

  it('cut short or with bytes changed is refused or read, and never throws', () => {
    const whole = archive(model(object(1, 'a'), '<item objectid="1"/>'))
    for (let length = 0; length < whole.length; length += 7)
      expect(() => readThreeMf(whole.subarray(0, length))).not.toThrow()
    for (let at = 0; at < whole.length; at += 3) {
      const hurt = whole.slice()
      hurt[at] = hurt[at]! ^ 0x55
      expect(() => readThreeMf(hurt)).not.toThrow()
    }
    const text = model(object(1, 'a'), '<item objectid="1"/>')
    for (let at = 0; at < text.length; at += 5)
      for (const letter of ['<', '"', '>', '&'])
        expect(() => readThreeMf(archive(text.slice(0, at) + letter + text.slice(at + 1)))).not.toThrow()
  })
})
