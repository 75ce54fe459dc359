import type { MeshFinding, MeshMove } from '../../model/from-meshes.ts'
import type { Look } from './look.ts'
import { fastenerOverlapMm, matedOverlapMm, nominalOverlapMm } from './nominal-overlap.ts'
import { everything, matesPart, seatOf } from './seat-of.ts'

/** Overlaps narrower than this are facets and roundings, mm: two cells. */
const leastOverlapMm = 0.2
/** Widths come out wrong by up to this, mm. */
const widthToleranceMm = 0.05
/** Where a mesh leaks, what lies beside a leak stands for it: narrower than this may be that alone, mm. */
const leastLeakingMm = 0.5

/** Parts that lie in each other as drawn, more widely than a join explains. */
export function overlapFindings(look: Look): readonly MeshFinding[] {
  const told = new Set<string>()
  return look.moves.flatMap((move) => {
    const others = everything(look).filter((body) => !move.bodies.includes(body))
    return move.bodies.flatMap((own) =>
      others.flatMap((body): readonly MeshFinding[] => {
        const [part, other] = [look.partOf(own), look.partOf(body)]
        const key = JSON.stringify([part, other].sort())
        const widthMm = look.overlapMm(own, body)
        const leaking = leakingOf(look, [own, body])
        if (widthMm < (leaking.length > 0 ? leastLeakingMm : leastOverlapMm) || told.has(key)) return []
        const mostMm = explainedMm(look, move, own, body)
        if (mostMm > 0 && widthMm <= mostMm + widthToleranceMm) return []
        told.add(key)
        const found = { part, other, widthMm, leaking, where: look.whereMeet(own, body) }
        return [{ kind: 'overlap', at: look.stepOf(move).at, ...found, mostMm: mostMm > 0 ? mostMm : null }]
      }),
    )
  })
}

function leakingOf(look: Look, bodies: readonly number[]): readonly string[] {
  return [...new Set(bodies.filter((body) => look.studied.relations.leaks[body]! > 0).map(look.partOf))]
}

/** How widely the steps say that two bodies may overlap, in mm; 0: none says so. */
function explainedMm(look: Look, move: MeshMove, own: number, body: number): number {
  const bringer = look.bringerOf(body)
  const mated = look.laid.plan.steps.flatMap((step) =>
    matesPart(step, look.partOf(own)) && matesPart(step, look.partOf(body))
      ? [(step.method && nominalOverlapMm[step.method]) ?? matedOverlapMm]
      : [],
  )
  return Math.max(0, joinedMm(look, move, body), bringer ? joinedMm(look, bringer, own) : 0, ...mated)
}

/** How widely a step's own join lets what it brings overlap a body, in mm. */
function joinedMm(look: Look, move: MeshMove, body: number): number {
  const step = look.stepOf(move)
  const seat = seatOf(step)
  const isSeat = seat !== null && look.bodiesCalled(seat).includes(body)
  if (move.role === 'fastener') {
    const bringer = look.bringerOf(body)
    const isPut = bringer?.step === step.id && bringer.role === 'put'
    return isSeat || isPut || liesBehind(look, seat, body) ? fastenerOverlapMm : 0
  }
  // What bends is squeezed by so much.
  const bends = step.gives?.value.valueOf() ?? 0
  if (!isSeat || step.method === null) return bends
  if (step.method === 'screw' && step.fasteners.length === 0) return fastenerOverlapMm
  return Math.max(bends, nominalOverlapMm[step.method] ?? 0)
}

/** Whether a fastener goes on into a body through the seat that its step names, as through a gasket. */
function liesBehind(look: Look, seat: string | null, body: number): boolean {
  return seat !== null && look.touch(look.bodiesCalled(seat), [body])
}
