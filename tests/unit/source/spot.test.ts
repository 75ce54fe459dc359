import { describe, expect, it } from 'vitest'
import { collect } from '../../../src/diagnostics/collector.ts'
import type { ProjectSource } from '../../../src/source/generated/project-types.ts'
import { parse } from '../../../src/source/parse.ts'
import { entries, field, isMapSpot, items, keyPlace, type Spot } from '../../../src/source/spot.ts'

function spotOf<T>(text: string): Spot<T> {
  const { report, diagnostics } = collect()
  const { root } = parse('a.yaml', text, report)
  expect(diagnostics()).toEqual([])
  return root as Spot<T>
}

describe('a value with its place', () => {
  const project = spotOf<ProjectSource>(
    [
      'device: {name: "Lamp", currency: EUR, start: 2026-02-02}',
      'parts:',
      '  zinc plate: {kind: bought, offers: [{vendor: v, price: 1.10, needs: drawing}]}',
      '  "10": {kind: bought, offers: [{vendor: v, price: {25: 0.410, 1: 0.62}, needs: [a, b]}]}',
      '  __proto__: {kind: bought}',
    ].join('\n'),
  )
  const offerOf = (name: string) => {
    const part = field(field(project, 'parts')!, name)!
    return items(field(part, 'offers')!)[0]!
  }

  it('stands at its value, with its key beside it, both with their lengths', () => {
    const name = field(field(project, 'device')!, 'name')!
    expect(name.value).toBe('Lamp')
    expect(name.at).toEqual({ file: 'a.yaml', line: 1, column: 16, length: 6 })
    expect(name.keyAt).toEqual({ file: 'a.yaml', line: 1, column: 10, length: 4 })
  })

  it('keeps numbers as typed', () => {
    expect(field(offerOf('zinc plate'), 'price')?.text).toBe('1.10')
    const price = field(offerOf('10'), 'price')!
    if (!isMapSpot(price)) throw new Error('the price is a map')
    expect(entries(price).map(([from, each]) => [from, each.text])).toEqual([
      ['25', '0.410'],
      ['1', '0.62'],
    ])
  })

  it('keeps names in the order written, digits and harmful names included', () => {
    expect(entries(field(project, 'parts')!).map(([name]) => name)).toEqual(['zinc plate', '10', '__proto__'])
  })

  it('is its own one entry where a list may be left out', () => {
    expect(items(field(offerOf('zinc plate'), 'needs')!).map(({ text }) => text)).toEqual(['drawing'])
    expect(items(field(offerOf('10'), 'needs')!).map(({ text, at }) => [text, at.column])).toEqual([
      ['a', 82],
      ['b', 85],
    ])
  })

  it('is absent for keys that only every object has', () => {
    const loose = project as Spot<object> as Spot<Record<string, unknown>>
    for (const key of ['constructor', 'toString', '__proto__', 'hasOwnProperty'])
      expect(field(loose, key)).toBeNull()
  })

  it('can be asked for the place of a key, there or not', () => {
    expect(keyPlace(project, 'parts').line).toBe(2)
    expect(keyPlace(project, 'limits')).toEqual(project.at)
  })

  it('stands where a repeat stands, while what is inside stands where it is written', () => {
    const people = spotOf<{ people: Record<string, { rate: string }> }>(
      'people:\n  ana: &a {rate: 0 EUR/h}\n  ben: *a\n',
    )
    const ben = field(field(people, 'people')!, 'ben')!
    expect([ben.at.line, ben.keyAt.line, field(ben, 'rate')!.at.line]).toEqual([3, 3, 2])
  })
})
