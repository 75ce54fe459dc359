import type { JoiningMethod, Step } from '../../model/assembly.ts'
import type { MeshFinding, MeshMove } from '../../model/from-meshes.ts'
import { freeWays } from './free-ways.ts'
import { type Look, oncePerPart } from './look.ts'

/** Joins without contact, contacts without join, overlaps that no join explains, and parts that nothing holds. */
export function contactFindings(look: Look): readonly MeshFinding[] {
  return [
    ...oncePerPart(look.moves, (move) => noContact(look, move)),
    ...oncePerPart(look.moves, (move) => contactWithoutJoin(look, move)),
    ...overlaps(look),
    ...(look.laid.plan.of === null ? oncePerPart(look.moves, (move) => loose(look, move)) : []),
  ]
}

/** Everything of an assembly that is in place at the end. */
const everything = ({ laid, moves }: Look): readonly number[] => [
  ...laid.there,
  ...moves.flatMap(({ bodies }) => bodies),
]

const seatOf = (step: Step): string | null => step.onto?.body ?? step.into?.body ?? null

function touchedBy(look: Look, move: MeshMove): readonly string[] {
  const others = everything(look).filter((body) => !move.bodies.includes(body))
  return [...new Set(others.filter((body) => look.touch(move.bodies, [body])).map(look.partOf))]
}

function noContact(look: Look, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  if (step.method === null || step.method === 'tie') return []
  // What goes into a body need not be joined to that body.
  const seat = move.role === 'put' ? (step.onto?.body ?? null) : seatOf(step)
  const seats = seat === null ? [] : look.bodiesCalled(seat)
  const put = look.moves
    .filter((other) => other.step === step.id && other.role === 'put')
    .flatMap(({ bodies }) => bodies)
  const joined = move.role === 'put' ? seats : [...put, ...seats]
  const touches = touchedBy(look, move)
  // What touches nothing at all is told of as such.
  if (joined.length === 0 || touches.length === 0 || look.touch(move.bodies, joined)) return []
  const other = move.role === 'put' ? seat! : (step.put?.part ?? seat!)
  return [{ kind: 'no contact', at: step.at, step: step.id, part: move.part, other, touches }]
}

function contactWithoutJoin(look: Look, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  if (move.role !== 'put' || seatOf(step) !== null) return []
  const carries = look.laid.plan.steps.some((other) => {
    const seat = seatOf(other)
    return seat !== null && (seat === move.part || step.instances.includes(seat))
  })
  const touches = touchedBy(look, move)
  if (carries || touches.length === 0) return []
  return [{ kind: 'contact without join', at: step.at, step: step.id, part: move.part, touches }]
}

/** Methods that let parts lie in each other as drawn. */
const overlapping: ReadonlySet<JoiningMethod> = new Set([
  'press',
  'thread',
  'snap',
  'glue',
  'solder',
  'crimp',
  'plug',
])
/** Overlaps narrower than this are facets and roundings, mm: two cells. */
const leastOverlapMm = 0.2
/** Threads and press fits are narrower than this, mm. */
const mostNominalMm = 1

function overlaps(look: Look): readonly MeshFinding[] {
  const told = new Set<string>()
  return look.moves.flatMap((move) => {
    const others = everything(look).filter((body) => !move.bodies.includes(body))
    return move.bodies.flatMap((own) =>
      others.flatMap((body): readonly MeshFinding[] => {
        const widthMm = look.overlapMm(own, body)
        const [part, other] = [look.partOf(own), look.partOf(body)]
        const key = JSON.stringify([part, other].sort())
        if (widthMm < leastOverlapMm || told.has(key)) return []
        const bringer = look.bringerOf(body)
        const joined = explains(look, move, body) || (bringer !== undefined && explains(look, bringer, own))
        if (joined && widthMm <= mostNominalMm) return []
        told.add(key)
        return [{ kind: 'overlap', at: look.stepOf(move).at, part, other, widthMm, joined }]
      }),
    )
  })
}

/** Whether a step says a join of what it brings with a body that lets them overlap. */
function explains(look: Look, move: MeshMove, body: number): boolean {
  const step = look.stepOf(move)
  const seat = seatOf(step)
  const isSeat = seat !== null && look.bodiesCalled(seat).includes(body)
  if (move.role === 'fastener') {
    const bringer = look.bringerOf(body)
    return isSeat || (bringer?.step === step.id && bringer.role === 'put')
  }
  const screwsItself = step.method === 'screw' && step.fasteners.length === 0
  return isSeat && step.method !== null && (overlapping.has(step.method) || screwsItself)
}

const holding: ReadonlySet<JoiningMethod> = new Set([...overlapping, 'tie', 'magnet'])

/** Whether a step's own join keeps what it puts, as far as the meshes cannot tell better. */
function holds(look: Look, step: Step): boolean {
  if (step.method === null || step.method === 'seat') return false
  if (holding.has(step.method)) return true
  return !look.moves.some((move) => move.step === step.id && move.role === 'fastener')
}

function loose(look: Look, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  if (move.role !== 'put' || holds(look, step)) return []
  const free = freeWays(move.stops, (stops) => stops.length === 0)
  const heldByOther = look.moves.some(
    (other) =>
      other.role === 'put' &&
      other !== move &&
      holds(look, look.stepOf(other)) &&
      look.touch(move.bodies, other.bodies),
  )
  if (free.length === 0 || heldByOther) return []
  return [{ kind: 'loose', at: step.at, step: step.id, part: move.part, directions: free }]
}
