import type { AssemblyOrder } from '../../model/assembly.ts'
import type { FromMeshes, MeshFinding } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import { contactFindings } from './contact-findings.ts'
import { lidFindings } from './lid-findings.ts'
import { type Look, lookAt } from './look.ts'
import { looseFindings } from './loose-findings.ts'
import { meshLessFindings } from './mesh-less-findings.ts'
import { apartFromAll, type NearestBody } from './nearest-body.ts'
import { overlapFindings } from './overlap-findings.ts'
import { scaleFindings } from './scale-findings.ts'
import type { Studied } from './study-meshes.ts'
import { toolRoom } from './tool-room.ts'
import { wayFindings } from './way-findings.ts'
import { whereOf } from './where-of.ts'

/** What the meshes say, with all in which they differ from what is typed and from the order taken. */
export function withFindings(
  project: Project,
  studied: Studied,
  orders: ReadonlyMap<string, AssemblyOrder>,
): FromMeshes {
  const { bodies, relations, plans, laid } = studied
  const looks = laid.map((one) => lookAt(studied, one, orders.get(one.plan.of ?? '')!))
  const apart = bodies.map((_, body) => apartFromAll(studied, body))
  const scale = scaleFindings(project, studied, apart.filter((one) => one !== null).length)
  return {
    bodies,
    cellMm: relations.cellMm,
    tilted: relations.tilted,
    pairs: relations.pairs.size,
    plans,
    findings: [
      ...counts(project, studied),
      ...(scale.length > 0
        ? scale
        : [...farOff(project, studied, apart), ...looks.flatMap((look) => inAssembly(look, project))]),
    ],
  }
}

function inAssembly(look: Look, project: Project): readonly MeshFinding[] {
  return [
    ...meshLessFindings(look, project),
    ...wayFindings(look),
    ...lidFindings(look),
    ...contactFindings(look),
    ...overlapFindings(look),
    ...looseFindings(look),
    ...toolRoom(look, project.tools),
  ]
}

function placeOf(project: Project, part: string) {
  return project.meshes.find((mesh) => mesh.part === part)!.at
}

function counts(project: Project, { miscounts }: Studied): readonly MeshFinding[] {
  return miscounts.map((one) => ({ kind: 'count', at: placeOf(project, one.part), ...one }))
}

function farOff(
  project: Project,
  studied: Studied,
  apart: readonly (NearestBody | null)[],
): readonly MeshFinding[] {
  const { bodies } = studied
  const alone = bodies.flatMap(({ part }, body) => {
    const nearest = apart[body]
    return nearest ? [{ part, body, nearest }] : []
  })
  return [...new Set(alone.map(({ part }) => part))].map((part) => {
    const own = alone.filter((one) => one.part === part)
    const { nearest } = own[0]!
    const where = own.map(({ body }) => whereOf(studied, [body])).filter((one) => one !== null)
    const found = { part, where, nearest: bodies[nearest.body]!.part, gapMm: nearest.mm }
    return { kind: 'far off', at: placeOf(project, part), ...found }
  })
}
