import type { TrialFit, TrialLeg } from '../model/trial-fit.ts'
import { sayDay } from './planned-days.ts'
import { sentences } from './say-time.ts'

/** A trial fit in one line: `Trial fit possible on Tue 2026-03-17: 6 steps, apart again without harm`. */
export function sayTrial({ day, legs }: TrialFit): string {
  const steps = legs.reduce((sum, leg) => sum + leg.steps.length, 0)
  return `Trial fit possible on ${sayDay(day)}: ${steps} ${steps === 1 ? 'step' : 'steps'} together and apart again without harm`
}

/** What goes together in one assembly, in order, and what comes apart with care. */
export function sayTrialSteps({ steps, care, whole }: TrialLeg): string {
  const order = steps.map(({ id }) => id).join(', ')
  return sentences(
    `${whole ? 'all of it' : 'so far'}: ${order}; apart again the other way round`,
    care.length > 0 ? `with care: ${care.map(({ id }) => id).join(', ')}` : null,
  )
}

/** What a trial of one assembly finds out. */
export function sayTrialTells({ joins, steps, tests }: TrialLeg): string {
  const meets = joins.map(
    ({ first, second }) => `${first.part} ${first.text} in ${second.part} ${second.text}`,
  )
  const checks = steps.flatMap(({ check }) => check ?? [])
  return sentences(
    meets.length > 0 ? `tries ${meets.join('; ')}` : null,
    checks.length > 0 ? `checks: ${checks.join('; ')}` : null,
    ...tests.map(({ test }) => `test: ${test}`),
  )
}
