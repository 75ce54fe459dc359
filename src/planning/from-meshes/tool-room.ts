import { columnsOf } from '../../geometry/relations/columns.ts'
import { latticeOver, roomForCrossings } from '../../geometry/relations/crossings.ts'
import { axes, axesWith, axisOf, type Direction, goesUp } from '../../geometry/relations/directions.ts'
import { type Seen, seenAlong } from '../../geometry/relations/seen-along.ts'
import { type Solid, solidOf } from '../../geometry/relations/solid.ts'
import { bits, sweepPair } from '../../geometry/relations/sweep-pair.ts'
import { widestDisc } from '../../geometry/relations/widest-disc.ts'
import type { Step } from '../../model/assembly.ts'
import type { MeshFinding, MeshMove } from '../../model/from-meshes.ts'
import type { Tool } from '../../model/project.ts'
import { type Look, oncePerPart } from './look.ts'

/** Shaft of a driver for small screws, where its tool does not say, in mm. Common practice, no source. */
const usualMm = { diameter: 6, reach: 60 } as const
/** What reaches no deeper into the driver's room is no hindrance, in mm. */
const inTheWayMm = 0.5
/** Cell of the look along the driver, in mm. */
const cellMm = 0.2

/** Screws on whose head no driver can stand when their turn comes. */
export function toolRoom(look: Look, tools: ReadonlyMap<string, Tool>): readonly MeshFinding[] {
  return oncePerPart(look.moves, (move) => noRoom(look, tools, move))
}

/** The shaft of a step's driver, in mm. */
interface Shaft {
  readonly radiusMm: number
  readonly reachMm: number
}

function shaftOf(step: Step, tools: ReadonlyMap<string, Tool>): Shaft {
  const numbers = tools.get(step.tool?.resource?.id ?? '')?.numbers
  const mm = (key: 'diameter' | 'reach'): number => numbers?.get(key)?.value.valueOf() ?? usualMm[key]
  return { radiusMm: mm('diameter') / 2, reachMm: mm('reach') }
}

function noRoom(look: Look, tools: ReadonlyMap<string, Tool>, move: MeshMove): readonly MeshFinding[] {
  const step = look.stepOf(move)
  const direction =
    move.role === 'fastener' && step.method === 'screw' && step.tool ? headSide(look, move) : null
  if (direction === null) return []
  const shaft = shaftOf(step, tools)
  const room = driver(seenBy(look, move.bodies[0]!, axisOf(direction)), goesUp(direction), shaft)
  const there = look.stopsThen(move, direction)
  const by = everyone(look).filter(
    (body) =>
      !move.bodies.includes(body) &&
      isThen(look, move, body) &&
      reachesInto(room, seenBy(look, body, axisOf(direction))),
  )
  if (by.length === 0 || there.length > 0) return []
  const parts = [...new Set(by.map(look.partOf))]
  return [{ kind: 'tool room', at: step.at, step: step.id, part: move.part, by: parts, ...shaft }]
}

const everyone = ({ laid, moves }: Look): readonly number[] => [
  ...laid.there,
  ...moves.flatMap(({ bodies }) => bodies),
]

/** A body as seen along an axis of the device. */
function seenBy({ studied: { solids, relations } }: Look, body: number, axis: number): Seen {
  return seenAlong(solids[body]!, axis, relations.tilted)
}

/** Whether a body reaches into the room of the driver, both seen along its axis. */
function reachesInto(room: Solid, { solid: body, axis }: Seen): boolean {
  if (!boxesMeet(room, body)) return false
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2]
  const lattice = latticeOver(axis, cellMm, [room.low[u], room.low[v]], [room.high[u], room.high[v]])
  const crossings = roomForCrossings()
  const swept = sweepPair(columnsOf(room, lattice, crossings), columnsOf(body, lattice, crossings))
  const width = swept ? (widestDisc(swept.lattice, swept.cells, bits.overlap)?.widthMm ?? 0) : 0
  return width > inTheWayMm
}

/** Whether a body is there when the fastener of a step is driven. */
function isThen(look: Look, move: MeshMove, body: number): boolean {
  const bringer = look.bringerOf(body)
  if (!bringer) return true
  if (bringer.step === move.step) return bringer.role === 'put'
  const order = look.order.order ?? []
  return order.indexOf(bringer.step) < order.indexOf(move.step)
}

/** The side of the head: along the axis about which the fastener is round, where it can leave. */
function headSide(look: Look, move: MeshMove): Direction | null {
  const { tilted } = look.studied.relations
  const round = axesWith(tilted).filter((axis) => looksRound(seenBy(look, move.bodies[0]!, axis)))
  const open = look.waysOf(move).filter(({ direction }) => round.includes(axisOf(direction)))
  // A tilted one may look round about other axes too: there it cannot leave.
  const isClear = round.length === 1 || tilted.length > 0
  return isClear && open.length === 1 ? open[0]!.direction : null
}

function looksRound({ solid: { low, high }, axis }: Seen): boolean {
  const size = axes.map((one) => high[one] - low[one])
  return Math.abs(size[(axis + 1) % 3]! - size[(axis + 2) % 3]!) < 0.05 * Math.max(...size)
}

/** The room of a driver on the head: a cylinder along the axis the fastener is seen along, in 24 facets. */
function driver({ solid: { low, high }, axis }: Seen, up: boolean, { radiusMm, reachMm }: Shaft): Solid {
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2]
  const middle = [(low[u] + high[u]) / 2, (low[v] + high[v]) / 2] as const
  const [from, to] = up ? [high[axis], high[axis] + reachMm] : [low[axis] - reachMm, low[axis]]
  const facets = 24
  const corners = new Float32Array(9 * 4 * facets)
  let o = 0
  const corner = (k: number | null, along: number) => {
    const angle = (2 * Math.PI * (k ?? 0)) / facets
    const r = k === null ? 0 : radiusMm
    corners[o + u] = middle[0] + r * Math.cos(angle)
    corners[o + v] = middle[1] + r * Math.sin(angle)
    corners[o + axis] = along
    o += 3
  }
  for (let k = 0; k < facets; k++) {
    for (const [who, along] of [
      [k, from],
      [k + 1, from],
      [k + 1, to],
      [k, from],
      [k + 1, to],
      [k, to],
    ] as const)
      corner(who, along)
    for (const [who, along] of [
      [null, from],
      [k + 1, from],
      [k, from],
      [null, to],
      [k, to],
      [k + 1, to],
    ] as const)
      corner(who, along)
  }
  return solidOf(corners)
}

function boxesMeet(a: Solid, b: Solid): boolean {
  return axes.every((axis) => a.low[axis] < b.high[axis] && b.low[axis] < a.high[axis])
}
