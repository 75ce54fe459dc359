import type { Project } from '../../model/project.ts'
import { isLightMetal, type MaterialWork, materialCautions } from '../../trade/cautions/material-cautions.ts'
import { type Call, own, usual } from './call.ts'

/** How a material is worked: see `MaterialWork`; abraded where it is ground, sanded or polished. */
export interface Working extends MaterialWork {
  readonly abraded: boolean
}

/** What to mind of a material: the usual cautions of it as it is worked, and those the project gives it. */
export function materialCalls(project: Project, id: string, working: Working): readonly Call[] {
  const material = project.materials.get(id)
  const said = material?.cautions ?? []
  const named = { name: id, like: material?.like ?? null, hasOwn: said.length > 0 }
  const found = materialCautions(named, working)
  const stays = found.filter(({ givesWay }) => !givesWay || said.length === 0)
  const signs = found.filter(({ givesWay }) => givesWay && said.length > 0).flatMap((one) => one.signs)
  return [
    ...(working.abraded && isLightMetal(named) ? [usual('light-metal dust')] : []),
    ...stays.map((one): Call => ({ topic: id, signs: one.signs, says: one.says, step: null })),
    ...own(id, said).map((call, at) => (at === 0 ? { ...call, signs } : call)),
  ]
}
