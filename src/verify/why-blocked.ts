import type { AssemblyOrder } from '../model/assembly.ts'
import type { MeshMove, PlanMeshes } from '../model/from-meshes.ts'

/**
 * The first step of an order at which something finds every straight way in blocked by the meshes there by then,
 * though it has a way once others are out; as one sentence, or `null`. Steps of which typed facts overrule the meshes
 * (their demand was set aside) are passed.
 */
export function whyBlocked({ there, moves }: PlanMeshes, { order, setAside }: AssemblyOrder): string | null {
  const overruled = new Set(setAside.map(({ step }) => step))
  const present = new Set(there)
  for (const step of order ?? []) {
    const own = moves.filter((move) => move.step === step)
    for (const role of ['put', 'fastener'] as const) {
      const coming = own.filter((move) => move.role === role)
      const stuck = coming.find(
        (move) => !hasWay(move, present) && hasWay(move, forGood([...there, ...move.seat], own, role)),
      )
      if (stuck && !overruled.has(step)) return `\`${stuck.part}\` finds no way in at step \`${step}\``
      for (const { bodies } of coming) for (const body of bodies) present.add(body)
    }
  }
  return null
}

function hasWay({ stops }: MeshMove, present: ReadonlySet<number>): boolean {
  return stops.some((all) => all.every(({ body }) => !present.has(body)))
}

/** What stands in the way whatever the order. */
function forGood(
  there: readonly number[],
  own: readonly MeshMove[],
  role: MeshMove['role'],
): ReadonlySet<number> {
  const put = role === 'fastener' ? own.filter((move) => move.role === 'put') : []
  return new Set([...there, ...put.flatMap(({ bodies }) => bodies)])
}
