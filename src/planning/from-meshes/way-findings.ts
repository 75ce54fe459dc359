import { directions } from '../../geometry/relations/directions.ts'
import { freeTravel } from '../../geometry/relations/free-travel.ts'
import { stopWidth } from '../../geometry/relations/relate-solids.ts'
import type { MeshFinding, MeshMove, MoveDirection, Travel } from '../../model/from-meshes.ts'
import { orderWithout } from '../assembly/order-without.ts'
import { freeWays } from './free-ways.ts'
import { type Look, oncePerPart } from './look.ts'
import { sideOf, sidesNear, tiltedTo } from './side-of.ts'

/** Ways in that are blocked: the direction typed, the opening typed, or every way there is. */
export function wayFindings(look: Look): readonly MeshFinding[] {
  return [
    ...oncePerPart(look.moves, (move) => cannotLeave(look, move)),
    ...oncePerPart(look.moves, (move) => fromMisspelt(look, move)),
    ...oncePerPart(look.moves, (move) => noOpening(look, move)),
    // Where statements wait for each other there is no order yet that could be blocked.
    ...(look.order.order === null
      ? []
      : [
          ...oncePerPart(look.moves, (move) => fromBlocked(look, move)),
          ...oncePerPart(look.moves, (move) => orderBlocked(look, move)),
        ]),
  ]
}

const isStuck = (look: Look, move: MeshMove): boolean => look.waysOf(move).length === 0

/** All directions that were tried. */
const tried = ({ stops }: MeshMove): readonly MoveDirection[] => stops.map((_, direction) => direction)

const freeThen = (look: Look, move: MeshMove): readonly MoveDirection[] =>
  freeWays(move.stops, (_, direction) => look.stopsThen(move, direction).length === 0)

function cannotLeave(look: Look, move: MeshMove): readonly MeshFinding[] {
  if (!isStuck(look, move) || liesInAStop(look, move)) return []
  const { at, from, gives } = look.stepOf(move)
  const travel = asTold(tried(move).map((direction) => travelOf(look, move, direction)))
  const together = companions(look, move)
  const typed =
    move.role === 'put' ? { from, givesMm: gives?.value.valueOf() ?? null } : { from: null, givesMm: null }
  const found = { step: move.step, part: move.part, where: look.whereOf(move.bodies) }
  return [{ kind: 'cannot leave', at, ...found, travel, together, ...typed }]
}

/** Wider overlaps are told of as such: the part is stuck because it is drawn through another. */
const drawnThroughMm = 1

/** Whether something that stops a move is drawn through it. */
function liesInAStop(look: Look, move: MeshMove): boolean {
  const stops = new Set(move.stops.flatMap((all) => all.map(({ body }) => body)))
  return [...stops].some((body) => move.bodies.some((own) => look.overlapMm(own, body) > drawnThroughMm))
}

/** Along x, y and z, and of the tilted ways the one in which it comes furthest. */
function asTold(travel: readonly Travel[]): readonly Travel[] {
  const [straight, tilted] = [travel.slice(0, directions.length), travel.slice(directions.length)]
  const far = ({ mm }: Travel): number => mm ?? Infinity
  const furthest = tilted.reduce<Travel | null>(
    (best, one) => (best && far(best) >= far(one) ? best : one),
    null,
  )
  return furthest ? [...straight, furthest] : straight
}

function travelOf(look: Look, move: MeshMove, direction: MoveDirection): Travel {
  const { solids, relations } = look.studied
  const others = look.stopsThen(move, direction).map(({ body }) => body)
  const firsts = move.bodies.flatMap((own) => freeTravel(solids, relations, own, others, direction) ?? [])
  const first = firsts.reduce<(typeof firsts)[number] | null>(
    (best, one) => (best && best.mm <= one.mm ? best : one),
    null,
  )
  if (!first) return { direction, mm: null, by: null, widthMm: 0 }
  const widthMm = look.stopsThen(move, direction)[0]!.widthMm
  return { direction, mm: first.mm, by: look.partOf(first.by), widthMm }
}

/** Parts that could go in with it as one: the fewest that stop it and each other in one direction, nothing else. */
function companions(look: Look, move: MeshMove): readonly string[] {
  const groups = tried(move).flatMap((direction) => {
    const group = new Set([move])
    for (const one of group) {
      for (const { body } of one.stops[direction]!) {
        const other = look.bringerOf(body)
        if (!other || move.seat.includes(body)) return []
        group.add(other)
      }
    }
    return [[...group].filter((one) => one !== move).map(({ part }) => part)]
  })
  const least = groups.reduce<readonly string[] | null>(
    (best, one) => (best && best.length <= one.length ? best : one),
    null,
  )
  return [...new Set(least ?? [])]
}

function fromBlocked(look: Look, move: MeshMove): readonly MeshFinding[] {
  const { from, at } = look.stepOf(move)
  const direction = move.role === 'put' ? sideOf(from) : null
  if (direction === null || isStuck(look, move)) return []
  if (move.tiltedFrom.some((tilted) => look.stopsThen(move, tilted).length === 0)) return []
  const [widest] = look.stopsThen(move, direction)
  if (!widest) return []
  const by = { part: look.partOf(widest.body), widthMm: widest.widthMm }
  const free = freeThen(look, move)
  const broughtBy = look.bringerOf(widest.body)?.step ?? null
  return [
    {
      kind: 'from blocked',
      at,
      step: move.step,
      part: move.part,
      from: from!,
      direction,
      by,
      broughtBy,
      free,
    },
  ]
}

function noOpening(look: Look, move: MeshMove): readonly MeshFinding[] {
  const { into } = look.stepOf(move)
  if (!into || move.role !== 'put' || isStuck(look, move)) return []
  const body = look.bodiesCalled(into.body)
  if (body.length === 0) return []
  // Of several copies of the body it goes into one: there is an opening where one of them has it.
  const touched = body.filter((other) => look.touch(move.bodies, [other]))
  const copies = touched.length > 0 ? touched : body
  const widthsAt = (direction: MoveDirection): readonly number[] =>
    copies.map((other) =>
      Math.max(0, ...move.bodies.map((own) => stopWidth(look.studied.relations, own, other, direction))),
    )
  const widthAt = (direction: MoveDirection): number => Math.min(...widthsAt(direction))
  const direction = sideOf(into.through)
  const common = {
    kind: 'no opening',
    at: into.at,
    step: move.step,
    part: move.part,
    body: into.body,
  } as const
  if (direction !== null) {
    const near = tiltedTo(direction, look.studied.relations.tilted)
    const widthMm = Math.min(...[direction, ...near].map(widthAt))
    return widthMm > 0 ? [{ ...common, opening: into.through, direction, widthMm }] : []
  }
  const widths = tried(move).map(widthAt)
  if (widths.includes(0)) return []
  return [{ ...common, opening: null, direction: null, widthMm: Math.min(...widths) }]
}

function orderBlocked(look: Look, move: MeshMove): readonly MeshFinding[] {
  if (isStuck(look, move) || freeThen(look, move).length > 0) return []
  const by = tried(move).flatMap((direction) => {
    const stops = look.stopsThen(move, direction)
    // A direction that is stopped for good tells nothing of the order.
    const placed = stops.map((stop) => ({ ...stop, bringer: look.bringerOf(stop.body) }))
    if (placed.some(({ bringer }) => !bringer || bringer.step === move.step)) return []
    const [widest] = placed
    if (!widest?.bringer) return []
    return [{ part: look.partOf(widest.body), step: widest.bringer.step, direction, widthMm: widest.widthMm }]
  })
  const found = { step: move.step, part: move.part, where: look.whereOf(move.bodies) }
  return [{ kind: 'order blocked', at: look.stepOf(move).at, ...found, by, typed: isTyped(look, move, by) }]
}

/** Whether typed statements keep a step behind others that block it: without the meshes it could not come before them. */
function isTyped(look: Look, move: MeshMove, by: readonly { readonly step: string }[]): boolean {
  const blocking = [...new Set(by.map(({ step }) => step))]
  return (
    blocking.length > 0 &&
    blocking.every((step) => !orderWithout(look.laid.plan, look.typed, step, move.step))
  )
}

/** A direction that is nearly a word for a side. */
function fromMisspelt(look: Look, move: MeshMove): readonly MeshFinding[] {
  const { from, at } = look.stepOf(move)
  if (from === null || move.role !== 'put' || sideOf(from) !== null) return []
  const openings = [...look.laid.plan.openings.values()].flat()
  const near = sidesNear(from)
  if (near.length === 0 || openings.includes(from.trim())) return []
  return [{ kind: 'from misspelt', at, step: move.step, from, near }]
}
