import type { AssemblyPlan } from '../model/assembly.ts'
import type { Project } from '../model/project.ts'

/** Every assembly of a project: the device, then parts of kind assembly in source order. */
export function assemblyPlans(project: Project): readonly AssemblyPlan[] {
  const parts = [...project.parts.values()].flatMap(({ way }) => (way.kind === 'assembly' ? [way.plan] : []))
  return project.assembly ? [project.assembly, ...parts] : parts
}
