import { describe, expect, it } from 'vitest'
import { vectorOf } from '../../../src/geometry/relations/directions.ts'
import { pairOf, relateSolids, stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import type { Vector } from '../../../src/geometry/relations/vector.ts'
import { dot } from '../../../src/geometry/relations/vector.ts'
import { ball, block, kernel, type Manifold, rod, solidFrom } from './manifold-solids.ts'

/** Step of the booleans, mm. */
const stepMm = 0.7
const farMm = 90

/**
 * Whether a part, less what it has in common with the other as drawn, ever has more than 0.2 mm3 in common with it on its way.
 * Source: booleans of manifold-3d.
 */
function stoppedByBooleans(mover: Manifold, still: Manifold, [x, y, z]: Vector): boolean {
  const rest = mover.subtract(still)
  for (let s = stepMm; s < farMm; s += stepMm)
    if (
      rest
        .translate([x * s, y * s, z * s])
        .intersect(still)
        .volume() > 0.2
    )
      return true
  return false
}

type Turn = [number, number, number]
const body = () => block([40, 40, 30], [-20, -20, -30])

/** A part that lies about z at first, and what it leaves free in the body, both turned. */
const pairs: readonly [string, (turn: Turn) => readonly [part: Manifold, seat: Manifold]][] = [
  [
    'pin with 0.05 mm of play',
    (turn) => [
      rod(1.5, 16, [0, 0, -8], 'z').rotate(turn),
      body().subtract(rod(1.55, 48, [0, 0, -8]).rotate(turn)),
    ],
  ],
  [
    'screw with 0.25 mm too much in radius',
    (turn) => [
      rod(1.5, 14, [0, 0, -10], 'z')
        .add(rod(2.75, 3, [0, 0, 4]))
        .rotate(turn),
      body()
        .subtract(rod(1.25, 50, [0, 0, -12]).rotate(turn))
        .subtract(rod(4, 40, [0, 0, 4]).rotate(turn))
        .subtract(block([60, 60, 40], [-30, -30, 4]).rotate(turn)),
    ],
  ],
  [
    'key in its slot',
    (turn) => [
      block([4, 12, 5], [-2, -6, -4]).rotate(turn),
      body()
        .subtract(block([4.05, 12.05, 40], [-2.025, -6.025, -4]).rotate(turn))
        .subtract(block([60, 60, 40], [-30, -30, 2]).rotate(turn)),
    ],
  ],
]

describe('tilted pairs', () => {
  for (const [name, draw] of pairs)
    it.each<[Turn]>([[[0, 5, 0]], [[0, 10, 0]], [[30, 0, 0]], [[0, 45, 0]], [[20, 25, 0]]])(
      `a ${name}, turned by %j degrees, is stopped as stepped booleans say`,
      (turn) => {
        const [part, seat] = draw(turn)
        const relations = relateSolids([solidFrom(part), solidFrom(seat)])
        const all = Array.from({ length: 6 + 2 * relations.tilted.length }, (_, direction) => direction)
        const own = all.filter((direction) => stopWidth(relations, 0, 1, direction) === 0)
        const expected = all.filter(
          (direction) => !stoppedByBooleans(part, seat, vectorOf(direction, relations.tilted)),
        )
        expect(own).toEqual(expected)
        expect(own.length).toBeGreaterThan(0)
      },
    )

  it.each([2, 5, 10, 30, 45])('a thread %i degrees off overlaps no wider than its depth', (deg) => {
    const [part, seat] = pairs[1]![1]([0, deg, 0])
    const relations = relateSolids([solidFrom(part), solidFrom(seat)])
    expect(pairOf(relations, 0, 1)!.overlapMm).toBeGreaterThan(0.1)
    expect(pairOf(relations, 0, 1)!.overlapMm).toBeLessThan(0.35)
  })
})

describe('seats off the axes in a body along them', () => {
  const away = (relations: ReturnType<typeof relateSolids>, wanted: Vector) =>
    relations.tilted.some((along) => Math.abs(dot(along, wanted)) > 0.9999)

  it('a ball leaves a bore along it', () => {
    const bore = rod(3.05, 60, [0, 0, -6]).rotate([0, 30, 0])
    const relations = relateSolids([
      solidFrom(ball(3)),
      solidFrom(body().translate([0, 0, 20]).subtract(bore)),
    ])
    expect(away(relations, [Math.sin(Math.PI / 6), 0, Math.cos(Math.PI / 6)])).toBe(true)
    expect(stopWidth(relations, 0, 1, 6)).toBe(0)
  })

  it('a nut slides out of a slot of another direction than its own faces', () => {
    const nut = rod(3, 2.4, [0, 0, -12], 'z', 6)
    const slot = block([60, 5.6, 2.5], [-3, -2.8, -12.05]).add(rod(3.2, 2.5, [0, 0, -12.05]))
    const turn: Turn = [0, 0, 20]
    const relations = relateSolids([
      solidFrom(nut.rotate([0, 0, 20])),
      solidFrom(
        body()
          .subtract(slot.rotate(turn))
          .subtract(rod(1, 60, [0, 0, -40])),
      ),
    ])
    expect(away(relations, [Math.cos(Math.PI / 9), Math.sin(Math.PI / 9), 0])).toBe(true)
    expect(stopWidth(relations, 0, 1, 6)).toBe(0)
    expect(stopWidth(relations, 0, 1, 7)).toBeGreaterThan(0)
  })

  it('a thread drawn as a helix turns out along its own axis', () => {
    const helix = (radius: number) =>
      kernel.CrossSection.circle(radius - 0.34, 40)
        .translate([0.34, 0])
        .extrude(16, 16 * 20, (360 * 16) / 1.25)
    const turn: Turn = [0, 30, 0]
    const screw = helix(4).add(rod(6.5, 6, [0, 0, 16]))
    const hole = helix(4.05)
      .add(rod(4.1, 2, [0, 0, 16]))
      .add(rod(7, 60, [0, 0, 16]))
    const relations = relateSolids(
      [
        solidFrom(screw.rotate(turn)),
        solidFrom(block([60, 60, 50], [-20, -30, -20]).subtract(hole.rotate(turn))),
      ],
      { leastGiveMm: () => 0.85 },
    )
    expect(away(relations, [Math.sin(Math.PI / 6), 0, Math.cos(Math.PI / 6)])).toBe(true)
    const free = [0, 1, 2, 3, 4, 5, 6, 7].filter((way) => stopWidth(relations, 0, 1, way) === 0)
    expect(free).toEqual([6])
  })

  it('a ball in a cup of more than half stays in, without an axis more', () => {
    const one = ball(5)
    const cup = block([14, 14, 9], [-7, -7, -7]).subtract(one)
    const relations = relateSolids([solidFrom(one), solidFrom(cup)])
    expect(relations.tilted).toEqual([])
  })
})
