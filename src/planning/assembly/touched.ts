import type { Step } from '../../model/assembly.ts'

/** Bodies and parts a step lays hands on. */
export function touched(step: Step): ReadonlySet<string> {
  return new Set([step.put?.part, step.into?.body, step.onto?.body].filter((part) => part !== undefined))
}
