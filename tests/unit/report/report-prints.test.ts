import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { planReport } from '../../../src/compile.ts'
import { reportJson } from '../../../src/emit/json/report-json.ts'
import { whyText } from '../../../src/emit/terminal/why.ts'
import { boxStl } from '../geometry/box-stl.ts'
import { memoryDisk } from '../source/memory-disk.ts'

const project = `device: {name: Lamp, qty: 3, currency: EUR, start: 2026-02-02}
people: {ana: {hours: {daily: "09:00-21:00"}}}
machines:
  printer: {prints: vat, bed: 70 x 45 x 150 mm, exposure: 2 s, bottom exposure: 30 s, bottom layers: 5, lift time: 6 s, layer: 50 um}
vendors: {shop: {transit: 2 wd}}
materials: {resin: {density: 1.18 g/cm3, forms: [{volume: 500 mL, have: 1, worth: 20}]}}
plates: {black: {}}
parts:
  shroud: {kind: printed, qty: 2, machine: printer, material: resin, model: box.stl, plate: black}
  bridge:
    kind: board
    qty: 1
    outline: 22 x 14 mm
    panel: {size: 100 x 80 mm, rails: 5 mm}
    placements: b.csv
    offers: [{vendor: shop, per: panel, price: 12.50, lead: 5 wd}]
    solder: {}
  r10k: {kind: bought, value: 10k, package: "0805", attrition: 5 %, offers: [{vendor: shop, price: 0.02, lead: 1 wd}]}
`
const disk = memoryDisk({
  '/bench/project.yaml': project,
  '/bench/box.stl': boxStl(30, 20, 10),
  '/bench/b.csv': 'reference,value,package\nR1-R8,10k,0805\n',
})
const { report, workbook } = planReport('project.yaml', {
  folder: '/bench',
  root: '.',
  read: disk,
  effort: 1,
})
const making = (part: string) => report!.making.filter((one) => one.part === part)

describe('the report of what is printed and soldered', () => {
  it('has each run of a plate with its sums', () => {
    expect(making('black').map(({ process, seconds, timeFrom }) => [process, seconds, timeFrom])).toEqual([
      ['print 1 of 2', 1740, 'computed'],
      ['print 2 of 2', 1740, 'computed'],
    ])
    expect(making('black')[0]?.worked[0]).toBe('on it: shroud x4')
  })

  it('has soldering and the panel of a board with their sums', () => {
    const [bare, solder] = making('bridge')
    expect(bare?.worked.at(-1)).toBe('15 on a panel')
    // Eight chips at 30..45..60 s and 10..20..30 % for looking: 264..432..624 s, of which the mean (a + 4 m + b) / 6.
    expect([solder?.process, solder?.seconds]).toEqual(['solder', 436])
    expect(solder?.worked[0]).toBe('16 joints on a board')
  })

  it('says how a mass came about, and shows it on the parts sheet', () => {
    const part = report!.parts.find(({ name }) => name === 'shroud')!
    expect(part.mass).toBeCloseTo(6 * 1.18, 6)
    expect(part.measured.at(-1)).toBe('mass = 6 cm3 x 1.18 g/cm3 (as stated for resin) = 7.08 g')
    const cells = JSON.stringify(workbook!.sheets.find(({ name }) => name === 'Parts'))
    expect(cells).toContain('about 7.08 g, worked out')
  })

  it('answers why with the same sums', () => {
    const answer = whyText(report!, 'black')
    expect(answer.kind === 'known' && answer.text).toContain('layers = 10 mm / 0.05 mm, rounded up = 200')
  })

  it('shows layers, material and job on the route sheet', () => {
    const rows = report!.tables.find(({ table }) => table === 'making/plate black/steps')!.rows
    const how = rows.map((row) => row.join(' | '))
    expect(how[0]).toContain('Job 1 of 2: shroud x4')
    expect(how[1]).toContain('200 layers, 10 mm high')
  })

  it('keeps to the published schema, and holds no figure that is none', () => {
    const path = join(import.meta.dirname, '../../../schemas/report.schema.json')
    const ajv = new Ajv2020({ strict: false, allErrors: true })
    const fits = ajv.compile(JSON.parse(readFileSync(path, 'utf8')) as object)
    fits(JSON.parse(reportJson(report!)))
    expect(fits.errors ?? []).toEqual([])
    expect(reportJson(report!)).not.toMatch(/NaN|Infinity/)
  })
})
