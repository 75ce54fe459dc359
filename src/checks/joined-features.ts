import { type ClearanceSaid, type FeatureSaid, fit as messages } from '../diagnostics/catalogue/fit.ts'
import type { Report } from '../diagnostics/message.ts'
import type { FeatureOf } from '../model/features.ts'
import { type JoinedSides, joinedSides } from '../model/joined-sides.ts'
import type { Fit } from '../trade/fits/fit.ts'
import type { FeaturePair } from '../trade/joins/pair-features.ts'
import { type StepPair, stepPairs } from '../trade/joins/step-pairs.ts'
import type { MatingCaution } from '../trade/threads/mate-threads.ts'
import type { ModelCheck } from './check.ts'

/**
 * FIT06, FIT07, FIT13: features that meet in a step and do not go together, or cannot be compared. FIT08 to FIT10:
 * fits against the way of joining. FIT11: threads that are too short or too long in each other.
 */
export const joinedFeatures: ModelCheck = (project, report) => {
  const pairs = stepPairs<FeatureOf, JoinedSides>(joinedSides(project), ({ part, name }) => `${part}.${name}`)
  for (const one of pairs) look(one, report)
}

const said = ({ part, name, text }: FeatureOf): FeatureSaid => ({ of: `${part}.${name}`, text })

function look(one: StepPair<JoinedSides, FeatureOf>, report: Report): void {
  const { sides, written, pair } = one
  const { step } = sides
  const both = { first: said(one.first), second: said(one.second) }
  const at = step.mates?.[1].at ?? step.at
  if ('notCompared' in pair) report(messages.notCompared, at, { ...both, because: pair.notCompared })
  else if (pair.mismatches.length > 0) {
    const { mismatches } = pair
    if (written) report(messages.matesNot, at, { ...both, mismatches })
    else report(messages.noPairFits, at, { ...both, mismatches, step: step.id, by: sides.by ?? 'hand' })
  } else {
    if (pair.fit) lookAtFit(one, both, pair.fit, report)
    lookAtEngagement(one, both, pair, report)
  }
}

type Both = { readonly first: FeatureSaid; readonly second: FeatureSaid }

function lookAtFit(
  { sides: { step } }: StepPair<JoinedSides, FeatureOf>,
  both: Both,
  fit: Fit,
  report: Report,
): void {
  const clearance: ClearanceSaid = { largest: fit.largestClearanceUm, smallest: fit.smallestClearanceUm }
  const facts = { ...both, ...clearance, step: step.id }
  const at = step.at
  if (step.method === 'press' && fit.kind === 'clearance') report(messages.pressLoose, at, facts)
  else if (step.method === 'press' && step.lightSaid && step.light === (fit.kind === 'interference'))
    report(messages.lightDiffers, at, { ...facts, light: step.light })
  if (step.method === 'seat' && fit.kind === 'interference') report(messages.seatTight, at, facts)
}

function lookAtEngagement(
  { sides: { step } }: StepPair<JoinedSides, FeatureOf>,
  both: Both,
  { cautions }: FeaturePair,
  report: Report,
): void {
  const [first] = cautions.flatMap((caution) => sayCaution(caution) ?? [])
  if (first) report(messages.engagement, step.at, { ...both, ...first })
}

/** Times the normal length at which a thread is said to be long. Source: common practice, no source. */
const farTooLong = 2

const mm = (value: number): string => `${Number(value.toFixed(2)) + 0} mm`

/** What a caution comes to in words; the shortest engagement first. `null`: nothing to say. */
function sayCaution(caution: MatingCaution): { readonly says: string; readonly mend: string } | null {
  switch (caution.kind) {
    case 'under one turn':
      return {
        says: `${mm(caution.lengthMm)} in each other is less than one turn of ${mm(caution.pitchMm)}`,
        mend: 'correct `engagement`, or make the thread longer',
      }
    case 'not deep enough':
      return {
        says: `${mm(caution.lengthMm)} are to go in, but the hole is threaded ${mm(caution.depthMm)} deep`,
        mend: `thread ${mm(caution.lengthMm)} deep or more, or take a shorter screw`,
      }
    case 'short engagement':
      return {
        says: `${mm(caution.lengthMm)} in each other is short; from ${mm(caution.normalMm)} on is normal`,
        mend: `make it ${mm(caution.normalMm)} or longer, or check that it bears its load`,
      }
    case 'long engagement':
      // Screws in soft metal go in two diameters as a rule; only far past the normal length does pitch error bind.
      if (caution.lengthMm <= farTooLong * caution.normalMm) return null
      return {
        says: `${mm(caution.lengthMm)} in each other is long; up to ${mm(caution.normalMm)} is normal`,
        mend: 'relieve the thread in the middle, or take a class with more room',
      }
    default:
      return null
  }
}
