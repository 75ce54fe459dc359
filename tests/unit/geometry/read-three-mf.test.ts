import { zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import type { NamedBody } from '../../../src/geometry/flatten-model.ts'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import { readThreeMf } from '../../../src/geometry/read-three-mf.ts'
import { usualThreeMfBounds } from '../../../src/geometry/three-mf-fault.ts'
import { archive, bytesOf, mesh, model, object } from './three-mf-text.ts'

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
    ['empty object', () => archive(model(object(1, 'a', ''), '<item objectid="1"/>'))],
    ['doubled object', () => archive(model(object(1, 'a') + object(1, 'b'), '<item objectid="1"/>'))],
    [
      'missing attribute',
      () => archive(model(object(1, 'a', mesh.replace('y="3" ', '')), '<item objectid="1"/>')),
    ],
    ['missing attribute', () => archive(model(object(1, 'a'), '<item/>'))],
    [
      'bad number',
      () => archive(model(object(1, 'a', mesh.replace('x="2"', 'x="0x2"')), '<item objectid="1"/>')),
    ],
    [
      'bad number',
      () => archive(model(object(1, 'a', mesh.replace('v1="1"', 'v1="1.0"')), '<item objectid="1"/>')),
    ],
    [
      'flat transform',
      () => archive(model(object(1, 'a'), '<item objectid="1" transform="1 0 0 2 0 0 0 0 1 5 5 5"/>')),
    ],
  ])('is refused: %s', (fault, bytes) => {
    expect(faultOf(bytes())).toBe(fault)
  })

  it('keeps faces outward where it is mirrored, once or twice', () => {
    const mirror = 'transform="-1 0 0 0 1 0 0 0 1 0 0 0"'
    const inner = `<components><component objectid="1" ${mirror}/></components>`
    const text = model(
      object(1, 'pin') + object(2, 'twice', inner),
      `<item objectid="1" ${mirror}/><item objectid="2" ${mirror}/>`,
    )
    const measures = bodies(text).map((one) => measureMesh(one))
    expect(measures.map(({ insideOut, volumeMm3 }) => [insideOut, volumeMm3])).toEqual([
      [false, 4],
      [false, 4],
    ])
    expect(measures.map(({ box }) => box.lowMm[0])).toEqual([-2, 0])
  })

  it('leaves out supports and what is of another type', () => {
    const aside = (id: number, type: string) => object(id, 'a').replace('"model"', `"${type}"`)
    const text = model(
      object(1, 'a') + aside(2, 'support') + aside(3, 'solidsupport') + aside(4, 'other'),
      [1, 2, 3, 4].map((id) => `<item objectid="${id}"/>`).join(''),
    )
    expect(bodies(text)).toHaveLength(1)
  })

  it('takes the part number where an object has no name, that of the item first', () => {
    const nameless = object(1, '').replace('type=', 'partnumber="of object" type=')
    const text = model(nameless, '<item objectid="1"/><item objectid="1" partnumber="of item"/>')
    expect(bodies(text).map(({ holders }) => holders[0]!.name)).toEqual(['of object', 'of item'])
    expect(bodies(text)[0]!.holders[0]!.id).toBe('1')
  })

  it('writes accents one way, however they are written in the file', () => {
    const [one] = bodies(model(object(1, 'Geha\u0308use'), '<item objectid="1"/>'))
    expect(one!.holders[0]!.name).toBe('Geh\u00e4use')
  })

  it('moves no corners that no triangle uses', () => {
    const loose = '<vertex x="900" y="0" z="0"/>'.repeat(50)
    const [one] = bodies(
      model(
        object(
          1,
          'a',
          mesh
            .replace('<vertices>', `<vertices>${loose}`)
            .replace(/v(\d)=(.)(\d)/g, (_, k, quote, at) => `v${k}=${quote}${Number(at) + 50}`),
        ),
        '<item objectid="1"/>',
      ),
    )
    expect(measureMesh(one!).volumeMm3).toBe(4)
  })

  it('is bounded in what it unpacks to, and in its triangles', () => {
    const large = archive(model(object(1, 'a'), '<item objectid="1"/>') + ' '.repeat(2_000_000))
    expect(large.length).toBeLessThan(20_000)
    expect(
      readThreeMf(large, { ...usualThreeMfBounds, mostUnpackedBytes: 1_000_000, mostTriangles: 100 }),
    ).toMatchObject({
      fault: 'too large',
    })
    const many = archive(model(object(1, 'a'), '<item objectid="1"/>'.repeat(30)))
    expect(
      readThreeMf(many, { ...usualThreeMfBounds, mostUnpackedBytes: 1_000_000, mostTriangles: 100 }),
    ).toMatchObject({
      fault: 'too many triangles',
    })
  })

  it('is bounded in its vertices and in the objects placed, doubled however often', () => {
    const one = archive(model(object(1, 'a'), '<item objectid="1"/>'))
    expect(readThreeMf(one, { ...usualThreeMfBounds, mostVertices: 3 })).toMatchObject({
      fault: 'too many vertices',
    })
    const twice = (id: number) =>
      object(id + 1, '', `<components>${`<component objectid="${id}"/>`.repeat(2)}</components>`)
    const levels = Array.from({ length: 25 }, (_, k) => twice(k + 1)).join('')
    expect(faultOf(archive(model(object(1, 'a') + levels, '<item objectid="26"/>')))).toBe('too many bodies')
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
