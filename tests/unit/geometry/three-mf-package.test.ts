import { zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import { packagePath } from '../../../src/geometry/package-path.ts'
import { readThreeMf } from '../../../src/geometry/read-three-mf.ts'
import { archive, bytesOf, mesh, model, object } from './three-mf-text.ts'

const core = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02'
const production = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06'
const item = '<item objectid="1"/>'
const one = model(object(1, 'a'), item)
const rels = (target: string) =>
  `<Relationships><Relationship Target="${target}" Id="r" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>`
const zipped = (files: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, bytesOf(text)])))

const read = (bytes: Uint8Array) => {
  const found = readThreeMf(bytes)
  return 'fault' in found ? found : found.map(({ holders }) => holders.map(({ name }) => name))
}

describe('the package of a 3MF file', () => {
  it.each([
    ['/3D/my%20lamp.model', '3D/my lamp.model'],
    ['./3D/lamp.model', '3D/lamp.model'],
    ['/3d/LAMP.model', '3D/lamp.model'],
    ['/3D/lamp.xml', '3D/lamp.xml'],
    ['/3D/lamp.model', '3D\\lamp.model'],
    ['/constructor', '3D/3dmodel.model'],
    ['/__proto__', '3D/3dmodel.model'],
    ['toString', '3D/lamp.model'],
  ])('is entered by the relationship %s at %s', (target, path) => {
    expect(read(zipped({ '_rels/.rels': rels(target), [path]: one }))).toEqual([['a']])
  })

  it('without relationships is entered at its only model', () => {
    expect(read(zipped({ 'x/lamp.model': one }))).toEqual([['a']])
    expect(read(zipped({ 'x/lamp.model': one, 'x/other.model': one }))).toEqual({ fault: 'no model' })
    expect(read(zipped({ '_rels/.rels': rels('toString') }))).toEqual({ fault: 'no model' })
  })

  it('compares paths from its root, dots and escapes followed', () => {
    expect(packagePath('/3D/./x/../My%20Box.MODEL')).toBe('3d/my box.model')
    expect(packagePath('..\\a%zz')).toBe('a%zz')
  })
})

describe('a 3MF file of several models', () => {
  const head = `<model requiredextensions="p" xmlns="${core}" xmlns:p="${production}"><resources>`
  const main = (path: string) =>
    `${head}${object(2, 'cup', `<components><component objectid="1" p:path="${path}" transform="1 0 0 0 1 0 0 0 1 1 0 0"/></components>`)}${object(1, 'own')}</resources><build><item objectid="2"/><item objectid="1" p:path="/3D/b.model"/></build></model>`

  it('takes objects by path and number, each in the unit of its own model', () => {
    const inches = model(object(1, 'a'), '', 'inch')
    const bodies = readThreeMf(
      zipped({ '3D/3dmodel.model': main('/3D/a.model'), '3D/a.model': inches, '3D/b.model': one }),
    )
    if ('fault' in bodies) throw new Error(bodies.fault)
    expect(bodies.map(({ holders }) => holders.map(({ name }) => name))).toEqual([['a', 'cup'], ['a']])
    const [inch, own] = bodies.map((body) => measureMesh(body).box)
    expect(inch!.lowMm[0]).toBe(1)
    expect(inch!.sizeMm[0]).toBeCloseTo(2 * 25.4, 9)
    expect(own!.sizeMm).toEqual([2, 3, 4])
  })

  it('names the model that is not there, where something built asks for it', () => {
    expect(read(zipped({ '3D/3dmodel.model': main('/3D/c.model'), '3D/b.model': one }))).toEqual({
      fault: 'missing file',
      path: '3d/c.model',
    })
    const unused = `${head}${object(1, 'a')}${object(2, 'b', '<components><component objectid="1" p:path="/3D/c.model"/></components>')}</resources><build>${item}</build></model>`
    expect(read(archive(unused))).toEqual([['a']])
  })
})

describe('the text of a model', () => {
  const text = `<?xml version="1.0" encoding="UTF-16"?>${model(object(1, 'ö'), item).replace(/^<\?xml[^>]*>/, '')}`
  const wide = (bigEndian: boolean) => {
    const bytes = new Uint8Array(2 * text.length + 2)
    const view = new DataView(bytes.buffer)
    for (const [k, letter] of [...`\ufeff${text}`].entries())
      view.setUint16(2 * k, letter.charCodeAt(0), !bigEndian)
    return bytes
  }

  it('is read in UTF-8 and in UTF-16 of either order', () => {
    expect(read(archive(`\ufeff${one}`))).toEqual([['a']])
    for (const bigEndian of [false, true])
      expect(read(zipSync({ '3D/3dmodel.model': wide(bigEndian) }))).toEqual([['ö']])
  })

  it('in another encoding is refused with its name', () => {
    const latin = one.replace('?>', ' encoding="ISO-8859-1"?>')
    expect(read(archive(latin))).toMatchObject({ fault: 'other encoding', encoding: 'ISO-8859-1' })
    const stray = bytesOf(one)
    stray[stray.indexOf('a'.charCodeAt(0), 120)] = 0xe4
    expect(read(zipSync({ '3D/3dmodel.model': stray }))).toMatchObject({ fault: 'other encoding' })
  })

  it('may give the core a prefix, and is passed over in other namespaces', () => {
    const prefixed = `<c:model xmlns:c="${core}"><c:resources>${object(1, 'a').replace(/<(\/?)/g, '<$1c:')}</c:resources><c:build><c:item objectid="1"/></c:build></c:model>`
    expect(read(archive(prefixed))).toEqual([['a']])
    const foreign = one.replace('</build>', '<item xmlns="urn:other" objectid="1"/></build>')
    expect(read(archive(foreign))).toEqual([['a']])
    expect(read(archive(one.replaceAll('model', 'modell')))).toMatchObject({ fault: 'not a model' })
  })

  it.each([
    ['urn:beams', 'extension'],
    ['http://schemas.microsoft.com/3dmanufacturing/material/2015/02', null],
  ])('that requires %s gives %s', (extension, fault) => {
    const found = read(archive(one.replace('<model', `<model xmlns:b="${extension}" requiredextensions="b"`)))
    expect(found).toEqual(fault ? { fault, extension } : [['a']])
  })

  it('passes instructions and comments whole, and refuses document types', () => {
    const passed = one.replace(
      '<build>',
      '<build><?x a > <item objectid="8"/> ?><!-- <item objectid="8"/> -->',
    )
    expect(read(archive(passed))).toEqual([['a']])
    const typed = one.replace('<model', '<!DOCTYPE model [<!ENTITY n "a">]><model')
    expect(read(archive(typed))).toEqual({ fault: 'document type', path: '3D/3dmodel.model' })
  })

  it('nested without bound, or with namespaces without bound, is refused', () => {
    const deep = '<model>'.repeat(1000) + '</model>'.repeat(1000)
    expect(read(archive(deep))).toMatchObject({ fault: 'not XML' })
    const spaces = Array.from({ length: 1000 }, (_, k) => ` xmlns:p${k}="urn:${k}"`).join('')
    expect(read(archive(one.replace('<model', `<model${spaces}`)))).toMatchObject({ fault: 'not XML' })
    expect(read(archive(one.replace('<item', '<item p:path="/x"')))).toMatchObject({ fault: 'not XML' })
  })

  it('cut anywhere before its end is refused', () => {
    const whole = `<model><resources>${object(1, 'a', mesh)}</resources><build>${item}</build></model>`
    for (let length = 0; length < whole.length; length += 3)
      expect(readThreeMf(archive(whole.slice(0, length)))).toMatchObject({ fault: 'not XML' })
  })
})
