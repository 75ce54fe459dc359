import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { planReport } from '../../../../src/compile.ts'
import { reportJson } from '../../../../src/emit/json/report-json.ts'
import { whyText } from '../../../../src/emit/terminal/why.ts'

const text = `device: {name: Float switch, currency: EUR, start: 2026-02-02}
people: {ana: {hours: {sat: "10:00-16:00"}}}
parts:
  housing: {kind: bought, have: 1, worth: 9}
  reed: {kind: bought, have: 1, worth: 2}
  ring: {kind: bought, have: 1, worth: 1}
  cap: {kind: bought, have: 1, worth: 1}
  plug: {kind: bought, have: 1, worth: 1}
assembly:
  openings: {housing: [mouth, tail]}
  steps:
    - {name: fit reed, put: reed, in: housing, by: seat, time: 5 min}
    - {name: lay ring, put: ring, on: housing, by: seat, turn: mouth up, loose_until: screw cap, time: 2 min}
    - {name: set point, do: set the switching point, reaches: [reed], after: [fit reed], time: 10 min}
    - {name: screw cap, put: cap, on: housing, by: thread, shut: housing.mouth, turn: mouth up, time: 3 min}
    - {name: press plug, put: plug, on: housing, by: press, light: yes, shut: housing.tail, turn: tail up, time: 3 min}
`
const { report, diagnostics } = planReport('-', { stdin: text, effort: 1 })
const answer = (thing: string): readonly string[] => {
  const found = whyText(report!, thing)
  return found.kind === 'known' ? found.text.split('\n').slice(1) : [found.says]
}
const rules = (thing: string) => answer(thing).filter((line) => line.includes('(`'))

describe('why a step stands where it does', () => {
  it('names each statement that holds it, with key and line', () => {
    expect(diagnostics.filter(({ level }) => level === 'error')).toEqual([])
    expect(rules('set point')).toEqual([
      '  comes after `fit reed` (`after`, <stdin>:14)',
      '  comes after `fit reed` (`reaches`, <stdin>:14)',
      '  comes before the last of `screw cap` and `press plug` (`reaches`, <stdin>:14)',
    ])
  })

  it('names each other step that it holds, and by which line', () => {
    expect(rules('screw cap')).toEqual([
      '  comes after `lay ring` (`loose_until`, <stdin>:13)',
      '  holds others: `fit reed` comes before the last of `screw cap` and `press plug` (`in`, <stdin>:12)',
      '  holds others: `press plug` does not come between `lay ring` and `screw cap` (`loose_until`, <stdin>:13)',
      '  holds others: `set point` comes before the last of `screw cap` and `press plug` (`reaches`, <stdin>:14)',
    ])
  })

  it('tells of the whole assembly how sure its order is and of how many orders it was taken', () => {
    const lines = answer('Float switch')
    expect(lines[0]).toContain(`; ${allowed()} orders keep all statements`)
    expect(lines[0]).toContain('(proved): turnings over 1, tool changes 0')
    // As the schedule has it, which takes the longer work first.
    expect(lines[0]).toContain('follow their planned times, which differ from it')
    expect(lines.slice(1, 6).map((line) => line.trim())).toEqual([
      '1. fit reed',
      '2. set point',
      '3. lay ring',
      '4. screw cap',
      '5. press plug',
    ])
  })

  it('keeps the published shape of the JSON', () => {
    const schema = JSON.parse(readFileSync('schemas/report.schema.json', 'utf8')) as object
    const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true })
    ajv.addVocabulary(['x-unit'])
    const valid = ajv.compile(schema)
    valid(JSON.parse(reportJson(report!)))
    expect(valid.errors ?? []).toEqual([])
  })
})

/** Orders of the five steps that keep what the text says, tried one by one. */
function allowed(): number {
  const orders = (rest: string): string[] =>
    rest === '' ? [''] : [...rest].flatMap((one) => orders(rest.replace(one, '')).map((more) => one + more))
  // r reed, l ring, s set point, c cap, p plug
  return orders('rlscp').filter((order) => {
    const at = (one: string) => order.indexOf(one)
    const last = Math.max(at('c'), at('p'))
    const between = at('l') < at('p') && at('p') < at('c')
    return at('r') < at('s') && at('s') < last && at('r') < last && at('l') < at('c') && !between
  }).length
}
