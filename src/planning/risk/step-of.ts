import type { Step } from '../../model/assembly.ts'
import type { Project } from '../../model/project.ts'
import type { PlanTask } from '../../model/tasks.ts'

/** The assembly step a task does; `null` where it does none. */
export function stepOf(project: Project, { subject }: PlanTask): Step | null {
  if (subject.step === null) return null
  const way = subject.assembly === null ? null : project.parts.get(subject.assembly)?.way
  const plan = subject.assembly === null ? project.assembly : way?.kind === 'assembly' ? way.plan : null
  return plan?.steps.find(({ id }) => id === subject.step) ?? null
}
