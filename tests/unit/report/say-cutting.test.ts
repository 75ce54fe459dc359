import { describe, expect, it } from 'vitest'
import type { Operation } from '../../../src/model/project.ts'
import { sayAssumed, sayCutting, saySettings } from '../../../src/report/say-cutting.ts'
import { device, people, resolveText } from '../resolve/resolve-text.ts'

function operation(text: string, material = 'al-6082'): Operation {
  const { project } = resolveText(`${device}${people}machines: {mill: {}}
cutters: {flat-6: {diameter: 6 mm, flutes: 3, tool: carbide}}
materials: {${material}: {}}
parts:
  base:
    kind: machined
    qty: 1
    material: ${material}
    stock: {block: 60 x 40 x 20 mm}
    route: [{setup: {machine: mill, time: 20 min}, ops: [{${text}}]}]
`)
  const way = project.parts.get('base')!.way
  const step = way.kind === 'machined' ? way.route[0] : undefined
  if (step?.kind !== 'setup') throw new Error('no set-up')
  return step.operations[0]!
}

const keys = 'cutter: flat-6, volume: 9 cm3, depth: 1 mm'

describe('what to set for a cut', () => {
  it('is speed and feed from the tables where nobody stated them', () => {
    // n = 1000 x 300 / (pi x 6), the low end of the makers' range for carbide; v_f = n z 0.006 D.
    expect(saySettings(operation(`rough: {${keys}, step: 3 mm}`))).toBe('15915 rpm\n1719 mm/min')
  })

  it('is a cutting speed and a feed of one turn as the machine takes them', () => {
    // n = 1000 x 150 / (pi x 6); v_f = n f.
    const stated = operation(`rough: {${keys}, speed: 150 m/min, feed: 0.09 mm/rev}`)
    expect(saySettings(stated)).toBe('7958 rpm\n716 mm/min')
  })

  it('is what was typed where nothing is worked out', () => {
    expect(saySettings(operation('rough: {speed: 9000 rpm, time: 5 min}'))).toBe('9000 rpm')
  })
})

describe('what to expect of a cut', () => {
  it('is its chip and the power at the cut', () => {
    expect(sayCutting(operation(`rough: {${keys}, step: 3 mm}`))).toEqual([
      expect.stringMatching(/^chip 0\.0\d+ mm$/),
      expect.stringMatching(/^about \d+ W at the cut$/),
    ])
  })

  it('is the number of passes where it was worked out, and not where it was stated', () => {
    const contour = (more: string): string =>
      sayCutting(
        operation(`contour: {cutter: flat-6, length: 90 mm, height: 4 mm, step: 1 mm${more}}`),
      ).join()
    expect(contour(', depth: 1 mm')).toContain('4 passes')
    expect(contour(', passes: 3')).not.toContain('passes')
  })

  it('is nothing for work that is not worked out', () => {
    expect(sayCutting(operation('rough: {time: 5 min}'))).toEqual([])
  })
})

describe('what was taken for a cut', () => {
  it('is said with its source, and only what nobody stated', () => {
    const said = sayAssumed(operation(`rough: {${keys}, step: 2 mm, feed: 700 mm/min}`).cutting!)
    expect(said.map((line) => line.replace(/ \d.*/, ''))).toEqual(['cutting speed', 'path efficiency'])
    for (const line of said) expect(line).toMatch(/\(.+\)$/)
  })
})
