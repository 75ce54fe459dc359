import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { planReport } from '../../../../src/compile.ts'
import { reportJson } from '../../../../src/emit/json/report-json.ts'
import { whyText } from '../../../../src/emit/terminal/why.ts'

const text = `device: {name: Lamp, currency: EUR, start: 2026-02-02}
people: {ana: {hours: {sat: "10:00-16:00"}}}
machines: {mill: {tool change: 90 s}}
cutters:
  drill 5: {diameter: 5 mm, flutes: 2, tool: hss}
  flat-6: {diameter: 6 mm, flutes: 3, tool: carbide}
materials: {al-6082: {}}
vendors: {metals: {}}
parts:
  base:
    kind: machined
    qty: 1
    material: al-6082
    stock: {block: 60 x 40 x 20 mm, offers: [{vendor: metals, price: 9, lead: 1 wd}]}
    route:
      - setup: {machine: mill, time: 20 min}
        ops:
          - drill: {cutter: drill 5, depth: 10 mm, speed: 3000 rpm, feed: 0.1 mm/rev}
          - rough: {cutter: flat-6, volume: 9 cm3, depth: 1 mm, time: 10 min}
      - deburr: {time: 5 min}
`
const { report } = planReport('-', { stdin: text, effort: 1 })

describe('why a part takes as long', () => {
  it('is shown by the sums of each cut, which a person can follow, and by what was taken', () => {
    const answer = whyText(report!, 'base')
    expect(answer.kind).toBe('known')
    const lines = answer.kind === 'known' ? answer.text.split('\n') : []
    const from = lines.indexOf('  step 1, drill with drill 5: 4 s, computed')
    expect(from).toBeGreaterThan(0)
    // (10 + 1.502 + 1) mm at 300 mm/min, x 1.2 air: 3.0005 s, rounded up. A is the point of a drill, Groover.
    expect(lines.slice(from)).toEqual(
      expect.arrayContaining([
        '    n = 3000 rpm as stated',
        '    v_f = n f = 3000 rpm x 0.1 mm = 300 mm/min',
        '    A = 0.5 D tan(90 - 118/2) = 1.502 mm',
        '    taken: point angle 118 deg (common practice, no source)',
      ]),
    )
    expect(lines.find((line) => line.startsWith('  step 1, rough with flat-6: 600 s, stated'))).toBeDefined()
  })
})

describe('the making of a part in JSON', () => {
  it('keeps the published shape, tells where each time is from, and carries sums only where there are some', () => {
    const schema = JSON.parse(readFileSync('schemas/report.schema.json', 'utf8')) as object
    const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true })
    ajv.addVocabulary(['x-unit'])
    const valid = ajv.compile(schema)
    const told = JSON.parse(reportJson(report!)) as { making: { timeFrom: string; worked: string[] }[] }
    valid(told)
    expect(valid.errors ?? []).toEqual([])
    expect(told.making.map(({ timeFrom, worked }) => [timeFrom, worked.length > 0])).toEqual([
      ['computed', true],
      ['stated', true],
      ['stated', false],
    ])
  })
})
