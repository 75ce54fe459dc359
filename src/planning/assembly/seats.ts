import type { Place } from '../../base/place.ts'
import type { Step } from '../../model/assembly.ts'

/** Whether a step puts a body, by its part or the name of a copy. */
export const puts = (step: Step, body: string): boolean =>
  step.put?.part === body || step.instances.includes(body)

/** What a step goes on or into; `null`: nothing is named. */
export const bodyOf = ({ into, onto }: Step): { readonly body: string; readonly at: Place } | null =>
  onto ?? into
