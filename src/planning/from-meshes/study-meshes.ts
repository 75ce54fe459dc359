import { type Relations, relateSolids, touches } from '../../geometry/relations/relate-solids.ts'
import { type Solid, solidOf } from '../../geometry/relations/solid.ts'
import type { MeshBody, MeshMove, PlanMeshes } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import { baseOf } from './base-of.ts'
import { compileMoves } from './compile-moves.ts'
import { giveOfJoins } from './give-of-joins.ts'
import { type LaidPlan, type Load, layOutBodies, type Miscount } from './lay-out-bodies.ts'
import { movesOf } from './moves-of.ts'

/** The meshes of a device with how they stand to each other, before an order is known. */
export interface Studied {
  readonly bodies: readonly MeshBody[]
  readonly solids: readonly Solid[]
  readonly relations: Relations
  readonly laid: readonly LaidPlan[]
  readonly plans: ReadonlyMap<string, PlanMeshes>
  readonly miscounts: readonly Miscount[]
}

/**
 * What the meshes in assembled place ask of the order of each assembly; `null` where fewer than two stand there, and
 * then nothing is worked out.
 */
export function studyMeshes(project: Project): Studied | null {
  if (project.meshes.length === 0) return null
  const first = layOutBodies(project)
  const { bodies, corners, miscounts } = first
  if (bodies.length < 2) return null
  const solids = corners.map(solidOf)
  const relations = relateSolids(solids, { leastGiveMm: giveOfJoins(project, first) })
  const laid = layOutBodies(project, (a, b) => touches(relations, a, b)).plans
  const volumes = solids.map(({ volumeMm3 }) => volumeMm3)
  const plans = new Map(laid.map((one) => [one.plan.of ?? '', planMeshes(one, relations, volumes)] as const))
  return { bodies, solids, relations, laid, plans, miscounts }
}

function planMeshes(laid: LaidPlan, relations: Relations, volumes: readonly number[]): PlanMeshes {
  const base = baseOf(laid, volumes)
  const moves = movesOf(laid, relations).map((move) => onBase(move, base))
  const known = new Set(moves.filter(({ role }) => role === 'put').map(({ step }) => step))
  return {
    of: laid.plan.of,
    there: laid.there,
    moves,
    tilted: relations.tilted,
    constraints: compileMoves(laid, moves, relations, base?.step.id ?? null),
    typedAlone: laid.plan.steps.filter(({ id, put }) => put && !known.has(id)).map(({ id }) => id),
  }
}

/** The base is there before all that is put after it. */
function onBase(move: MeshMove, base: Load | null): MeshMove {
  if (!base || move.step === base.step.id) return move
  return { ...move, seat: [...new Set([...move.seat, ...base.bodies])] }
}
