import { describe, expect, it } from 'vitest'
import { check } from '../../../../src/compile.ts'
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

interface Device {
  /** Boxes of the mesh of each part; `null`: it has none. */
  readonly parts: Readonly<Record<string, readonly Six[] | null>>
  readonly steps: readonly string[]
  readonly openings?: string
  readonly features?: Readonly<Record<string, string>>
}

/** What is said of the meshes of a device, with its mend. */
function told({ parts, steps, openings, features = {} }: Device): readonly string[] {
  const lines = Object.entries(parts).map(
    ([name, mesh]) =>
      `  ${name}: {kind: bought, have: 9, worth: 1${features[name] ? `, features: ${features[name]}` : ''}${mesh ? `, model: ${name}.stl, place: assembled` : ''}}\n`,
  )
  const text = `${device}${people}parts:\n${lines.join('')}assembly:\n${openings ? `  openings: ${openings}\n` : ''}  steps:\n${steps.map((step) => `    - {${step}, time: 5 min}\n`).join('')}`
  const files = Object.entries(parts).flatMap(([name, mesh]) =>
    mesh ? [[`/b/${name}.stl`, boxes(...mesh)] as const] : [],
  )
  const disk = memoryDisk(Object.fromEntries([['/b/project.yaml', text], ...files]))
  return check('project.yaml', { folder: '/b', root: '.', read: disk })
    .diagnostics.filter(({ code }) => /^(?:MSH|SHP|REF|QTY|SRC)/.test(code))
    .map(({ code, says, mend }) => `${code} ${says} | ${mend}`)
}
const codes = (one: Device): readonly string[] => told(one).map((line) => line.slice(0, 5))

const block: Six = [0, 40, 0, 40, 0, 10]
const plate: Six = [0, 40, 0, 40, 10, 14]

describe('a part that nothing holds', () => {
  const dowels: readonly Six[] = [
    [5, 8, 5, 8, 10, 14],
    [30, 33, 30, 33, 10, 14],
  ]
  const holed: readonly Six[] = [
    [0, 40, 0, 5, 10, 14],
    [0, 40, 8, 30, 10, 14],
    [0, 40, 33, 40, 10, 14],
  ]
  it('is not held by what is joined to something else and touches it', () => {
    expect(
      codes({
        parts: { block: [block], dowel: dowels, plate: holed },
        steps: ['put: dowel x2, on: block, by: press, light: yes', 'put: plate, on: block, by: seat'],
      }),
    ).toEqual(['MSH18'])
  })

  it('is held by what is joined to it', () => {
    expect(
      codes({
        parts: { block: [block], plate: [plate], lug: [[10, 20, 10, 20, 14, 20]] },
        steps: ['put: plate, on: block, by: seat', 'put: lug, on: plate, by: glue'],
      }),
    ).toEqual([])
  })
})

describe('a join without contact', () => {
  const over = (gap: number): Device => ({
    parts: { block: [block], plate: [[0, 40, 0, 40, 10 + gap, 14 + gap]] },
    steps: ['put: plate, on: block, by: glue'],
  })
  it.each([
    [0.25, []],
    [0.4, ['MSH15']],
    [0.8, ['MSH21']],
  ])('begins beyond the play of a fit: %s mm', (gap, expected) => {
    // Both bodies are apart from everything in the last case, each told of.
    expect([...new Set(codes(over(gap)))]).toEqual(expected)
  })

  it('tells how far they are apart', () => {
    expect(told(over(0.4))[0]).toMatch(/they are 0\.4 mm apart/)
  })

  it.each(['press, light: yes', 'thread'])('is found for a part in another by %s', (by) => {
    const found = told({
      parts: { block: [block], plate: [plate], pin: [[18, 20, 18, 20, 14, 20]] },
      steps: ['put: plate, on: block, by: glue', `put: pin, in: block, by: ${by}`],
    })
    expect(found[0]).toMatch(/^MSH15 .*`pin` to `block`.*they are 4 mm apart; it touches `plate`/)
  })

  it('is found for screws that end in what they should hold', () => {
    const screwed = (low: number): Device => ({
      parts: {
        block: [block],
        plate: [plate],
        screw: [
          [18, 20, 18, 20, low, 14],
          [16, 22, 16, 22, 14, 16],
        ],
      },
      steps: ['put: plate, on: block, by: screw, with: screw'],
    })
    expect(told(screwed(11.5)).filter((line) => line.startsWith('MSH15'))[0]).toMatch(
      /`screw` to `block`, but nowhere do they touch: they are 1\.5 mm apart/,
    )
    expect(codes(screwed(9)).includes('MSH15')).toBe(false)
  })
})

describe('a gasket of 1 mm under a lid', () => {
  const joint = (steps: readonly string[]): Device => ({
    parts: {
      block: [block],
      gasket: [
        [0, 40, 0, 17, 10, 11],
        [0, 40, 23, 40, 10, 11],
      ],
      lid: [[0, 40, 0, 40, 11, 15]],
      screw: [
        [18, 20.3, 19, 21, 8, 15],
        [16, 22, 17, 23, 15, 17],
      ],
    },
    steps,
  })
  it('explains that lid and block do not touch, and that the screws go on into the block', () => {
    const lay = 'put: gasket, on: block, by: seat'
    expect(codes(joint([lay, 'put: lid, on: block, by: screw, with: screw']))).not.toContain('MSH15')
    const found = told(joint([lay, 'put: lid, on: gasket, by: screw, with: screw']))
    // Drawn into solid boxes 2 mm wide: more than a thread explains, but the join is known.
    expect(found.filter((line) => /no join explains/.test(line))).toEqual([])
  })

  it('does not explain it where nothing lies between', () => {
    const bare = joint(['put: lid, on: block, by: glue'])
    expect(codes({ ...bare, parts: { block: [block], lid: [[0, 40, 0, 40, 10.4, 14]] } })).toContain('MSH15')
  })
})

describe('an overlap', () => {
  it('of what bends is explained as far as it gives', () => {
    const squeezed = (more: string): Device => ({
      parts: { block: [block], ring: [[10, 30, 10, 30, 9.6, 12]] },
      steps: [`put: ring, on: block, by: seat${more}`],
    })
    expect(codes(squeezed(''))).toContain('MSH17')
    expect(codes(squeezed(', from: top, gives: 0.5 mm'))).not.toContain('MSH17')
    expect(codes(squeezed(', from: top, gives: 0.2 mm'))).toContain('MSH17')
  })

  const sunk = (by: string, more = ''): Device => ({
    parts: { block: [block], pin: [[18, 22, 18, 22, 9.3, 20]] },
    steps: [`put: pin, on: block, by: ${by}${more}`],
  })
  it.each([
    ['press, light: yes', ['MSH17']],
    ['glue', ['MSH17']],
    ['thread', []],
    ['snap', []],
  ])('of 0.7 mm as drawn, by %s', (by, expected) => {
    expect(codes(sunk(by))).toEqual(expected)
  })

  it('is explained by features that a step of another join says meet', () => {
    const bushed = (more: string): Device => ({
      parts: {
        block: [block],
        bush: [[10, 30, 10, 30, 10, 14]],
        pin: [[18, 22, 18, 22, 13.6, 20]],
      },
      features: { bush: '{bore: 4 H7}', pin: '{journal: 4 h6}' },
      steps: ['put: bush, on: block, by: glue', `put: pin, in: block, by: seat${more}`],
    })
    expect(codes(bushed(''))).toContain('MSH17')
    expect(codes(bushed(', mates: [bush.bore, pin.journal]'))).not.toContain('MSH17')
  })

  it('that is wide is told of alone, not also as a part that is stuck', () => {
    const found = codes({
      parts: { block: [block], pin: [[18, 22, 18, 22, 2, 8]] },
      steps: ['put: pin, in: block, by: press, light: yes'],
    })
    expect(found).toEqual(['MSH17'])
  })
})

describe('copies', () => {
  it('are told of with the place of the one that is meant', () => {
    const found = told({
      parts: {
        block: [block],
        pin: [
          [10, 12, 10, 12, 10, 14],
          [30, 32, 30, 32, 30, 34],
        ],
      },
      steps: ['put: pin x2, on: block, by: glue'],
    })
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(/^MSH21 the mesh of `pin` at \[31, 31, 32\] mm .*nearest is `block`, 20 mm away/)
  })

  it('of rings and a core in one file are as many as are put', () => {
    const ringed = (x: number): readonly Six[] => [
      [x, x + 10, 0, 10, 10, 14],
      [x + 4, x + 6, 4, 6, 10, 14],
    ]
    const device = (mesh: readonly Six[]): Device => ({
      parts: { block: [block], bearing: mesh },
      steps: ['put: bearing x2, on: block, by: glue'],
    })
    expect(codes(device([...ringed(0), ...ringed(20)]))).toEqual([])
    expect(told(device([...ringed(0), ...ringed(12), ...ringed(24)]))[0]).toMatch(
      /^MSH19 the mesh of `bearing` has 6 shells, .* put 2 \| .*one mesh of one copy and a `place` for each/,
    )
  })
})

describe('a lid that keeps something out', () => {
  const cup: readonly Six[] = [
    [1.5, 18.5, 1.5, 18.5, 0, 2],
    [0, 2, 0, 20, 0, 12],
    [18, 20, 0, 20, 0, 12],
    [1, 19, 0, 2, 0, 12],
    [1, 19, 18, 20, 0, 12],
  ]
  const shut = (openings: string, what: string, put = 'in: cup'): readonly string[] =>
    told({
      parts: { cup, core: [[4, 16, 4, 16, 2, 10]], lid: [[0, 20, 0, 20, 12, 14]] },
      openings: `{cup: [${openings}]}`,
      steps: [`put: core, ${put}, by: glue`, `put: lid, on: cup, by: glue, shut: cup.${what}`],
    }).filter((line) => line.startsWith('MSH12'))

  it('asks for `through` where the opening is in `shut` already', () => {
    expect(shut('top, front', 'top')[0]).toMatch(/\| write `through: top` in `core`/)
  })

  it('asks for the opening and `through` where another is in `shut`', () => {
    expect(shut('top, front', 'front')[0]).toMatch(
      /\| add `cup\.top` to the `shut` of `lid`, and write `through: top` in `core`/,
    )
  })

  it('has nothing to say once that is typed', () => {
    expect(shut('top, front', 'top', 'in: cup, through: top')).toEqual([])
  })
})

describe('parts without a mesh', () => {
  const bare = (parts: Device['parts'], first: string): readonly string[] =>
    told({
      parts: { ...parts, plate: [plate], lug: [[10, 20, 10, 20, 14, 20]] },
      steps: [first, 'put: plate, on: block, by: glue', 'put: lug, on: plate, by: glue'],
    }).filter((line) => line.startsWith('MSH22'))

  it('are told of in one line, the base first', () => {
    const found = bare({ block: null, pin: null }, 'put: pin, on: plate, by: press, light: yes')
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(/^MSH22 `block` and `pin` have no mesh in place.*`block` is the base/)
  })

  it('are no matter where they are cables or glued on', () => {
    expect(bare({ block: [block], cable: null }, 'put: cable, on: plate, by: plug')).toEqual([])
    expect(bare({ block: [block], label: null }, 'put: label, on: plate, by: glue')).toEqual([])
  })
})

describe('the size of a device', () => {
  it('is told of once where all is tiny, and nothing else', () => {
    const tiny = (all: Six): Six => all.map((x) => x / 25.4 / 2) as unknown as Six
    expect(
      codes({
        parts: { block: [tiny(block)], plate: [tiny([0, 40, 0, 40, 30, 34])] },
        steps: ['put: plate, on: block, by: glue'],
      }),
    ).toEqual(['MSH23'])
  })
})

describe('a word for a side', () => {
  const from = (word: string): readonly string[] =>
    told({
      parts: { block: [block], plate: [plate] },
      steps: [`put: plate, on: block, by: glue, from: ${word}`],
    })
  it('is asked about where it is nearly one', () => {
    expect(from('tpo')[0]).toMatch(/^MSH24 .*\| did you mean `top`/)
    expect(from('the hatch of the case')).toEqual([])
    expect(from('top')).toEqual([])
  })
})

describe('what bends on its way in', () => {
  // A lip 1 mm wide on one side over the core.
  const snapped = (gives: string): Device => ({
    parts: {
      cup: [
        [0, 20, 0, 20, 0, 2],
        [0, 2, 0, 20, 0, 12],
        [18, 20, 0, 20, 0, 12],
        [0, 20, 0, 2, 0, 12],
        [0, 20, 18, 20, 0, 12],
        [0, 5, 0, 20, 10.5, 12.5],
        [15, 20, 0, 20, 10.5, 12.5],
      ],
      core: [[4, 16, 4, 16, 2, 10]],
    },
    steps: [`put: core, on: cup, by: snap${gives}`],
  })

  it('passes what is as wide as it gives, and a cell more', () => {
    expect(codes(snapped(', from: top, gives: 1 mm'))).toEqual([])
    expect(codes(snapped(', from: top, gives: 0.5 mm'))).toEqual(['MSH13'])
  })

  it('is told how wide each stop is, and what is typed', () => {
    expect(told(snapped(', gives: 1 mm'))[0]).toMatch(
      /along \+z \(`cup`, 1(?:\.\d)? mm wide\).*; typed: no `from`, `gives: 1 mm` \|/,
    )
  })
})
