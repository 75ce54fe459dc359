import { axes, axisOf, vectorOf } from '../../geometry/relations/directions.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../../model/assembly.ts'
import { assemblyPlans } from '../../model/assembly-plans.ts'
import type {
  FromMeshes,
  MeshMove,
  MoveDirection,
  PlanMeshes,
  ToldWay,
  WayOfStep,
  WaysOfSteps,
} from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import { wayIn } from './way-in.ts'

/** Where each step comes from that has a mesh and types neither `from` nor `through`, past what is there by then. */
export function waysOfSteps(
  project: Pick<Project, 'parts' | 'assembly'>,
  orders: ReadonlyMap<string, Pick<AssemblyOrder, 'order'>>,
  meshes: FromMeshes | null,
): WaysOfSteps {
  return new Map(
    assemblyPlans(project).flatMap((plan) => {
      const of = plan.of ?? ''
      const [own, order] = [meshes?.plans.get(of), orders.get(of)?.order]
      return own && order ? [[of, waysInOrder(plan, order, own)] as const] : []
    }),
  )
}

function waysInOrder(
  plan: AssemblyPlan,
  order: readonly string[],
  { there, moves, tilted }: PlanMeshes,
): ReadonlyMap<string, WayOfStep> {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const present = new Set(there)
  const ways = new Map<string, WayOfStep>()
  for (const id of order) {
    const own = moves.filter((move) => move.step === id)
    const way = wayOfStep(steps.get(id)!, own, { there: present, tilted })
    if (way) ways.set(id, way)
    for (const { bodies } of own) for (const body of bodies) present.add(body)
  }
  return ways
}

/**
 * Where a step comes from, past what is there; `null`: it types it, nothing is there yet, or no straight way is free.
 * What comes out past the same goes the same way.
 */
export function wayOfStep(
  step: Step,
  own: readonly MeshMove[],
  { there, tilted }: { readonly there: ReadonlySet<number>; readonly tilted: PlanMeshes['tilted'] },
): WayOfStep | null {
  if (step.from !== null || step.into?.through != null || there.size === 0) return null
  const put = own.filter(({ role }) => role === 'put')
  const screws = own.filter(({ role }) => role === 'fastener')
  const withPut = new Set([...there, ...put.flatMap(({ bodies }) => bodies)])
  const fastened = freeWays(screws, step, withPut)
  const from = freeWays(put, step, there, fastened)
  const fastenedFrom = fastened.filter((direction) => !from.includes(direction))
  if (from.length + fastenedFrom.length === 0) return null
  const told = (direction: MoveDirection): ToldWay =>
    axisOf(direction) < axes.length ? direction : vectorOf(direction, tilted)
  return { from: from.map(told), fastenedFrom: fastenedFrom.map(told) }
}

/** Each direction once; none where one of the moves finds no free one. */
function freeWays(
  moves: readonly MeshMove[],
  step: Step,
  there: ReadonlySet<number>,
  fastened: readonly MoveDirection[] = [],
): readonly MoveDirection[] {
  const ways = moves.map((move) => {
    const direction = wayIn(move, step, there, fastened)
    return move.stops[direction]!.some(({ body }) => there.has(body)) ? null : direction
  })
  return [...new Set(ways.flatMap((way) => way ?? []))].filter(() => !ways.includes(null))
}
