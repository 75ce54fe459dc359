import { describe, expect, it } from 'vitest'
import { plan } from '../../../src/compile.ts'
import type { Part, Project } from '../../../src/model/project.ts'
import { boxStl } from '../geometry/box-stl.ts'
import { memoryDisk } from '../source/memory-disk.ts'
import { device, people, resolveText } from './resolve-text.ts'

const bench = `${device}${people}machines: {mill: {spindle: {slowest: 150 rpm, fastest: 10000 rpm}}}
cutters: {flat-6: {diameter: 6 mm, flutes: 3, tool: carbide}}
materials: {al-6082: {forms: [{plate: 300 x 200 x 15 mm, have: 1}]}}
`
const base = (lines: string, ops = 'rough: {cutter: flat-6, depth: 1 mm, feed: 400 mm/min}'): string =>
  `${bench}parts:
  base:
    kind: machined
    qty: 1
    material: al-6082
    stock: {plate: 35 x 25 x 15 mm}
${lines}    route:
      - setup: {machine: mill, time: 20 min}
        ops: [{${ops}}]
`
const model = '    model: base.stl\n'
const read = (text: string, stl: Uint8Array = boxStl(30, 20, 10)) => resolveText(text, { 'base.stl': stl })
const partOf = ({ parts }: Project): Part => parts.get('base')!
const wayOf = (project: Project) => {
  const { way } = partOf(project)
  if (way.kind !== 'machined') throw new Error('not machined')
  return way
}
const operationOf = (project: Project) => {
  const [step] = wayOf(project).route
  if (step?.kind !== 'setup') throw new Error('not a setup')
  return step.operations[0]!
}

describe('the mesh of a part', () => {
  it('gives volume, area and box of a 30 x 20 x 10 mm box', () => {
    // 6000 mm3 and 2 (600 + 300 + 200) mm2: geometry.
    const { finished } = wayOf(read(base(model)).project)
    expect(finished?.volume?.value.valueOf()).toBe(6000)
    expect(finished?.area?.value.valueOf()).toBe(2200)
    expect(finished?.box?.map(({ value }) => value.valueOf())).toEqual([30, 20, 10])
  })

  it('gives way to what is stated, key by key', () => {
    const { project, diagnostics } = read(base(`${model}    finished: {volume: 5.95 cm3}\n`))
    expect(wayOf(project).finished?.volume?.text).toBe('5.95 cm3')
    expect(wayOf(project).finished?.area?.value.valueOf()).toBe(2200)
    // 0.84 % apart is within the 2 % that pass.
    expect(diagnostics.filter(({ code }) => code === 'PRC61')).toEqual([])
  })

  it('weighs a part that states no mass by the density of its material, and says whence', () => {
    // 6 cm3 x 2.70 g/cm3, the density of EN AW-6082 in its suppliers' data.
    const part = partOf(read(base(model)).project)
    expect(part.mass?.value.valueOf()).toBeCloseTo(16.2, 6)
    expect(part.massWorked.join()).toContain('2.7 g/cm3 (al-6082')
  })

  it('counts in the weight of the device', () => {
    const heavy = base(model).replace('parts:', 'limits: {mass: 10 g}\nparts:')
    const disk = memoryDisk({ '/bench/project.yaml': heavy, '/bench/base.stl': boxStl(30, 20, 10) })
    const { diagnostics } = plan('project.yaml', { folder: '/bench', root: '.', read: disk, effort: 1 })
    expect(diagnostics.find(({ code }) => code === 'LIM03')?.says).toContain('16.2 g')
  })

  it('leaves a stated mass as it is', () => {
    const part = partOf(read(base(`${model}    mass: 15 g\n`)).project)
    expect(part.mass?.text).toBe('15 g')
    expect(part.massWorked).toEqual([])
  })

  it('gives no volume where it leaks, and so no mass', () => {
    const { project, diagnostics } = read(
      base(model, 'rough: {cutter: flat-6, time: 5 min}'),
      boxStl(30, 20, 10, 11),
    )
    expect(wayOf(project).finished?.volume).toBeNull()
    expect(wayOf(project).finished?.box?.[0].value.valueOf()).toBe(30)
    expect(partOf(project).mass).toBeNull()
    expect(diagnostics.map(({ code }) => code)).toContain('PRC60')
  })

  it('is read once, and told of once, however many parts name it', () => {
    const two = `${device}${people}parts:
  lid: {kind: bought, qty: 1, have: 1, model: base.stl}
  cap: {kind: bought, qty: 1, have: 1, model: base.stl}
`
    const { diagnostics } = read(two, boxStl(30, 20, 10, 11))
    expect(diagnostics.filter(({ code }) => code === 'PRC60')).toHaveLength(1)
  })
})

describe('roughing without a volume', () => {
  it('clears what the stock has more than the finished part', () => {
    // 35 x 25 x 15 - 6000 = 7125 mm3; T = V / (a_p a_e v_f eta), a_e half the cutter, eta 0.65.
    const { project, diagnostics } = read(base(model))
    const { cutting } = operationOf(project)
    expect(cutting?.seconds).toBeCloseTo((7125 / (1 * 3 * 400 * 0.65)) * 60, 3)
    expect(cutting?.worked[0]).toBe('removed = stock 13.1 cm3 - finished 6 cm3 = 7.13 cm3')
    expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([])
  })

  it('is not guessed where two operations would share it', () => {
    const twice = 'rough: {cutter: flat-6, depth: 1 mm}}, {rough: {cutter: flat-6, depth: 2 mm}'
    const codes = read(base(model, twice)).diagnostics.map(({ code }) => code)
    expect(codes.filter((code) => code === 'QTY09')).toHaveLength(2)
  })

  it('keeps a stated volume', () => {
    const { project } = read(
      base(model, 'rough: {cutter: flat-6, depth: 1 mm, feed: 400 mm/min, volume: 3 cm3}'),
    )
    expect(operationOf(project).cutting?.worked[0]).not.toContain('removed')
  })
})
