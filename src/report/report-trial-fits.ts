import { formatDay } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ReportTrialFit } from './report-model.ts'
import { sayTrial } from './say-trial.ts'

/** Trial fits, by day. */
export function reportTrialFits({ trialFits }: Results): readonly ReportTrialFit[] {
  return trialFits.map((fit) => ({
    day: formatDay(fit.day),
    says: sayTrial(fit),
    chains: fit.chains,
    legs: fit.legs.map(({ assembly, whole, steps, care, joins, tests }) => ({
      assembly,
      whole,
      steps: steps.map(({ id }) => id),
      withCare: care.map(({ id }) => id),
      meets: joins.map(
        ({ first, second }) => `${first.part}.${first.feature} and ${second.part}.${second.feature}`,
      ),
      checks: steps.flatMap(({ check }) => check ?? []),
      tests: tests.flatMap(({ test }) => test ?? []),
    })),
  }))
}
