import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exactSum } from '../../src/geometry/exact-sum.ts'
import { measureMesh } from '../../src/geometry/measure-mesh.ts'
import type { Mesh, Point } from '../../src/geometry/mesh.ts'
import { box, corner, moved, prism, ring, sphere, torus } from '../unit/geometry/solids.ts'

/** Closed forms of solid geometry (textbook); facets counted as facets, so that they are met to rounding. */
const near = (got: number, wanted: number, relative = 1e-12): void =>
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted))

describe('volume and surface of meshes, against closed forms', () => {
  it('a box is length x width x height, and twice the three faces', () => {
    const { volumeMm3, areaMm2, box: bounds, closed, triangles } = measureMesh(box(60, 40, 7.5))
    near(volumeMm3, 18_000)
    near(areaMm2, 2 * (60 * 40 + 60 * 7.5 + 40 * 7.5))
    expect(bounds).toEqual({ lowMm: [0, 0, 0], highMm: [60, 40, 7.5], sizeMm: [60, 40, 7.5] })
    expect(closed).toBe(true)
    expect(triangles).toBe(12)
  })

  it('a tetrahedron on three axes is a sixth of the product of its legs', () => {
    const { volumeMm3, areaMm2 } = measureMesh(corner(3, 4, 5))
    near(volumeMm3, 10)
    near(areaMm2, (12 + 15 + 20) / 2 + Math.hypot(12, 15, 20) / 2)
  })

  it.each([3, 6, 12, 48, 400])('a cylinder of %i facets is its polygon times the height', (n) => {
    const [r, h] = [11.5, 23]
    const polygon = (n / 2) * r * r * Math.sin((2 * Math.PI) / n)
    const { volumeMm3, areaMm2 } = measureMesh(prism(ring(n, r), h))
    near(volumeMm3, polygon * h)
    near(areaMm2, 2 * polygon + n * 2 * r * Math.sin(Math.PI / n) * h)
  })

  it('a cylinder of 2,000 facets is within 2 in a million of pi r2 h', () => {
    near(measureMesh(prism(ring(2000, 11.5), 23)).volumeMm3, Math.PI * 11.5 ** 2 * 23, 2e-6)
  })

  it('a regular octahedron, the coarsest sphere, is 4/3 r3 with 2 sqrt(3) a2 of surface', () => {
    const { volumeMm3, areaMm2, seams } = measureMesh(sphere(7, 2, 4))
    near(volumeMm3, (4 / 3) * 7 ** 3)
    near(areaMm2, 2 * Math.sqrt(3) * 2 * 7 ** 2)
    expect(seams.shells).toBe(1)
  })

  it.each([8, 16, 32])('a sphere of %i rings is the sum of its frustums', (rings) => {
    // Frustum of two regular n-gons: h/3 (A + sqrt(A B) + B), for parallel similar faces in the same turn.
    const [r, n] = [9, 2 * rings]
    const area = (i: number) =>
      (n / 2) * (r * Math.cos((Math.PI * i) / rings - Math.PI / 2)) ** 2 * Math.sin((2 * Math.PI) / n)
    const z = (i: number) => r * Math.sin((Math.PI * i) / rings - Math.PI / 2)
    let wanted = 0
    for (let i = 0; i < rings; i++) {
      const [a, b] = [area(i), area(i + 1)]
      wanted += ((z(i + 1) - z(i)) / 3) * (a + Math.sqrt(a * b) + b)
    }
    near(measureMesh(sphere(r, rings, n)).volumeMm3, wanted, 1e-11)
    near(wanted, (4 / 3) * Math.PI * r ** 3, 10 / rings ** 2)
  })

  it('a torus comes within facets of 2 pi2 R r2 and 4 pi2 R r, and is one closed shell', () => {
    const { volumeMm3, areaMm2, seams, closed } = measureMesh(torus(20, 6, 400, 200))
    near(volumeMm3, 2 * Math.PI ** 2 * 20 * 36, 3e-4)
    near(areaMm2, 4 * Math.PI ** 2 * 20 * 6, 3e-4)
    expect(closed).toBe(true)
    expect(seams.shells).toBe(1)
  })

  it('a torus of flat facets has the volume of polygons carried round: n sin(2 pi/n)/2 of R times the polygon', () => {
    // A point at radius r carried along n chords sweeps n sin(2 pi/n) r dr: Pappus for chords, exact for flat facets.
    const [R, r, n, m] = [20, 6, 48, 24]
    const polygon = (m / 2) * r * r * Math.sin((2 * Math.PI) / m)
    near(measureMesh(torus(R, r, n, m)).volumeMm3, polygon * R * n * Math.sin((2 * Math.PI) / n), 1e-11)
  })

  it('a part a kilometre from the origin has the very volume it has at the origin', () => {
    // Corners on a grid of 1/1024 mm are exact in both places, so nothing but the sum can differ.
    const grid = (x: number) => Math.round(x * 1024) / 1024
    const ball = moved(sphere(7.3, 12, 24), ([x, y, z]): Point => [grid(x), grid(y), grid(z)])
    const away = moved(ball, ([x, y, z]): Point => [x + 990_000, y - 990_000, z + 990_000])
    expect(measureMesh(away).volumeMm3).toBe(measureMesh(ball).volumeMm3)
    expect(measureMesh(away).areaMm2).toBe(measureMesh(ball).areaMm2)
  })

  // The example by which the compensated sum is usually shown: plain summing gives 0.
  it('a sum keeps what each addition rounds away: 1 + 1e100 + 1 - 1e100 is 2', () => {
    const sum = exactSum()
    for (const term of [1, 1e100, 1, -1e100]) sum.add(term)
    expect(sum.total()).toBe(2)
  })
})

const solids = fc.oneof(
  fc.record({ x: side(), y: side(), z: side() }).map(({ x, y, z }) => box(x, y, z)),
  fc
    .record({ n: fc.integer({ min: 3, max: 30 }), r: side(), h: side() })
    .map(({ n, r, h }) => prism(ring(n, r), h)),
  fc.record({ x: side(), y: side(), z: side() }).map(({ x, y, z }) => corner(x, y, z)),
)

function side() {
  return fc.double({ min: 0.1, max: 200, noNaN: true })
}

function turnedBy(mesh: Mesh, a: number, b: number): Mesh {
  return moved(mesh, ([x, y, z]): Point => {
    const [p, q] = [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)]
    return [p, q * Math.cos(b) - z * Math.sin(b), q * Math.sin(b) + z * Math.cos(b)]
  })
}

describe('laws of volume and surface', () => {
  const shift = fc.double({ min: -500, max: 500, noNaN: true })
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })

  it('moving and turning a part changes neither volume nor surface', () => {
    fc.assert(
      fc.property(solids, shift, shift, angle, angle, (mesh, dx, dz, a, b) => {
        const [before, after] = [
          measureMesh(mesh),
          measureMesh(moved(turnedBy(mesh, a, b), ([x, y, z]): Point => [x + dx, y - dx, z + dz])),
        ]
        // Rounding of corners far out weighs against thin parts.
        const slack = 1e-11 * (1 + Math.abs(dx) + Math.abs(dz)) * before.areaMm2 + 1e-9 * before.volumeMm3
        expect(Math.abs(after.volumeMm3 - before.volumeMm3)).toBeLessThanOrEqual(slack)
        near(after.areaMm2, before.areaMm2, 1e-8)
      }),
    )
  })

  it('scaling by k multiplies volume by k3, surface by k2 and the box by k', () => {
    fc.assert(
      fc.property(solids, fc.double({ min: 0.01, max: 50, noNaN: true }), (mesh, k) => {
        const [one, other] = [
          measureMesh(mesh),
          measureMesh(moved(mesh, ([x, y, z]): Point => [k * x, k * y, k * z])),
        ]
        near(other.volumeMm3, one.volumeMm3 * k ** 3, 1e-10)
        near(other.areaMm2, one.areaMm2 * k ** 2, 1e-10)
        for (const axis of [0, 1, 2] as const) near(other.box.sizeMm[axis], one.box.sizeMm[axis] * k, 1e-10)
      }),
    )
  })

  it('a mirrored part has the same volume and looks inside out', () => {
    fc.assert(
      fc.property(solids, (mesh) => {
        const mirrored = measureMesh(moved(mesh, ([x, y, z]): Point => [-x, y, z]))
        near(mirrored.volumeMm3, measureMesh(mesh).volumeMm3, 1e-10)
        expect(mirrored.insideOut).toBe(true)
        expect(mirrored.closed).toBe(true)
      }),
    )
  })

  it('a box with a closed hollow has the volume of the box less that of the hollow, in two shells', () => {
    const hollow = moved(box(4, 5, 6), ([x, y, z]): Point => [7 - x, y + 2, z + 2])
    const mesh = { corners: Float64Array.from([...box(20, 20, 20).corners, ...hollow.corners]) }
    near(measureMesh(mesh).volumeMm3, 8000 - 120)
    expect(measureMesh(mesh).seams.shells).toBe(2)
  })
})
