import { describe, expect, it } from 'vitest'
import { stockTooShort } from '../../../src/checks/stock-too-short.ts'
import { travelTooShort } from '../../../src/checks/travel-too-short.ts'
import { collect } from '../../../src/diagnostics/collector.ts'
import { device, people, resolveText } from '../resolve/resolve-text.ts'

interface Setup {
  readonly machine?: string
  readonly stock?: string
  readonly setup?: string
  readonly operation?: string
}

/** What both checks say of a part with one operation in one set-up. */
function says({ machine, stock, setup, operation }: Setup): readonly string[] {
  const { project } =
    resolveText(`${device}${people}machines: {mill: ${machine ?? '{travel: 250 x 150 x 200 mm}'}}
cutters: {flat-6: {diameter: 6 mm, flutes: 3, reach: 20 mm, stick-out: 30 mm, tool: carbide}}
materials: {al-6082: {}}
parts:
  base:
    kind: machined
    qty: 1
    material: al-6082
    stock: {${stock ?? 'block: 80 x 50 x 20 mm'}}
    route:
      - setup: {machine: mill, time: 20 min${setup ?? ''}}
        ops: [{${operation ?? 'rough: {cutter: flat-6, volume: 9 cm3, depth: 1 mm}'}}]
`)
  const { report, diagnostics } = collect()
  travelTooShort(project, report)
  stockTooShort(project, report)
  return diagnostics().map((one) => `${one.code} ${one.says}`)
}

// Sums of lengths that stand on or beside one another: geometry.
describe('the room of a set-up', () => {
  it('is enough where stock, 50 mm of workholding and the cutter that stands out stay within the travel', () => {
    expect(says({})).toEqual([])
  })

  it('may be had by turning a plate round, but not by setting it on end', () => {
    expect(says({ stock: 'plate: 120 x 240 x 20 mm' })).toEqual([])
    expect(says({ stock: 'plate: 260 x 20 x 10 mm' })).toEqual([
      'PRC29 this setup of `base` needs 260 mm along X (260 stock), `mill` has 250 mm',
    ])
  })

  it('counts the cutter on both sides only where it runs off the work', () => {
    const stock = 'plate: 245 x 100 x 10 mm'
    expect(says({ stock })).toEqual([])
    expect(says({ stock, operation: 'face: {cutter: flat-6, stock: 0.5 mm}' })).toEqual([
      'PRC29 this setup of `base` needs 255 mm along X (245 stock + 6 cutter + 2 x 2 clearance), `mill` has 250 mm',
    ])
  })

  it('is taken up by the clearance that the set-up says, and by the headroom where the machine says it', () => {
    const setup = ', clearance: 155 mm'
    expect(says({ setup })).toEqual([
      'PRC29 this setup of `base` needs 205 mm along Z (155 hold + 20 stock + 30 cutter), `mill` has 200 mm',
    ])
    expect(says({ setup, machine: '{travel: 250 x 150 x 200 mm, headroom: 280 mm}' })).toEqual([])
  })

  it('is not asked for on a lathe, nor where the machine does not say its travel', () => {
    const stock = 'bar: 60 mm, length: 400 mm'
    const operation = 'turn: {cutter: flat-6, diameter: 50 mm, length: 300 mm, time: 9 min}'
    expect(says({ stock, operation })).toEqual([])
    expect(says({ stock, machine: '{}' })).toEqual([])
  })

  it('is tried with a bar lying both ways and standing', () => {
    expect(says({ stock: 'bar: 60 mm, length: 240 mm' })).toEqual([])
    expect(says({ stock: 'bar: 60 mm, length: 260 mm' })).toHaveLength(1)
  })
})

describe('the length of the stock', () => {
  const bar = 'bar: 20 mm, length: 30 mm'
  const turn = (length: number): string =>
    `turn: {cutter: flat-6, diameter: 18 mm, length: ${length} mm, time: 9 min}`

  it('is enough for what is turned over it, with 2 mm to run out', () => {
    expect(says({ stock: bar, operation: turn(32) })).toEqual([])
    expect(says({ stock: bar, operation: turn(33) })).toEqual([
      'PRC31 `turn` of `base` goes over 33 mm, its stock has 30 mm',
    ])
  })

  it('lets a drill break through by the point of it', () => {
    const drill = (depth: number): string =>
      `drill: {cutter: flat-6, diameter: 6 mm, depth: ${depth} mm, peck: 5 mm, time: 9 min}`
    expect(says({ stock: bar, operation: drill(34) })).toEqual([])
    expect(says({ stock: bar, operation: drill(35) })).toHaveLength(1)
  })

  it('is that of the longest side of a block, which may be drilled from any side', () => {
    const bore = (depth: number): string =>
      `bore: {cutter: flat-6, from: 8 mm, diameter: 9 mm, depth: ${depth} mm, time: 9 min}`
    expect(says({ operation: bore(80) })).toEqual([])
    expect(says({ operation: bore(90) })).toHaveLength(1)
  })
})
