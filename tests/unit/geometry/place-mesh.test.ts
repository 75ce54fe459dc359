import { describe, expect, it } from 'vitest'
import { placeMesh, unmoved } from '../../../src/geometry/place-mesh.ts'
import { splitShells } from '../../../src/geometry/split-shells.ts'
import { box, moved, together } from './solids.ts'

const point = (x: number, y: number, z: number) => ({ corners: Float64Array.of(x, y, z) })

describe('the place of a mesh', () => {
  it('leaves it where it was saved where nothing is moved', () => {
    expect([...placeMesh(point(1, 2, 3), unmoved)]).toEqual([1, 2, 3])
  })

  it('turns about x, then y, then z, then moves', () => {
    const turned = (turnDegrees: [number, number, number]) => [
      ...placeMesh(point(1, 2, 3), { atMm: [0, 0, 0], turnDegrees }),
    ]
    expect(turned([90, 0, 0])).toEqual([1, -3, 2])
    expect(turned([0, 90, 0])).toEqual([3, 2, -1])
    expect(turned([0, 0, 90])).toEqual([-2, 1, 3])
    expect(turned([90, 0, 90])).toEqual([3, 1, 2])
    expect([...placeMesh(point(1, 0, 0), { atMm: [10, 20, 30], turnDegrees: [0, 0, 180] })]).toEqual([
      9, 20, 30,
    ])
  })

  it('turns by any angle', () => {
    const [x, y] = placeMesh(point(1, 0, 0), { atMm: [0, 0, 0], turnDegrees: [0, 0, 30] })
    expect(x).toBeCloseTo(Math.sqrt(3) / 2, 6)
    expect(y).toBeCloseTo(0.5, 6)
  })
})

describe('the bodies of one mesh', () => {
  const away = (d: number) => moved(box(4, 4, 4), ([x, y, z]) => [x + d, y, z])

  it('are its shells, in the order of the file', () => {
    const shells = splitShells(together(away(20), away(0), away(10)))!
    expect(shells.map(({ corners }) => Math.min(...corners.filter((_, i) => i % 3 === 0)))).toEqual([
      20, 0, 10,
    ])
  })

  it('are not told apart where there are more than asked for', () => {
    const three = together(away(20), away(0), away(10))
    expect(splitShells(three, 3)).toHaveLength(3)
    expect(splitShells(three, 2)).toBeNull()
  })

  it('keep the wall of their hollow', () => {
    const hollow = moved(box(2, 2, 2), ([x, y, z]) => [z + 1, y + 1, x + 1])
    const shells = splitShells(together(hollow, away(0), away(10)))!
    expect(shells.map(({ corners }) => corners.length / 9)).toEqual([24, 12])
  })
})
