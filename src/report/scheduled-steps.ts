import type { AssemblyPlan, Step } from '../model/assembly.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import { plannedFor } from './planned-days.ts'

/** Tells the tasks of an assembly's steps from others. */
export const inAssembly =
  (plan: AssemblyPlan) =>
  ({ subject }: PlanTask): boolean =>
    subject.step !== null && subject.assembly === plan.of

/** Steps by when the first of the batch comes to them; at the same minute as the order has them. */
export function scheduledSteps(
  results: Results,
  plan: AssemblyPlan,
  order: readonly string[],
): readonly Step[] {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const start = (id: string): number =>
    plannedFor(results, (task) => inAssembly(plan)(task) && task.subject.step === id)?.start ?? 0
  return order
    .map((id, at) => ({ id, at, start: start(id) }))
    .sort((a, b) => a.start - b.start || a.at - b.at)
    .flatMap(({ id }) => steps.get(id) ?? [])
}
