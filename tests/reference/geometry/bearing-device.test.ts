import { describe, expect, it } from 'vitest'
import { directionNames, directions } from '../../../src/geometry/relations/directions.ts'
import { relateSolids, stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import { type Solid, solidOf } from '../../../src/geometry/relations/solid.ts'
import { bearingDevice, type Drawn } from './bearing-device.ts'
import { cornersOf } from './manifold-solids.ts'
import { stoppedByBooleans } from './stopped-by-booleans.ts'

const exact: Drawn = { facets: 48, over: 0 }
const solidsOf = (drawn: Drawn): Solid[] =>
  [...bearingDevice(drawn).values()].map((body) => solidOf(cornersOf(body)))
const names = [...bearingDevice(exact).keys()]

/** Every `mover direction still` that is stopped. */
function stopped(solids: readonly Solid[], cellMm?: number): string[] {
  const relations = relateSolids(solids, cellMm === undefined ? {} : { cellMm })
  return names.flatMap((mover, a) =>
    names.flatMap((still, b) =>
      a === b
        ? []
        : directions
            .filter((direction) => stopWidth(relations, a, b, direction) > 0)
            .map((direction) => `${mover} ${directionNames[direction]} ${still}`),
    ),
  )
}

describe('a device of 23 parts', () => {
  const right = stopped(solidsOf(exact))

  it('stops as stepped booleans say, in all 3036 relations', () => {
    const bodies = [...bearingDevice(exact).values()]
    const expected = names.flatMap((mover, a) =>
      names.flatMap((still, b) =>
        a === b
          ? []
          : directions
              .filter((direction) => stoppedByBooleans(bodies[a]!, bodies[b]!, direction))
              .map((direction) => `${mover} ${directionNames[direction]} ${still}`),
      ),
    )
    expect(right.length).toBeGreaterThan(300)
    expect([...right].sort()).toEqual([...expected].sort())
  })

  it.each<[string, Partial<Drawn>]>([
    ['12 facets', { facets: 12 }],
    ['24 facets', { facets: 24 }],
    ['96 facets', { facets: 96 }],
    ['facets of its own for each part', { facetsOf: (part) => 20 + 4 * ((part.length * 7) % 9) }],
    ['screws and dowels 0.02 mm too thick in radius', { over: 0.02 }],
    ['screws and dowels 0.1 mm too thick in radius', { over: 0.1 }],
    ['screws and dowels 0.2 mm too thick in radius', { over: 0.2 }],
    ['screws and dowels 0.35 mm too thick in radius', { over: 0.35 }],
    ['0.05 mm of play', { over: -0.05 }],
    ['0.2 mm of play', { over: -0.2 }],
  ])('stops the same with %s', (_, drawn) => {
    expect(stopped(solidsOf({ ...exact, ...drawn }))).toEqual(right)
  })

  it.each([0.05, 0.2])('stops the same on cells of %s mm', (cellMm) => {
    expect(stopped(solidsOf(exact), cellMm)).toEqual(right)
  })
})
