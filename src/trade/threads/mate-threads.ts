import { type Engagement, engagementGroup } from './engagement.ts'
import type { Thread, ThreadGender } from './thread.ts'

/** One reason why two threads do not go together, with what each says. */
export interface ThreadMismatch {
  readonly kind: 'system' | 'diameter' | 'pitch' | 'hand' | 'starts' | 'gender'
  readonly first: string
  readonly second: string
}

/** Something to look at though the threads go together. */
export type MatingCaution =
  /** Neither class nor part says which is the screw. */
  | { readonly kind: 'gender unknown'; readonly which: 'first' | 'second' | 'both' }
  /** Outside the lengths for which the usual classes are meant. */
  | {
      readonly kind: 'short engagement' | 'long engagement'
      readonly lengthMm: number
      readonly normalMm: number
    }
  /** The hole is threaded less deep than the screw is to go in. */
  | { readonly kind: 'not deep enough'; readonly lengthMm: number; readonly depthMm: number }
  /** Less than one whole turn. */
  | { readonly kind: 'under one turn'; readonly lengthMm: number; readonly pitchMm: number }
  /** Nearly the same size in the other system: starts, then binds. */
  | { readonly kind: 'looks alike' }

/** Whether two threads screw together, and what stands against it. */
export interface ThreadMating {
  readonly mates: boolean
  readonly mismatches: readonly ThreadMismatch[]
  readonly cautions: readonly MatingCaution[]
  /** `null` where no length was given or the diameter is outside the standard. */
  readonly engagement: Engagement | null
}

/** What is known beside the threads themselves. */
export interface MatingFacts {
  readonly firstGender?: ThreadGender | null
  readonly secondGender?: ThreadGender | null
  readonly engagementMm?: number | null
}

/**
 * Whether two threads go together: system, diameter, pitch, hand, starts, and one inside the other.
 * Gives: every mismatch, not the first alone.
 */
export function mateThreads(first: Thread, second: Thread, facts: MatingFacts = {}): ThreadMating {
  const sides = [
    first.class?.gender ?? facts.firstGender ?? null,
    second.class?.gender ?? facts.secondGender ?? null,
  ] as const
  const mismatches = [...formMismatches(first, second), ...genderMismatch(sides)]
  const lengthMm = facts.engagementMm ?? null
  const engagement = lengthMm === null ? null : engagementGroup(first, lengthMm)
  const cautions = [
    ...unknownSides(sides),
    ...(engagement && lengthMm !== null ? lengthCautions(engagement, lengthMm) : []),
    ...(lengthMm === null ? [] : depthCautions([first, second], sides, lengthMm)),
    ...(looksAlike(first, second) ? [{ kind: 'looks alike' as const }] : []),
  ]
  return { mates: mismatches.length === 0, mismatches, cautions, engagement }
}

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6

function formMismatches(a: Thread, b: Thread): ThreadMismatch[] {
  const found: (ThreadMismatch | null)[] = [
    differ('system', a.system === b.system, [a.system, b.system]),
    differ('diameter', same(a.majorMm, b.majorMm), [a.size, b.size]),
    differ('pitch', same(a.pitchMm, b.pitchMm), [sayPitch(a), sayPitch(b)]),
    differ('hand', a.hand === b.hand, [a.hand, b.hand]),
    differ('starts', a.starts === b.starts, [`${a.starts}`, `${b.starts}`]),
  ]
  return found.filter((mismatch) => mismatch !== null)
}

function differ(
  kind: ThreadMismatch['kind'],
  alike: boolean,
  [first, second]: readonly [string, string],
): ThreadMismatch | null {
  return alike ? null : { kind, first, second }
}

const sayPitch = ({ pitchMm, threadsPerInch }: Thread): string =>
  threadsPerInch === null ? `${pitchMm} mm` : `${threadsPerInch} per inch`

type Sides = readonly [ThreadGender | null, ThreadGender | null]

function genderMismatch([a, b]: Sides): ThreadMismatch[] {
  return a !== null && a === b ? [{ kind: 'gender', first: a, second: b }] : []
}

function unknownSides([a, b]: Sides): MatingCaution[] {
  if (a !== null && b !== null) return []
  const which = a === null && b === null ? 'both' : a === null ? 'first' : 'second'
  return [{ kind: 'gender unknown', which }]
}

function lengthCautions({ group, normalFromMm, normalToMm }: Engagement, lengthMm: number): MatingCaution[] {
  if (group === 'S') return [{ kind: 'short engagement', lengthMm, normalMm: normalFromMm }]
  if (group === 'L') return [{ kind: 'long engagement', lengthMm, normalMm: normalToMm }]
  return []
}

function depthCautions(threads: readonly Thread[], sides: Sides, lengthMm: number): MatingCaution[] {
  const turn = threads[0]!.pitchMm
  const under: MatingCaution[] = lengthMm < turn ? [{ kind: 'under one turn', lengthMm, pitchMm: turn }] : []
  const shallow = threads.flatMap(({ depthMm, through }, at): MatingCaution[] =>
    sides[at] !== 'external' && !through && depthMm !== null && depthMm < lengthMm
      ? [{ kind: 'not deep enough', lengthMm, depthMm }]
      : [],
  )
  return [...under, ...shallow]
}

/**
 * Source: common practice, no source: M5 and 10-32 are the pair most often mixed up (4.83 against 5 mm, 0.79 against
 * 0.8).
 */
function looksAlike(a: Thread, b: Thread): boolean {
  if (a.system === b.system) return false
  const near = (x: number, y: number, share: number): boolean => Math.abs(x - y) <= share * Math.max(x, y)
  return near(a.majorMm, b.majorMm, 0.06) && near(a.pitchMm, b.pitchMm, 0.06)
}
