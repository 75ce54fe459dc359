import { describe, expect, it } from 'vitest'
import { check } from '../../../src/compile.ts'
import { studyMeshes } from '../../../src/planning/from-meshes/study-meshes.ts'
import { binaryStl } from '../../unit/geometry/solids.ts'
import { device, people, resolveText } from '../../unit/resolve/resolve-text.ts'
import { memoryDisk } from '../../unit/source/memory-disk.ts'
import { block, cornersOf, type Manifold, rod, tube } from './manifold-solids.ts'

// What a hand finds out with the real things; no source but the shapes themselves.

type Bodies = Readonly<Record<string, Manifold>>

const stl = (body: Manifold) => binaryStl({ corners: Float64Array.from(cornersOf(body)) })
const filesOf = (bodies: Bodies) =>
  Object.fromEntries(Object.entries(bodies).map(([name, body]) => [`${name}.stl`, stl(body)]))

function textOf(bodies: Bodies, steps: readonly string[]): string {
  const parts = Object.keys(bodies).map(
    (name) => `  ${name}: {kind: bought, have: 9, worth: 1, model: ${name}.stl, place: assembled}\n`,
  )
  const [ground] = Object.keys(bodies)
  const lines = steps.map((step) => `    - {${step}, time: 5 min}\n`)
  return `${device}${people}parts:\n${parts.join('')}assembly:\n  ground: ${ground}\n  steps:\n${lines.join('')}`
}

function asked(bodies: Bodies, steps: readonly string[]): readonly string[] {
  const { project } = resolveText(textOf(bodies, steps), filesOf(bodies))
  return studyMeshes(project)!
    .plans.get('')!
    .constraints.map(
      ({ form, step, ...rest }) => `${step} ${form} ${'of' in rest ? rest.of.join(' + ') : ''}`,
    )
}

function told(bodies: Bodies, steps: readonly string[], tools = '') {
  const files = Object.entries(filesOf(bodies)).map(([name, bytes]) => [`/b/${name}`, bytes] as const)
  const disk = memoryDisk(Object.fromEntries([['/b/project.yaml', tools + textOf(bodies, steps)], ...files]))
  return check('project.yaml', { folder: '/b', root: '.', read: disk }).diagnostics.filter(({ code }) =>
    /^(?:MSH|ASM|DEP)/.test(code),
  )
}

const codes = (bodies: Bodies, steps: readonly string[], tools = '') =>
  told(bodies, steps, tools).map(({ code }) => code)

/** A shaft along y with a key that stands off it at an angle about it, and a pulley over both. */
function keyed(deg: number): Bodies {
  const bodies = {
    shaft: rod(5, 60, [0, -30, 0], 'y').subtract(block([3, 12, 4], [-1.5, 0, 3])),
    pulley: tube(16, 5.05, 14, [0, -1, 0], 'y').subtract(block([3.1, 40, 7], [-1.55, -20, 0])),
    key: block([3, 12, 3.6], [-1.5, 0, 3]),
  }
  return Object.fromEntries(Object.entries(bodies).map(([name, body]) => [name, body.rotate([0, deg, 0])]))
}
const pulleyFirst = ['put: pulley, on: shaft, by: glue', 'put: key, in: shaft, by: press, light: yes']

describe('a key that stands off its shaft', () => {
  it.each([0, 2, 30, 45, 77])('at %i degrees goes in before its pulley', (deg) => {
    expect(asked(keyed(deg), pulleyFirst)).toContain('key before pulley')
    expect(codes(keyed(deg), pulleyFirst)).toEqual([])
  })

  const keyFrom = (side: string) => [
    `put: key, in: shaft, from: ${side}, by: press, light: yes`,
    'put: pulley, on: shaft, by: glue',
  ]

  it('may be typed from the side that its slot is nearest to', () => {
    expect(codes(keyed(30), keyFrom('top'))).toEqual([])
    expect(codes(keyed(45), keyFrom('top'))).toEqual([])
    expect(codes(keyed(45), keyFrom('right'))).toEqual([])
  })

  it('typed from another side is told so with the way that is free', () => {
    const [found, ...more] = told(keyed(30), keyFrom('right'))
    expect(more).toEqual([])
    expect(found?.code).toBe('MSH10')
    expect(found?.mend).toContain('take `from` out (free is `30° from +z to +x`)')
  })
})

/** A block with a hole from its top, and a screw with a head in it, both tilted about y. */
function screwed(deg: number, over: number): Bodies {
  const hole = rod(1.25, 60, [0, 0, -12]).add(rod(4, 60, [0, 0, 0]))
  return {
    block: block([50, 30, 40], [-25, -15, -40])
      .translate([0, 0, 6])
      .subtract(hole.rotate([0, deg, 0])),
    screw: rod(1.25 + over, 11, [0, 0, -11])
      .add(rod(2.75, 3))
      .rotate([0, deg, 0]),
  }
}

describe('a screw off the axes', () => {
  it.each([0, 2, 5, 10, 45])('with a thread drawn as a cylinder, at %i degrees, needs no word', (deg) => {
    expect(codes(screwed(deg, 0.25), ['put: screw, in: block, by: thread'])).toEqual([])
  })

  it('that is twice too thick is told all the same', () => {
    expect(codes(screwed(10, 1.4), ['put: screw, in: block, by: thread'])).toContain('MSH17')
  })

  it.each([0, 25, 45])('at %i degrees beside a wall is told where its driver has no room along it', (deg) => {
    const straight = {
      base: block([40, 30, 20], [-20, -15, -22])
        .add(block([4, 20, 30], [3.2, -10, -2]))
        .subtract(rod(1.25, 60, [0, 0, -12])),
      plate: block([9, 12, 2], [-6, -6, -2]).subtract(rod(1.45, 10, [0, 0, -5])),
      screw: rod(1.3, 10, [0, 0, -10]).add(rod(2.75, 3)),
    }
    const bodies = Object.fromEntries(
      Object.entries(straight).map(([name, body]) => [name, body.rotate([0, deg, 0])]),
    )
    const steps = ['put: plate, on: base, by: screw, with: screw, tool: hex 2']
    expect(codes(bodies, steps)).toEqual([])
    expect(codes(bodies, steps, 'tools: {hex 2: {diameter: 12 mm, reach: 25 mm}}\n')).toEqual(['MSH20'])
    expect(codes(bodies, steps, 'tools: {hex 2: {diameter: 5 mm, reach: 25 mm}}\n')).toEqual([])
  })
})

describe('a pin two degrees off its block', () => {
  it('goes in along itself', () => {
    const pin = rod(1.5, 12).rotate([0, 2, 0])
    const hole = rod(1.55, 60).rotate([0, 2, 0])
    const bodies = { block: block([40, 20, 30], [-20, -10, -20]).subtract(hole), pin }
    expect(codes(bodies, ['put: pin, in: block, by: press, light: yes'])).toEqual([])
    expect(codes(bodies, ['put: pin, in: block, from: top, by: press, light: yes'])).toEqual([])
    expect(codes(bodies, ['put: pin, in: block, from: left, by: press, light: yes'])).toEqual(['MSH10'])
  })
})
