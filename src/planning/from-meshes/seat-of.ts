import type { Step } from '../../model/assembly.ts'
import type { Look } from './look.ts'

/** The body that a step puts something on or into; `null`: it names none. */
export const seatOf = (step: Step): string | null => step.onto?.body ?? step.into?.body ?? null

/** Everything of an assembly that is in place at the end. */
export const everything = ({ laid, moves }: Look): readonly number[] => [
  ...laid.there,
  ...moves.flatMap(({ bodies }) => bodies),
]

/** Whether a step names two features that meet, one of them of a part. */
export const matesPart = (step: Step, part: string): boolean =>
  (step.mates ?? []).some((feature) => feature.part === part)
