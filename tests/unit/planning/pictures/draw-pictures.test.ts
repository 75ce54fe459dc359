import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { draw } from '../../../../src/compile.ts'
import type { DrawnMesh } from '../../../../src/geometry/drawing/drawn-mesh.ts'
import type { Pictures } from '../../../../src/model/pictures.ts'
import { boxMesh, cylinderMesh, tubeMesh } from '../../geometry/drawing/drawn-solids.ts'
import { marksOf } from '../../geometry/drawing/svg-marks.ts'
import { stlOf } from './stl-of.ts'

const folder = mkdtempSync(join(tmpdir(), 'fettle-pictures-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const meshes: Readonly<Record<string, readonly DrawnMesh[]>> = {
  cup: [tubeMesh(8, 18, 30, 24), boxMesh([-18, -18, -4], [18, 18, 0])],
  peg: [cylinderMesh(7.9, 20, 24)],
  lid: [boxMesh([-18, -18, 30], [18, 18, 34])],
  knob: [cylinderMesh(5, 8, 24, [0, 0, 34])],
  foot: [-12, 12].flatMap((x) => [-12, 12].map((y) => cylinderMesh(3, 5, 16, [x, y, -9]))),
}
for (const [name, own] of Object.entries(meshes)) writeFileSync(join(folder, `${name}.stl`), stlOf(...own))

async function drawn(steps: string, more = '', oneScale = false): Promise<Pictures> {
  const parts = Object.keys(meshes).map(
    (name) =>
      `  ${name}: {kind: bought, model: ${name}.stl, place: assembled, offers: [{vendor: shop, price: 1, lead: 2 wd}]}`,
  )
  const text = `device: {name: Pot, revision: A, qty: 1, currency: EUR, start: 2026-03-02}
people:
  me: {hours: {mon-thu: "19:30-22:00"}}
vendors:
  shop: {transit: 2 wd}
parts:
${parts.join('\n')}
  label: {kind: bought, offers: [{vendor: shop, price: 1, lead: 2 wd}]}
${more}assembly:
  openings: {cup: [top]}
  steps:
${steps}`
  writeFileSync(join(folder, 'pot.yaml'), text)
  const { pictures, diagnostics } = await draw('pot.yaml', { folder, oneScale })
  expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([])
  return pictures!
}

const top = `  top:
    kind: assembly
    steps:
      - {put: knob, on: lid, by: glue, time: 5 min}
`
const steps = `    - {put: foot x4, on: cup, by: glue, time: 5 min}
    - {put: peg, in: cup, by: seat, time: 5 min}
    - {shut: cup.top, put: top, on: cup, by: glue, time: 5 min}
    - {put: label, on: cup, by: glue, time: 5 min}
    - {test: nothing rattles, time: 2 min}
`

describe('the pictures of a device', async () => {
  const pictures = await drawn(steps, top)
  const of = (step: string) => marksOf(pictures.steps.find((one) => one.step === step)!.svg)

  it('are one for each step that puts something with a mesh, subassemblies first', () => {
    expect(pictures.steps.map(({ of, step }) => `${of ?? ''}/${step}`).slice(0, 1)).toEqual(['top/knob'])
    expect(pictures.steps.map(({ step }) => step).sort()).toEqual(['foot', 'knob', 'peg', 'top'].sort())
  })

  it('name the steps of which nothing has a mesh', () => {
    expect(pictures.without).toEqual([{ of: null, step: 'label' }])
  })

  it('show equal parts of a step together, each with its arrow', () => {
    expect(of('foot').solids.length).toBe(4)
  })

  it('say which sides they show', () => {
    const lid = pictures.steps.find(({ step }) => step === 'top')!
    expect(lid.sees).toContain(4)
    expect(lid.sees).toHaveLength(3)
    expect(pictures.steps.every(({ straight }) => straight)).toBe(true)
  })

  it('show the device as the last turn laid it', async () => {
    const turned = await drawn(
      steps.replace(
        '{put: foot x4, on: cup, by: glue,',
        '{put: foot x4, on: cup, by: glue, turn: upside down,',
      ),
      top,
    )
    const foot = turned.steps.find(({ step }) => step === 'foot')!
    expect(foot.sees).toContain(5)
    // Its feet come down from above on the paper: every tip is below its tail.
    for (const [, tip, , tail] of marksOf(foot.svg).solids) expect(tip!).toBeGreaterThan(tail!)
  })

  it('draw no way for a part that has none, and say so', async () => {
    const late = steps.replace('in: cup, by: seat, time', 'on: cup, by: seat, after: [top], time')
    const stuck = (await drawn(late, top)).steps.find(({ step }) => step === 'peg')!
    expect(stuck.straight).toBe(false)
    expect(marksOf(stuck.svg).solids).toEqual([])
    const typed = (await drawn(late.replace('after: [top]', 'after: [top], from: top'), top)).steps
    expect(typed.find(({ step }) => step === 'peg')!.straight).toBe(true)
  })

  it('show a subassembly as one: one arrow for lid and knob', () => {
    expect(of('top').solids.length).toBe(1)
  })

  it('hold one of each assembly taken apart, with ways and without arrows', () => {
    expect(pictures.wholes.map(({ of }) => of)).toEqual(['top', null])
    const whole = marksOf(pictures.wholes[1]!.svg)
    expect(whole.title).toBe('Pot')
    expect(whole.root.width).toBe('160mm')
    expect(whole.solids).toEqual([])
    expect(whole.paths.some(({ dashes }) => dashes !== null)).toBe(true)
  })

  it('have one scale where it is asked for: the cup is as wide in each', async () => {
    const extent = (text: string): number => {
      const { paths } = marksOf(text)
      // The device as it stands has lines of 0.3 mm around it, and the cup is its widest part.
      const across = paths
        .filter(({ width, dashes }) => width === 0.3 && dashes === null)
        .flatMap(({ points }) => points.filter((_, i) => i % 2 === 0))
      return Math.max(...across) - Math.min(...across)
    }
    const shown = (one: Pictures): number[] =>
      ['peg', 'top', 'foot'].map((name) => extent(one.steps.find(({ step }) => step === name)!.svg))
    const same = shown(await drawn(steps, top, true))
    expect(Math.max(...same) / Math.min(...same)).toBeCloseTo(1, 2)
    const own = shown(pictures)
    expect(Math.max(...own) / Math.min(...own)).toBeGreaterThan(1.1)
  })

  it('are the same text each time', async () => {
    expect(await drawn(steps, top)).toEqual(pictures)
  })
})
