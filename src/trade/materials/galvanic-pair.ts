import type { GalvanicKey, Material } from './material.ts'

/**
 * Corrosion potentials in V in flowing seawater against a silver chloride cell, least noble first.
 * Source: Professional Boatbuilder 100, 2006, a public copy; titanium, passive stainless and
 * the low end of copper from memory (the copy prints -0.57, at odds with -0.36 in another public table).
 */
export const galvanicSeries: Readonly<Record<GalvanicKey, readonly [low: number, high: number]>> = {
  magnesium: [-1.65, -1.6],
  zinc: [-1.03, -0.98],
  aluminium: [-1, -0.76],
  steel: [-0.71, -0.6],
  brass: [-0.4, -0.3],
  copper: [-0.37, -0.3],
  'stainless 304': [-0.1, -0.05],
  'stainless 316': [-0.1, 0],
  titanium: [-0.05, 0.06],
}

/** Where a pair will be used; the damper, the less difference it stands. */
export type Surroundings = 'indoors' | 'damp'

/**
 * Difference in V that a pair stands. Source: 0.25 V indoors without salt, 0.15 V in damp or salt, public
 * pages on the anodic index.
 */
const most: Readonly<Record<Surroundings, number>> = { indoors: 0.25, damp: 0.15 }

/** Two metals that may eat each other where they touch and get wet. */
export interface GalvanicPair {
  /** The one that goes. */
  readonly eaten: string
  readonly noble: string
  readonly differenceV: number
  readonly mostV: number
}

/**
 * What two touching materials do to each other, or `null` where the difference is small or one is no metal of the
 * series. Differences are between the middles of the ranges.
 * Source: galvanic series and thresholds as above; an estimate, it needs water and metal contact to happen.
 */
export function galvanicPair(a: Material, b: Material, surroundings: Surroundings): GalvanicPair | null {
  if (!a.galvanic || !b.galvanic) return null
  const [first, second] = [middle(a.galvanic), middle(b.galvanic)]
  const differenceV = Math.abs(first - second)
  if (differenceV <= most[surroundings]) return null
  const [eaten, noble] = first < second ? [a, b] : [b, a]
  return { eaten: eaten.key, noble: noble.key, differenceV, mostV: most[surroundings] }
}

function middle(metal: GalvanicKey): number {
  const [low, high] = galvanicSeries[metal]
  return (low + high) / 2
}
