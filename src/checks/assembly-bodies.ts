import type { Place } from '../base/place.ts'
import { asm } from '../diagnostics/catalogue/asm.ts'
import type { Report } from '../diagnostics/message.ts'
import type { AssemblyPlan, Step } from '../model/assembly.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Project } from '../model/project.ts'
import type { ModelCheck } from './check.ts'

/** ASM06: a body that no step puts though another is the ground. ASM08: a body that several steps put. */
export const assemblyBodies: ModelCheck = (project, report) => {
  for (const plan of assemblyPlans(project)) {
    const said = new Set<string>()
    for (const touch of plan.steps.flatMap(touched)) {
      if (said.has(touch.body)) continue
      if (look(project, plan, touch, report)) said.add(touch.body)
    }
  }
}

/** The assembly put in a plan that a body is inside of; `null`: none. */
function holderOf(project: Project, plan: AssemblyPlan, body: string): string | null {
  const holds = (part: string, around: readonly string[]): boolean => {
    const way = project.parts.get(part)?.way
    if (way?.kind !== 'assembly' || around.includes(part)) return false
    const inside = [
      way.plan.ground,
      ...way.plan.steps.flatMap(({ put, instances }) => [put?.part, ...instances]),
    ]
    return inside.some((one) => one === body || (one && holds(one, [...around, part])))
  }
  return plan.steps.find(({ put }) => put && holds(put.part, []))?.put?.part ?? null
}

interface Touch {
  readonly step: Step
  readonly body: string
  readonly at: Place
}

function touched(step: Step): readonly Touch[] {
  const bodies = [step.into, step.onto, ...step.shuts, ...step.opens].filter((one) => one !== null)
  return bodies.map(({ body, at }) => ({ step, body, at }))
}

/** Whether something was said about the body. */
function look(project: Project, plan: AssemblyPlan, { step, body, at }: Touch, report: Report): boolean {
  const by = plan.steps.filter(({ put, instances }) => put?.part === body || instances.includes(body))
  if (by.length === 0 && plan.ground !== null && plan.ground !== body) {
    report(asm.neverPut, at, { body, ground: plan.ground, holder: holderOf(project, plan, body) })
    return true
  }
  const waits = step.after.some(
    ({ target }) => target.kind === 'step' && by.some(({ id }) => id === target.id),
  )
  if (by.length < 2 || waits || by.includes(step)) return false
  report(asm.whichCopy, at, { body, step: step.id, by: by.map(({ id }) => id) })
  return true
}
