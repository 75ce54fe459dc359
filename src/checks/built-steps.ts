import type { AssemblyOrder, AssemblyPlan, Step } from '../model/assembly.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Laid } from './check.ts'

/** One assembly with its steps in the order in which they are done. */
export interface BuiltSteps {
  readonly plan: AssemblyPlan
  readonly order: AssemblyOrder
  readonly steps: readonly Step[]
}

/** Every assembly that has an order. */
export function builtSteps({ project, orders }: Pick<Laid, 'project' | 'orders'>): readonly BuiltSteps[] {
  return assemblyPlans(project).flatMap((plan) => {
    const order = orders.get(plan.of ?? '')
    if (!order?.order) return []
    const byId = new Map(plan.steps.map((step) => [step.id, step]))
    return [{ plan, order, steps: order.order.map((id) => byId.get(id)!) }]
  })
}

/** Bodies that have openings and are shut on all of them by a step, and stay so until another. */
export function shutForGood({ plan, steps }: BuiltSteps, by: Step, until: Step): readonly string[] {
  const openings = new Map([...plan.openings].map(([body, sides]) => [body, new Set(sides)]))
  const shut: string[] = []
  for (const step of steps.slice(0, steps.indexOf(until))) {
    for (const { body, opening } of step.opens) openings.get(body)?.add(opening)
    for (const { body, opening } of step.shuts) openings.get(body)?.delete(opening)
    if (step === by) shut.push(...by.shuts.map(({ body }) => body))
  }
  return [...new Set(shut)].filter((body) => openings.get(body)?.size === 0)
}

/** Steps that a step was written to come after, through others too. */
export function stepsBefore({ plan }: BuiltSteps, step: Step): ReadonlySet<Step> {
  const found = new Set<Step>()
  const wait = [step]
  for (let one = wait.pop(); one; one = wait.pop())
    for (const before of plan.steps)
      if (!found.has(before) && isAfter(plan, one, before)) {
        found.add(before)
        wait.push(before)
      }
  return found
}

const isAfter = ({ of }: AssemblyPlan, step: Step, before: Step): boolean =>
  step.after.some(
    ({ target }) =>
      (target.kind === 'step' && target.assembly === of && target.id === before.id) ||
      (target.kind === 'part' && target.id === before.put?.part),
  )
