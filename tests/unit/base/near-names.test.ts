import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nameList, nearNames } from '../../../src/base/near-names.ts'

describe('nearNames', () => {
  it('puts the nearest first', () => {
    expect(nearNames('bearng', ['bearing', 'bridge', 'gearing', 'bering'])).toEqual([
      'bearing',
      'bering',
      'gearing',
    ])
    expect(nearNames('Base', ['base', 'case', 'vase'])).toEqual(['base', 'case', 'vase'])
  })

  it('offers nothing far away', () => {
    expect(nearNames('base', ['fixture-ring', 'shroud'])).toEqual([])
    expect(nearNames('x', ['y', 'z'])).toEqual([])
    expect(nearNames('', ['a'])).toEqual([])
  })

  it('does not depend on the order of the known names', () => {
    const names = fc.uniqueArray(
      fc.string({ minLength: 1, maxLength: 5, unit: fc.constantFrom('a', 'b', 'A') }),
    )
    fc.assert(
      fc.property(fc.constantFrom('ab', 'aba', 'Abab'), names, (name, known) => {
        const near = nearNames(name, known)
        expect(nearNames(name, [...known].reverse())).toEqual(near)
        expect(near.length).toBeLessThanOrEqual(3)
        expect(near).not.toContain(name)
      }),
    )
  })
})

describe('nameList', () => {
  it('joins names as a sentence does', () => {
    expect(nameList([], 'and')).toBe('')
    expect(nameList(['a'], 'and')).toBe('`a`')
    expect(nameList(['a', 'b'], 'or')).toBe('`a` or `b`')
    expect(nameList(['a', 'b', 'c'], 'and')).toBe('`a`, `b` and `c`')
  })
})
