import { describe, expect, it } from 'vitest'
import type { Point } from '../../../../src/geometry/mesh.ts'
import { solidOf } from '../../../../src/geometry/relations/solid.ts'
import { mostTilted, tiltedAxes } from '../../../../src/geometry/relations/tilted-axes.ts'
import type { Vector } from '../../../../src/geometry/relations/vector.ts'
import { box, meshOf, moved, prism, ring, sphere, together, torus } from '../solids.ts'

type Mesh = ReturnType<typeof box>

/** Turned about y, then z, in degrees. */
const tilt = (mesh: Mesh, b: number, c = 0): Mesh => {
  const [cb, sb, cc, sc] = [b, c].flatMap((deg) => [
    Math.cos((deg * Math.PI) / 180),
    Math.sin((deg * Math.PI) / 180),
  ]) as [number, number, number, number]
  return moved(mesh, ([x, y, z]): Point => {
    const [x1, z1] = [x * cb + z * sb, -x * sb + z * cb]
    return [x1 * cc - y * sc, x1 * sc + y * cc, z1]
  })
}
const axesOf = (...meshes: readonly Mesh[]) =>
  tiltedAxes(meshes.map(({ corners }) => solidOf(Float32Array.from(corners))))
const inDegrees = (b: number): Vector => [Math.sin((b * Math.PI) / 180), 0, Math.cos((b * Math.PI) / 180)]
const close = (found: Vector | undefined, wanted: Vector) => {
  expect(found).toBeDefined()
  const cosine = found!.reduce((sum, part, k) => sum + part * wanted[k]!, 0)
  expect((Math.acos(Math.min(1, Math.abs(cosine))) * 180) / Math.PI).toBeLessThan(0.05)
}

describe('the tilted axes of parts', () => {
  it.each([3, 5, 6, 8, 9, 12, 31, 48, 97, 200])('are none for a straight rod of %i facets', (facets) => {
    const rod = prism(ring(facets, 4), 20)
    expect(axesOf(rod, tilt(rod, 90), tilt(rod, 0, 11), tilt(tilt(rod, 90), 0, 90))).toEqual([])
  })

  it.each([3, 5, 6, 8, 9, 12, 31, 48, 97, 200])('are that of a tilted rod of %i facets alone', (facets) => {
    for (const height of [0.6, 3, 40]) {
      const found = axesOf(tilt(prism(ring(facets, 4), height), 33))
      expect(found).toHaveLength(1)
      close(found[0], inDegrees(33))
    }
  })

  it('are two for a box turned about one of its axes, three for one off all', () => {
    expect(axesOf(tilt(box(3, 10, 4), 30))).toHaveLength(2)
    const [one, other] = axesOf(tilt(box(3, 10, 4), 30))
    close(one, inDegrees(-60))
    close(other, inDegrees(30))
    expect(axesOf(tilt(box(30, 100, 0.8), 30))).toHaveLength(2)
    expect(axesOf(tilt(box(3, 10, 4), 30, 20))).toHaveLength(3)
  })

  it('are none for what has no axis', () => {
    expect(axesOf(sphere(8, 24, 48), tilt(sphere(8, 24, 48), 20, 10))).toEqual([])
  })

  it('are the axis of what is round without a face along or across it', () => {
    const cone = meshOf([
      ...ring(48, 6).map(([x, y], k, all): Point[] => [
        [x, y, 0],
        [...all[(k + 1) % 48]!, 0],
        [0, 0, 9],
      ]),
      ring(48, 6)
        .reverse()
        .map(([x, y]): Point => [x, y, 0]),
    ])
    for (const mesh of [torus(10, 2, 64, 24), torus(10, 2, 64, 25), cone]) {
      close(axesOf(tilt(mesh, 25))[0], inDegrees(25))
      expect(axesOf(tilt(mesh, 25))).toHaveLength(1)
      expect(axesOf(mesh)).toEqual([])
    }
  })

  it('are none for a mesh without area', () => {
    expect(axesOf({ corners: new Float64Array(9) })).toEqual([])
  })

  it('are none up to a quarter of a degree off, and one from there on', () => {
    const rod = prism(ring(48, 4), 20)
    expect(axesOf(tilt(rod, 0.2))).toEqual([])
    close(axesOf(tilt(rod, 0.4))[0], inDegrees(0.4))
  })

  it('are one for parts along one line, that of the largest; those of most parts first', () => {
    const rod = prism(ring(48, 2), 20)
    const found = axesOf(
      tilt(prism(ring(48, 9), 50), 10),
      tilt(rod, 40),
      tilt(prism(ring(48, 1), 5), 40.2),
      tilt(rod, -40),
    )
    expect(found).toHaveLength(3)
    close(found[0], inDegrees(40))
    close(found[1], inDegrees(10))
  })

  it('are no more than bound', () => {
    const rod = prism(ring(24, 2), 20)
    expect(axesOf(...Array.from({ length: 17 }, (_, k) => tilt(rod, 5 * (k + 1))))).toHaveLength(mostTilted)
  })

  it('are the same for a mesh shaken by 0.005 mm, within a tenth of a degree', () => {
    const shaken = moved(tilt(prism(ring(48, 4), 20), 33), ([x, y, z], k = 0) => [
      x + 0.005 * Math.sin(91 * x + 37 * y + k),
      y + 0.005 * Math.sin(53 * y + 71 * z),
      z + 0.005 * Math.sin(29 * z + 97 * x),
    ])
    const found = axesOf(shaken)
    expect(found).toHaveLength(1)
    expect(Math.abs(found[0]![0] - inDegrees(33)[0])).toBeLessThan(0.002)
  })

  it('go by the sides of a straight block with a groove at 45 degrees', () => {
    const block = together(box(20, 40, 12), tilt(box(5, 40, 5), 45))
    expect(axesOf(block)).toEqual([])
  })
})
