import { axes } from '../../geometry/relations/directions.ts'
import type { Where } from '../../model/from-meshes.ts'
import type { Studied } from './study-meshes.ts'

const isOneOfSeveral = ({ bodies }: Studied, body: number): boolean =>
  bodies.filter(({ part }) => part === bodies[body]!.part).length > 1

/** The middle of a body of which there are several copies; `null`: it is the only one, or they are several bodies. */
export function whereOf(studied: Studied, own: readonly number[]): Where | null {
  const [body] = own
  if (body === undefined || own.length > 1 || !isOneOfSeveral(studied, body)) return null
  const { low, high } = studied.solids[body]!
  return middle(low, high)
}

/** The middle of what the boxes of two bodies share; `null` where there are no other copies of either. */
export function whereMeet(studied: Studied, a: number, b: number): Where | null {
  if (!isOneOfSeveral(studied, a) && !isOneOfSeveral(studied, b)) return null
  const [one, other] = [studied.solids[a]!, studied.solids[b]!]
  const low = axes.map((k) => Math.max(one.low[k], other.low[k]))
  return middle(
    low,
    axes.map((k) => Math.min(one.high[k], other.high[k])),
  )
}

function middle(low: readonly number[], high: readonly number[]): Where {
  const [x, y, z] = axes.map((k) => (low[k]! + high[k]!) / 2)
  return [x!, y!, z!]
}
