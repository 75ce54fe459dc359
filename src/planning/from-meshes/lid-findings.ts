import type { Step } from '../../model/assembly.ts'
import type { MeshFinding, MoveDirection } from '../../model/from-meshes.ts'
import { orderWithout } from '../assembly/order-without.ts'
import type { Look } from './look.ts'
import { seatOf } from './seat-of.ts'
import { sideOf } from './side-of.ts'

/** Steps that shut an opening of a body and, by the meshes, keep out what goes there, of which nobody said so. */
export function lidFindings(look: Look): readonly MeshFinding[] {
  const { order, laid } = look
  const steps = new Map(laid.plan.steps.map((step) => [step.id, step]))
  return order.constraints.flatMap((constraint): readonly MeshFinding[] => {
    if (constraint.why !== 'model' || constraint.form !== 'before' || constraint.of.length !== 1) return []
    const [lid, step] = [steps.get(constraint.of[0]!)!, steps.get(constraint.step)!]
    const body = seatOf(step)
    const shut = lid.shuts.filter((one) => one.body === body)
    if (body === null || shut.length === 0) return []
    if (!orderWithout(laid.plan, look.typed, step.id, lid.id)) return []
    const widest = widestStop(look, step, lid)
    if (!widest) return []
    const common = { lid: lid.id, step: step.id, body, ...widest }
    return [
      { kind: 'shuts more', at: shut[0]!.at, ...common, ...openingOf(look, lid, step, widest.direction) },
    ]
  })
}

function widestStop(look: Look, step: Step, lid: Step) {
  const stops = look.moves
    .filter((move) => move.step === step.id)
    .flatMap((move) =>
      look
        .waysOf(move)
        .flatMap(({ direction }) =>
          move.stops[direction]!.filter(({ body }) => look.bringerOf(body)?.step === lid.id).map(
            ({ widthMm }) => ({ part: move.part, direction, widthMm }),
          ),
        ),
    )
  return stops.reduce<(typeof stops)[number] | null>(
    (best, one) => (best && best.widthMm >= one.widthMm ? best : one),
    null,
  )
}

/** Which opening the step passes, and who says so. */
function openingOf(look: Look, lid: Step, step: Step, direction: MoveDirection) {
  const body = seatOf(step)!
  const shut = lid.shuts.filter((one) => one.body === body).map(({ opening }) => opening)
  const onSide = look.laid.plan.openings.get(body)?.find((opening) => sideOf(opening) === direction)
  // An opening that is named after no side may be the one.
  const [only] = shut.length === 1 && sideOf(shut[0]!) === null ? shut : []
  const opening = onSide ?? only ?? null
  const through = step.into?.through ?? null
  return {
    opening,
    isShut: opening !== null && shut.includes(opening),
    through: !step.into ? ('on' as const) : through === opening ? ('said' as const) : ('silent' as const),
  }
}
