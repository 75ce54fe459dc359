import type { Direction } from '../../geometry/relations/directions.ts'
import type { MeshMove } from '../../model/from-meshes.ts'
import type { LaidPlan } from './lay-out-bodies.ts'
import { sideOf } from './side-of.ts'

/** A direction in which a move can leave once the steps that stop it there are undone. */
export interface OpenWay {
  readonly direction: Direction
  /** Steps whose parts stop it there. */
  readonly steps: readonly string[]
}

/** Which step brings each body of an assembly; bodies that are there from the start have none. */
export function bringers(moves: readonly MeshMove[]): ReadonlyMap<number, MeshMove> {
  return new Map(moves.flatMap((move) => move.bodies.map((body) => [body, move] as const)))
}

/**
 * The directions in which a move is not stopped for good: by what is there from the start, by what
 * it goes on or into, or, for a fastener, by what its own step puts. Copies that go in by one step do not stop each other, nor does a fastener the part it fastens.
 * Where the direction is typed and not stopped for good, that one alone; else tilted ones on that side.
 */
export function waysOpen(
  { plan, there }: Pick<LaidPlan, 'plan' | 'there'>,
  move: MeshMove,
  by: ReadonlyMap<number, MeshMove>,
): readonly OpenWay[] {
  const open = move.stops.flatMap((stops, direction): readonly OpenWay[] => {
    const steps = new Set<string>()
    for (const { body } of stops) {
      const other = by.get(body)
      if (there.includes(body) || move.seat.includes(body) || !other) return []
      if (other.step !== move.step) steps.add(other.step)
      else if (move.role === 'fastener' && other.role === 'put') return []
    }
    return [{ direction, steps: [...steps] }]
  })
  return asTyped({ plan }, move, open)
}

/** A stop of what a part bends over, or is tilted past, may be wider than the narrowest by this much. */
const asNarrow = 1.5

/**
 * The same; for what has no such direction those past what its step says that it goes on or into, where that stops it
 * least: it bends over that, or is tilted past it, and the rest still shuts it out.
 */
export function waysIn(
  laid: Pick<LaidPlan, 'plan' | 'there'>,
  move: MeshMove,
  by: ReadonlyMap<number, MeshMove>,
): readonly OpenWay[] {
  const open = waysOpen(laid, move, by)
  if (open.length > 0) return open
  const past = waysOpen(laid, pastSeat(move), by)
  const widths = move.stops.map((stops) =>
    stops.reduce((most, { body, widthMm }) => (move.onto.includes(body) ? Math.max(most, widthMm) : most), 0),
  )
  const least = Math.min(...past.map(({ direction }) => widths[direction]!))
  return past.filter(({ direction }) => widths[direction]! <= asNarrow * least)
}

/** A move as if what its step says that it goes on or into did not stop it. */
export function pastSeat(move: MeshMove): MeshMove {
  return { ...move, stops: move.stops.map((stops) => stops.filter(({ body }) => !move.onto.includes(body))) }
}

/** Of the open ways the typed one alone, else those on its side; all where it is not typed or shut. */
function asTyped(
  { plan }: Pick<LaidPlan, 'plan'>,
  move: MeshMove,
  open: readonly OpenWay[],
): readonly OpenWay[] {
  const step = plan.steps.find(({ id }) => id === move.step)
  const typed = move.role === 'put' ? sideOf(step?.from ?? null) : null
  const straight = open.filter(({ direction }) => direction === typed)
  const near = open.filter(({ direction }) => move.tiltedFrom.includes(direction))
  return [straight, near].find((ways) => ways.length > 0) ?? open
}
