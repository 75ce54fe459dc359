import { plansAsBuilt } from '../../model/assembly-plans.ts'
import type { Project } from '../../model/project.ts'
import type { Cautions } from '../../model/results.ts'
import { deferLine } from '../../trade/cautions.ts'
import { newSigns, onceEach } from './call.ts'
import { partCalls, printCalls } from './part-calls.ts'
import { planCalls } from './plan-calls.ts'

/**
 * The usual cautions of every route sheet, print job and checklist, each once. The lines of a route sheet or print job
 * stand together, so a sign stands at the first that calls for it; those of a checklist stand apart, each whole.
 */
export function cautionsOf(project: Project): Cautions {
  const parts = [...project.parts.values()]
  return {
    parts: new Map(parts.map((part) => [part.id, newSigns(onceEach(partCalls(project, part)))])),
    plates: new Map(
      [...project.plates.values()].map(({ id, job }) => [id, newSigns(onceEach(printCalls(project, job)))]),
    ),
    assemblies: new Map(
      plansAsBuilt(project).map((plan) => [plan.of ?? '', onceEach(planCalls(project, plan))]),
    ),
    deferLine,
  }
}
