import { describe, expect, it } from 'vitest'
import { codeOf } from '../../src/trade/cautions/caution.ts'
import { materialCautions } from '../../src/trade/cautions/material-cautions.ts'
import { type CautionKey, cautions } from '../../src/trade/cautions.ts'
import { findMaterial } from '../../src/trade/materials/find-material.ts'

/**
 * Signs by work. Source: numbers and meanings, ISO 7010:2019 as listed in open documentation, W024, W026, W027 and P028
 * from memory; which go with which work: common practice, no source.
 */
const wanted: Readonly<Partial<Record<CautionKey, string>>> = {
  cutting: 'M004 M002 M003 W018 W022 W024 P028',
  abrasives: 'M004 M013 M016 M003 W022',
  'light-metal dust': 'P003',
  sawing: 'M004 M003 W022 W024 P028',
  laser: 'M004 M002 W004 W017 W021 P003',
  resin: 'M009 M004 M010 W001 W016 P022',
  solvent: 'M009 M004 W021 P003',
  lamp: 'M004 W027 P010',
  filament: 'M002 W017 W024',
  soldering: 'M004 M011 W017 P022',
  heat: 'M004 M009 W017 P010',
  etching: 'M009 M004 M013 M010 W023 P022',
  'lithium cell': 'M002 W026 W021',
  'high voltage': 'M006 M002 W012 P010',
  pressing: 'M004 W024',
  adhesive: 'M009 M004 W016 W023 P022',
  'first run': 'M004 W018 W024',
}

const codes = (signs: readonly string[]): string => signs.map(codeOf).sort().join(' ')
const sorted = (text: string): string => text.split(' ').sort().join(' ')

/** What cutting or curing a material of this name calls for. */
function calls(name: string, work = { cut: true, changed: true }) {
  const found = findMaterial(name)
  const like = 'fault' in found ? null : found.key
  return materialCautions({ name, like, hasOwn: false }, work)
}
const signsOf = (name: string): string => codes(calls(name).flatMap(({ signs }) => signs))

describe('cautions by kind of work', () => {
  it.each(Object.entries(wanted))('%s brings %s', (key, signs) => {
    expect(codes(cautions[key as CautionKey].signs)).toBe(sorted(signs))
  })

  it('name every sign with its code and its meaning', () => {
    for (const { signs } of Object.values(cautions))
      for (const sign of signs) expect(sign).toMatch(/^[MWP]0\d\d [a-z]/)
  })

  it('claim of nothing that it is safe or complies', () => {
    for (const { says } of Object.values(cautions)) expect(says).not.toMatch(/\bsafe\b|\bcompl(y|ies)\b/i)
  })
})

describe('cautions by material', () => {
  // Facts: T.O. 1-1A-9 on magnesium; Isakov 2009 on titanium. Signs: common practice, no source.
  it('magnesium and titanium swarf burn: no flame, no water, a class D agent', () => {
    for (const name of ['magnesium', 'AZ31B', 'titanium', 'Ti-6Al-4V', 'grade 2', 'magnesium sheet']) {
      expect(signsOf(name)).toBe(sorted('M004 M002 W021 P003 P011'))
      expect(calls(name)[0]?.says).toContain('class D')
    }
  })

  // Facts: makers' hazard bulletins on beryllium copper. Signs: common practice, no source.
  it('beryllium copper dust is toxic', () => {
    for (const name of ['beryllium-copper', 'C17200', 'CuBe2', 'beryllium copper strip'])
      expect(signsOf(name)).toBe(sorted('M017 M002 W016 P022'))
  })

  // Facts: an industry guide on handling fluoropolymers; acetal from memory. Signs: common practice, no source.
  it('PTFE and acetal give off toxic fume when overheated', () => {
    for (const name of ['PTFE', 'POM', 'acetal', 'acetal rod'])
      expect(signsOf(name)).toBe(sorted('M004 W016 P002'))
  })

  // Common practice, no source.
  it('laminates, wood and brass bring what their dust and chips ask for', () => {
    for (const name of ['FR-4', 'G10', 'carbon fibre plate', 'GFRP'])
      expect(signsOf(name)).toBe(sorted('M004 M016 W022 P022'))
    for (const name of ['birch plywood', 'MDF', 'oak'])
      expect(signsOf(name)).toBe(sorted('M004 M016 M003 W021 P003'))
    for (const name of ['brass', 'CuZn37', 'brass tube']) expect(signsOf(name)).toBe(sorted('M004 W022 M011'))
  })

  it('a plain metal or plastic brings nothing of its own', () => {
    for (const name of ['al-6082', 'steel', '304', 'copper', 'PEEK', 'PLA']) expect(calls(name)).toEqual([])
    expect(calls('carbon steel').map(({ signs }) => codes(signs))).toEqual(['M002 W001'])
  })

  it('a material that is in no table brings W001, M002 and a request for its data sheet, and no more', () => {
    expect(signsOf('unobtainium')).toBe('M002 W001')
    expect(calls('unobtainium')).toHaveLength(1)
    expect(calls('unobtainium')[0]?.says).toContain('data sheet')
  })

  it('nothing is asked of an unknown material that is neither cut nor cured, or has a caution of its own', () => {
    expect(calls('unobtainium', { cut: false, changed: false })).toEqual([])
    const named = { name: 'unobtainium', like: null, hasOwn: true }
    expect(materialCautions(named, { cut: true, changed: true })).toEqual([])
  })

  it('a known material that is cured but not cut brings nothing', () => {
    expect(calls('magnesium', { cut: false, changed: true })).toEqual([])
  })
})
