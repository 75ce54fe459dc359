import { describe, expect, it } from 'vitest'
import { groupBy, groupByEach } from '../../../src/base/group-by.ts'

describe('grouping', () => {
  it('keeps keys as they first come and the things of a key in their order', () => {
    const groups = groupBy(['pear', 'fig', 'plum', 'flax'], (word) => word[0])
    expect([...groups]).toEqual([
      ['p', ['pear', 'plum']],
      ['f', ['fig', 'flax']],
    ])
  })

  it('puts a thing under each of its keys', () => {
    const groups = groupByEach([12, 18, 35], (number) => [2, 3, 5].filter((prime) => number % prime === 0))
    expect([...groups]).toEqual([
      [2, [12, 18]],
      [3, [12, 18]],
      [5, [35]],
    ])
  })
})
