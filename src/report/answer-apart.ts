import { nameList, nearNames } from '../base/near-names.ts'
import { assemblyPlans } from '../model/assembly-plans.ts'
import type { Project } from '../model/project.ts'
import type { Repair } from '../model/repair.ts'
import { type ReportRepair, reportRepair } from './report-repair.ts'

/** The way to a part, or why there is none to tell. */
export function answerApart(project: Project, repair: Repair): ReportRepair | { readonly unknown: string } {
  const { part } = repair
  if (repair.ways.length > 0) return reportRepair(project, repair)
  if (project.parts.has(part))
    return { unknown: `no assembly step puts \`${part}\`: there is nothing to undo` }
  const copies = assemblyPlans(project).flatMap(({ steps }) => steps.flatMap(({ instances }) => instances))
  const near = nearNames(part, [...project.parts.keys(), ...copies])
  const mend = near.length > 0 ? `did you mean ${nameList(near, 'or')}?` : 'name a part of the project'
  return { unknown: `there is no part called \`${part}\`; ${mend}` }
}
