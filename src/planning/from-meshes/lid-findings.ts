import type { MeshFinding } from '../../model/from-meshes.ts'
import { orderWithout } from '../assembly/order-without.ts'
import type { Look } from './look.ts'

/** Steps that shut an opening and, by the meshes, keep out a part of which nobody said so. */
export function lidFindings(look: Look): readonly MeshFinding[] {
  const { order, laid } = look
  const steps = new Map(laid.plan.steps.map((step) => [step.id, step]))
  return order.constraints.flatMap((constraint): readonly MeshFinding[] => {
    if (constraint.why !== 'model' || constraint.form !== 'before' || constraint.of.length !== 1) return []
    const lid = steps.get(constraint.of[0]!)!
    if (lid.shuts.length === 0 || !orderWithout(laid.plan, look.typed, constraint.step, lid.id)) return []
    const stops = look.moves
      .filter(({ step }) => step === constraint.step)
      .flatMap((move) =>
        look
          .waysOf(move)
          .flatMap(({ direction }) =>
            move.stops[direction]!.filter(({ body }) => look.bringerOf(body)?.step === lid.id).map(
              ({ widthMm }) => ({ part: move.part, direction, widthMm }),
            ),
          ),
      )
    const widest = stops.reduce<(typeof stops)[number] | null>(
      (best, one) => (best && best.widthMm >= one.widthMm ? best : one),
      null,
    )
    return widest
      ? [{ kind: 'shuts more', at: lid.shuts[0]!.at, lid: lid.id, step: constraint.step, ...widest }]
      : []
  })
}
