/** Collisions narrower than this are play, roundings and facets, in mm; of a sheet less. */
export const usualGiveMm = 0.3
/** Overlaps narrower than this are threads, press fits and facets: the pair gives as much more. */
export const mostNominalOverlapMm = 1
/** Of a sheet half its thickness is given at most, or nothing would stop it edge-on; but so much always, in mm. */
const leastUsualGiveMm = 0.05

/** What the give of a pair hangs on, in mm. */
export interface PairFacts {
  /** How widely the two overlap as drawn. */
  readonly overlapMm: number
  /** The least side of the thinner one. */
  readonly thinMm: number
  /** What a declared thread asks for; 0: none is. */
  readonly leastMm: number
}

/** What a pair gives, in mm: collisions narrower than that do not count. */
export function pairGive({ overlapMm, thinMm, leastMm }: PairFacts): number {
  const usual = Math.min(usualGiveMm, Math.max(leastUsualGiveMm, thinMm / 2))
  return Math.max(usual + (overlapMm < mostNominalOverlapMm ? overlapMm : 0), leastMm)
}
