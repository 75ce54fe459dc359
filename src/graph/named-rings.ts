import { findRings } from './find-rings.ts'

/**
 * One shortest ring for each group of names that wait for one another, in the order of the arcs, not repeated.
 * Names are put in order first, so the answer does not depend on the order of the map. Cost: as `findRings`.
 */
export function namedRings(next: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const names = [...next.keys()].sort()
  const index = new Map(names.map((name, at) => [name, at]))
  const successors = names.map((name) => next.get(name)!.flatMap((other) => index.get(other) ?? []))
  return findRings(successors).map(({ ring }) => ring.map((at) => names[at]!))
}
