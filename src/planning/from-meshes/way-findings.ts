import { directions } from '../../geometry/relations/directions.ts'
import { freeTravel } from '../../geometry/relations/free-travel.ts'
import { stopWidth } from '../../geometry/relations/relate-solids.ts'
import type { MeshFinding, MeshMove, MoveDirection, Travel } from '../../model/from-meshes.ts'
import { freeWays } from './free-ways.ts'
import { type Look, oncePerPart } from './look.ts'
import { sideOf, tiltedTo } from './side-of.ts'

/** Ways in that are blocked: the direction typed, the opening typed, or every way there is. */
export function wayFindings(look: Look): readonly MeshFinding[] {
  return [
    ...oncePerPart(look.moves, (move) => cannotLeave(look, move)),
    ...oncePerPart(look.moves, (move) => fromBlocked(look, move)),
    ...oncePerPart(look.moves, (move) => noOpening(look, move)),
    ...oncePerPart(look.moves, (move) => orderBlocked(look, move)),
  ]
}

const isStuck = (look: Look, move: MeshMove): boolean => look.waysOf(move).length === 0

/** All directions that were tried. */
const tried = ({ stops }: MeshMove): readonly MoveDirection[] => stops.map((_, direction) => direction)

const freeThen = (look: Look, move: MeshMove): readonly MoveDirection[] =>
  freeWays(move.stops, (_, direction) => look.stopsThen(move, direction).length === 0)

function cannotLeave(look: Look, move: MeshMove): readonly MeshFinding[] {
  if (!isStuck(look, move)) return []
  const { at } = look.stepOf(move)
  const travel = asTold(tried(move).map((direction) => travelOf(look, move, direction)))
  const together = companions(look, move)
  return [{ kind: 'cannot leave', at, step: move.step, part: move.part, travel, together }]
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
  return { direction, mm: first?.mm ?? null, by: first ? look.partOf(first.by) : null }
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
  const widthAt = (direction: MoveDirection): number =>
    Math.max(
      0,
      ...move.bodies.flatMap((own) =>
        body.map((other) => stopWidth(look.studied.relations, own, other, direction)),
      ),
    )
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
  return [{ kind: 'order blocked', at: look.stepOf(move).at, step: move.step, part: move.part, by }]
}
