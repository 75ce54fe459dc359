import { block, kernel, type Manifold, rod, tube } from './manifold-solids.ts'

/** How the device is drawn. */
export interface Drawn {
  readonly facets: number
  /** Radius that screws and dowels have more than their holes, mm; below zero: play. */
  readonly over: number
  /** Facets of each part by its own, instead. */
  readonly facetsOf?: (part: string) => number
}

const corners: readonly (readonly [number, number])[] = [
  [20, 20],
  [-20, 20],
  [20, -20],
  [-20, -20],
]
const dowelAt: readonly (readonly [number, number])[] = [
  [24, 0],
  [-24, 0],
]

/**
 * A device of 23 parts: block, two bearings against shoulders, shaft with collar, key, pulley, slotted ring in a groove,
 * two lids with four screws each, two dowels, holder with nested cup and core, cap. Own design.
 */
export function bearingDevice({ facets, over, facetsOf }: Drawn): ReadonlyMap<string, Manifold> {
  const parts = new Map<string, Manifold>()
  const add = (name: string, draw: (n: number) => Manifold) =>
    parts.set(name, draw(facetsOf?.(name) ?? facets))
  const holes = (n: number, radius: number, z: number, length: number, at = corners) =>
    at.map(([x, y]) => rod(radius, length, [x, y, z], 'z', n))
  const cut = (body: Manifold, ...all: readonly Manifold[]) => kernel.Manifold.difference([body, ...all])
  add('block', (n) =>
    cut(
      block([60, 60, 40], [-30, -30, 0]),
      rod(11, 11, [0, 0, -1], 'z', n),
      rod(9, 42, [0, 0, -1], 'z', n),
      rod(11, 11, [0, 0, 30], 'z', n),
      ...holes(n, 1.5, -1, 11),
      ...holes(n, 1.5, 30, 11),
      ...holes(n, 2, 34, 7, dowelAt),
    ),
  )
  add('lower bearing', (n) => tube(11, 4, 8, [0, 0, 2], 'z', n))
  add('upper bearing', (n) => tube(11, 4, 8, [0, 0, 30], 'z', n))
  add('shaft', (n) =>
    cut(
      rod(4, 75, [0, 0, -10], 'z', n).add(rod(6, 2.8, [0, 0, 38], 'z', n)),
      block([3, 3, 6], [2.5, -1.5, 50]),
      tube(8, 3, 1, [0, 0, 59], 'z', n),
    ),
  )
  add('key', () => block([3, 3, 6], [2.5, -1.5, 50]))
  add('pulley', (n) => cut(tube(15, 4, 9, [0, 0, 49], 'z', n), block([5.5, 3, 12], [0, -1.5, 48])))
  add('ring', (n) => cut(tube(5, 3, 1, [0, 0, 59], 'z', n), block([9, 5, 3], [0, -2.5, 58])))
  add('upper lid', (n) =>
    cut(
      block([60, 60, 5], [-30, -30, 40]),
      rod(4.5, 7, [0, 0, 39], 'z', n),
      rod(7, 2, [0, 0, 39], 'z', n),
      ...holes(n, 1.7, 39, 7),
      ...holes(n, 2, 39, 7, dowelAt),
    ),
  )
  add('lower lid', (n) =>
    cut(block([60, 60, 5], [-30, -30, -5]), rod(4.5, 7, [0, 0, -6], 'z', n), ...holes(n, 1.7, -6, 7)),
  )
  for (const [k, [x, y]] of corners.entries()) {
    add(`upper screw ${k}`, (n) =>
      rod(1.5 + over, 12, [x, y, 33], 'z', n).add(rod(2.75, 3, [x, y, 45], 'z', n)),
    )
    add(`lower screw ${k}`, (n) =>
      rod(1.5 + over, 12, [x, y, -5], 'z', n).add(rod(2.75, 3, [x, y, -8], 'z', n)),
    )
  }
  for (const [k, [x, y]] of dowelAt.entries())
    add(`dowel ${k}`, (n) => rod(2 + over, 9.5, [x, y, 35], 'z', n))
  add('holder', () => cut(block([30, 30, 30], [40, -15, 0]), block([30, 20, 20], [45, -10, 5])))
  add('cup', () => cut(block([25, 20, 20], [45, -10, 5]), block([25, 14, 14], [48, -7, 8])))
  add('core', (n) => rod(6, 20, [48, 0, 15], 'x', n))
  add('cap', () => block([4, 30, 30], [70, -15, 0]))
  return parts
}
