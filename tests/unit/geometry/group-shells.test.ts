import { describe, expect, it } from 'vitest'
import { groupShells } from '../../../src/geometry/group-shells.ts'
import { box, moved, sphere } from './solids.ts'

const at = (mesh: ReturnType<typeof box>, x: number, y = 0, z = 0) =>
  moved(mesh, ([a, b, c]) => [a + x, b + y, c + z])

describe('shells that belong together', () => {
  it('are what lies within the box of another, flush or not', () => {
    const bearing = (x: number) => [
      at(box(10, 10, 4), x),
      at(box(4, 4, 4), x + 3, 3),
      at(sphere(1, 6, 8), x + 1.5, 5, 2),
    ]
    const groups = groupShells([...bearing(0), ...bearing(20)])
    expect(groups.map(({ corners }) => Math.min(...corners.filter((_, i) => i % 3 === 0)))).toEqual([0, 20])
    const all = bearing(0).reduce((sum, { corners }) => sum + corners.length, 0)
    expect(groups.map(({ corners }) => corners.length)).toEqual([all, all])
  })

  it('are not those side by side', () => {
    expect(groupShells([box(2, 2, 9), at(box(2, 2, 9), 3), at(box(2, 2, 9), 6)])).toHaveLength(3)
  })
})
