import { axisOf, type Direction } from '../../geometry/relations/directions.ts'
import type { JoiningMethod, Step } from '../../model/assembly.ts'
import type { MeshFinding, MeshMove } from '../../model/from-meshes.ts'
import { freeWays } from './free-ways.ts'
import { type Look, oncePerPart } from './look.ts'
import { nominalOverlapMm } from './nominal-overlap.ts'
import { matesPart, seatOf } from './seat-of.ts'

/** Parts of the finished device that nothing holds. */
export function looseFindings(look: Look): readonly MeshFinding[] {
  return look.laid.plan.of === null ? oncePerPart(look.moves, (move) => loose(look, move)) : []
}

const holding: ReadonlySet<JoiningMethod> = new Set(['tie', 'magnet'])

/** Whether a step's own join keeps what it puts, as far as the meshes cannot tell better. */
function holds(look: Look, step: Step): boolean {
  if (step.method === null || step.method === 'seat') return false
  if (holding.has(step.method) || nominalOverlapMm[step.method] !== undefined) return true
  return !look.moves.some((move) => move.step === step.id && move.role === 'fastener')
}

function loose(look: Look, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  if (move.role !== 'put' || holds(look, step)) return []
  const free = freeWays(move.stops, (stops) => stops.length === 0)
  if (free.length === 0 || isClamped(look, move, free)) return []
  if (look.moves.some((other) => isHeldBy(look, move, other))) return []
  return [{ kind: 'loose', at: step.at, step: step.id, part: move.part, directions: free }]
}

/** Whether a fastener of its own step lies across every way out: a grub screw, or the screw of a clamp around it. */
function isClamped(look: Look, move: MeshMove, free: readonly Direction[]): boolean {
  const out = new Set(free.map(axisOf))
  return look.moves.some(
    (other) =>
      other.step === move.step &&
      other.role === 'fastener' &&
      look.waysOf(other).length > 0 &&
      look.waysOf(other).every(({ direction }) => !out.has(axisOf(direction))),
  )
}

/** Whether another step's join is with this part: it names it, and what it puts touches it. */
function isHeldBy(look: Look, move: MeshMove, other: MeshMove): boolean {
  if (other === move || other.role !== 'put') return false
  const [step, seat] = [look.stepOf(other), seatOf(look.stepOf(other))]
  const isNamed = seat === move.part || look.stepOf(move).instances.includes(seat ?? '')
  return (isNamed || matesPart(step, move.part)) && holds(look, step) && look.touch(move.bodies, other.bodies)
}
