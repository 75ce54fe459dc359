import { describe, expect, it } from 'vitest'
import { type Direction, directionNames, directions } from '../../../src/geometry/relations/directions.ts'
import { relateSolids, stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import { ball, block, kernel, type Manifold, rod, solidFrom, tube } from './manifold-solids.ts'

// Source: booleans of manifold-3d, stepped along each direction; the widest disc by shrinking their shadow.
// FETTLE_PAIRS=500 runs all; fewer by themselves, since booleans take most of the time.
const pairs = Number(process.env.FETTLE_PAIRS ?? 60)
const coarseMm = 0.25
/** Shallow collisions fall between coarse steps: where the two differ, the booleans look again. */
const fineMm = 0.02
/** The give is 0.3 mm wide; discs within this of it may be told either way. */
const bandMm = 0.15

/** A stream of numbers below 1. Source: Park and Miller's minimal standard (1988), from memory. */
function stream(seed: number): () => number {
  let state = seed * 7919 + 17
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}

function randomBody(next: () => number): Manifold {
  const size = () => 2 + 6 * next()
  const bodies = [
    () => block([size(), size(), size()], [0, 0, 0]),
    () => rod(size() / 2, size(), [0, 0, 0], 'z', 32),
    () => tube(3 + size() / 2, 1 + next(), size(), [0, 0, 0], 'z', 32),
    () => ball(size() / 2, [0, 0, 0], 32),
    () => rod(size() / 2, size(), [0, 0, 0], 'z', 32, 0.5),
    () => block([8, size(), 8], [0, 0, 0]).subtract(block([4, 20, 6], [2, -5, -1])),
  ]
  const body = bodies[Math.floor(next() * bodies.length)]!()
  const turn = () => (next() < 0.5 ? 90 * Math.floor(4 * next()) : 360 * next())
  const away = () => 8 * (next() - 0.5)
  return body.rotate([turn(), turn(), turn()]).translate([away(), away(), away()])
}

/** The shadow, across the direction, of all that a moved in steps has in common with b. */
function shadow(a: Manifold, b: Manifold, direction: Direction, stepMm: number) {
  const [axis, sign] = [direction >> 1, direction % 2 === 0 ? 1 : -1]
  const [mine, theirs] = [a.boundingBox(), b.boundingBox()]
  const way = sign > 0 ? theirs.max[axis]! - mine.min[axis]! : mine.max[axis]! - theirs.min[axis]!
  const upright =
    axis === 0 ? ([0, -90, 0] as const) : axis === 1 ? ([90, 0, 0] as const) : ([0, 0, 0] as const)
  const shadows = []
  for (let s = stepMm; s < way; s += stepMm) {
    const by: [number, number, number] = [0, 0, 0]
    by[axis] = sign * s
    const common = a.translate(by).intersect(b)
    if (!common.isEmpty() && common.volume() > 1e-4) shadows.push(common.rotate([...upright]).project())
  }
  return kernel.CrossSection.union(shadows)
}

/** Whether a shadow holds a disc as wide as the give; `null` where it lies within the band. */
function verdict(common: ReturnType<typeof shadow>): boolean | null {
  const surely = !common.offset(-(0.3 + bandMm) / 2, 'Miter').isEmpty()
  const perhaps = !common.offset(-(0.3 - bandMm) / 2, 'Miter').isEmpty()
  return surely === perhaps ? surely : null
}

describe('random pairs of solids', () => {
  it(`are stopped just where stepped booleans say so, outside the band about the give (${pairs} pairs)`, () => {
    const wrong: string[] = []
    let [stopped, within] = [0, 0]
    for (let pair = 0; pair < pairs; pair++) {
      const next = stream(pair + 1)
      const a = randomBody(next)
      const b = randomBody(next).subtract(a)
      if (b.isEmpty() || b.volume() < 1) continue
      const relations = relateSolids([solidFrom(a), solidFrom(b)])
      for (const direction of directions) {
        const says = stopWidth(relations, 0, 1, direction) > 0
        const coarse = verdict(shadow(a, b, direction, coarseMm))
        const booleans = coarse === says ? coarse : verdict(shadow(a, b, direction, fineMm))
        if (says) stopped++
        if (booleans === null) within++
        else if (says !== booleans) wrong.push(`pair ${pair}, ${directionNames[direction]}: ${says}`)
      }
    }
    expect(stopped).toBeGreaterThan(pairs)
    expect(within).toBeLessThan(pairs / 2) // of six directions each
    expect(wrong).toEqual([])
  }, 600_000)
})
