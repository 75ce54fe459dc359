import type { AssemblyPlan } from '../../model/assembly.ts'
import type { MeshMove, PlanMeshes } from '../../model/from-meshes.ts'
import type { UndoCost } from '../../model/undo-cost.ts'
import { bringers, type OpenWay, pastSeat, waysIn, waysOpen } from '../from-meshes/ways-open.ts'
import type { ApartNeed, UndoneWay } from './apart-need.ts'
import { bodyOf, puts } from './seats.ts'

/** What of an assembly the meshes are read against; a step's number is its place in the plan. */
export interface Built {
  readonly plan: AssemblyPlan
  /** Place of each step in the order it was built in. */
  readonly place: readonly number[]
  readonly costs: readonly UndoCost[]
  readonly comesAlong: (step: number, of: number) => boolean
}

interface Known extends Built {
  readonly moves: readonly (readonly MeshMove[])[]
  readonly by: ReadonlyMap<number, MeshMove>
  readonly numbers: ReadonlyMap<string, number>
  /** By step: itself and all that it is joined to for good, by what put them: where one of these goes, it goes. */
  readonly goesWith: readonly ReadonlySet<number>[]
}

/**
 * What must be undone before the parts of a step have a straight way out, by the meshes: in one of the directions that
 * are not stopped for good everything that stops them there is undone, or came along with what it is joined to for good.
 * What is joined for good to what comes out must have its way too, or be undone itself. Where typed facts had something
 * built past what the meshes say stops it, it goes out past that again: the rest may still stop it.
 */
export function meshNeeds(built: Built, meshes: PlanMeshes): (of: number) => readonly ApartNeed[] {
  const { plan } = built
  const known: Known = {
    ...built,
    moves: plan.steps.map(({ id }) => meshes.moves.filter(({ step }) => step === id)),
    by: bringers(meshes.moves),
    numbers: new Map(plan.steps.map(({ id }, number) => [id, number])),
    goesWith: carried(built),
  }
  return (of) => {
    const needs = known.moves[of]!.flatMap((move): readonly ApartNeed[] => {
      const laid = { plan, there: meshes.there }
      const isStuck = waysOpen(laid, move, known.by).length === 0
      const ways = waysOut(known, of, isStuck ? pastSeat(move) : move, waysIn(laid, move, known.by))
      if (ways.length === 0 || ways.some((way) => way.length === 0)) return []
      const why = move.role === 'put' ? 'stops' : 'stops fastener'
      return [{ ways, at: plan.steps[of]!.at, why, sure: true }]
    })
    const seen = new Map(needs.map((need) => [JSON.stringify([need.ways, need.why]), need]))
    return [...seen.values()]
  }
}

function carried({ plan: { steps }, costs }: Built): readonly ReadonlySet<number>[] {
  const carrier = steps.map((step, at) => {
    const body = bodyOf(step)
    if (costs[at] !== 'destroyed' || !step.put || !body) return null
    const givers = steps.flatMap((other, number) => (puts(other, body.body) ? [number] : []))
    return givers.length === 1 ? givers[0]! : null
  })
  return steps.map((_, at) => {
    const all = new Set<number>()
    for (let one: number | null = at; one !== null && !all.has(one); one = carrier[one]!) all.add(one)
    return all
  })
}

/** One way for each open direction; what one of the others asks no more than is left out. */
function waysOut(known: Known, of: number, move: MeshMove, open: readonly OpenWay[]): readonly UndoneWay[] {
  const { place, numbers } = known
  const isEarlier = (step: string): boolean => place[numbers.get(step)!]! < place[of]!
  const wasPassed = open.every(({ steps }) => steps.some(isEarlier)) ? isEarlier : () => false
  const group = movingWith(known, of, move)
  const ways = open.flatMap(({ direction }) => {
    const asked = new Map<string, readonly number[]>()
    for (const one of group)
      for (const { body } of one.stops[direction]!) {
        const other = known.by.get(body)
        if (other && wasPassed(other.step)) continue
        const stop = other && numbers.get(other.step)!
        if (stop !== undefined && movesAlong(known, of, move, stop)) continue
        const any = freedBy(known, of, numbers.get(one.step)!, stop)
        if (any.length === 0) return []
        asked.set(any.join(), any)
      }
    return [asked]
  })
  return leastOf(ways).map(asWay)
}

/** What comes out as one: the move, and for a single copy of what is put all that is joined to it for good. */
function movingWith({ moves, goesWith }: Known, of: number, move: MeshMove): readonly MeshMove[] {
  const copies = moves[of]!.filter(({ role }) => role === 'put')
  if (move.role !== 'put' || copies.length > 1) return [move]
  return [move, ...moves.flatMap((own, step) => (step !== of && goesWith[step]!.has(of) ? own : []))]
}

/** Whether the part of another step comes out with a move: never with a fastener, which comes out before what it holds. */
function movesAlong({ goesWith, comesAlong }: Known, of: number, { role }: MeshMove, stop: number): boolean {
  return stop === of || (role === 'put' && (goesWith[stop]!.has(of) || comesAlong(stop, of)))
}

/**
 * Steps of which one undone takes the stop of `mover`, on its way out with `of`, out of the way; none: it stays for
 * good. `stop` is the step that brings it; `undefined`: it is there from the start.
 */
function freedBy(
  { goesWith }: Known,
  of: number,
  mover: number,
  stop: number | undefined,
): readonly number[] {
  const own = goesWith[of]!
  const others = stop === undefined ? new Set<number>() : goesWith[stop]!
  const left = [...goesWith[mover]!, ...others].filter((step) => !own.has(step))
  const onTheBench = [...own].filter((step) => step !== of && !others.has(step))
  return [...new Set([...left, ...onTheBench])].sort((a, b) => a - b)
}

type Asked = ReadonlyMap<string, readonly number[]>

function leastOf(ways: readonly Asked[]): readonly Asked[] {
  const isIn = (one: Asked, other: Asked): boolean => [...one.keys()].every((key) => other.has(key))
  return ways.filter(
    (way, at) => !ways.some((one, k) => k !== at && isIn(one, way) && (k < at || !isIn(way, one))),
  )
}

/** Steps that must go for themselves as one statement, then each choice. */
function asWay(asked: Asked): UndoneWay {
  const all = [...asked.values()]
  const alone = all.flatMap((any) => (any.length === 1 ? any : [])).sort((a, b) => a - b)
  return [
    ...(alone.length > 0 ? [{ steps: alone, least: alone.length }] : []),
    ...all.filter((any) => any.length > 1).map((steps) => ({ steps, least: 1 })),
  ]
}
