import { describe, expect, it } from 'vitest'
import { freeTravel } from '../../../../src/geometry/relations/free-travel.ts'
import { relateSolids } from '../../../../src/geometry/relations/relate-solids.ts'
import { solidOf } from '../../../../src/geometry/relations/solid.ts'
import { box, moved } from '../solids.ts'

const at = (size: [number, number, number], [x, y, z]: [number, number, number]) =>
  solidOf(Float32Array.from(moved(box(...size), ([a, b, c]) => [a + x, b + y, c + z]).corners))

describe('the free travel of a part', () => {
  const solids = [
    at([10, 10, 10], [0, 0, 0]),
    at([2, 30, 30], [13, -10, -10]),
    at([40, 40, 1], [-10, -10, 17.5]),
  ]
  const relations = relateSolids(solids)

  it('ends at the first part in its way', () => {
    const up = freeTravel(solids, relations, 0, [1, 2], 4)
    expect(up?.by).toBe(2)
    expect(up?.mm).toBeCloseTo(7.5, 2)
    const right = freeTravel(solids, relations, 0, [1, 2], 0)
    expect(right?.by).toBe(1)
    expect(right?.mm).toBeCloseTo(3, 2)
  })

  it('has no end where nothing is in the way', () => {
    expect(freeTravel(solids, relations, 0, [1, 2], 5)).toBe(null)
    expect(freeTravel(solids, relations, 0, [1], 4)).toBe(null)
  })
})
