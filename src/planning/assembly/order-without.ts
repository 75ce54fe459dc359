import type { AssemblyPlan, OrderConstraint } from '../../model/assembly.ts'
import { benchPlan } from './bench-plan.ts'
import { findOrder } from './find-order.ts'
import { ruleBook } from './rules.ts'
import { ruleCompiler } from './rules-of.ts'

/** Most sets of steps looked at. */
const effort = 5_000

/** Whether constraints leave an order in which a step comes after another: then nothing among them says it is before. */
export function orderWithout(
  plan: AssemblyPlan,
  constraints: readonly OrderConstraint[],
  step: string,
  other: string,
): boolean {
  const compile = ruleCompiler(benchPlan(plan))
  const after: OrderConstraint = { form: 'before', step: other, of: [step], at: plan.at, why: 'model' }
  const rules = [...constraints, after].flatMap(compile)
  return findOrder(ruleBook(plan.steps.length, rules), effort).order !== null
}
