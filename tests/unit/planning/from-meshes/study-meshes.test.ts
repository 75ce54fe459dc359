import { describe, expect, it } from 'vitest'
import { check } from '../../../../src/compile.ts'
import { studyMeshes } from '../../../../src/planning/from-meshes/study-meshes.ts'
import { binaryStl, box, moved, together } from '../../geometry/solids.ts'
import { device, people, resolveText } from '../../resolve/resolve-text.ts'
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

const walls: readonly Six[] = [
  [1.5, 18.5, 1.5, 18.5, 0, 2],
  [0, 2, 0, 20, 0, 12],
  [18, 20, 0, 20, 0, 12],
  [1, 19, 0, 2, 0, 12],
  [1, 19, 18, 20, 0, 12],
]
const files = {
  'cup.stl': boxes(...walls),
  // A lip of 1 mm all round, over the core.
  'lipped.stl': boxes(...walls, [1, 5, 1, 19, 10.5, 12.5], [15, 19, 1, 19, 10.5, 12.5]),
  'high lid.stl': boxes([0, 20, 0, 20, 12.5, 15]),
  'core.stl': boxes([4, 16, 4, 16, 2, 10]),
  'lid.stl': boxes([0, 20, 0, 20, 12, 14]),
  'pins.stl': boxes([5, 7, 5, 7, 10, 13], [9, 11, 5, 7, 10, 13], [13, 15, 5, 7, 10, 13]),
  'screw.stl': boxes([9, 11, 9, 11, 9, 14.5], [8, 12, 8, 12, 14, 16]),
}
const part = (name: string, file = name, place = 'assembled') =>
  `  ${name}: {kind: bought, have: 9, worth: 1, model: ${file}.stl, place: ${place}}\n`
const project = (parts: string, steps: string) =>
  `${device}${people}parts:\n${parts}assembly:\n  ground: cup\n  steps:\n${steps}`
const asked = (text: string) =>
  studyMeshes(resolveText(text, files).project)!
    .plans.get('')!
    .constraints.map(
      ({ form, step, ...rest }) =>
        `${step} ${form} ${('of' in rest ? rest.of : 'needs' in rest ? rest.needs : []).join(' + ')}`,
    )
const codes = (text: string): string[] => {
  const disk = memoryDisk(
    Object.fromEntries([
      ['/b/project.yaml', text],
      ...Object.entries(files).map(([name, bytes]) => [`/b/${name}`, bytes]),
    ]),
  )
  return check('project.yaml', { folder: '/b', root: '.', read: disk })
    .diagnostics.map(({ code }) => code)
    .filter((code) => /^(?:MSH|ASM|DEP)/.test(code))
}

describe('what meshes ask of an order', () => {
  it('is nothing where fewer than two stand in place', () => {
    expect(
      studyMeshes(resolveText(project(part('cup'), '    - {test: glows, time: 5 min}\n'), files).project),
    ).toBe(null)
  })

  it('puts a core before the lid that shuts it in', () => {
    const text = project(
      part('cup') + part('core') + part('lid'),
      '    - {put: lid, on: cup, time: 5 min}\n    - {put: core, on: cup, time: 5 min}\n',
    )
    expect(asked(text)).toEqual(['core before lid'])
  })

  it('takes shells of one file as copies', () => {
    const text = project(
      part('cup') + part('core') + part('pins'),
      '    - {put: core, on: cup, by: glue, cure: 1 h, time: 5 min}\n    - {put: pins x3, on: core, by: glue, time: 5 min}\n',
    )
    const { moves } = studyMeshes(resolveText(text, files).project)!.plans.get('')!
    expect(moves.map(({ part: name, bodies }) => [name, bodies.length])).toEqual([
      ['core', 1],
      ['pins', 1],
      ['pins', 1],
      ['pins', 1],
    ])
    expect(codes(text)).toEqual([])
    expect(codes(text.replace('pins x3', 'pins x4'))).toEqual(['MSH19'])
  })

  it('lets a fastener follow what it touches', () => {
    const text = project(
      part('cup') + part('core') + part('lid') + part('screw'),
      '    - {name: bolt, do: bolt it, with: screw, by: screw, time: 5 min}\n    - {put: lid, on: cup, time: 5 min}\n    - {put: core, on: cup, time: 5 min}\n',
    )
    expect(asked(text)).toContain('lid before bolt')
    expect(asked(text)).toContain('core before bolt')
  })

  it('holds what has no typed place back until something it touches is there', () => {
    const text = project(
      part('cup') + part('core') + part('pins'),
      '    - {put: pins x3, by: glue, time: 5 min}\n    - {put: core, on: cup, by: glue, time: 5 min}\n',
    )
    expect(asked(text)).toContain('pins presence core')
  })

  it('has the largest that goes on nothing first, and nothing goes in past it', () => {
    const text = project(
      part('cup') + part('core') + part('lid'),
      '    - {put: lid, by: glue, time: 5 min}\n    - {put: core, by: seat, time: 5 min}\n    - {put: cup, by: seat, time: 5 min}\n',
    ).replace('  ground: cup\n', '')
    expect(asked(text).sort()).toEqual([
      'core before lid',
      'core presence cup',
      'cup before core',
      'cup before lid',
      'lid presence cup',
    ])
  })

  it('asks for no base where what all goes on has no mesh', () => {
    const bare = (ground: string, steps: string) =>
      asked(
        project(part('cup') + part('core') + part('lid'), steps)
          .replace('  ground: cup\n', ground)
          .replace('model: cup.stl, place: assembled', 'note: not drawn'),
      )
    const inCup =
      '    - {name: close, put: lid, on: cup, by: glue, time: 5 min}\n    - {put: core, in: cup, by: seat, time: 5 min}\n'
    expect(bare('  ground: cup\n', inCup)).toEqual([])
    expect(bare('', `${inCup}    - {put: cup, time: 5 min}\n`)).toEqual([])
  })

  it('gives way to a typed order, and says so', () => {
    const text = project(
      part('cup') + part('core') + part('lid'),
      '    - {put: lid, on: cup, by: glue, time: 5 min}\n    - {put: core, on: cup, by: glue, after: [lid], time: 5 min}\n',
    )
    expect(codes(text)).toEqual(['MSH14'])
  })

  it('gives way to work that must be done between, and says so', () => {
    const text = project(
      part('cup') + part('core') + part('lid'),
      '    - {name: close, put: lid, on: cup, by: glue, time: 5 min}\n    - {put: core, on: cup, by: glue, needs: [wiring], time: 5 min}\n',
    ).replace('parts:\n', 'work: {wiring: {time: 5 min, after: [close]}}\nparts:\n')
    expect(codes(text)).toEqual(['MSH14'])
  })
})

describe('a part that bends on its way in', () => {
  const snapped = (more: string) =>
    codes(
      project(
        part('cup', 'lipped') + part('core'),
        `    - {put: core, on: cup, by: snap, ${more}time: 5 min}\n`,
      ),
    )

  it('is told to be stuck where nothing says so', () => {
    expect(snapped('')).toEqual(['MSH13'])
  })

  it('passes what stops it no wider than it gives, from the direction typed', () => {
    expect(snapped('from: top, gives: 1.2 mm, ')).toEqual([])
    expect(snapped('from: top, gives: 0.5 mm, ')).toEqual(['MSH13'])
    expect(snapped('from: left, gives: 1.2 mm, ')).toEqual(['MSH13'])
  })
})

describe('a part that its seat does not let in by any straight way', () => {
  // The core snaps in under the lip of the cup; the lid shuts it in, the post stands beside.
  const snapped = (more: string) =>
    asked(
      project(
        part('cup', 'lipped') + part('core') + part('lid', 'high lid'),
        `    - {put: core, on: cup, by: snap, ${more}time: 5 min}\n    - {put: lid, on: cup, by: glue, time: 5 min}\n`,
      ),
    )

  it('still comes before what else would shut it out, where its seat stops it least', () => {
    expect(snapped('')).toEqual(['core before lid'])
  })

  it('bends over its seat alone: what it gives does not let it past others', () => {
    expect(snapped('from: top, gives: 14 mm, ')).toEqual(['core before lid'])
  })
})

describe('copies that several steps put', () => {
  it('go to the step whose parts they touch, in whatever order their places stand', () => {
    const text = (places: string) =>
      project(
        part('cup') + part('core') + part('lid') + part('screw', 'pin', places),
        '    - {name: first, put: core, on: cup, with: screw, by: screw, time: 5 min}\n    - {name: then, put: lid, on: cup, with: screw, by: screw, time: 5 min}\n',
      )
    const pin = boxes([0, 2, 0, 2, 0, 4])
    const brought = (places: string) => {
      const { project: read } = resolveText(text(places), { ...files, 'pin.stl': pin })
      const studied = studyMeshes(read)!
      return studied.plans
        .get('')!
        .moves.filter(({ role }) => role === 'fastener')
        .map(({ step, bodies }) => [step, studied.solids[bodies[0]!]!.low[2]])
    }
    const [onCore, onLid] = ['{at: [9 mm, 9 mm, 8 mm]}', '{at: [1 mm, 1 mm, 13 mm]}']
    expect(brought(`[${onCore}, ${onLid}]`)).toEqual([
      ['first', 8],
      ['then', 13],
    ])
    expect(brought(`[${onLid}, ${onCore}]`)).toEqual([
      ['first', 8],
      ['then', 13],
    ])
  })

  it('stay together in a copy of an assembly', () => {
    const text = (knobs: string) =>
      project(
        part('cup') +
          part('post', 'post', '[{at: [2 mm, 2 mm, 12 mm]}, {at: [12 mm, 2 mm, 12 mm]}]') +
          part('knob', 'knob', knobs),
        '    - {put: stalk x2, on: cup, by: glue, time: 5 min}\n',
      ).replace(
        'assembly:\n',
        '  stalk:\n    kind: assembly\n    ground: post\n    steps: [{put: knob, on: post, by: glue, time: 5 min}]\nassembly:\n',
      )
    const own = { ...files, 'post.stl': boxes([0, 2, 0, 2, 0, 10]), 'knob.stl': boxes([0, 2, 0, 2, 10, 14]) }
    const pairs = (knobs: string) => {
      const studied = studyMeshes(resolveText(text(knobs), own).project)!
      return studied.plans
        .get('')!
        .moves.map(({ bodies }) => bodies.map((body) => studied.solids[body]!.low[0]))
    }
    const [left, right] = ['{at: [2 mm, 2 mm, 12 mm]}', '{at: [12 mm, 2 mm, 12 mm]}']
    const together = [
      [2, 2],
      [12, 12],
    ]
    expect(pairs(`[${left}, ${right}]`)).toEqual(together)
    expect(pairs(`[${right}, ${left}]`)).toEqual(together)
  })
})
