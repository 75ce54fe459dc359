import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { Project } from '../../model/project.ts'
import { isDriven, plainlyRuns, testRuns } from '../../trade/cautions/running-words.ts'

/** Whether a step runs what is built: a test that says so or of what can run, other work where it plainly says so. */
export function runsSomething(project: Project, plan: AssemblyPlan, step: Step): boolean {
  const { test, action, machine, tool } = step
  if (test === null) return action !== null && plainlyRuns(action)
  return testRuns([test, machine, tool?.text].join(' '), holdsDriven(project, plan))
}

/** Whether anything in an assembly, or in those that go into it, is a board or is driven. */
function holdsDriven(project: Project, { ground, steps }: AssemblyPlan): boolean {
  const put = steps.flatMap((step) => step.put?.part ?? [])
  return [...put, ...(ground === null ? [] : [ground])].some((id) => {
    const part = project.parts.get(id)
    if (!part) return false
    const { way, description } = part
    if (way.kind === 'assembly') return holdsDriven(project, way.plan)
    return way.kind === 'board' || (way.kind === 'bought' && isDriven([id, description, way.value].join(' ')))
  })
}
