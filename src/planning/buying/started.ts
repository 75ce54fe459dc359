import type { Part, Project, Routed, Way } from '../../model/project.ts'

/** Pieces of a part that are begun or bought: those to get, times the tries for each. */
export function started(project: Project, part: Part): number {
  return (project.demand.get(part.id)?.toGet ?? 0) * part.tries
}

/** Sizes of the lots in which so many pieces pass a route: full lots, then the rest. */
export function lotSizes(pieces: number, lot: number | null): number[] {
  if (pieces === 0) return []
  if (lot === null) return [pieces]
  const full = Array.from({ length: Math.floor(pieces / lot) }, () => lot)
  return pieces % lot === 0 ? full : [...full, pieces % lot]
}

/** The way with its route, or `null` for an assembly, which has steps instead. */
export function routedWay(way: Way): (Way & Routed) | null {
  return way.kind === 'assembly' ? null : way
}

/** Everything of a map in the order of its names, so that the order in the source decides nothing. */
export function byName<T>(entries: ReadonlyMap<string, T>): T[] {
  return [...entries].sort(([a], [b]) => compareIds(a, b)).map(([, value]) => value)
}

/** Order of ids by their characters. */
export function compareIds(a: string, b: string): number {
  if (a === b) return 0
  return a < b ? -1 : 1
}
