import { type Fit, fitOf } from '../fits/fit.ts'
import { type MatingCaution, mateThreads } from '../threads/mate-threads.ts'
import type { ReadFeature, ReadThread, ReadToleranced } from './read-feature.ts'

/** One thing in which two features differ, with what each says. */
export interface PairMismatch {
  readonly what: 'system' | 'diameter' | 'pitch' | 'hand' | 'starts' | 'gender' | 'class' | 'kind'
  readonly first: string
  readonly second: string
}

/** Two features that are to meet: whether they go together, and what their tolerances make of it. */
export interface FeaturePair {
  readonly sort: 'thread' | 'fit'
  /** Empty where they go together. */
  readonly mismatches: readonly PairMismatch[]
  readonly cautions: readonly MatingCaution[]
  /** Of two sizes of which one is the hole, both with limits. */
  readonly fit: Fit | null
  /** Difference of the diameters, mm: of pairs that do not go together the nearest is told. */
  readonly apartMm: number
  /** Their mean diameter, mm. */
  readonly aboutMm: number
}

/** Why two features cannot be compared. */
export interface NotCompared {
  readonly notCompared: string
}

/** Two features, and how far the one is to be in the other. */
export function pairFeatures(
  first: ReadFeature,
  second: ReadFeature,
  engagementMm: number | null = null,
): FeaturePair | NotCompared {
  if (first.kind === 'thread' && second.kind === 'thread') return pairThreads(first, second, engagementMm)
  if (first.kind === 'size' && second.kind === 'size') return pairSizes(first, second)
  const kinds = [first, second].map(({ kind }) => (kind === 'thread' || kind === 'size' ? kind : null))
  if (kinds.includes(null)) return { notCompared: 'not both are a thread or a size' }
  const [one, other] = [diameterOf(first), diameterOf(second)]
  return {
    sort: 'thread',
    mismatches: [{ what: 'kind', first: `a ${kinds[0]}`, second: `a ${kinds[1]}` }],
    cautions: [],
    fit: null,
    ...apart(one, other),
  }
}

const apart = (a: number, b: number): Pick<FeaturePair, 'apartMm' | 'aboutMm'> => ({
  apartMm: Math.abs(a - b),
  aboutMm: (a + b) / 2,
})

/** Diameter of a thread, nominal size of a size; 0 of words. */
function diameterOf(read: ReadFeature): number {
  if (read.kind === 'thread') return read.thread.majorMm
  return read.kind === 'size' ? nominalOf(read) : 0
}

function nominalOf({ size }: ReadToleranced): number {
  return size.kind === 'limits' ? (size.minMm + size.maxMm) / 2 : size.nominalMm
}

const sides = { internal: 'inside', external: 'outside' } as const

function pairThreads(a: ReadThread, b: ReadThread, engagementMm: number | null): FeaturePair {
  const facts = { firstGender: a.gender, secondGender: b.gender, engagementMm }
  const { mismatches, cautions } = mateThreads(a.thread, b.thread, facts)
  return {
    sort: 'thread',
    mismatches: mismatches.map(({ kind, first, second }) => ({
      what: kind,
      first: kind === 'gender' ? sides[first as keyof typeof sides] : first,
      second: kind === 'gender' ? sides[second as keyof typeof sides] : second,
    })),
    cautions,
    fit: null,
    ...apart(a.thread.majorMm, b.thread.majorMm),
  }
}

/** Nominal sizes with classes must be equal; where one is written otherwise, near. Source: common practice, no source. */
function sameDiameter(a: ReadToleranced, b: ReadToleranced): boolean {
  const [one, other] = [nominalOf(a), nominalOf(b)]
  const slack = a.size.kind === 'class' && b.size.kind === 'class' ? 1e-6 : Math.max(0.2, 0.02 * one)
  return Math.abs(one - other) <= slack
}

function pairSizes(a: ReadToleranced, b: ReadToleranced): FeaturePair | NotCompared {
  const [one, other] = [a.gender ?? opposite(b.gender), b.gender ?? opposite(a.gender)]
  const far = apart(nominalOf(a), nominalOf(b))
  const diameter = sameDiameter(a, b)
    ? []
    : [{ what: 'diameter' as const, first: mm(nominalOf(a)), second: mm(nominalOf(b)) }]
  const alike =
    one !== null && one === other
      ? [
          {
            what: 'class' as const,
            first: `${saysOf(a)} for a ${one}`,
            second: `${saysOf(b)} for a ${other}`,
          },
        ]
      : []
  const mismatches = [...diameter, ...alike]
  if (mismatches.length > 0) return { sort: 'fit', mismatches, cautions: [], fit: null, ...far }
  if (one === null) return { notCompared: 'nothing says which is the hole and which the shaft' }
  if (!a.limits || !b.limits) return { notCompared: 'not both have limits' }
  const fit = one === 'hole' ? fitOf(a.limits, b.limits) : fitOf(b.limits, a.limits)
  return { sort: 'fit', mismatches: [], cautions: [], fit, ...far }
}

function opposite(gender: 'hole' | 'shaft' | null): 'hole' | 'shaft' | null {
  if (gender === null) return null
  return gender === 'hole' ? 'shaft' : 'hole'
}

const saysOf = ({ size }: ReadToleranced): string => (size.kind === 'class' ? size.class.text : size.text)
const mm = (value: number): string => `${Number(value.toFixed(4)) + 0} mm`
