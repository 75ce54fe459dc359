import { type FeaturePair, type NotCompared, pairFeatures } from './pair-features.ts'
import { type Candidate, type PairSorts, pickPair } from './pick-pair.ts'
import { type FeatureText, readFeature } from './read-feature.ts'

/** The features that may meet in one step. */
export interface Sides<T extends FeatureText> {
  /** How it joins: `thread`, `press`, `seat`, `glue` are searched for two features that belong together. */
  readonly by: string | null
  readonly mates: readonly [T, T] | null
  readonly put: readonly T[]
  readonly body: readonly T[]
  /** Whether a side is put together from parts, whose features may be taken already. */
  readonly nested: { readonly put: boolean; readonly body: boolean }
  readonly engagementMm: number | null
}

/** The two features that meet in a step, written or found. */
export interface StepPair<S, T> {
  readonly sides: S
  readonly first: T
  readonly second: T
  readonly written: boolean
  readonly pair: FeaturePair | NotCompared
}

const sortsBy: Readonly<Record<string, PairSorts>> = {
  thread: ['thread'],
  press: ['fit'],
  seat: ['fit'],
  glue: ['fit', 'thread'],
}

/** Shares of the diameter up to which two features are likely meant for each other. Source: common practice, no source. */
const nearShare = 0.1

/**
 * Which two features meet in each step: those that are written, else a pair that goes together, else the nearest pair
 * where one must be meant. Steps whose sides hold none are left out. What meets inside a subassembly is taken and
 * meets nothing outside it.
 * Needs: steps in the order in which they are built, subassemblies first. `key` tells features apart.
 */
export function stepPairs<T extends FeatureText, S extends Sides<T>>(
  steps: readonly S[],
  key: (feature: T) => string,
): readonly StepPair<S, T>[] {
  const taken = new Set<string>()
  const pairs = new Map<S, StepPair<S, T>>()
  const isNested = ({ nested }: S): boolean => nested.put || nested.body
  for (const sides of [...steps.filter((one) => !isNested(one)), ...steps.filter(isNested)]) {
    const found = pairOf<T, S>(sides, (feature) => taken.has(key(feature)))
    if (!found) continue
    pairs.set(sides, found)
    const goes = 'mismatches' in found.pair && found.pair.mismatches.length === 0
    if (goes) for (const one of [found.first, found.second]) taken.add(key(one))
  }
  return steps.flatMap((sides) => pairs.get(sides) ?? [])
}

function pairOf<T extends FeatureText, S extends Sides<T>>(
  sides: S,
  isTaken: (feature: T) => boolean,
): StepPair<S, T> | null {
  if (sides.mates) {
    const [first, second] = sides.mates
    return { sides, first, second, written: true, pair: compare(first, second, sides.engagementMm) }
  }
  const sorts = sortsBy[sides.by ?? '']
  if (!sorts) return null
  const { put, body, nested } = sides
  const free = (all: readonly T[], inside: boolean): readonly Candidate<T>[] =>
    all
      .filter((feature) => !(inside && isTaken(feature)))
      .map((feature) => ({ of: feature, read: readFeature(feature) }))
  const picked = pickPair(free(put, nested.put), free(body, nested.body), sorts)
  if (!picked || !isTold(sides, picked.pair)) return null
  const { first, second } = picked
  return { sides, first, second, written: false, pair: compare(first, second, sides.engagementMm) }
}

const compare = (
  first: FeatureText,
  second: FeatureText,
  engagementMm: number | null,
): FeaturePair | NotCompared => pairFeatures(readFeature(first), readFeature(second), engagementMm)

/** A pair that does not go together is told where the way of joining needs one, or where the two are nearly alike. */
function isTold({ by, nested }: Sides<FeatureText>, pair: FeaturePair): boolean {
  if (pair.mismatches.length === 0) return true
  const needsOne = (by === 'thread' || by === 'press') && !nested.put && !nested.body
  return needsOne || pair.apartMm <= nearShare * pair.aboutMm
}
