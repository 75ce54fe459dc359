import { type FeaturePair, pairFeatures } from './pair-features.ts'
import type { ReadFeature } from './read-feature.ts'

/** A feature that may meet another, with whatever its owner needs to know it by. */
export interface Candidate<T> {
  readonly of: T
  readonly read: ReadFeature
}

/** Two features of which each belongs to one side of a join. */
export interface PickedPair<T> {
  readonly first: T
  readonly second: T
  readonly pair: FeaturePair
}

/** Which sorts of pairs a join may rest on, in the order of preference. */
export type PairSorts = readonly FeaturePair['sort'][]

/**
 * The two features that a join rests on: the first pair that goes together, else the one that differs least. `null`
 * where the sides have no features of the right sort: threads for threads; a hole and a shaft for a fit.
 * Cost: features of the one side x features of the other.
 */
export function pickPair<T>(
  put: readonly Candidate<T>[],
  body: readonly Candidate<T>[],
  sorts: PairSorts,
): PickedPair<T> | null {
  const all = sorts.flatMap((sort) =>
    put.flatMap((first) => body.flatMap((second) => asPair(first, second, sort) ?? [])),
  )
  const going = all.filter(({ pair }) => pair.mismatches.length === 0)
  const sure = going.filter(({ exact }) => exact)
  const [best] = [...sure, ...going, ...all.filter(({ exact }) => exact).sort(nearer)]
  return best ? { first: best.first, second: best.second, pair: best.pair } : null
}

interface Found<T> extends PickedPair<T> {
  /** Both say by their class that they are hole and shaft, or screw and nut. */
  readonly exact: boolean
}

/** By diameter first: two of one size are meant for each other, whatever else differs. */
function nearer(a: Found<unknown>, b: Found<unknown>): number {
  const [one, other] = [a.pair, b.pair]
  return one.apartMm - other.apartMm || one.mismatches.length - other.mismatches.length
}

function asPair<T>(first: Candidate<T>, second: Candidate<T>, sort: FeaturePair['sort']): Found<T> | null {
  const [a, b] = [first.read, second.read]
  const threads = a.kind === 'thread' && b.kind === 'thread'
  const sizes = a.kind === 'size' && b.kind === 'size' && a.gender !== null && b.gender !== null
  if (sort === 'thread' ? !threads : !(sizes && a.gender !== b.gender)) return null
  const pair = pairFeatures(a, b)
  if ('notCompared' in pair) return null
  const exact = threads || (sizes && a.size.kind === 'class' && b.size.kind === 'class')
  return { first: first.of, second: second.of, pair, exact }
}
