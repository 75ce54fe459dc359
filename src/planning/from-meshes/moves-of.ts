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
    const onto = role === 'put' ? ontoOf(laid, load) : []
    const stops = directions.map((direction) =>
      stopsOf(load, others, relations, {
        direction,
        typed: direction === side || tiltedFrom.includes(direction),
        onto,
      }),
    )
    return { step: step.id, part, role, bodies, seat: seatOf(laid, load), onto, tiltedFrom, stops }
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

/** What a step puts something on or into, by whatever steps it comes; where none puts it, what is there from the start. */
function ontoOf({ there, loads }: LaidPlan, { step, bodies }: Load): readonly number[] {
  const seat = step.onto?.body ?? step.into?.body
  if (seat === undefined) return []
  const put = loads
    .filter((load) => load.role === 'put' && (load.part === seat || load.step.instances.includes(seat)))
    .flatMap((load) => load.bodies)
  return (put.length > 0 ? put : there).filter((body) => !bodies.includes(body))
}

function stopsOf(
  load: Load,
  others: readonly number[],
  relations: Relations,
  {
    direction,
    typed,
    onto,
  }: { readonly direction: Direction; readonly typed: boolean; readonly onto: readonly number[] },
): readonly MeshStop[] {
  const { step, bodies } = load
  // What bends on its way in passes what stops it no wider than that, in the direction that is typed: what it goes on
  // or into, where that is said. Widths are right to a cell.
  const gives = typed ? step.gives?.value.valueOf() : undefined
  const bends = gives === undefined ? 0 : gives + relations.cellMm
  return others
    .map((body) => ({
      body,
      widthMm: Math.max(...bodies.map((own) => stopWidth(relations, own, body, direction))),
    }))
    .filter(({ body, widthMm }) => widthMm > (onto.length === 0 || onto.includes(body) ? bends : 0))
    .sort((a, b) => b.widthMm - a.widthMm || a.body - b.body)
}
