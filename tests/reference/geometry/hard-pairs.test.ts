import { describe, expect, it } from 'vitest'
import { directionNames, directions } from '../../../src/geometry/relations/directions.ts'
import {
  pairOf,
  type Relations,
  relateSolids,
  stopWidth,
  touches,
} from '../../../src/geometry/relations/relate-solids.ts'
import { type Solid, solidOf } from '../../../src/geometry/relations/solid.ts'
import { ball, block, cornersOf, kernel, type Manifold, rod, solidFrom, tube } from './manifold-solids.ts'

// What a hand finds out with the real things; no source but the shapes themselves.

/** The directions in which the first can leave the second, as `+x -z`. */
function waysOut(relations: Relations, mover = 0, still = 1): string {
  return directions
    .filter((direction) => stopWidth(relations, mover, still, direction) === 0)
    .map((direction) => directionNames[direction])
    .join(' ')
}

const ways = (a: Manifold, b: Manifold) => waysOut(relateSolids([solidFrom(a), solidFrom(b)]))
const prismAlongX = (outline: [number, number][], length: number) =>
  new kernel.CrossSection([outline]).extrude(length).rotate([90, 0, 90])

describe('hard pairs', () => {
  it('a dovetail leaves along its slide alone', () => {
    const tail = prismAlongX(
      [
        [-3, 0],
        [3, 0],
        [5, 4],
        [-5, 4],
      ],
      20,
    )
    const body = block([20, 20, 12], [0, -10, -8]).subtract(tail.translate([0, 0, 0]))
    expect(ways(tail, body)).toBe('+x -x +z')
    expect(
      ways(
        prismAlongX(
          [
            [-5, -4],
            [5, -4],
            [3, 0],
            [-3, 0],
          ],
          20,
        ),
        block([20, 20, 8], [0, -10, -8]).subtract(
          prismAlongX(
            [
              [-5, -4],
              [5, -4],
              [3, 0],
              [-3, 0],
            ],
            20,
          ),
        ),
      ),
    ).toBe('+x -x')
  })

  it('a cone in its seat leaves upward alone', () => {
    const cone = rod(2, 6, [0, 0, 0], 'z', 64, 5)
    expect(ways(cone, block([14, 14, 6], [-7, -7, 0]).subtract(cone))).toBe('+z')
  })

  it('a ball leaves a half cup upward and a cup of 60 % not at all', () => {
    const one = ball(5)
    const cup = (top: number) => block([14, 14, 7 + top], [-7, -7, -7]).subtract(one)
    expect(ways(one, cup(0))).toBe('+z')
    // A cap of 60 % of the height: its mouth is sqrt(25 - 1) = 4.90 mm wide in radius, 0.1 mm less than the ball.
    expect(ways(one, cup(2))).toBe('')
  })

  it('a shaft lifts out of half a bearing and slides along it', () => {
    const shaft = rod(3, 30, [-5, 0, 0], 'x')
    expect(ways(shaft, block([20, 12, 6], [0, -6, -6]).subtract(shaft))).toBe('+x -x +z')
  })

  it('two crossed bars of twelve triangles stop each other where edges pass over edges', () => {
    const [low, high] = [block([40, 4, 4], [-20, -2, 0]), block([4, 40, 4], [-2, -20, 4])]
    expect(ways(high, low)).toBe('+x -x +y -y +z')
  })

  it('linked rings do not part', () => {
    const link = (turn: [number, number, number], x: number) =>
      tube(8, 6, 2, [0, 0, -1]).rotate(turn).translate([x, 0, 0])
    expect(ways(link([0, 0, 0], 0), link([90, 0, 0], 7))).toBe('')
  })

  it('a nut of a T-slot leaves along the slot alone', () => {
    const nut = prismAlongX(
      [
        [-5, 0],
        [5, 0],
        [5, 3],
        [2, 3],
        [2, 6],
        [-2, 6],
        [-2, 3],
        [-5, 3],
      ],
      10,
    )
    const slot = prismAlongX(
      [
        [-5.1, -0.1],
        [5.1, -0.1],
        [5.1, 3.1],
        [2.1, 3.1],
        [2.1, 9],
        [-2.1, 9],
        [-2.1, 3.1],
        [-5.1, 3.1],
      ],
      42,
    )
    const rail = block([40, 20, 8], [0, -10, -2]).subtract(slot.translate([-1, 0, 0]))
    expect(ways(nut.translate([15, 0, 0]), rail)).toBe('+x -x')
  })

  it('a piston under a lip stays in unless it is as wide as the mouth', () => {
    const cup = (mouth: number) =>
      tube(10, 6, 12)
        .add(rod(10, 2, [0, 0, -2]))
        .add(tube(10, mouth, 2, [0, 0, 12]))
    const piston = rod(6, 6, [0, 0, 2], 'z', 60)
    expect(ways(piston, cup(5))).toBe('')
    expect(ways(piston, cup(6))).toBe('+z')
  })
})

describe('sizes as drawn', () => {
  const holed = (radius: number, facets: number) =>
    block([20, 20, 10], [-10, -10, 0]).subtract(rod(radius, 30, [0, 0, -10], 'z', facets))
  const screw = (radius: number, facets = 48) =>
    rod(radius, 12, [0, 0, 0], 'z', facets).add(rod(2 * radius, 4, [0, 0, 10], 'z', facets))

  it.each([0.02, 0.05, 0.1, 0.2, 0.35])(
    'a thread drawn as a cylinder %s mm too wide in radius turns out on the head side',
    (over) => {
      expect(ways(screw(3 + over), holed(3, 48))).toBe('+z')
    },
  )

  it.each([
    [12, 128],
    [17, 16],
    [48, 31],
    [128, 12],
  ])('%i facets in %i facets of one size slide', (inner, outer) => {
    expect(ways(screw(3, inner), holed(3, outer))).toBe('+z')
  })

  it.each([0.02, 0.1, 0.2, 0.3])('a clearance of %s mm holds sideways all the same', (play) => {
    expect(ways(screw(3 - play), holed(3, 48))).toBe('+z')
  })

  it('an overlap wider than a thread is told with its width', () => {
    const relations = relateSolids([solidFrom(screw(3)), solidFrom(block([20, 20, 10], [-10, -10, 0]))])
    expect(pairOf(relations, 0, 1)!.overlapMm).toBeGreaterThan(5.5)
    expect(pairOf(relations, 0, 1)!.overlapMm).toBeLessThan(6.2)
  })

  it('a plate sunk by 0.3 mm into another is told as such', () => {
    const relations = relateSolids([
      solidFrom(block([20, 20, 3], [0, 0, 9.7])),
      solidFrom(block([30, 30, 10], [-5, -5, 0])),
    ])
    expect(pairOf(relations, 0, 1)!.overlapMm).toBeCloseTo(0.3, 1)
  })

  it('the area of contact of a lid is that of its face', () => {
    const relations = relateSolids([
      solidFrom(block([40, 30, 2], [0, 0, 10])),
      solidFrom(tube(10, 5, 10, [20, 15, 0], 'z', 96)),
    ])
    const exact = Math.PI * (100 - 25)
    expect(pairOf(relations, 0, 1)!.contactMm2[5]! / exact).toBeCloseTo(1, 1)
    expect(touches(relations, 0, 1)).toBe(true)
  })

  it('parts a millimetre apart do not touch', () => {
    const relations = relateSolids([
      solidFrom(block([5, 5, 5], [0, 0, 0])),
      solidFrom(block([5, 5, 5], [0, 0, 6])),
    ])
    expect(touches(relations, 0, 1)).toBe(false)
    expect(waysOut(relations)).toBe('+x -x +y -y -z')
  })

  it('a wall of 0.5 mm seen edge-on stops a part', () => {
    const relations = relateSolids([
      solidFrom(block([5, 5, 5], [0, 0, 0])),
      solidFrom(block([0.5, 9, 9], [2, -2, 8])),
    ])
    expect(waysOut(relations)).toBe('+x -x +y -y -z')
  })
})

describe('meshes that are not sound', () => {
  const pair = [
    rod(3, 12, [0, 0, 0]).add(rod(6, 4, [0, 0, 10])),
    block([20, 20, 10], [-10, -10, 0]).subtract(rod(3.05, 30, [0, 0, -10])),
  ].map((body) => cornersOf(body.refine(4)))
  const spoilt = (change: (triangle: Float32Array, k: number) => Float32Array | null): Solid[] =>
    pair.map((corners) => {
      const kept: number[] = []
      for (let o = 0; o < corners.length; o += 9) kept.push(...(change(corners.slice(o, o + 9), o / 9) ?? []))
      return solidOf(Float32Array.from(kept))
    })
  const over = (t: Float32Array) =>
    Float32Array.from([...t.subarray(0, 3), ...t.subarray(6), ...t.subarray(3, 6)])

  it.each<[string, (t: Float32Array, k: number) => Float32Array | null]>([
    ['sound', (t) => t],
    ['turned inside out', over],
    ['doubled', (t) => Float32Array.from([...t, ...t])],
    ['short of one triangle in a hundred', (t, k) => (k % 100 === 7 ? null : t)],
    ['with one triangle in a hundred turned over', (t, k) => (k % 100 === 3 ? over(t) : t)],
    [
      'shaken by 0.01 mm, so that every seam leaks',
      (t, k) => t.map((x, i) => x + 0.01 * Math.sin(k * 91 + i * 37)),
    ],
  ])('give the same ways out when %s', (_, change) => {
    expect(waysOut(relateSolids(spoilt(change)))).toBe('+z')
  })

  it('tell how many columns leak', () => {
    expect(relateSolids(spoilt((t) => t)).leaks).toEqual([0, 0])
    const { leaks } = relateSolids(spoilt((t, k) => (k % 100 === 7 ? null : t)))
    expect(Math.min(...leaks)).toBeGreaterThan(0)
  })
})

describe('a sheet thinner than what pairs give', () => {
  it.each([0.1, 0.2, 0.3, 0.5])('of %s mm is stopped edge-on by a screw through its hole', (thick) => {
    const screw = kernel.Manifold.union([
      kernel.Manifold.cylinder(12, 1.5, 1.5, 32).translate([0, 0, -10]),
      kernel.Manifold.cylinder(3, 3, 3, 32).translate([0, 0, 2 + thick]),
    ])
    const hole = kernel.Manifold.cylinder(thick, 1.7, 1.7, 32)
    const sheet = kernel.Manifold.cube([40, 30, thick], false).translate([-20, -15, 0]).subtract(hole)
    const relations = relateSolids([sheet, screw].map((body) => solidOf(cornersOf(body))))
    // Off the screw downward alone: the head is above it.
    expect(waysOut(relations)).toBe('-z')
  })
})
