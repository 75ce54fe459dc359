import { describe, expect, it } from 'vitest'
import { plan } from '../../../src/compile.ts'
import type { PrintedWay, Project } from '../../../src/model/project.ts'
import { boxStl } from '../geometry/box-stl.ts'
import { memoryDisk } from '../source/memory-disk.ts'
import { device, people, resolveText } from './resolve-text.ts'

const vat = `machines:
  printer: {prints: vat, bed: 70 x 45 x 150 mm, exposure: 2 s, bottom exposure: 30 s, bottom layers: 5, lift time: 6 s, layer: 50 um}
materials: {resin: {density: 1.18 g/cm3, forms: [{volume: 500 mL, have: 1}]}}
`
const filament = `machines:
  printer: {prints: filament, flow: 11 mm3/s, line width: 0.5 mm, layer: 0.2 mm, print speed: 50 mm/s, heat: 4 min}
materials: {resin: {density: 1.24 g/cm3, forms: [{mass: 1 kg, have: 1}]}}
`
const text = (machines: string, parts: string, more = ''): string =>
  `${device}${people}${machines}parts:\n${parts}${more}`
const shroud = (lines: string): string =>
  `  shroud: {kind: printed, qty: 1, machine: printer, material: resin, ${lines}}\n`
const wayOf = ({ parts }: Project, id = 'shroud'): PrintedWay => {
  const way = parts.get(id)?.way
  if (way?.kind !== 'printed') throw new Error('not printed')
  return way
}
const stl = { 'box.stl': boxStl(30, 20, 10) }

describe('a vat print', () => {
  it('takes as long as its layers, the first of them lit longer', () => {
    // 10 mm / 0.05 mm = 200 layers; 5 x 30 + 195 x 2 + 200 x 6 = 1740 s.
    const way = wayOf(resolveText(text(vat, shroud('height: 10 mm, volume: 6 cm3'))).project)
    expect(way.piece.seconds).toBe(1740)
    expect(way.runs[0]?.[0]).toMatchObject({ seconds: 1740, layers: 200, heightMm: 10 })
  })

  it('stands as its mesh does where nothing is said', () => {
    const { piece } = wayOf(resolveText(text(vat, shroud('model: box.stl')), stl).project)
    expect(piece).toMatchObject({ heightMm: 10, footprintMm: [30, 20], seconds: 1740 })
  })

  it('draws its volume, a fifth for supports and what a job loses', () => {
    // 6 x 1.2 + 5 cm3.
    const way = wayOf(resolveText(text(vat, shroud('model: box.stl')), stl).project)
    expect(way.volume?.value.valueOf()).toBeCloseTo(12200, 6)
    expect(way.volumeFrom).toBe('computed')
  })

  it('keeps a stated volume', () => {
    const way = wayOf(resolveText(text(vat, shroud('model: box.stl, volume: 7 cm3')), stl).project)
    expect([way.volume?.text, way.volumeFrom]).toEqual(['7 cm3', 'stated'])
  })

  it('of several parts on a plate takes as long as the highest', () => {
    const parts = shroud('height: 10 mm, volume: 6 cm3, plate: p1')
    const cap = parts.replace('shroud', 'cap').replace('10 mm', '20 mm')
    const { project } = resolveText(text(vat, parts + cap, 'plates: {p1: {}}\n'))
    // 400 layers: 5 x 30 + 395 x 2 + 400 x 6.
    expect(project.plates.get('p1')?.runs.map(({ seconds }) => seconds)).toEqual([3340])
  })
})

describe('pieces that do not fit a bed together', () => {
  const parts = shroud('model: box.stl, plate: p1').replace('qty: 1', 'qty: 6')
  const project = text(vat, parts, 'plates: {p1: {}}\n')

  it('are parted into runs that hold them all', () => {
    // On 70 x 45 mm lie four of 30 x 20 mm with 2 mm between them: two across, two deep.
    const { runs } = resolveText(project, stl).project.plates.get('p1')!
    expect(runs.map(({ loads }) => loads.map(({ pieces }) => pieces))).toEqual([[4], [2]])
  })

  it('become jobs of their own in the plan, one after the other on the printer', () => {
    const disk = memoryDisk({ '/bench/project.yaml': project, '/bench/box.stl': stl['box.stl'] })
    const { results } = plan('project.yaml', { folder: '/bench', root: '.', read: disk, effort: 1 })
    const prints = results!.network.tasks.filter(({ kind }) => kind === 'run')
    expect(prints.map(({ id, minutes }) => [id, minutes])).toEqual([
      ['plate p1 1 of 2 / run', 29],
      ['plate p1 2 of 2 / run', 29],
    ])
    const [one, two] = prints.map(({ id }) => results!.schedule.tasks.get(id)!)
    expect(one!.finish <= two!.start || two!.finish <= one!.start).toBe(true)
    // The parts are there when the last of the jobs is done.
    expect(results!.readyAt.get('shroud')).toBeGreaterThanOrEqual(Math.max(one!.finish, two!.finish))
  })

  it('are parted lot by lot where the part is printed alone', () => {
    const alone = shroud('model: box.stl, lot: 5').replace('qty: 1', 'qty: 6')
    const { runs } = wayOf(resolveText(text(vat, alone), stl).project)
    expect(runs.map((lot) => lot.map(({ loads }) => loads[0]?.pieces))).toEqual([[4, 1], [1]])
  })
})

describe('a filament print', () => {
  it('lays shell and infill at the pace of its lines, and heats once', () => {
    // Shell 2200 mm2 x 1.5 mm = 3300 mm3; 3300 + 0.2 x 2700 = 3840 mm3; 0.5 x 0.2 x 50 = 5 mm3/s;
    // 3840 / (5 x 0.65) + 50 layers x 2 s + 240 s.
    const way = wayOf(resolveText(text(filament, shroud('model: box.stl')), stl).project)
    expect(way.volume?.value.valueOf()).toBeCloseTo(3840, 6)
    expect(way.runs[0]?.[0]?.seconds).toBeCloseTo(3840 / 3.25 + 100 + 240, 3)
  })

  it('is held back by what the hot end melts', () => {
    const slow = filament.replace('11 mm3/s', '2 mm3/s')
    const way = wayOf(resolveText(text(slow, shroud('model: box.stl')), stl).project)
    expect(way.runs[0]?.[0]?.seconds).toBeCloseTo(3840 / 1.3 + 100 + 240, 3)
  })

  it('weighs what is laid, not what its outside holds', () => {
    const part = resolveText(text(filament, shroud('model: box.stl')), stl).project.parts.get('shroud')!
    expect(part.mass?.value.valueOf()).toBeCloseTo(3.84 * 1.24, 6)
  })

  it('has supports on top where they are said', () => {
    const way = wayOf(resolveText(text(filament, shroud('model: box.stl, supports: 10 %')), stl).project)
    expect(way.volume?.value.valueOf()).toBeCloseTo(3840 + 600, 6)
  })
})

describe('sizes to model', () => {
  it('are larger by what shrinks, and holes by what filament closes', () => {
    // 30 / (1 - 0.5 %) = 30.151 mm; holes come out 0.1 to 0.3 mm small (public design guides of print bureaus).
    const lines = 'model: box.stl, shrink: 0.5 %, hole: 3 mm'
    const { worked } = wayOf(resolveText(text(filament, shroud(lines)), stl).project).piece
    expect(worked.join('\n')).toContain('model size = 30 mm / (1 - 0.5 %) = 30.151 mm')
    expect(worked.at(-1)).toContain('= 3.2 mm')
  })
})

describe('a stated time', () => {
  it('is used, and told of where the layers say three times as much or a third', () => {
    const { project, diagnostics } = resolveText(
      text(vat, shroud('height: 10 mm, volume: 6 cm3, time: 9 min')),
    )
    expect(wayOf(project).job.time?.text).toBe('9 min')
    expect(diagnostics.map(({ code }) => code)).toEqual(['PRC40'])
  })

  it('passes where it is near', () => {
    const near = resolveText(text(vat, shroud('height: 10 mm, volume: 6 cm3, time: 35 min')))
    expect(near.diagnostics).toEqual([])
  })
})
