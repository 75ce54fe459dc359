import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pairFeatures } from '../../../../src/trade/joins/pair-features.ts'
import { type FeatureText, readFeature } from '../../../../src/trade/joins/read-feature.ts'

const named = (name: string, text: string, process: string | null = null): FeatureText => ({
  ...{ name, text, general: null },
  madeBy: process === null ? null : { process },
})
const genderOf = (name: string, text: string, process: string | null = null): string | null => {
  const read = readFeature(named(name, text, process))
  return read.kind === 'thread' || read.kind === 'size' ? read.gender : null
}

describe('a feature', () => {
  it.each([
    ['x', '8 H7', null, 'hole'],
    ['bore', '8 h6', null, 'shaft'],
    ['bore', '25 ± 0.1 mm', null, 'hole'],
    ['pin hole', '3', null, 'hole'],
    ['pin', '3', null, 'shaft'],
    ['depth of the bore', '3', null, null],
    ['x', '3', 'ream', 'hole'],
    ['x', 'M6', 'tap', 'internal'],
    ['x', 'M6', 'turn', null],
    ['stud', 'M6', null, 'external'],
    ['nut', 'M6-6g', null, 'external'],
  ])(
    'called %s, %s, made by %s, is %s: its class before its making, its making before its name',
    (...all) => {
      const [name, text, process, gender] = all
      expect(genderOf(name, text, process)).toBe(gender)
    },
  )

  it.each(['10-32', '#10-32', '1/4-20', '1 1/8-7', '1/4 UNC', '1/4-20 UNC-2B', '1-8', 'M3'])(
    'written `%s` is a thread',
    (text) => {
      expect(readFeature(named('x', text)).kind).toBe('thread')
    },
  )

  it.each(['10-12 mm', '24-26', '25.021 / 25.000', '1/4 in H7', '6'])('written `%s` is a size', (text) => {
    expect(readFeature(named('x', text)).kind).toBe('size')
  })

  it('of any text is read without a fault of ours, with limits that are numbers in order', () => {
    const bits = [
      '6',
      ' ',
      'H7',
      'm6',
      '±',
      '0.05',
      'mm',
      'M14',
      'x1',
      '-6H',
      '/',
      '+',
      '-',
      'UNC',
      '1/4',
      '#',
      'LH',
      ',',
    ]
    const text = fc.oneof(
      fc.string(),
      fc.array(fc.constantFrom(...bits)).map((all) => all.join('')),
    )
    fc.assert(
      fc.property(text, fc.constantFrom('f', 'm', 'c', 'v', null), (typed, general) => {
        const read = readFeature({ ...named('x', typed), general })
        if (read.kind !== 'size' || !read.limits) return
        const { minMm, maxMm } = read.limits
        expect(Number.isFinite(minMm) && Number.isFinite(maxMm) && minMm <= maxMm).toBe(true)
      }),
    )
  })
})

describe('two features', () => {
  it('are compared alike whichever comes first', () => {
    const texts = [
      '6 H7',
      '6 h6',
      '6 p6',
      '8 H7',
      '6 ± 0.1 mm',
      'M6-6g',
      'M6-6H',
      'M8x1-LH-6H',
      '10-32',
      'words',
    ]
    const one = fc.constantFrom(...texts)
    fc.assert(
      fc.property(one, one, (a, b) => {
        const [first, second] = [readFeature(named('a', a)), readFeature(named('b', b))]
        const [ab, ba] = [pairFeatures(first, second), pairFeatures(second, first)]
        const whats = (pair: typeof ab) =>
          'notCompared' in pair ? [pair.notCompared] : pair.mismatches.map(({ what }) => what)
        expect(whats(ab)).toEqual(whats(ba))
        if (!('notCompared' in ab) && !('notCompared' in ba)) expect(ab.fit).toEqual(ba.fit)
      }),
    )
  })

  it('that look alike in two systems differ in system, diameter and pitch', () => {
    const pair = pairFeatures(readFeature(named('a', 'M5-6g')), readFeature(named('b', '10-32 UNF-2B')))
    expect('mismatches' in pair && pair.mismatches.map(({ what }) => what)).toEqual([
      'system',
      'diameter',
      'pitch',
    ])
  })
})
