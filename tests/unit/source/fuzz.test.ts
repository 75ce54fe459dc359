import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { renderGnu } from '../../../src/diagnostics/render-gnu.ts'
import { renderJson } from '../../../src/diagnostics/render-json.ts'
import { loadSource } from '../../../src/source/load.ts'
import { memoryDisk } from './memory-disk.ts'

const seed = { seed: 20260202 }
const whole = `device: {name: Lamp, revision: B, qty: 2, currency: EUR, start: 2026-02-02, wanted: 2026-03-20}
limits: {cash: 420 EUR, mass: 180 g}
people:
  ana: &ana {hours: {mon-thu: "19:30-22:30", sat: ["10:00-16:00"]}, off: [2026-02-14], rate: 0 EUR/h}
  ben: *ana
work:
  firmware: {time: 3..5..10 h, after: [pin map, {step: base, lag: 2 h}], pause: no}
  pin map: {time: 40 min}
parts:
  base:
    kind: machined
    material: al-6082
    features: {seat: 6 H7, 'thread': "M14x1-6H"}
    route:
      - prepare: {time: 1..1.5..3 h}
      - setup: {machine: mill, hold: vice, time: 20 min}
        ops:
          - face: {cutter: flat-3, stock: 0.5 mm}
      - outside: {offer: {vendor: anodiser, price: {1: 1.10, 25: 0.9}, lead: 5..7..12 wd}}
  hub:
    choices: {make: {kind: machined, material: brass, route: [{deburr: {}}]}, buy: {kind: bought}}
assembly:
  steps:
    - {put: base, by: press, light: yes}
`

/** Whatever is read: an answer in words, placed inside the file, or a source; never an exception. */
function answers(bytes: Uint8Array | string): void {
  const { source, diagnostics, texts } = loadSource('/a.yaml', {
    read: memoryDisk({ '/a.yaml': bytes }),
    folder: '/',
  })
  expect(source === null).toBe(diagnostics.length > 0)
  const text = texts.get('/a.yaml')
  const lines = (text ?? '').split(/\r?\n/)
  for (const { at, says, mend } of diagnostics) {
    expect(`${says}${mend}`).not.toMatch(/undefined|\[object/)
    if (text === undefined) continue
    expect(at.line).toBeGreaterThanOrEqual(1)
    expect(at.line).toBeLessThanOrEqual(Math.max(1, lines.length))
    expect(at.column).toBeGreaterThanOrEqual(1)
    expect(at.column).toBeLessThanOrEqual((lines[at.line - 1]?.length ?? 0) + 1)
  }
  const printed = renderGnu(diagnostics, { colour: false, texts })
  expect(printed).not.toMatch(/[^\P{Cc}\n]/u)
  renderJson(diagnostics)
}

describe('reading, whatever is in the file', () => {
  it('takes the whole example as it stands', () => {
    const { diagnostics } = loadSource('/a.yaml', { read: memoryDisk({ '/a.yaml': whole }), folder: '/' })
    expect(diagnostics).toEqual([])
  })

  it('answers to any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), answers), { ...seed, numRuns: 500 })
  })

  it('answers to any bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 60 }), answers), { ...seed, numRuns: 300 })
  })

  it('answers to any heap of the signs of YAML', () => {
    const signs = [
      ...'abc019:-?[]{},&*!|>%@`"\'#~\n\n  \t.<',
      '<<',
      'device',
      'parts',
      'kind',
      '---',
      '...',
      ': ',
      '- ',
      '\r\n',
    ]
    const heap = fc.array(fc.constantFrom(...signs), { maxLength: 80 }).map((each) => each.join(''))
    fc.assert(fc.property(heap, answers), { ...seed, numRuns: 1500 })
  })

  it('answers to a sound file with some text cut out, doubled or put in', () => {
    const at = fc.nat(whole.length)
    const bit = fc.constantFrom(
      ...':-[]{},&*!"\'#~\n\t ',
      '',
      'x',
      '0',
      ': ',
      '.nan',
      'null',
      'yes',
      '\n  - ',
      '[{',
      '*ana',
      '&a',
    )
    const change = fc.tuple(at, fc.nat(30), bit)
    const mutated = fc
      .array(change, { minLength: 1, maxLength: 4 })
      .map((changes) =>
        changes.reduce(
          (text, [from, length, put]) => text.slice(0, from) + put + text.slice(from + length),
          whole,
        ),
      )
    fc.assert(fc.property(mutated, answers), { ...seed, numRuns: 800 })
  })

  it('answers to any data in place of any value', () => {
    const data = fc.oneof(
      fc.constant(null),
      fc.boolean(),
      fc.integer(),
      fc.double(),
      fc.string(),
      fc.json().map((text) => JSON.parse(text) as unknown),
    )
    const keys = [
      'device',
      'use',
      'people',
      'parts',
      'work',
      'assembly',
      'chains',
      'machines',
      'vendors',
      'exchange',
      'limits',
    ]
    const project = fc.dictionary(fc.constantFrom(...keys), data).map((each) => JSON.stringify(each))
    const part = data.map((each) => `${whole}vendors: {a: ${JSON.stringify(each)}}\n`)
    const route = data.map((each) => whole.replace('{time: 40 min}', JSON.stringify(each)))
    const step = data.map((each) =>
      whole.replace('- prepare: {time: 1..1.5..3 h}', `- ${JSON.stringify(each)}`),
    )
    fc.assert(fc.property(fc.oneof(project, part, route, step), answers), { ...seed, numRuns: 600 })
  })
})
