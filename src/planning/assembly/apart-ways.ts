import type { WayOfStep } from '../../model/from-meshes.ts'
import { wayOfStep } from '../from-meshes/ways-of-steps.ts'
import type { ApartProblem } from './apart-needs.ts'

/**
 * Where each step undone goes out by its meshes, past what is still there; it comes in again the same way. What typed
 * facts or the meshes do not tell is left out.
 */
export function apartWays(problem: ApartProblem, undo: readonly number[]): ReadonlyMap<number, WayOfStep> {
  const { plan, meshes, comesAlong } = problem
  if (!meshes) return new Map()
  const ids = plan.steps.map(({ id }) => id)
  const movesOf = (step: number) => meshes.moves.filter((move) => move.step === ids[step])
  const present = new Set([...meshes.there, ...meshes.moves.flatMap(({ bodies }) => bodies)])
  return new Map(
    undo.flatMap((step) => {
      const along = ids.flatMap((_, other) => (comesAlong(other, step) ? [other] : []))
      for (const one of [step, ...along])
        for (const { bodies } of movesOf(one)) for (const body of bodies) present.delete(body)
      const way = wayOfStep(plan.steps[step]!, movesOf(step), { there: present, tilted: meshes.tilted })
      return way ? [[step, way] as const] : []
    }),
  )
}
