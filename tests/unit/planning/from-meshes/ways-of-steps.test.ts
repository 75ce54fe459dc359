import { describe, expect, it } from 'vitest'
import { plan, planReport } from '../../../../src/compile.ts'
import { binaryStl, box, moved, together } from '../../geometry/solids.ts'
import { device, people } from '../../resolve/resolve-text.ts'
import { memoryDisk } from '../../source/memory-disk.ts'

type Six = readonly [x0: number, x1: number, y0: number, y1: number, z0: number, z1: number]
const boxes = (...all: readonly Six[]) =>
  binaryStl(
    together(
      ...all.map(([x0, x1, y0, y1, z0, z1]) =>
        moved(box(x1 - x0, y1 - y0, z1 - z0), ([x, y, z]) => [x + x0, y + y0, z + z0]),
      ),
    ),
  )

/** A body with a square blind hole of 4 mm from the top, the bottom and the rear, each with a pin in it, and a plate before it. */
const files = {
  'body.stl': boxes(
    [0, 8, 0, 20, 0, 20],
    [12, 20, 0, 20, 0, 20],
    [7, 13, 0, 8, 0, 20],
    [7, 13, 12, 21, 0, 7],
    [7, 13, 12, 21, 13, 20],
    [7, 13, 7, 13, 7, 13],
  ),
  'top pin.stl': boxes([8, 12, 8, 12, 13, 24]),
  'bottom pin.stl': boxes([8, 12, 8, 12, -4, 7]),
  'rear pin.stl': boxes([8, 12, 13, 24, 8, 12]),
  // Before the front, with a square hole for the screw.
  'plate.stl': boxes([0, 2, -2, 0, 0, 20], [4, 20, -2, 0, 0, 20], [1, 5, -2, 0, 0, 2], [1, 5, -2, 0, 4, 20]),
  'screw.stl': boxes([2, 4, -4, 0, 2, 4], [1, 5, -5, -3, 1, 5]),
}
const part = (name: string) =>
  `  ${name}: {kind: bought, have: 9, worth: 1, model: ${name}.stl, place: assembled}\n`
const project = (steps: readonly string[], more: readonly string[] = []) =>
  [
    `${device}${people}parts:\n`,
    ...['body', 'top pin', 'bottom pin', 'rear pin', ...more].map(part),
    'assembly:\n  ground: body\n  steps:\n',
    ...steps.map((one) => `    - {${one}, time: 5 min}\n`),
  ].join('')
const run = <T>(text: string, how: (file: string, options: object) => T): T =>
  how('project.yaml', {
    folder: '/b',
    root: '.',
    samples: 0,
    effort: 1,
    read: memoryDisk({
      '/b/project.yaml': text,
      ...Object.fromEntries(Object.entries(files).map(([name, bytes]) => [`/b/${name}`, bytes])),
    }),
  })
const orderOf = (text: string) => run(text, plan).results!.orders.get('')!
const saysOf = (text: string) => run(text, planReport).report!.assembly[0]!.says

const three = (from = ['', '', '']) => [
  `name: top, put: top pin, in: body, by: press${from[0]}`,
  `name: bottom, put: bottom pin, in: body, by: press${from[1]}`,
  `name: rear, put: rear pin, in: body, by: press${from[2]}`,
]

describe('turnings over where no step types a direction', () => {
  it('are as many as with the directions typed, in whatever words', () => {
    const typed = orderOf(project(three([', from: top', ', from: below', ', from: +y'])))
    const left = orderOf(project(three()))
    expect(typed.turns).toBe(2)
    expect(left.turns).toBe(2)
    expect(left.sidesByMeshes).toEqual({ steps: 3, counted: true })
    expect(saysOf(project(three()))).toContain('turnings over 2 (the directions of 3 steps by the meshes)')
    expect(orderOf(project(three(['', ', from: underside', '']))).turns).toBe(2)
  })

  it('are not counted for what may go in from several sides, but for its screws', () => {
    const plate = (more: string) => [...three().slice(0, 1), `name: close, put: plate, on: body${more}`]
    expect(orderOf(project(plate(', by: glue'), ['plate']))).toMatchObject({
      turns: 0,
      sidesByMeshes: { steps: 1 },
    })
    expect(orderOf(project(plate(', by: screw, with: screw'), ['plate', 'screw']))).toMatchObject({
      turns: 1,
      sidesByMeshes: { steps: 2 },
    })
  })

  it('are those that `turn` says where an assembly says it, and the order tells that', () => {
    const text = project(three(['', ', turn: underside up', '']))
    expect(orderOf(text)).toMatchObject({ turns: 0, sidesByMeshes: { steps: 2, counted: false } })
    expect(saysOf(text)).toContain('turnings over 0 (as `turn` says, which goes before the meshes)')
  })
})

describe('where a step comes from by its meshes', () => {
  const waysOf = (text: string) => {
    const { report, workbook } = run(text, planReport)
    return { report: report!.assembly[0]!.steps, cells: JSON.stringify(workbook) }
  }

  it('stands in the report and on the checklist', () => {
    const { report, cells } = waysOf(project(three()))
    expect(Object.fromEntries(report.map(({ step, way }) => [step, way?.says]))).toEqual({
      top: 'from the top (+z), by the meshes',
      bottom: 'from the bottom (-z), by the meshes',
      rear: 'from the rear (+y), by the meshes',
    })
    expect(report.find(({ step }) => step === 'rear')!.way!.from).toEqual(['+y'])
    expect(cells).toContain('From the rear (+y), by the meshes.')
  })

  it('is silent where it is typed, and for steps without a mesh', () => {
    const { report, cells } = waysOf(
      project([...three([', from: top', '', '']), 'name: look, do: look at it']),
    )
    const ways = new Map(report.map(({ step, way }) => [step, way]))
    expect([ways.get('top'), ways.get('look')]).toEqual([null, null])
    expect(cells).not.toContain('From the top (+z)')
  })

  it('tells the side of the fasteners where it is another', () => {
    // From behind a screw holds what only comes in from the top.
    const text = project([
      'name: top, put: top pin, in: body, by: screw, with: rear pin',
      'name: bottom, put: bottom pin, in: body, by: press',
    ])
    expect(waysOf(text).report.find(({ step }) => step === 'top')!.way).toEqual({
      from: ['+z'],
      fastenedFrom: ['+y'],
      says: 'from the top (+z), fastened from the rear (+y), by the meshes',
    })
  })
})
