import { describe, expect, it } from 'vitest'
import type { ShownCaution } from '../../../../src/model/results.ts'
import { sayCaution } from '../../../../src/report/caution-rows.ts'
import type { Block } from '../../../../src/report/cells.ts'
import { makingSheet } from '../../../../src/report/making-sheet.ts'
import { benchText, benchTold } from '../../report/bench-told.ts'

type Lines = readonly ShownCaution[]
const topics = (all: Lines = []) => all.map(({ topic }) => topic)
const codes = (all: Lines = []) => all.flatMap(({ signs }) => signs.map((sign) => sign.slice(0, 4)))

/** The bench project with some of its text replaced. */
function cautionsWith(...swaps: readonly (readonly [from: string, to: string])[]) {
  const text = swaps.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`the bench project does not say ${from}`)
    return before.replaceAll(from, to)
  }, benchText())
  return benchTold(text).results.cautions
}
const named = (to: string, own = ''): readonly (readonly [string, string])[] => [
  ['brass: {caution: fine needles fly far, ', `${to}: {${own}`],
  ['material: brass', `material: ${to}`],
]

describe('the cautions of a route sheet', () => {
  const { parts, plates } = benchTold().results.cautions

  it('name each kind of work once, then its material', () => {
    expect(topics(parts.get('base'))).toEqual(['cutting', 'edges', 'brass'])
  })

  it('show a sign once, at the first line that calls for it', () => {
    for (const lines of [parts.get('base'), plates.get('p1')]) {
      expect(codes(lines).length).toBeGreaterThan(5)
      expect(new Set(codes(lines)).size).toBe(codes(lines).length)
    }
  })

  it('put the words of the project in place of ours for brass, with the signs of brass', () => {
    const brass = parts.get('base')?.find(({ topic }) => topic === 'brass')
    expect(brass).toMatchObject({ says: 'fine needles fly far', signs: ['M011 wash your hands'] })
    expect(
      cautionsWith(...named('brass'))
        .parts.get('base')
        ?.at(-1)?.says,
    ).toMatch(/^fine needle chips/)
  })

  // Signs by work, common practice, no source; codes of ISO 7010.
  it('of milled aluminium hold M004, M002, W018, W022 and P028', () => {
    const { parts: made, deferLine } = cautionsWith(...named('al-6082'))
    expect(codes(made.get('base'))).toEqual(expect.arrayContaining(['M004', 'M002', 'W018', 'W022', 'P028']))
    expect(deferLine).toMatch(/data sheet.*manual of each machine.*local codes.*licensed practice/)
  })

  // Facts on magnesium, T.O. 1-1A-9; signs, common practice, no source.
  it('of magnesium add W021, P003, P011 and class D, whatever the project says itself', () => {
    for (const own of ['', 'caution: keep it dry, ']) {
      const lines = cautionsWith(...named('magnesium', own)).parts.get('base')
      expect(codes(lines)).toEqual(expect.arrayContaining(['W021', 'P003', 'P011']))
      expect(lines?.filter(({ says }) => says.includes('class D'))).toHaveLength(1)
    }
  })

  it('ask for the data sheet of a material that is in no table and has no caution of its own', () => {
    const unknown = cautionsWith(...named('unobtainium'))
      .parts.get('base')
      ?.at(-1)
    expect(unknown).toMatchObject({ topic: 'unobtainium', signs: ['W001 general warning'] })
    expect(unknown?.says).toContain('data sheet')
    const own = cautionsWith(...named('unobtainium', 'caution: mind it, '))
      .parts.get('base')
      ?.at(-1)
    expect(own).toMatchObject({ topic: 'unobtainium', says: 'mind it', signs: [] })
  })

  it('warn of light-metal dust where aluminium is polished, and only there', () => {
    const polished = cautionsWith(...named('al-6082'), ['- deburr: {time', '- polish: {time'])
    expect(topics(polished.parts.get('base'))).toEqual(['cutting', 'abrasives', 'light-metal dust'])
    const brass = cautionsWith(['- deburr: {time', '- polish: {time'])
    expect(topics(brass.parts.get('base'))).toEqual(['cutting', 'abrasives', 'brass'])
  })

  it('join topics that are told the same', () => {
    const { parts: made } = cautionsWith([
      '    number: ST-1',
      '    number: ST-1\n    caution: fine needles fly far',
    ])
    expect(topics(made.get('base'))).toEqual(['cutting', 'edges', 'brass and base'])
  })
})

describe('the cautions of a print', () => {
  // Signs by work, common practice, no source; codes of ISO 7010.
  it('that is washed and cured hold the signs of resin, solvent and lamp, none twice', () => {
    const lines = benchTold().results.cautions.plates.get('p1')
    expect(topics(lines)).toEqual(['resin', 'solvent', 'lamp', 'resin'])
    expect(codes(lines)).toEqual(
      expect.arrayContaining(['M009', 'M004', 'M010', 'W016', 'W021', 'P003', 'P022', 'W027']),
    )
  })

  it('in a resin that is in no table ask for its data sheet, as it is cured', () => {
    const swaps = [
      ['resin: {caution: no skin contact, ', 'goo: {'],
      ['material: resin', 'material: goo'],
    ] as const
    expect(topics(cautionsWith(...swaps).plates.get('p1'))).toEqual(['resin', 'solvent', 'lamp', 'goo'])
  })
})

describe('the cautions of a checklist', () => {
  it('name the steps that call for them, each line with all its signs', () => {
    const { assemblies } = benchTold().results.cautions
    const lines = assemblies.get('') ?? []
    expect(lines.map(({ topic, steps }) => [topic, steps])).toEqual([
      ['adhesive', ['glue ring']],
      ['tube', ['glue ring']],
      ['pressing', ['close']],
      ['first run', ['spin']],
    ])
    expect(lines.filter(({ signs }) => signs.includes('M004 wear eye protection'))).toHaveLength(3)
  })

  it('tell of cells, leaks, mains and hot irons where a step speaks of them', () => {
    const { assemblies } = cautionsWith(
      ['tube: {kind: bought,', 'tube: {kind: bought, description: "li-ion cell, 3.7 V",'],
      ['test: turns at 300 rpm', 'test: "on 230 V mains, no leak at 2 bar"'],
      ['by: press,', 'by: press, tool: iron with tip,'],
    )
    const found = new Map((assemblies.get('') ?? []).map(({ topic, steps }) => [topic, steps]))
    expect(found.get('lithium cell')).toEqual(['glue ring'])
    expect(found.get('high voltage')).toEqual(['spin'])
    expect(found.get('pressure')).toEqual(['spin'])
    expect(found.get('heat')).toEqual(['close'])
  })
})

describe('the caution of a first run', () => {
  const spin = 'test: turns at 300 rpm'
  const stays = 'test: stays in any position'
  const firstRun = (...swaps: readonly (readonly [from: string, to: string])[]) =>
    (cautionsWith(...swaps).assemblies.get('') ?? []).find(({ topic }) => topic === 'first run')

  it('is not given where a test runs nothing', () => {
    expect(firstRun([spin, stays])).toBeUndefined()
  })

  it('is given for the same test where a motor or a board is in what is tested', () => {
    const motor = ['ring: {kind: bought,', 'ring: {kind: bought, description: motor,'] as const
    expect(firstRun([spin, stays], motor)?.steps).toEqual(['spin'])
    expect(firstRun([spin, `${stays}, tool: multimeter`], motor)).toBeUndefined()
  })

  it('is given for work that is no test and plainly runs something', () => {
    expect(firstRun([spin, 'do: run in for an hour'], [', fails: 20 %, rework: 15 min', ''])?.steps).toEqual([
      'spin',
    ])
  })

  it('leaves out what the step says itself, and keeps the rest and every sign', () => {
    const [whole, typed] = [firstRun(), firstRun([spin, `${spin}, caution: no guard yet`])]
    expect(whole?.says).toContain('guard in place')
    expect(typed?.says).toBe('low power first, hand on the switch, limits checked before')
    expect(typed?.signs).toEqual(whole?.signs)
  })

  it('is a line of signs where the step says all of it', () => {
    const all = '"low power first, hand on the switch, guard in place, limits checked before"'
    const typed = firstRun([spin, `${spin}, caution: ${all}`])!
    expect(sayCaution(typed)).toMatch(/^Mind, first run \(M004 /)
  })
})

describe('the caution of a part', () => {
  it('is not said again where the step that uses it says it', () => {
    const { assemblies } = cautionsWith([
      'time: 6 min, check: flush',
      'time: 6 min, caution: Do not squeeze.',
    ])
    expect(topics(assemblies.get(''))).toEqual(['adhesive', 'pressing', 'first run'])
  })
})

describe('every route sheet with a caution', () => {
  it('ends its block of cautions with the line that defers to those who rule', () => {
    const told = benchTold()
    const texts = (block: Block) =>
      block.rows.flatMap(({ cells }) =>
        cells.flatMap(({ value }) => (value.type === 'text' ? [value.text] : [])),
      )
    const sheets = [makingSheet(told)].flat().flatMap((sheet) => sheet?.blocks ?? [])
    const minding = sheets.filter((block) => texts(block).some((text) => text.startsWith('Mind, ')))
    expect(minding.length).toBeGreaterThan(1)
    for (const block of minding) {
      const all = texts(block)
      const last = all.findLastIndex((text) => text.startsWith('Mind, '))
      expect(all[last + 1]).toBe(told.results.cautions.deferLine)
    }
  })
})
