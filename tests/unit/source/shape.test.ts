import { describe, expect, it } from 'vitest'
import { loadSource } from '../../../src/source/load.ts'

const device = 'device: {name: Lamp, currency: EUR, start: 2026-02-02}\n'
const load = (text: string) => loadSource('-', { stdin: device + text, folder: '/' })
const found = (text: string): string[] =>
  load(text).diagnostics.map(({ at, code, says }) => `${at.line}:${at.column} ${code} ${says}`)

describe('the shape of a project', () => {
  it('takes bare yes and no where a truth value is asked for, quoted words not', () => {
    const { source } = load('work:\n  glue: {time: 1 h, pause: no}\n  paint: {time: 1 h, pause: yes}\n')
    const { work } = source!.sections
    expect([work.get('glue')?.value.pause, work.get('paint')?.value.pause]).toEqual([false, true])
    expect(found('work:\n  glue: {time: 1 h, pause: "no"}\n')).toEqual([
      '3:28 SHP07 `pause` must be yes or no, `no` is neither',
    ])
  })

  it('leaves no and yes alone where a text is asked for', () => {
    expect(
      load('parts:\n  plug: {kind: bought, note: no}\n').source?.sections.parts.get('plug')?.value.note,
    ).toBe('no')
  })

  it('gives one message for one cause in a part, whatever branches of the language it might have been', () => {
    expect(found('parts:\n  a: {kind: machind, route: 5, material: 6}\n')).toHaveLength(1)
    expect(found('parts:\n  a: {}\n')).toEqual(['3:3 SHP02 the part `a` has no `kind`'])
    expect(found('parts:\n  a: {kind: }\n')).toHaveLength(1)
    expect(found('parts:\n  a: {kind: [x]}\n')).toHaveLength(1)
    expect(found('parts:\n  a: 5\n')).toHaveLength(1)
    expect(found('parts:\n  a: {choices: {make: {kind: bougt}}}\n')).toEqual([
      '3:30 SHP10 there is no kind `bougt`',
    ])
    expect(found('parts:\n  a: {kind: bought, choices: {buy: {kind: bought}}}\n')).toHaveLength(1)
  })

  it('gives one message for one cause where a name or a map may stand', () => {
    const step = (after: string): string[] => found(`assembly:\n  steps:\n    - {put: a, after: ${after}}\n`)
    expect(step('[{stp: b}]').map((each) => each.slice(0, 10))).toEqual(['4:25 SHP01'])
    expect(step('[{step: b, lag: 2 h}, c]')).toEqual([])
    expect(step('[5]')).toEqual(['4:24 SHP04 `after` must be a text, `5` is a number'])
    expect(step('[[b]]')).toHaveLength(1)
    expect(step('{step: b}')).toHaveLength(1)
  })

  it('points at the key for an unknown key, at the value for a bad value, at the map for a missing key', () => {
    const given = found('parts:\n  cap: {kind: machined, material: 7, qtty: 1}\n')
    expect(given.map((each) => each.split(' ').slice(0, 2).join(' '))).toEqual([
      '3:3 SHP02',
      '3:35 SHP04',
      '3:38 SHP01',
    ])
  })

  it('knows that a route step holds one operation, and ops beside setup only', () => {
    const route = (step: string): string[] =>
      found(`parts:\n  a: {kind: machined, material: b, route: [${step}]}\n`).map(
        (each) => each.split(' ')[1]!,
      )
    expect(route('{setup: {machine: m}, ops: [{face: {}}]}')).toEqual([])
    expect(route('{setup: {machine: m}}')).toEqual([])
    expect(route('{setup: {machine: m}, deburr: {}}')).toEqual(['SHP15'])
    expect(route('{ops: [{face: {}}], deburr: {}}')).toEqual(['SHP17'])
    expect(route('{}')).toEqual(['SHP16'])
    expect(route('{setup: {machine: m}, ops: [{}]}')).toEqual(['SHP16'])
    expect(route('{setup: {machine: m}, ops: [{face: {}, drill: {}}]}')).toEqual(['SHP15'])
    expect(route('{setup: {machine: m}, ops: [{cure: {}}]}')).toEqual(['SHP18'])
    expect(route('{drill: {}}')).toEqual(['SHP18'])
    expect(route('{drlli: {}}')).toEqual(['SHP01'])
  })

  it('lists a hundred faults of a file at most and says how many more there are', () => {
    const people = Array.from({ length: 5_000 }, (_, at) => `  p${at}: {shoes: ${at}}`).join('\n')
    const { diagnostics } = load(`people:\n${people}\n`)
    expect(diagnostics).toHaveLength(101)
    expect(diagnostics.find(({ code }) => code === 'SHP20')?.says).toBe(
      '4900 more faults of this file are not listed',
    )
  })
})
