import { zipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { boxStl } from '../geometry/box-stl.ts'
import { device, people, resolveText } from './resolve-text.ts'

const parts = (lines: string) => `${device}${people}parts:\n${lines}`
const lowest = (corners: Float32Array): number[] =>
  [0, 1, 2].map((axis) => Math.min(...corners.filter((_, i) => i % 3 === axis)))

const tetra =
  '<mesh><vertices><vertex x="0" y="0" z="0"/><vertex x="2" y="0" z="0"/><vertex x="0" y="2" z="0"/><vertex x="0" y="0" z="2"/></vertices><triangles><triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/><triangle v1="0" v2="3" v3="2"/><triangle v1="1" v2="2" v3="3"/></triangles></mesh>'
const archive = (resources: string, build: string) =>
  zipSync({
    '3D/3dmodel.model': new TextEncoder().encode(
      `<model><resources>${resources}</resources><build>${build}</build></model>`,
    ),
  })
const assembled = device.replace('}', ', assembled: lamp.3mf}')

describe('meshes in their place', () => {
  it('are none where a model has no place: it may lie as it is printed', () => {
    const { project } = resolveText(parts('  a: {kind: bought, have: 1, worth: 1, model: a.stl}\n'), {
      'a.stl': boxStl(3, 4, 5),
    })
    expect(project.meshes).toEqual([])
  })

  it('stand where they were saved, or once for each place', () => {
    const { project } = resolveText(
      parts(
        '  a: {kind: bought, have: 1, worth: 1, model: a.stl, place: assembled}\n' +
          '  b: {kind: bought, have: 2, worth: 1, model: a.stl, place: [{at: [1 cm, 0 mm, -2 mm]}, {turn: [0 deg, 0 deg, 90 deg]}]}\n',
      ),
      { 'a.stl': boxStl(3, 4, 5) },
    )
    expect(project.meshes.map(({ part, mayHoldCopies }) => [part, mayHoldCopies])).toEqual([
      ['a', true],
      ['b', false],
      ['b', false],
    ])
    expect(project.meshes.map(({ corners }) => lowest(corners))).toEqual([
      [0, 0, 0],
      [10, 0, -2],
      [-4, 0, 0],
    ])
  })

  it('come from one assembled file where a part has no place of its own', () => {
    const lamp = archive(
      `<object id="1" name="a">${tetra}</object><object id="2" name="b">${tetra}</object>`,
      '<item objectid="1" transform="1 0 0 0 1 0 0 0 1 7 0 0"/><item objectid="2"/>',
    )
    const { project, diagnostics } = resolveText(
      `${assembled}${people}parts:\n  a: {kind: bought, have: 1, worth: 1}\n  b: {kind: bought, have: 1, worth: 1, model: a.stl, place: assembled}\n`,
      {
        'lamp.3mf': lamp,
        'a.stl': boxStl(3, 4, 5),
      },
    )
    expect(diagnostics.filter(({ code }) => code.startsWith('MSH'))).toEqual([])
    expect(project.meshes.map(({ part, corners }) => [part, corners.length / 9])).toEqual([
      ['b', 12],
      ['a', 4],
    ])
    expect(lowest(project.meshes[1]!.corners)).toEqual([7, 0, 0])
  })

  it.each([
    ['Lid Screw', []],
    ['lid_screw', []],
    ['lid screw.001', []],
    ['lid screw (2)', []],
    ['LID-SCREW_3', []],
    ['lid scrw', ['MSH02']],
    ['lid screwed', ['MSH02']],
  ])('are known by a name as programs change it: %s', (name, expected) => {
    const { project, diagnostics } = resolveText(
      `${assembled}${people}parts:\n  lid screw: {kind: bought, have: 1, worth: 1}\n  screw 3: {kind: bought, have: 1, worth: 1}\n`,
      { 'lamp.3mf': archive(`<object id="1" name="${name}">${tetra}</object>`, '<item objectid="1"/>') },
    )
    expect(diagnostics.map(({ code }) => code).filter((code) => code.startsWith('MSH'))).toEqual(expected)
    expect(project.meshes.map(({ part }) => part)).toEqual(expected.length === 0 ? ['lid screw'] : [])
  })

  it('are found by name however accents are written, and without a name told by their number', () => {
    const lamp = archive(
      `<object id="1" name="Geh\u00e4use">${tetra}</object><object id="27">${tetra}</object>`,
      '<item objectid="1"/><item objectid="27"/>',
    )
    const { project, diagnostics } = resolveText(
      `${assembled}${people}parts:\n  Geha\u0308use: {kind: bought, have: 1, worth: 1}\n`,
      { 'lamp.3mf': lamp },
    )
    expect(project.meshes.map(({ part }) => part)).toEqual(['Geha\u0308use'])
    expect(diagnostics.map(({ code, says }) => [code, says]).filter(([code]) => code === 'MSH02')).toEqual([
      ['MSH02', '`lamp.3mf` holds an object of which no part has the name: `object 27 without a name`'],
    ])
  })
})
