import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { svgToPng } from '../../src/emit/pictures/svg-to-png.ts'
import { boxMesh, cylinderMesh, tubeMesh } from '../unit/geometry/drawing/drawn-solids.ts'
import { marksOf } from '../unit/geometry/drawing/svg-marks.ts'
import { stlOf } from '../unit/planning/pictures/stl-of.ts'
import { type Built, buildFettle, type Run } from './run-fettle.ts'

let built: Built
beforeAll(async () => {
  built = await buildFettle('pictures')
  writeFileSync(scratch('cup.stl'), stlOf(tubeMesh(8, 18, 30, 24), boxMesh([-18, -18, -4], [18, 18, 0])))
  writeFileSync(scratch('peg.stl'), stlOf(cylinderMesh(7.9, 20, 24)))
  writeFileSync(scratch('lid.stl'), stlOf(boxMesh([-18, -18, 30], [18, 18, 34])))
  writeFileSync(scratch('pot.yaml'), project('place: assembled, '))
  writeFileSync(scratch('bare.yaml'), project(''))
})
afterAll(() => built.done())

const run = (...args: string[]): Run => built.run(args)
const scratch = (...names: string[]): string => join(built.scratch, ...names)
const names = (folder: string): string[] => readdirSync(scratch(folder)).sort()
const expected = ['step-001-peg.svg', 'step-002-lid.svg', 'whole-taken-apart.svg']

function project(place: string): string {
  const part = (name: string): string =>
    `  ${name}: {kind: bought, model: ${name}.stl, ${place}offers: [{vendor: shop, price: 1, lead: 2 wd}]}`
  return `device: {name: Pot, revision: A, qty: 1, currency: EUR, start: 2026-03-02}
people:
  me: {hours: {mon-thu: "19:30-22:00"}}
vendors:
  shop: {transit: 2 wd}
parts:
${['cup', 'peg', 'lid'].map(part).join('\n')}
assembly:
  openings: {cup: [top]}
  steps:
    - {put: peg, in: cup, by: seat, time: 5 min}
    - {shut: cup.top, put: lid, on: cup, by: glue, time: 5 min}
    - {test: nothing rattles, after: [lid], time: 2 min}
`
}

describe('fettle pictures', () => {
  it('draws every step that has meshes and the whole, into a folder that it makes', () => {
    const given = run('pictures', 'pot.yaml', '--out', 'made/of-it')
    expect(given.err).not.toMatch(/error/)
    expect(given.exit).toBe(0)
    expect(given.out).toMatch(/^3 pictures in made\/of-it\n/)
    expect(names('made/of-it')).toEqual(expected)
    const peg = marksOf(readFileSync(scratch('made/of-it', expected[0]!), 'utf8').replace(/<!--.*-->\n$/, ''))
    expect(peg.title).toBe('peg')
    expect(peg.solids.length).toBe(1)
    expect(peg.paths.some(({ width }) => width === 0.5)).toBe(true)
  })

  it('gives the same bytes again, over its own pictures, and names those of an earlier run', () => {
    const before = expected.map((name) => readFileSync(scratch('made/of-it', name), 'utf8'))
    writeFileSync(scratch('made/of-it', 'step-009-gone.svg'), before[0]!)
    const given = run('pictures', 'pot.yaml', '--out', 'made/of-it')
    expect(given.exit).toBe(0)
    expect(given.out).toMatch(/still there: step-009-gone\.svg/)
    expect(expected.map((name) => readFileSync(scratch('made/of-it', name), 'utf8'))).toEqual(before)
  })

  it.each([
    ['a file of another', 'other', () => 'mine'],
    ['a picture that was changed', 'changed', (own: string) => own.replace('<title>', '<title>my ')],
  ])('refuses to write over %s, and writes nothing then', (_, folder, change) => {
    mkdirSync(scratch(folder))
    const kept = change(readFileSync(scratch('made/of-it', expected[1]!), 'utf8'))
    writeFileSync(scratch(folder, expected[1]!), kept)
    const given = run('pictures', 'pot.yaml', '--out', folder)
    expect(given.exit).toBe(2)
    expect(given.err).toMatch(/step-002-lid\.svg was (?:not written by fettle|changed since)/)
    expect(names(folder)).toEqual([expected[1]])
    expect(readFileSync(scratch(folder, expected[1]!), 'utf8')).toBe(kept)
  })

  it('writes over them with --force', () => {
    expect(run('pictures', 'pot.yaml', '--out', 'other', '--force').exit).toBe(0)
    expect(readFileSync(scratch('other', expected[1]!), 'utf8')).not.toBe('mine')
    expect(names('other')).toEqual(expected)
  })

  it('says what is missing where no mesh stands in its place, and writes nothing', () => {
    const given = run('pictures', 'bare.yaml', '--out', 'none')
    expect(given.exit).toBe(0)
    expect(given.out).toMatch(/nothing to draw/)
    expect(existsSync(scratch('none'))).toBe(false)
  })

  it('writes nothing where the project has an error', () => {
    const given = built.run(['pictures', '-', '--out', 'bad'], { stdin: 'device: {name: x}\n' })
    expect(given.exit).toBe(1)
    expect(given.err).toMatch(/nothing was written/)
    expect(existsSync(scratch('bad'))).toBe(false)
  })

  it.each([
    [['pictures', 'pot.yaml']],
    [['pictures', 'pot.yaml', '--out', 'cup.stl']],
    [['pictures', 'pot.yaml', '--out', ' ']],
  ])('is used wrongly with %j', (args) => {
    expect(built.run(args).exit).toBe(2)
  })

  it('writes PNG too where the optional package is there, and says what is missing where it is not', () => {
    const given = run('pictures', 'pot.yaml', '--out', 'pixels', '--png')
    if (svgToPng()) {
      expect(given.exit).toBe(0)
      expect(names('pixels').filter((name) => name.endsWith('.png')).length).toBe(3)
    } else {
      expect(given.exit).toBe(2)
      expect(given.err).toMatch(/@resvg\/resvg-js.*not installed/)
      expect(existsSync(scratch('pixels'))).toBe(false)
    }
  })
})
