import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measureMesh } from '../../../src/geometry/measure-mesh.ts'
import type { Mesh, Point } from '../../../src/geometry/mesh.ts'
import { meshSeams } from '../../../src/geometry/mesh-seams.ts'
import { overhangOf } from '../../../src/geometry/overhang-of.ts'
import { box, meshOf, moved, prism, ring, sphere, spoiled, together, torus } from './solids.ts'

/** Open, crowded and same-way edges counted with text keys: other code than the one under test. */
function countedPlainly({ corners }: Mesh): { open: number; crowded: number } {
  const seen = new Map<string, number>()
  const at = (i: number) => [...corners.subarray(3 * i, 3 * i + 3)].map((x) => x + 0).join(' ')
  for (let t = 0; 9 * t < corners.length; t++) {
    const three = [at(3 * t), at(3 * t + 1), at(3 * t + 2)]
    if (new Set(three).size < 3) continue
    for (let i = 0; i < 3; i++) {
      const key = [three[i]!, three[(i + 1) % 3]!].sort().join('|')
      seen.set(key, (seen.get(key) ?? 0) + 1)
    }
  }
  const counts = [...seen.values()]
  return { open: counts.filter((n) => n === 1).length, crowded: counts.filter((n) => n > 2).length }
}

describe('leaks and turned faces', () => {
  it('a closed solid has none', () => {
    for (const mesh of [box(1, 2, 3), prism(ring(31, 2), 1), sphere(3, 6, 11), torus(5, 1, 9, 7)])
      expect(meshSeams(mesh)).toEqual({
        openEdges: 0,
        crowdedEdges: 0,
        turnedFaces: 0,
        oneSidedEdges: 0,
        flatTriangles: 0,
        shells: 1,
      })
  })

  it('a missing triangle leaves three open edges', () => {
    const { seams, closed } = measureMesh(spoiled(box(1, 2, 3), [], [4]))
    expect(seams.openEdges).toBe(3)
    expect(closed).toBe(false)
  })

  it('turned triangles are counted one by one, and the fewer side is the turned one', () => {
    const mesh = sphere(3, 6, 12)
    expect(meshSeams(spoiled(mesh, [7])).turnedFaces).toBe(1)
    expect(meshSeams(spoiled(mesh, [3, 20, 41])).turnedFaces).toBe(3)
    const all = Array.from({ length: mesh.corners.length / 9 }, (_, i) => i)
    expect(meshSeams(spoiled(mesh, all)).turnedFaces).toBe(0)
    expect(meshSeams(spoiled(mesh, all.slice(2))).turnedFaces).toBe(2)
  })

  it('two boxes that share an edge crowd it, and are two shells', () => {
    const beside = moved(box(1, 1, 1), ([x, y, z]): Point => [x + 1, y + 1, z])
    const seams = meshSeams(together(box(1, 1, 1), beside))
    expect(seams).toMatchObject({ crowdedEdges: 1, openEdges: 0, shells: 2 })
  })

  it('a band with one twist has an edge that no turning mends', () => {
    const n = 12
    const at = (i: number, side: number): Point => {
      const turns = i >= n
      const [u, s] = [(2 * Math.PI * (i % n)) / n, turns ? -side : side]
      const r = 10 + s * Math.cos(u / 2)
      return [r * Math.cos(u), r * Math.sin(u), s * Math.sin(u / 2)]
    }
    const band = meshOf(
      Array.from({ length: n }, (_, i) => [at(i, -1), at(i + 1, -1), at(i + 1, 1), at(i, 1)]),
    )
    expect(meshSeams(band).oneSidedEdges).toBeGreaterThan(0)
    expect(meshSeams(band)).toMatchObject({ openEdges: 2 * n, shells: 1 })
  })

  it('a triangle with two corners at one place is left out, and 0 and -0 are one place', () => {
    const flat: Point[] = [
      [0, 0, 0],
      [1, 0, 0],
      [1, 0, 0],
    ]
    expect(meshSeams(together(box(1, 2, 3), meshOf([flat])))).toMatchObject({
      openEdges: 0,
      flatTriangles: 1,
    })
    const signed = moved(box(1, 2, 3), ([x, y, z]): Point => [x === 0 ? -0 : x, y, z])
    expect(meshSeams(spoiled(signed, [])).openEdges).toBe(0)
    expect(
      meshSeams(together(spoiled(box(1, 2, 3), [], [0, 1]), spoiled(signed, [], [2, 3]))).openEdges,
    ).toBe(countedPlainly(together(spoiled(box(1, 2, 3), [], [0, 1]), spoiled(signed, [], [2, 3]))).open)
  })

  it('open and crowded edges agree with a plain count on random triangle soups', () => {
    const coordinate = fc.integer({ min: 0, max: 2 })
    const soup = fc
      .array(fc.array(coordinate, { minLength: 9, maxLength: 9 }), { minLength: 1, maxLength: 30 })
      .map((list): Mesh => ({ corners: Float64Array.from(list.flat()) }))
    fc.assert(
      fc.property(soup, (mesh) => {
        const { openEdges, crowdedEdges } = meshSeams(mesh)
        expect({ open: openEdges, crowded: crowdedEdges }).toEqual(countedPlainly(mesh))
      }),
      { numRuns: 300 },
    )
  })

  it('a single turned subset of a sphere is always found again, the smaller side counted', () => {
    const mesh = sphere(2, 5, 8)
    const total = mesh.corners.length / 9
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(total - 1)), (turn) => {
        expect(meshSeams(spoiled(mesh, turn)).turnedFaces).toBe(Math.min(turn.length, total - turn.length))
      }),
    )
  })
})

describe('overhangs', () => {
  const table = together(
    moved(box(20, 10, 2), ([x, y, z]): Point => [x, y, z + 30]),
    moved(box(4, 10, 30), ([x, y, z]): Point => [x + 8, y, z]),
  )
  it('the underside of a plate on a leg hangs over its whole height', () => {
    const found = overhangOf(table, 45)
    expect(found?.areaMm2).toBeCloseTo(200, 9)
    expect(found?.columnMm3).toBeCloseTo(6000, 9)
  })

  it('what lies on the plate needs no support', () => {
    expect(overhangOf(box(5, 5, 5), 45)).toMatchObject({ areaMm2: 0, columnMm3: 0 })
  })

  it('a wall that leans out by 40 degrees prints at a limit of 45, and one of 50 does not', () => {
    const leaning = (degrees: number) =>
      moved(box(10, 10, 10), ([x, y, z]): Point => [x + z * Math.tan((degrees * Math.PI) / 180), y, z])
    expect(overhangOf(leaning(40), 45)?.areaMm2).toBe(0)
    expect(overhangOf(leaning(45), 45)?.areaMm2).toBe(0)
    expect(overhangOf(leaning(50), 45)?.areaMm2).toBeCloseTo(100 * Math.tan((50 * Math.PI) / 180), 6)
  })

  it('an angle that is none gives nothing', () => {
    for (const angle of [-1, 91, Number.NaN]) expect(overhangOf(box(1, 1, 1), angle)).toBe(null)
  })
})
