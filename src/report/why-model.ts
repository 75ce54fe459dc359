import { wayWords } from '../diagnostics/catalogue/way-words.ts'
import type { OrderConstraint } from '../model/assembly.ts'
import type { FromMeshes, MeshMove, PlanMeshes } from '../model/from-meshes.ts'

/** Why the meshes ask something of the order: what stops what, where and how widely; `null`: a person typed it. */
export type WhyModel = (one: OrderConstraint) => string | null

/** Reasons for what the meshes ask in one assembly. */
export function whyModel(meshes: FromMeshes | null, of: string | null): WhyModel {
  const plan = meshes?.plans.get(of ?? '')
  if (!meshes || !plan) return () => null
  return (one) => {
    if (one.why !== 'model') return null
    if (one.form === 'presence') return 'by the meshes it touches nothing else'
    if (one.form !== 'before' && one.form !== 'before last of') return null
    const stops = one.of.flatMap((step) => sayStop(meshes, plan, one.step, step) ?? [])
    if (stops.length > 0) return `by the meshes ${stops.join('; ')}`
    const fastens = plan.moves.some(({ step, role }) => one.of.includes(step) && role === 'fastener')
    return fastens ? 'by the meshes a fastener touches what it puts' : 'it is the base'
  }
}

/** `` `lid` stops `core` at +z, 10 mm wide``; `null`: nothing of the other step is in the way. */
function sayStop(meshes: FromMeshes, plan: PlanMeshes, step: string, other: string): string | null {
  const theirs = new Map(
    plan.moves
      .filter((move) => move.step === other)
      .flatMap((move) => move.bodies.map((body) => [body, move])),
  )
  const found = plan.moves
    .filter((move) => move.step === step)
    .flatMap((move) =>
      move.stops.flatMap((stops, direction) => {
        const stop = stops.find(({ body }) => theirs.has(body))
        return stop && isOpen(plan, move, direction)
          ? [{ move, direction, by: theirs.get(stop.body)!.part, widthMm: stop.widthMm }]
          : []
      }),
    )
  const [first] = found
  if (!first) return null
  const own = found.filter(({ move, by }) => move.part === first.move.part && by === first.by)
  const ways = [...new Set(own.map(({ direction }) => sayWay(meshes, direction)))]
  const most = Math.max(...own.map(({ widthMm }) => widthMm))
  return `\`${first.by}\` stops \`${first.move.part}\` at ${ways.join(' and ')}, ${Number(most.toFixed(1))} mm wide`
}

/** Whether nothing that is there for good stops a move in a direction. */
function isOpen({ there }: PlanMeshes, { seat, stops }: MeshMove, direction: number): boolean {
  return !stops[direction]!.some(({ body }) => there.includes(body) || seat.includes(body))
}

function sayWay({ tilted }: FromMeshes, direction: number): string {
  const axis = tilted[(direction >> 1) - 3]
  const sign = direction % 2 === 0 ? 1 : -1
  return wayWords(axis ? [sign * axis[0], sign * axis[1], sign * axis[2]] : direction)
}
