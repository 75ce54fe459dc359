import { describe, expect, it } from 'vitest'
import { leastChoices } from '../../../../src/planning/from-meshes/least-choices.ts'

const sorted = (choices: readonly (readonly string[])[] | null) =>
  choices?.map((choice) => [...choice].sort().join('')).sort() ?? null

/** By trying every set of letters. */
function byBruteForce(sets: readonly (readonly string[])[]): string[] {
  const letters = [...new Set(sets.flat())].sort()
  const hits = Array.from({ length: 2 ** letters.length }, (_, bits) =>
    letters.filter((_l, k) => bits & (1 << k)),
  ).filter((choice) => sets.every((set) => set.some((one) => choice.includes(one))))
  return hits
    .filter(
      (choice) =>
        !hits.some((other) => other.length < choice.length && other.every((one) => choice.includes(one))),
    )
    .map((choice) => choice.join(''))
    .sort()
}

describe('the least choices of one of each set', () => {
  it.each<[string[]]>([
    [['ab', 'c']],
    [['ab', 'ab', 'abc']],
    [['a', 'ab', 'bc']],
    [['abc', 'bcd', 'cde', 'a']],
    [['ab', 'cd', 'ef', 'ace', 'bdf']],
    [['abcd', 'abe', 'bf', 'cf', 'def']],
  ])('of %s are those found by trying all', (words) => {
    const sets = words.map((word) => [...word])
    expect(sorted(leastChoices(sets, 1000))).toEqual(byBruteForce(sets))
  })

  it('are none where a set is empty, and not told past the bound', () => {
    expect(leastChoices([['a'], []], 1000)).toEqual([])
    const wide = Array.from({ length: 8 }, (_, k) => [`${k}a`, `${k}b`])
    expect(leastChoices(wide, 100)).toBe(null)
  })
})
