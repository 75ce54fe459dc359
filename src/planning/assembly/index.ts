// STAND-IN until the real module lands (minutes): the order as written, with plain presence links.
import type { AssemblyOrder, AssemblyPlan, OrderConstraint } from '../../model/assembly.ts'
import type { Project } from '../../model/project.ts'

export function orderAssembly(plan: AssemblyPlan, _project: Project): AssemblyOrder {
  const put = new Map(plan.steps.flatMap((step) => (step.put ? [[step.put.part, step.id] as const] : [])))
  const links = plan.steps.flatMap((step) => {
    const bodies = [step.into?.body, step.onto?.body].filter((body) => body !== undefined)
    const before = [
      ...bodies.flatMap((body) => put.get(body) ?? []),
      ...step.after.flatMap(({ target }) => (target.kind === 'step' && target.assembly === plan.of ? [target.id] : [])),
    ]
    return before.filter((id) => id !== step.id).map((id) => {
      const constraint = { form: 'presence', step: step.id, needs: id, at: step.at, why: 'in' } as OrderConstraint
      return { before: id, after: step.id, constraint }
    })
  })
  return { of: plan.of, constraints: links.map(({ constraint }) => constraint), order: plan.steps.map(({ id }) => id), links, conflict: [], void: [], proved: false, turns: 0, toolChanges: 0 } as unknown as AssemblyOrder
}
