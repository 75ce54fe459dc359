import { describe, expect, it } from 'vitest'
import { directionNames, directions, vectorOf } from '../../../src/geometry/relations/directions.ts'
import { type Relations, relateSolids, stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import type { Vector } from '../../../src/geometry/relations/vector.ts'
import { dot } from '../../../src/geometry/relations/vector.ts'
import { bearingDevice, type Drawn } from './bearing-device.ts'
import { type Manifold, solidFrom } from './manifold-solids.ts'

// The device as it stands is compared with stepped booleans in bearing-device.test.ts; turned, it must give the same along
// its own axes.

type Turn = [x: number, y: number, z: number]

/** A point turned about x, then y, then z, in degrees, as manifold-3d turns. */
function turned([x, y, z]: Vector, [a, b, c]: Turn): Vector {
  const [ca, sa, cb, sb, cc, sc] = [a, b, c].flatMap((deg) => [
    Math.cos((deg * Math.PI) / 180),
    Math.sin((deg * Math.PI) / 180),
  ]) as [number, number, number, number, number, number]
  const [y1, z1] = [y * ca - z * sa, y * sa + z * ca]
  const [x2, z2] = [x * cb + z1 * sb, -x * sb + z1 * cb]
  return [x2 * cc - y1 * sc, x2 * sc + y1 * cc, z2]
}

const exact: Drawn = { facets: 48, over: 0 }
const names = [...bearingDevice(exact).keys()]

function relationsOf(change: (body: Manifold) => Manifold, drawn: Drawn = exact): Relations {
  return relateSolids([...bearingDevice(drawn).values()].map((body) => solidFrom(change(body))))
}

/** Every `mover direction still` that is stopped, by the name that a direction has before the turn. */
function stopped(relations: Relations, turn: Turn): readonly string[] {
  const all = Array.from({ length: 6 + 2 * relations.tilted.length }, (_, direction) => direction)
  const own = directions.map((direction) => {
    const wanted = turned(vectorOf(direction, []), turn)
    const found = all.find((one) => dot(vectorOf(one, relations.tilted), wanted) > 0.99999)
    if (found === undefined) throw new Error(`no direction along ${wanted.join(', ')}`)
    return found
  })
  return names.flatMap((mover, a) =>
    names.flatMap((still, b) =>
      directions
        .filter((direction) => a !== b && stopWidth(relations, a, b, own[direction]!) > 0)
        .map((direction) => `${mover} ${directionNames[direction]} ${still}`),
    ),
  )
}

describe('a device of 23 parts off the axes', () => {
  const straight = relationsOf((body) => body)
  const right = stopped(straight, [0, 0, 0])

  it('has no tilted axis as long as it lies along x, y and z', () => {
    expect(straight.tilted).toEqual([])
    expect(right.length).toBeGreaterThan(300)
  })

  it.each<[number, Turn]>([
    [2, [0, 0, 45]],
    [2, [0, 0, 2]],
    [2, [0.4, 0, 0]],
    [2, [30, 0, 0]],
    [3, [35, 20, 10]],
    [3, [-8, 50, 70]],
  ])('has %i tilted axes when turned by %j degrees, and stops the same along them', (count, turn) => {
    const relations = relationsOf((body) => body.rotate([...turn]))
    expect(relations.tilted.length).toBe(count)
    expect(stopped(relations, turn)).toEqual(right)
  })

  it.each<[string, Partial<Drawn>]>([
    ['12 facets', { facets: 12 }],
    ['facets of its own for each part', { facetsOf: (part) => 20 + 4 * ((part.length * 7) % 9) }],
    ['screws and dowels 0.1 mm too thick in radius', { over: 0.1 }],
    ['screws and dowels 0.35 mm too thick in radius', { over: 0.35 }],
    ['0.2 mm of play', { over: -0.2 }],
  ])('stops the same when turned by 35, 20 and 10 degrees with %s', (_, drawn) => {
    const turn: Turn = [35, 20, 10]
    expect(
      stopped(
        relationsOf((body) => body.rotate([...turn]), { ...exact, ...drawn }),
        turn,
      ),
    ).toEqual(right)
  })
})
