import type { AssemblyPlan } from './assembly.ts'
import type { Part } from './project.ts'

/** The plans of parts of kind assembly, in source order. */
export function partPlans(parts: ReadonlyMap<string, Part>): readonly AssemblyPlan[] {
  return [...parts.values()].flatMap(({ way }) => (way.kind === 'assembly' ? [way.plan] : []))
}

/** Every assembly of a project: the device, then parts of kind assembly in source order. */
export function assemblyPlans(project: {
  readonly parts: ReadonlyMap<string, Part>
  readonly assembly: AssemblyPlan | null
}): readonly AssemblyPlan[] {
  return [...(project.assembly ? [project.assembly] : []), ...partPlans(project.parts)]
}

/** The same as they are built: what goes into the device before the device. */
export function plansAsBuilt(project: Parameters<typeof assemblyPlans>[0]): readonly AssemblyPlan[] {
  return [...partPlans(project.parts), ...(project.assembly ? [project.assembly] : [])]
}
