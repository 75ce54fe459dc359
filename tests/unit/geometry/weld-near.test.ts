import { describe, expect, it } from 'vitest'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import type { Mesh } from '../../../src/geometry/mesh.ts'
import { weldNear } from '../../../src/geometry/weld-near.ts'
import { box, torus } from './solids.ts'

/** Every corner of every triangle moved on its own by up to so much, repeatably. */
function torn({ corners }: Mesh, mm: number): Mesh {
  return { corners: corners.map((x, i) => x + mm * Math.sin(12.9898 * (i + 1))) }
}

describe('corners that a file rounded apart', () => {
  it.each([1e-6, 1e-5, 9e-5])('are joined again: %s mm', (mm) => {
    const sound = torus(10, 3, 24, 12)
    const apart = measureMesh(torn(sound, mm))
    expect(apart.seams.openEdges).toBeGreaterThan(100)
    const again = measureMesh(weldNear(torn(sound, mm)))
    expect(again.closed).toBe(true)
    expect(again.triangles).toBe(apart.triangles)
    expect(again.volumeMm3).toBeCloseTo(measureMesh(sound).volumeMm3, 1)
  })

  it('are left as they are where the mesh is sound', () => {
    const sound = box(1e-5, 1e-5, 1e-5)
    expect(weldNear(sound)).toBe(sound)
  })

  it('are left as they are where they lie further apart than files round', () => {
    const wide = torn(box(10, 10, 10), 0.01)
    expect(weldNear(wide)).toBe(wide)
  })
})
