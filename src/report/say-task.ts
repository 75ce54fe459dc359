import type { AssemblyPlan, Step } from '../model/assembly.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask, TaskHold } from '../model/tasks.ts'

/** The step of the assembly that a task carries out; `null`: it carries out none. */
export function stepOf({ project }: Results, { subject }: PlanTask): Step | null {
  if (subject.step === null) return null
  const way = subject.assembly === null ? null : (project.parts.get(subject.assembly)?.way ?? null)
  const plan: AssemblyPlan | null =
    subject.assembly === null ? project.assembly : way?.kind === 'assembly' ? way.plan : null
  return plan?.steps.find(({ id }) => id === subject.step) ?? null
}

/** Machine, tools, fixtures and torque that a task is done with; `holds` are those that begin with it. */
export function sayWith(results: Results, task: PlanTask, holds: readonly TaskHold[]): string {
  const step = stepOf(results, task)
  const held = holds.filter(({ kind }) => kind !== 'machine').map(({ resource }) => resource)
  const all = [
    ...(task.machine === null ? [] : [task.machine]),
    ...task.tools,
    ...task.fixtures,
    ...held,
    ...(step?.tool ? [step.tool.text] : []),
  ]
  const torque = step?.torque ? [step.torque.text] : []
  return [...new Set(all), ...torque].join(', ')
}

/** A task's title, with the name of its step where the title alone does not tell it. */
export function sayTitle(results: Results, task: PlanTask): string {
  const step = stepOf(results, task)
  if (!step || task.kind === 'cure' || step.id === step.action) return task.title
  const others = [
    ...(step.into ? [`into ${step.into.body}`] : []),
    ...(step.onto ? [`on ${step.onto.body}`] : []),
    ...step.fasteners.map(({ part, count }) => `with ${count} x ${part}`),
  ]
  return [`${task.title}`, ...others].join(', ')
}
