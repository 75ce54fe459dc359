import type { Direction } from '../../geometry/relations/directions.ts'
import { boxGap, nearestGap } from '../../geometry/relations/nearest-gap.ts'
import { pairOf, touches } from '../../geometry/relations/relate-solids.ts'
import type { AssemblyOrder, OrderConstraint, Step } from '../../model/assembly.ts'
import type { MeshMove, MeshStop, Where } from '../../model/from-meshes.ts'
import type { LaidPlan } from './lay-out-bodies.ts'
import { apartFromAll, type NearestBody } from './nearest-body.ts'
import type { Studied } from './study-meshes.ts'
import { bringers, type OpenWay, waysOpen } from './ways-open.ts'
import { whereMeet, whereOf } from './where-of.ts'

/** One assembly with its meshes and its order, as the findings look at it. */
export interface Look {
  readonly studied: Studied
  readonly laid: LaidPlan
  readonly moves: readonly MeshMove[]
  readonly order: AssemblyOrder
  readonly stepOf: (move: MeshMove) => Step
  readonly waysOf: (move: MeshMove) => readonly OpenWay[]
  /** What stops a move in a direction when its step's turn comes. */
  readonly stopsThen: (move: MeshMove, direction: Direction) => readonly MeshStop[]
  /** The part that a body is a copy of. */
  readonly partOf: (body: number) => string
  /** The move that brings a body; `undefined`: it is there from the start. */
  readonly bringerOf: (body: number) => MeshMove | undefined
  /** Bodies of a part or a named instance in this assembly. */
  readonly bodiesCalled: (name: string) => readonly number[]
  readonly touch: (a: readonly number[], b: readonly number[]) => boolean
  readonly overlapMm: (a: number, b: number) => number
  /** How far the nearest two of two sets of bodies are apart, mm; endless where one is empty. */
  readonly gapMm: (a: readonly number[], b: readonly number[]) => number
  /** What is nearest to a body that is apart from all others; `null`: it is not. */
  readonly apartFromAll: (body: number) => NearestBody | null
  /** Where a body of which there are several copies stands; `null`: there is one alone, or several bodies go in as one. */
  readonly whereOf: (bodies: readonly number[]) => Where | null
  /** Where two bodies lie in each other; `null`: there is one copy of each. */
  readonly whereMeet: (a: number, b: number) => Where | null
  /** Steps that put something of which nothing has a mesh. */
  readonly typedAlone: readonly string[]
  /** What the typed statements and the meshes ask, apart. */
  readonly typed: readonly OrderConstraint[]
}

/** Makes one assembly ready to be looked at. */
export function lookAt(studied: Studied, laid: LaidPlan, order: AssemblyOrder): Look {
  const { moves, typedAlone } = studied.plans.get(laid.plan.of ?? '')!
  const by = bringers(moves)
  const steps = new Map(laid.plan.steps.map((step) => [step.id, step]))
  const place = new Map((order.order ?? laid.plan.steps.map(({ id }) => id)).map((id, k) => [id, k]))
  const isThere = (move: MeshMove, body: number): boolean => {
    const other = by.get(body)
    if (!other) return true
    if (other.step === move.step) return move.role === 'fastener' && other.role === 'put'
    return place.get(other.step)! < place.get(move.step)!
  }
  const { relations, bodies, solids } = studied
  return {
    studied,
    laid,
    moves,
    typedAlone,
    order,
    stepOf: ({ step }) => steps.get(step)!,
    waysOf: (move) => waysOpen(laid, move, by),
    stopsThen: (move, direction) => move.stops[direction]!.filter(({ body }) => isThere(move, body)),
    partOf: (body) => bodies[body]!.part,
    bringerOf: (body) => by.get(body),
    bodiesCalled: (name) => [
      ...laid.there.filter((body) => bodies[body]!.part === name),
      ...moves
        .filter(
          (move) =>
            move.role === 'put' && (move.part === name || steps.get(move.step)!.instances.includes(name)),
        )
        .flatMap((move) => move.bodies),
    ],
    touch: (a, b) => a.some((one) => b.some((other) => touches(relations, one, other))),
    gapMm: (a, b) => {
      const pairs = a.flatMap((one) => b.map((other) => [solids[one]!, solids[other]!] as const))
      const byBox = pairs.map((pair) => ({ pair, mm: boxGap(...pair) })).sort((p, q) => p.mm - q.mm)
      return byBox.reduce(
        (least, { pair, mm }) => (mm < least ? Math.min(least, nearestGap(...pair)) : least),
        Infinity,
      )
    },
    apartFromAll: (body) => apartFromAll(studied, body),
    whereOf: (own) => whereOf(studied, own),
    whereMeet: (a, b) => whereMeet(studied, a, b),
    overlapMm: (a, b) => pairOf(relations, a, b)?.overlapMm ?? 0,
    typed: order.constraints.filter(({ why }) => why !== 'model'),
  }
}

/** The findings of each step once: of several copies the first that has something to tell. */
export function oncePerPart<T>(
  moves: readonly MeshMove[],
  tell: (move: MeshMove) => readonly T[],
): readonly T[] {
  const told = new Set<string>()
  return moves.flatMap((move) => {
    const key = JSON.stringify([move.step, move.part])
    if (told.has(key)) return []
    const found = tell(move)
    if (found.length > 0) told.add(key)
    return found
  })
}
