import { describe, expect, it } from 'vitest'
import { nearestGap } from '../../../../src/geometry/relations/nearest-gap.ts'
import { solidOf } from '../../../../src/geometry/relations/solid.ts'
import { box, moved, prism, ring, together } from '../solids.ts'

const solid = (mesh: ReturnType<typeof box>) => solidOf(Float32Array.from(mesh.corners))
const at = (mesh: ReturnType<typeof box>, x: number, y = 0, z = 0) =>
  moved(mesh, ([a, b, c]) => [a + x, b + y, c + z])

describe('how far two parts are apart', () => {
  it.each([0.1, 0.3, 2.5])('is the gap between their faces: %s mm', (gap) => {
    expect(nearestGap(solid(box(4, 4, 4)), solid(at(box(4, 4, 4), 1, 1, 4 + gap)))).toBeCloseTo(gap, 4)
  })

  it('is the play of a pin in a hole, whichever is called first', () => {
    const walls = solid(
      together(at(box(2, 12, 6), -6, -6), at(box(2, 12, 6), 4, -6), at(box(8, 2, 6), -4, 4)),
    )
    const pin = solid(prism(ring(48, 3.7), 6))
    expect(nearestGap(walls, pin)).toBeCloseTo(0.3, 2)
    expect(nearestGap(pin, walls)).toBeCloseTo(0.3, 2)
  })

  it('is nothing where they overlap, and that of their boxes where they lie across a corner', () => {
    expect(nearestGap(solid(box(4, 4, 4)), solid(at(box(4, 4, 4), 3, 3, 3)))).toBe(0)
    expect(nearestGap(solid(box(4, 4, 4)), solid(at(box(4, 4, 4), 7, 8, 4)))).toBeCloseTo(5, 6)
  })
})
