import { bodiesThere, type LaidPlan, type Load } from './lay-out-bodies.ts'

/**
 * What the rest of an assembly goes on, where nothing is there from the start: of what is put and goes on or into
 * nothing the largest by volume. `null`: something is there, with a mesh or without; or a body that others go on has no
 * mesh, and may be the base. Common practice, no source.
 */
export function baseOf({ plan, loads }: LaidPlan, volumes: readonly number[]): Load | null {
  const puts = loads.filter(({ role }) => role === 'put')
  const known = new Set(puts.map(({ step }) => step.id))
  const seats = new Set(
    plan.steps.flatMap(({ into, onto }) => [into, onto].flatMap((one) => one?.body ?? [])),
  )
  const bare = plan.steps.some(
    ({ id, put, instances }) =>
      put && !known.has(id) && [put.part, ...instances].some((one) => seats.has(one)),
  )
  if (bare || bodiesThere(plan).length > 0) return null
  const size = ({ bodies }: Load) => bodies.reduce((sum, body) => sum + volumes[body]!, 0)
  return puts
    .filter(({ step: { into, onto } }) => !into && !onto)
    .reduce<Load | null>((best, one) => (best && size(best) >= size(one) ? best : one), null)
}
