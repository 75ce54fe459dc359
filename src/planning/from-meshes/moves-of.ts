import { axesWith, type Direction, directionAlong } from '../../geometry/relations/directions.ts'
import { type Relations, stopWidth } from '../../geometry/relations/relate-solids.ts'
import type { MeshMove, MeshStop } from '../../model/from-meshes.ts'
import type { LaidPlan, Load } from './lay-out-bodies.ts'
import { sideOf, tiltedTo } from './side-of.ts'

/** What goes in as one in each step of an assembly, and what stops it by direction with everything in place. */
export function movesOf(laid: LaidPlan, relations: Relations): readonly MeshMove[] {
  const { loads, there } = laid
  const directions = axesWith(relations.tilted).flatMap((axis) => [
    directionAlong(axis, true),
    directionAlong(axis, false),
  ])
  const present = [...there, ...loads.flatMap(({ bodies }) => bodies)]
  return loads.map((load) => {
    const others = present.filter((body) => !load.bodies.includes(body))
    const { step, part, role, bodies } = load
    const side = role === 'put' ? sideOf(step.from) : null
    const tiltedFrom = side === null ? [] : tiltedTo(side, relations.tilted)
    const stops = directions.map((direction) =>
      stopsOf(load, others, relations, {
        direction,
        typed: direction === side || tiltedFrom.includes(direction),
      }),
    )
    return { step: step.id, part, role, bodies, seat: seatOf(laid, load), tiltedFrom, stops }
  })
}

function seatOf({ plan, loads }: LaidPlan, { step }: Load): readonly number[] {
  const seat = step.onto?.body ?? step.into?.body
  const givers = plan.steps.filter(
    ({ put, instances }) => seat !== undefined && (put?.part === seat || instances.includes(seat)),
  )
  if (givers.length !== 1 || givers[0] === step) return []
  return loads
    .filter((load) => load.step === givers[0] && load.role === 'put')
    .flatMap(({ bodies }) => bodies)
}

function stopsOf(
  load: Load,
  others: readonly number[],
  relations: Relations,
  { direction, typed }: { readonly direction: Direction; readonly typed: boolean },
): readonly MeshStop[] {
  const { step, bodies } = load
  // What bends on its way in passes what stops it no wider than that, in the direction that is typed; widths are right
  // to a cell.
  const gives = typed ? step.gives?.value.valueOf() : undefined
  const bends = gives === undefined ? 0 : gives + relations.cellMm
  return others
    .map((body) => ({
      body,
      widthMm: Math.max(...bodies.map((own) => stopWidth(relations, own, body, direction))),
    }))
    .filter(({ widthMm }) => widthMm > bends)
    .sort((a, b) => b.widthMm - a.widthMm || a.body - b.body)
}
