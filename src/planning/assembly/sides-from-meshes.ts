import { type Direction, directionNames } from '../../geometry/relations/directions.ts'
import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { MeshMove, PlanMeshes } from '../../model/from-meshes.ts'
import { sideOf } from '../from-meshes/side-of.ts'
import { bringers, waysOpen } from '../from-meshes/ways-open.ts'

/** Directions of steps that type none, as the meshes leave them. */
export interface MeshSides {
  /** By step id: the one direction in which it can ever go in. */
  readonly only: ReadonlyMap<string, Direction>
  /** Whether they stand for typed ones: not where a step of the assembly says how the work lies (`turn`). */
  readonly counted: boolean
}

/** Nothing has a mesh. */
export const noSides: MeshSides = { only: new Map(), counted: false }

/**
 * The steps that type no `from` and no `turn`, and for which the meshes leave one direction alone: past what is there
 * from the start, what it goes on or into, and what comes before it in every order. Where what is put has several, that
 * of its fasteners, if they have one alone and it is one of them.
 * `before`: the steps that are surely done before one.
 */
export function sidesFromMeshes(
  plan: AssemblyPlan,
  meshes: PlanMeshes,
  before: (step: number) => ReadonlySet<string>,
): MeshSides {
  const by = bringers(meshes.moves)
  const only = plan.steps.flatMap(({ id, from, turn }, number): readonly (readonly [string, Direction])[] => {
    if (from !== null || turn !== null) return []
    const done = before(number)
    const possible = (role: MeshMove['role']): readonly (readonly Direction[])[] =>
      meshes.moves
        .filter((move) => move.step === id && move.role === role)
        .map((move) =>
          waysOpen({ plan, there: meshes.there }, move, by)
            .filter(({ steps }) => !steps.some((step) => done.has(step)))
            .map(({ direction }) => direction),
        )
    const put = possible('put')
    const side = same(put) ?? same(possible('fastener'))
    return side !== null && put.every((all) => all.includes(side)) ? [[id, side]] : []
  })
  return { only: new Map(only), counted: plan.steps.every(({ turn }) => turn === null) }
}

/** The direction that is the only one of all; `null`: there is none. */
function same(possible: readonly (readonly Direction[])[]): Direction | null {
  const [first] = possible
  const side = first?.length === 1 ? first[0]! : null
  return side !== null && possible.every((all) => all.length === 1 && all[0] === side) ? side : null
}

/** Where a step comes from, so that words for one side are equal: as typed, else as the meshes leave it. */
export function sideText({ id, from }: Step, { only, counted }: MeshSides): string | null {
  if (!counted) return from
  const side = sideOf(from) ?? only.get(id) ?? null
  return side === null ? from : (directionNames[side] ?? `direction ${side}`)
}
