import { describe, expect, it } from 'vitest'
import type { Operation } from '../../../src/model/project.ts'
import { device, people, resolveText } from './resolve-text.ts'

/** What stands on the bench besides the part. */
interface Bench {
  readonly cutter?: string
  readonly machine?: string
  readonly material?: string
  readonly stock?: string
  readonly features?: string
}

const bench = {
  cutter: '{diameter: 6 mm, flutes: 3, tool: hss}',
  machine: '{}',
  material: 'al-6082',
  stock: '{block: 80 x 50 x 20 mm}',
  features: '{seat: 6 H7, hole: M5-6H depth 8 mm}',
}

function textOf(operations: readonly string[], given: Bench): string {
  const { cutter, machine, material, stock, features } = { ...bench, ...given }
  return `${device}${people}machines: {mill: ${machine}}
cutters: {edge: ${cutter}, other: {diameter: 5 mm, flutes: 2, tool: hss}}
materials: {${material}: {}}
parts:
  base:
    kind: machined
    qty: 1
    material: ${material}
    stock: ${stock}
    features: ${features}
    route:
      - setup: {machine: mill, time: 20 min}
        ops:
${operations.map((one) => `          - ${one}\n`).join('')}`
}

/** The operations of the only set-up, and the codes of what was said. */
function made(operations: readonly string[], given: Bench = {}) {
  const { project, diagnostics } = resolveText(textOf(operations, given))
  const way = project.parts.get('base')!.way
  const steps = way.kind === 'machined' ? way.route : []
  const all = steps.flatMap((step) => (step.kind === 'setup' ? step.operations : []))
  // How the block is bought and whether all cutters are used is no question of the cut.
  const said = diagnostics
    .filter(({ code }) => code !== 'BUY07' && code !== 'REF03')
    .map(({ code, says }) => `${code} ${says}`)
  return { all, first: all[0]!, says: said }
}

const seconds = ({ time }: Operation): number | undefined => time?.mean.valueOf()

// Times are worked out by hand from T = L / (f n), Groover; run-in, air and setting are common practice, no source.
describe('what an operation does not say is taken', () => {
  it('from the bar: the diameter before turning', () => {
    // 20 to 18 mm in two passes of 0.5 mm: 2 x (12 + 2) mm / 100 mm/min = 16.8 s, x 1.2 air, and 2 x 10 s to set.
    const turn =
      '{turn: {cutter: edge, diameter: 18 mm, length: 12 mm, depth: 0.5 mm, speed: 1000 rpm, feed: 0.1 mm/rev}}'
    const { first } = made([turn], { stock: '{bar: 20 mm, length: 30 mm}', cutter: '{tool: carbide}' })
    expect(first.cutting).toMatchObject({ passes: 2, rpm: 1000, feedMmPerMin: 100 })
    expect(first.cutting!.inCutSeconds).toBeCloseTo(14.4, 9)
    expect(seconds(first)).toBe(Math.ceil(16.8 * 1.2 + 20))
  })

  it('from the block: the face that a cutter goes over', () => {
    // ceil((50 - 6) / 4.2) + 1 = 12 passes of 80 + 6 + 2 x 2 mm.
    const { first } = made(['{face: {cutter: edge, stock: 0.5 mm, feed: 600 mm/min}}'])
    expect(first.cutting!.passes).toBe(12)
    expect(seconds(first)).toBe(Math.ceil(((12 * 90) / 600) * 60 * 1.2))
  })

  it('from the feature on the drawing: the size of a hole', () => {
    const ream = '{ream: {cutter: edge, feature: seat, depth: 12 mm, speed: 250 rpm, feed: 0.2 mm/rev}}'
    const fits = made([ream])
    expect(fits.says).toEqual([])
    // 13 mm at 50 mm/min.
    expect(seconds(fits.first)).toBe(Math.ceil(15.6 * 1.2))
    expect(made([ream], { cutter: '{diameter: 8 mm, flutes: 6, tool: hss}' }).says).toEqual([
      'PRC19 `ream` of `base` wants 6 mm, its cutter makes 8 mm',
    ])
  })

  it('from the cutter: the speed and the chip its maker gives', () => {
    // n = 1000 x 60 / (pi x 6) = 3183.1 rpm; v_f = n z f_z = 3183.1 x 3 x 0.02 mm.
    const cutter = '{diameter: 6 mm, flutes: 3, tool: hss, chip: 0.02 mm, cutting speed: 60 m/min}'
    const { first } = made(['{rough: {cutter: edge, volume: 9 cm3, depth: 1 mm}}'], { cutter })
    expect(first.cutting!.rpm).toBeCloseTo(3183.1, 1)
    expect(first.cutting!.feedMmPerMin).toBeCloseTo(190.99, 2)
    const keys = 'volume: 9 cm3, depth: 1 mm, speed: 4000 rpm, feed: 100 mm/min'
    const stated = made([`{rough: {cutter: edge, ${keys}}}`], { cutter })
    expect(stated.first.cutting).toMatchObject({ rpm: 4000, feedMmPerMin: 100 })
  })

  it('from the tables for the material, by its own name; for one that is in no table the cut says what is missing', () => {
    const rough = '{rough: {cutter: edge, volume: 9 cm3, depth: 1 mm}}'
    expect(made([rough]).first.timeFrom).toBe('computed')
    expect(made([rough], { material: 'mystery metal' }).says).toEqual([
      'QTY09 `rough` of `base` has no time, and it cannot be worked out without `like` of the material',
    ])
  })
})

describe('a cutter', () => {
  it('gives the feed of a drill by what each of its lips takes, unless a feed is stated', () => {
    // v_f = n z f_z = 1000 x 2 x 0.05 mm.
    const cutter = '{diameter: 6 mm, flutes: 2, tool: hss, chip: 0.05 mm}'
    const feed = (more: string) =>
      made([`{drill: {cutter: edge, depth: 9 mm, speed: 1000 rpm${more}}}`], { cutter }).first.cutting!
        .feedMmPerMin
    expect(feed('')).toBeCloseTo(100, 9)
    expect(feed(', feed: 0.2 mm/rev')).toBeCloseTo(200, 9)
    expect(feed(', feed: 80 mm/min')).toBeCloseTo(80, 9)
  })

  it('bends over the length that stands out of its holder, or over its reach where that is not said', () => {
    const over = (more: string): string | undefined =>
      made(['{rough: {cutter: edge, volume: 9 cm3, depth: 1 mm}}'], {
        cutter: `{diameter: 6 mm, flutes: 3, tool: hss, reach: 24 mm${more}}`,
      }).first.cutting!.worked.find((line) => line.startsWith('bend'))
    expect(over('')).toMatch(/over 24 mm/)
    expect(over(', stick-out: 30 mm')).toMatch(/over 30 mm/)
  })
})

describe('the thread of an operation', () => {
  const tapped = (keys: string, cutter: string) =>
    made([`{tap: {cutter: edge, speed: 500 rpm${keys}}}`], { cutter }).first.cutting!.feedMmPerMin

  // The feed is the pitch each turn; coarse pitches of ISO 261: M6 1, M5 0.8, M4 0.7 mm.
  it('is the stated one before that of the feature, and that before the one of the cutter', () => {
    const m4 = '{thread: M4, flutes: 3, tool: hss}'
    expect(tapped(', thread: M6, feature: hole', m4)).toBeCloseTo(500, 9)
    expect(tapped(', feature: hole', m4)).toBeCloseTo(400, 9)
    expect(tapped(', depth: 6 mm', m4)).toBeCloseTo(350, 9)
  })

  it('has the depth of the feature where none is stated', () => {
    // In at the pitch for 8 mm: 8 / 400 min.
    const { first } = made(['{tap: {cutter: edge, speed: 500 rpm, feature: hole}}'])
    expect(first.cutting!.inCutSeconds).toBeCloseTo(1.2, 9)
  })
})

describe('where the time of an operation comes from', () => {
  const drill = 'cutter: edge, depth: 10 mm, feed: 60 mm/min'
  it('is told: stated, worked out, or usual for its features', () => {
    const { all } = made([`{drill: {${drill}, time: 1..2..3 min}}`, `{drill: {${drill}}}`])
    expect(all.map(({ timeFrom }) => timeFrom)).toEqual(['stated', 'computed'])
    expect(seconds(all[0]!)).toBe(120)
    expect(all[0]!.cutting).not.toBeNull()
  })

  it('is the usual one for what is measured', () => {
    const { project } = resolveText(
      `${textOf([`{drill: {${drill}}}`], {})}      - inspect: {features: [seat, hole]}\n`,
    )
    const way = project.parts.get('base')!.way
    const last = way.kind === 'machined' ? way.route.at(-1) : undefined
    expect(last?.kind === 'work' ? last.operation.timeFrom : last?.kind).toBe('usual')
  })

  it('is a whole number of seconds, rounded up, said in minutes and seconds', () => {
    // 20 holes: 20 x (10 mm + point 1.8026 mm + clearance 1 mm) / 60 mm/min, x 1.2 air.
    const { first } = made([`{drill: {${drill}, holes: 20}}`])
    const point = 3 * Math.tan((31 * Math.PI) / 180)
    expect(seconds(first)).toBe(Math.ceil(20 * (11 + point) * 1.2))
    expect(first.time!.text).toBe('5 min 8 s')
  })

  it('is nothing where a size is wrong, and then that alone is said', () => {
    const bore = '{bore: {cutter: edge, from: 12 mm, diameter: 10 mm, depth: 9 mm, feed: 0.1 mm/rev}}'
    const { first, says } = made([bore])
    expect(first.time).toBeNull()
    expect(says).toEqual([
      'PRC11 `bore` of `base` cannot be cut: 10 mm after boring is not above 12 mm before',
    ])
  })
})

describe('changing the cutter in a set-up', () => {
  const drill = (cutter: string, more = ''): string =>
    `{drill: {cutter: ${cutter}, depth: 5 mm, feed: 60 mm/min${more}}}`
  const order = [drill('edge'), drill('edge'), drill('other'), drill('edge')]

  it('takes the machine’s time once for each change; the first cutter is in with the set-up', () => {
    const { all } = made(order, { machine: '{tool change: 90 s}' })
    expect(all.map(({ changeSeconds }) => changeSeconds)).toEqual([0, 0, 90, 90])
    expect(seconds(all[3]!)! - seconds(all[0]!)!).toBe(90)
  })

  it('takes two minutes where the machine does not say, and none where it says none', () => {
    const changes = (machine: string) =>
      made(order, { machine }).all.map(({ changeSeconds }) => changeSeconds)
    expect(changes('{}')).toEqual([0, 0, 120, 120])
    expect(changes('{tool change: 0 s}')).toEqual([0, 0, 0, 0])
  })

  it('is in a stated time already', () => {
    const { all } = made([drill('edge'), drill('other', ', time: 1 min')], { machine: '{tool change: 90 s}' })
    expect(all[1]!.changeSeconds).toBe(0)
    expect(seconds(all[1]!)).toBe(60)
  })
})
