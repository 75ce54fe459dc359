import type { AssemblyPlan, Step } from '../model/assembly.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import { plannedFor } from './planned-days.ts'

/** The tasks of one assembly by the step they do. */
export type TasksByStep = ReadonlyMap<string, readonly PlanTask[]>

/** Steps by when the first of the batch comes to them; at the same minute as the order has them. */
export function scheduledSteps(
  results: Results,
  plan: AssemblyPlan,
  order: readonly string[],
  byStep: TasksByStep,
): readonly Step[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const start = (id: string): number => plannedFor(results, byStep.get(id) ?? [])?.start ?? 0
  return order
    .map((id, at) => ({ id, at, start: start(id) }))
    .sort((a, b) => a.start - b.start || a.at - b.at)
    .flatMap(({ id }) => steps.get(id) ?? [])
}
