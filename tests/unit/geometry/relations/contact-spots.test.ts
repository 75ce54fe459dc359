import { describe, expect, it } from 'vitest'
import { contactSpots } from '../../../../src/geometry/relations/contact-spots.ts'
import { type Solid, solidOf } from '../../../../src/geometry/relations/solid.ts'
import { box, moved, prism, ring, together } from '../solids.ts'

type Six = readonly [x0: number, x1: number, y0: number, y1: number, z0: number, z1: number]
const boxOf = ([x0, x1, y0, y1, z0, z1]: Six) =>
  moved(box(x1 - x0, y1 - y0, z1 - z0), ([x, y, z]) => [x + x0, y + y0, z + z0])
const solid = (...boxes: readonly Six[]): Solid =>
  solidOf(Float32Array.from(together(...boxes.map(boxOf)).corners))
const round = (radius: number, from: number, to: number) =>
  moved(prism(ring(48, radius), to - from), ([x, y, z]) => [x, y, z + from])

const near = (spot: readonly number[], wanted: readonly number[]) =>
  expect(Math.hypot(...spot.map((at, axis) => at - wanted[axis]!))).toBeLessThan(0.3)

const floor = solid([-20, 20, -20, 20, -5, 0])
/** Walls of 4 mm around an open middle. */
const frame = solid(
  [-20, 20, -20, -16, 0, 9],
  [-20, 20, 16, 20, 0, 9],
  [-20, -16, -20, 20, 0, 9],
  [16, 20, -20, 20, 0, 9],
)

describe('where a body rests', () => {
  it('is the middle of the face it stands on', () => {
    const seat = contactSpots([solid([2, 8, -3, 3, 0, 12])], [floor], 4)!
    near(seat.points[0], [5, 0, 0])
    expect(seat.on).toBe(0)
  })

  it('is nowhere where it hangs free, or leaves the other way', () => {
    expect(contactSpots([solid([2, 8, -3, 3, 0.5, 12])], [floor], 4)).toBe(null)
    expect(contactSpots([solid([2, 8, -3, 3, 0, 12])], [floor], 5)).toBe(null)
  })

  it('is on the rim where a lid is flat over a hollow', () => {
    const seat = contactSpots([solid([-20, 20, -20, 20, 9, 11])], [floor, frame], 4)!
    expect(seat.on).toBe(1)
    for (const [x, y, z] of seat.points) {
      expect(z).toBeCloseTo(9, 3)
      expect(Math.max(Math.abs(x), Math.abs(y))).toBeGreaterThan(15.9)
    }
  })

  it('is on the axis of a screw, under its head', () => {
    const screw = solidOf(Float32Array.from(together(round(1.5, -4, 9.5), round(3, 9, 12)).corners))
    // The shank stands in the floor as drawn; the head rests on the frame, which has no hole here.
    const plate = solid(
      [-6, 6, -6, -1.6, 5, 9],
      [-6, 6, 1.6, 6, 5, 9],
      [-6, -1.6, -6, 6, 5, 9],
      [1.6, 6, -6, 6, 5, 9],
    )
    const seat = contactSpots([screw], [floor, plate], 4)!
    expect(seat.on).toBe(1)
    near(seat.points[0], [0, 0, 9])
  })

  it('is the larger of two levels, along any axis', () => {
    const step = solid([0, 10, 0, 4, 0, 4], [0, 4, 0, 10, 0, 4])
    const hook = solid([10, 12, 0, 4, 0, 4], [4, 12, 6, 10, 0, 1])
    const seat = contactSpots([hook], [step], 0)!
    near(seat.points[0], [10, 2, 2])
  })
})
