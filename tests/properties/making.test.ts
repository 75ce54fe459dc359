/** Whatever is said of printers, prints, meshes and boards: no time, mass or amount is ever below zero or no number. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Project } from '../../src/model/project.ts'
import { boxStl } from '../unit/geometry/box-stl.ts'
import { device, people, resolveText } from '../unit/resolve/resolve-text.ts'

const runs = { numRuns: 120 }

/** Sensible, slips of a unit, and nonsense. */
const lengths = fc.constantFrom(
  '10 mm',
  '0.05 mm',
  '0.0000001 mm',
  '900 m',
  '1/3 in',
  '0 mm',
  '-2 mm',
  '99999999 mm',
)
const times = fc.constantFrom('2 s', '0 s', '1 h', '0.0001 s', '900 d', '-1 s')
const ratios = fc.constantFrom('20 %', '0 %', '100 %', '900 %', '0.0001 %', '-5 %')
const volumes = fc.constantFrom('6 cm3', '0.000001 mm3', '900 m3', '0 mm3')
const rates = fc.constantFrom('11 mm3/s', '0.0000001 mm3/s', '900000 mm3/s', '0 mm3/s')
const counts = fc.constantFrom('1', '3', '97', '600')
const keys = <T extends Record<string, fc.Arbitrary<string>>>(all: T): fc.Arbitrary<string> =>
  fc.record(all, { requiredKeys: [] }).map((some) =>
    Object.entries(some as Record<string, string>)
      .map(([key, value]) => `, ${key}: ${value}`)
      .join(''),
  )
const sizes = (parts: number) => fc.tuple(...Array.from({ length: parts }, () => lengths)).map(sharing)
/** `10 x 20 mm`: each side carries its own unit. */
const sharing = (sides: readonly string[]): string => sides.join(' x ')

const printer = fc.tuple(
  fc.constantFrom('vat', 'filament'),
  keys({
    bed: sizes(3),
    gap: lengths,
    layer: lengths,
    exposure: times,
    'bottom exposure': times,
    'bottom layers': counts,
    'lift time': times,
    'resin lost': volumes,
    flow: rates,
    'line width': lengths,
    'print speed': fc.constantFrom('60 mm/s', '0 mm/s', '0.0000001 mm/s', '9000 km/h', '80 mm/min'),
    filament: lengths,
    heat: times,
    deposits: rates,
  }),
)
const part = keys({
  height: lengths,
  footprint: sizes(2),
  supports: ratios,
  infill: ratios,
  walls: fc.constantFrom('1', '3', '97'),
  wall: lengths,
  hole: lengths,
  shrink: ratios,
  layer: lengths,
  volume: volumes,
  model: fc.constant('box.stl'),
  lot: counts,
  time: times,
})
const sides = fc.constantFrom(0, 1e-3, 0.5, 30, 1e6)
const mesh = fc
  .tuple(sides, sides, sides, fc.constantFrom(12, 12, 11, 1))
  .map(([x, y, z, left]) => boxStl(x, y, z, left))

/** Every figure that was worked out of a project. */
function figuresOf({ parts, plates }: Project): readonly (number | null)[] {
  return [...parts.values()].flatMap((one) => {
    const { way } = one
    const mass = one.mass?.value.valueOf() ?? null
    if (way.kind === 'board')
      return [mass, way.solder?.time?.low.valueOf() ?? null, way.panel?.boards ?? null]
    if (way.kind === 'machined')
      return way.route.flatMap((step) =>
        step.kind === 'setup' ? step.operations.map(({ cutting }) => cutting?.seconds ?? null) : [],
      )
    if (way.kind !== 'printed') return [mass]
    const { piece } = way
    const all = [...way.runs.flat(), ...[...plates.values()].flatMap((plate) => plate.runs)]
    return [
      mass,
      piece.seconds,
      piece.materialMm3,
      way.volume?.value.valueOf() ?? null,
      ...all.flatMap(({ seconds, heightMm, layers }) => [seconds, heightMm, layers]),
    ]
  })
}

function expectSane(project: Project): void {
  const wrong = figuresOf(project).filter((value) => value !== null && !(value >= 0 && value < 1e20))
  expect(wrong).toEqual([])
  const sums = JSON.stringify(
    [...project.parts.values()].map((one) => [one.massWorked, one.way]),
    (_, value) => (typeof value === 'bigint' ? String(value) : value),
  )
  expect(sums).not.toMatch(/NaN|Infinity/)
}

it('prints of any printer and part are of sane figures, or told of', () => {
  fc.assert(
    fc.property(printer, part, counts, mesh, fc.boolean(), ([prints, machine], keysOf, qty, stl, onPlate) => {
      const plate = onPlate ? ', plate: p1' : ''
      const text = `${device}${people}machines: {printer: {prints: ${prints}${machine}}}
materials: {resin: {density: 1.18 g/cm3, forms: [{volume: 500 mL, have: 1}]}}
parts:
  shroud: {kind: printed, qty: ${qty}, machine: printer, material: resin${plate}${keysOf}}
${onPlate ? 'plates: {p1: {}}\n' : ''}`
      const { project, diagnostics } = resolveText(text, { 'box.stl': stl })
      expectSane(project)
      const way = project.parts.get('shroud')!.way
      const timed =
        way.kind === 'printed' &&
        (way.job.time !== null || way.piece.seconds !== null || /deposits/.test(machine))
      // A print that has no time is an error that says so.
      if (!timed) expect(diagnostics.some(({ level }) => level === 'error')).toBe(true)
    }),
    runs,
  )
})

it('boards of any outline, panel, trace and value are of sane figures, or told of', () => {
  const lines = keys({
    outline: sizes(2),
    panel: fc
      .tuple(sizes(2), lengths, lengths)
      .map(([size, rails, gap]) => `{size: ${size}, rails: ${rails}, gap: ${gap}}`),
    made: fc
      .tuple(fc.constantFrom('isolation milling', 'etching', 'board house'), lengths, lengths)
      .map(([by, trace, hole]) => `{by: ${by}, trace: ${trace}, hole: ${hole}}`),
    currents: fc
      .tuple(
        fc.constantFrom('2 A', '0 A', '1 nA', '900 kA'),
        lengths,
        lengths,
        fc.constantFrom('10 K', '0 K', '20 °C', '5000 K'),
      )
      .map(
        ([amps, width, copper, rise]) =>
          `[{amps: ${amps}, width: ${width}, copper: ${copper}, rise: ${rise}}]`,
      ),
  })
  const cell = fc.constantFrom(
    '10k',
    '0R',
    '1e99',
    '',
    '4k7',
    '-3',
    '0805',
    'BGA-99999',
    'SOIC-8',
    '1x999',
    'R1-R999',
  )
  const rows = fc.array(fc.tuple(fc.constantFrom('R1', 'R2-R9', 'C3', 'U1'), cell, cell), { maxLength: 4 })
  const offer = fc.constantFrom('price: 2', 'price: 2, per: panel', '"area price": {50 cm2: 2}')
  fc.assert(
    fc.property(
      lines,
      rows,
      offer,
      fc.constantFrom('2', '5 %', '400 %', '0'),
      (keysOf, csv, priced, attrition) => {
        const text = `${device}${people}vendors: {shop: {transit: 2 wd}}
parts:
  bridge: {kind: board, qty: 3, placements: b.csv, solder: {}, offers: [{vendor: shop, lead: 5 wd, ${priced}}]${keysOf}}
  r10k: {kind: bought, value: 10k, package: "0805", attrition: ${attrition}, offers: [{vendor: shop, lead: 5 wd, price: 1}]}
`
        const table = ['reference,value,package', ...csv.map((row) => row.join(','))].join('\n')
        const { project } = resolveText(text, { 'b.csv': table })
        expectSane(project)
        const { needed, toGet } = project.demand.get('r10k')!
        expect(Number.isInteger(needed) && needed >= 0 && Number.isInteger(toGet) && toGet >= 0).toBe(true)
      },
    ),
    runs,
  )
})

it('stock and mesh of any size give a sane volume to clear, or none', () => {
  fc.assert(
    fc.property(mesh, sizes(3), lengths, lengths, (stl, plate, depth, feed) => {
      const text = `${device}${people}cutters: {flat-6: {diameter: 6 mm, flutes: 3, tool: carbide}}
machines: {mill: {}}
materials: {al-6082: {forms: []}}
parts:
  base:
    kind: machined
    qty: 1
    material: al-6082
    stock: {block: ${plate}}
    model: box.stl
    route:
      - setup: {machine: mill, time: 20 min}
        ops: [{rough: {cutter: flat-6, depth: ${depth}, feed: ${feed}/min}}]
`
      expectSane(resolveText(text, { 'box.stl': stl }).project)
    }),
    runs,
  )
})
