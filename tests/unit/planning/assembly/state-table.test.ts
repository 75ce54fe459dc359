import { expect, test } from 'vitest'
import { seededRandom } from '../../../../src/base/random.ts'
import { StateTable } from '../../../../src/planning/assembly/state-table.ts'

test('a table of states remembers what a map by text remembers, past its first room', () => {
  const random = seededRandom(3)
  const table = new StateTable(2)
  const map = new Map<string, number>()
  for (let k = 0; k < 8000; k++) {
    const set = Uint32Array.of(Math.floor(random.next() * 90), Math.floor(random.next() * 40) * 2 ** 24)
    const standing = Math.floor(random.next() * 3)
    const key = `${set.join()}/${standing}`
    expect(table.get(set, standing)).toBe(map.get(key) ?? Number.NaN)
    table.put(set, standing, k)
    map.set(key, k)
  }
  expect(table.size).toBe(map.size)
  expect(map.size).toBeGreaterThan(2000)
})
