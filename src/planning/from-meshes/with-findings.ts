import { touches } from '../../geometry/relations/relate-solids.ts'
import type { AssemblyOrder } from '../../model/assembly.ts'
import type { FromMeshes, MeshFinding } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import { contactFindings } from './contact-findings.ts'
import { lidFindings } from './lid-findings.ts'
import { lookAt } from './look.ts'
import type { Studied } from './study-meshes.ts'
import { toolRoom } from './tool-room.ts'
import { wayFindings } from './way-findings.ts'

/** What the meshes say, with all in which they differ from what is typed and from the order taken. */
export function withFindings(
  project: Project,
  studied: Studied,
  orders: ReadonlyMap<string, AssemblyOrder>,
): FromMeshes {
  const { bodies, relations, plans, laid } = studied
  const looks = laid.map((one) => lookAt(studied, one, orders.get(one.plan.of ?? '')!))
  return {
    bodies,
    cellMm: relations.cellMm,
    tilted: relations.tilted,
    pairs: relations.pairs.size,
    plans,
    findings: [
      ...counts(project, studied),
      ...farOff(project, studied),
      ...looks.flatMap((look) => [
        ...wayFindings(look),
        ...lidFindings(look),
        ...contactFindings(look),
        ...toolRoom(look, project.tools),
      ]),
    ],
  }
}

function placeOf(project: Project, part: string) {
  return project.meshes.find((mesh) => mesh.part === part)!.at
}

function counts(project: Project, { miscounts }: Studied): readonly MeshFinding[] {
  return miscounts.map((one) => ({ kind: 'count', at: placeOf(project, one.part), ...one }))
}

function farOff(project: Project, { bodies, relations }: Studied): readonly MeshFinding[] {
  const alone = bodies.flatMap(({ part }, body) =>
    bodies.some((_, other) => other !== body && touches(relations, body, other)) ? [] : [part],
  )
  return [...new Set(alone)].map((part) => ({ kind: 'far off', at: placeOf(project, part), part }))
}
