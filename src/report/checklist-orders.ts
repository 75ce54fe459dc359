import { groupBy } from '../base/group-by.ts'
import type { AssemblyOrder } from '../model/assembly.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Results } from '../model/results.ts'
import { scheduledSteps } from './scheduled-steps.ts'
import { tasksAbout } from './tasks-about.ts'

/** The orders of a plan with the steps of each as its checklist has them: by when the first of the batch comes to them. */
export function checklistOrders(results: Results): ReadonlyMap<string, AssemblyOrder> {
  const about = tasksAbout(results)
  const plans = new Map(assemblyPlans(results.project).map((plan) => [plan.of ?? '', plan]))
  return new Map(
    [...results.orders].map(([of, order]) => {
      const plan = plans.get(of)
      if (!order.order || !plan) return [of, order]
      const byStep = groupBy(about.assembly(plan.of), ({ subject }) => subject.step!)
      const steps = scheduledSteps(results, plan, order.order, byStep)
      return [of, { ...order, order: steps.map(({ id }) => id) }]
    }),
  )
}
