/** Sizes of the 60 degree thread profile, all in millimetres. */
export interface BasicProfile {
  /** Height H of the sharp triangle. */
  readonly triangleHeightMm: number
  /** Height 5H/8 on which the threads overlap. */
  readonly overlapMm: number
  /** d2 = D2. */
  readonly pitchDiameterMm: number
  /** d1 = D1, of the hole. */
  readonly minorDiameterMm: number
  /** d3, of the screw at its rounded root. */
  readonly rootDiameterMm: number
  readonly crestFlatMm: number
  readonly rootFlatMm: number
  readonly rootRadiusMm: number
}

const height = Math.sqrt(3) / 2

/**
 * The basic profile of a metric or unified thread.
 * Source: ISO 68-1 and ISO 724: d2 = d - 3H/4, d1 = d - 5H/4, d3 = d - 17H/12; crest P/8, root P/4, radius H/6.
 * Needs: a thread as read, or any diameter above 1.23 pitches.
 */
export function basicProfile({
  majorMm,
  pitchMm,
}: {
  readonly majorMm: number
  readonly pitchMm: number
}): BasicProfile {
  const triangleHeightMm = height * pitchMm
  return {
    triangleHeightMm,
    overlapMm: (5 / 8) * triangleHeightMm,
    pitchDiameterMm: majorMm - (3 / 4) * triangleHeightMm,
    minorDiameterMm: majorMm - (5 / 4) * triangleHeightMm,
    rootDiameterMm: majorMm - (17 / 12) * triangleHeightMm,
    crestFlatMm: pitchMm / 8,
    rootFlatMm: pitchMm / 4,
    rootRadiusMm: triangleHeightMm / 6,
  }
}
