/** A small project planned whole, for the sheets of the bench: two devices, one machined part, one assembly. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { plan } from '../../../src/compile.ts'
import type { Told } from '../../../src/report/sheets.ts'

/** The project text, with a name for the machined part. */
export const benchText = (base = 'base', qty = 2): string => `
device: {name: Stirrer, revision: B, qty: ${qty}, currency: EUR, start: 2026-02-02}
people:
  ana: {hours: {daily: "08:00-20:00"}}
machines:
  mill: {}
  printer: {prints: vat}
cutters:
  flat-3: {diameter: 3 mm, have: 1, life: 5 h, worth: 14}
materials:
  brass: {caution: fine needles fly far, forms: [{bar: 20 mm, length: 500 mm, have: 3, worth: 1}]}
  resin: {caution: no skin contact, density: 1.1 g/cm3, forms: [{volume: 500 mL, have: 1, worth: 20}]}
parts:
  "${base}":
    kind: machined
    number: ST-1
    material: brass
    stock: {bar: 20 mm, length: 20 mm}
    spares: 1
    lot: 2
    features: {width: 4.2 ± 0.05 mm, seat: 6 H7}
    route:
      - setup: {machine: mill, hold: vice, time: 20 min, load: 2 min, unload: 1 min, zero: G54}
        ops:
          - face: {cutter: flat-3, depth: 0.5 mm, time: 4 min}
          - rough: {cutter: flat-3, feed: 400 mm/min, time: 10..12..20 min}
      - deburr: {time: 5 min}
  cover: {kind: printed, machine: printer, material: resin, volume: 4 cm3, plate: p1}
  tube: {kind: bought, role: consumable, have: 40, worth: 1, caution: do not squeeze}
  ring: {kind: bought, have: 40, worth: 1}
plates:
  p1: {machine: printer, material: resin, time: 3 h, load: 10 min, unload: 10 min, wash: 10 min, cure: 20 min}
assembly:
  ground: "${base}"
  openings: {"${base}": [top]}
  steps:
    - {name: glue ring, put: ring, in: "${base}", by: glue, with: tube, cure: 2 h, time: 6 min, check: flush}
    - {name: close, put: cover, on: "${base}", by: press, shut: "${base}.top"}
    - {name: spin, test: turns at 300 rpm, after: [close], time: 10 min, fails: 20 %, rework: 15 min}
`

/** The plan of such a project. */
export function benchTold(text = benchText()): Told {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  try {
    const file = join(folder, 'project.yaml')
    writeFileSync(file, text)
    const { results, diagnostics } = plan(file, { effort: 2 })
    if (!results) throw new Error(diagnostics.map(({ code, says }) => `${code} ${says}`).join('\n'))
    return { results, findings: diagnostics, fettle: '0' }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
