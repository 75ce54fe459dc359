import type { JoiningMethod, Step } from '../../model/assembly.ts'
import type { MeshFinding, MeshMove } from '../../model/from-meshes.ts'
import { type Look, oncePerPart } from './look.ts'
import { everything, seatOf } from './seat-of.ts'

/** Joins without contact, and contacts without join. */
export function contactFindings(look: Look): readonly MeshFinding[] {
  return [
    ...oncePerPart(look.moves, (move) => noContact(look, move)),
    ...oncePerPart(look.moves, (move) => contactWithoutJoin(look, move)),
  ]
}

/** Play of a fit or a clearance hole that is drawn, 0.3 mm, and what facets add, mm: what is no further apart meets. Common practice, no source. */
const mostPlayMm = 0.35
/** What goes into a body is joined to that body where it is joined so; else it may stand on something in there. */
const joinsWhatItIsIn: ReadonlySet<JoiningMethod> = new Set(['press', 'thread', 'snap'])

function touchedBy(look: Look, move: MeshMove): readonly string[] {
  const others = everything(look).filter((body) => !move.bodies.includes(body))
  return [...new Set(others.filter((body) => look.touch(move.bodies, [body])).map(look.partOf))]
}

function noContact(look: Look, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  if (step.method === null || step.method === 'tie') return []
  // What touches nothing at all is told of as such.
  if (move.bodies.every((body) => look.apartFromAll(body) !== null)) return []
  const missed = move.role === 'put' ? missedByPut(look, move, step) : missedByFastener(look, move, step)
  if (!missed) return []
  const found = { step: step.id, part: move.part, other: missed.other, touches: touchedBy(look, move) }
  const gapMm = look.gapMm(move.bodies, missed.bodies)
  return [{ kind: 'no contact', at: step.at, ...found, where: look.whereOf(move.bodies), gapMm }]
}

/** What a move should meet and does not; `null`: it meets it, or nothing is known of that. */
interface Missed {
  readonly other: string
  readonly bodies: readonly number[]
}

function meets(look: Look, move: MeshMove, bodies: readonly number[]): boolean {
  return look.touch(move.bodies, bodies) || look.gapMm(move.bodies, bodies) <= mostPlayMm
}

function missedByPut(look: Look, move: MeshMove, step: Step): Missed | null {
  const inside = step.method !== null && joinsWhatItIsIn.has(step.method) ? step.into : null
  const other = (step.onto ?? inside)?.body
  const bodies = other === undefined ? [] : look.bodiesCalled(other)
  if (other === undefined || bodies.length === 0 || meets(look, move, bodies)) return null
  const isClamped = step.onto !== null && step.fasteners.length > 0
  return isClamped && liesBetween(look, move, bodies) ? null : { other, bodies }
}

/** Whether something that is no fastener lies between a move and what it goes on, and touches both: a gasket, a spacer. */
function liesBetween(look: Look, move: MeshMove, bodies: readonly number[]): boolean {
  return look.moves.some(
    (other) =>
      other.role === 'put' &&
      other.step !== move.step &&
      look.touch(other.bodies, move.bodies) &&
      look.touch(other.bodies, bodies),
  )
}

function missedByFastener(look: Look, move: MeshMove, step: Step): Missed | null {
  const seat = seatOf(step)
  const seats = seat === null ? [] : look.bodiesCalled(seat)
  const put = look.moves
    .filter((other) => other.step === step.id && other.role === 'put')
    .flatMap(({ bodies }) => bodies)
  const joined = [...put, ...seats]
  if (joined.length === 0) return null
  if (!meets(look, move, joined)) return { other: step.put?.part ?? seat!, bodies: joined }
  const isDriven = step.method === 'screw' || step.method === 'thread'
  if (!isDriven || !step.onto || put.length === 0 || seats.length === 0) return null
  return fallsShort(look, move, step.onto.body, seats) ? { other: step.onto.body, bodies: seats } : null
}

/** Whether a fastener does not reach what its step puts something on, nor what sits in that, such as an insert. */
function fallsShort(look: Look, move: MeshMove, seat: string, seats: readonly number[]): boolean {
  const onIt = look.moves.filter((other) => other.step !== move.step && seatOf(look.stepOf(other)) === seat)
  const reach = [...seats, ...onIt.flatMap(({ bodies }) => bodies)]
  if (meets(look, move, reach)) return false
  const own = look.moves.filter((other) => other.step === move.step && other.role === 'fastener')
  // Nuts and washers reach it for each other.
  if (own.every(({ part }) => part === move.part)) return true
  return own[0]!.part === move.part && !own.some((other) => meets(look, other, reach))
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
