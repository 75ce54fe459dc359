import type { AssemblyOrder, AssemblyPlan } from '../../model/assembly.ts'
import { partPlans } from '../../model/assembly-plans.ts'
import type { FromMeshes } from '../../model/from-meshes.ts'
import type { Join } from '../../model/joins.ts'
import type { Project } from '../../model/project.ts'
import type { Harm, Repair, RepairLeg, RepairWay, WornOut } from '../../model/repair.ts'
import { type ApartGoal, apartLeg, baring, clearing, undoing } from './apart-leg.ts'
import { apartProblem } from './apart-needs.ts'
import { puts } from './seats.ts'

/** What taking apart reads. */
export interface Assembled {
  readonly project: Project
  /** Orders by assembly; `''` is the device. */
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  readonly joins: readonly Join[]
  /** `null`: nothing stands in its assembled place. */
  readonly meshes: FromMeshes | null
}

/**
 * The way to a part for repair, for each place it sits in; a board's component is got at by its board. What it is built
 * into is taken out whole and then taken apart by itself: the certain way. Where leaving it in its place does far less
 * harm, that way stands beside, as far as parts and openings tell that it can be got at.
 * Gives: no ways where the part is in no assembly.
 */
export function planApart(assembled: Assembled, part: string, effort?: number): Repair {
  const places = placesOf(assembled.project, part)
  const boards = places.length > 0 ? [] : boardsWith(assembled.project, part)
  return {
    part,
    ways: [
      ...places.map((place) => wayTo(assembled, place, null, effort)),
      ...boards.flatMap((board) =>
        placesOf(assembled.project, board).map((place) => wayTo(assembled, place, board, effort)),
      ),
    ],
  }
}

/** One assembly on the way, and the step there that puts what holds the part; `null`: the part is its ground. */
interface Stage {
  readonly plan: AssemblyPlan
  readonly step: number | null
}
type Place = readonly Stage[]

/** Everywhere a part is put, screwed in or stood on, from the device inwards. */
function placesOf(project: Project, part: string): readonly Place[] {
  const put = new Set(
    [...(project.assembly?.steps ?? []), ...partPlans(project.parts).flatMap(({ steps }) => steps)].flatMap(
      (step) => step.put?.part ?? [],
    ),
  )
  const loose = partPlans(project.parts).filter(({ of }) => of !== null && !put.has(of))
  const roots = [...(project.assembly ? [project.assembly] : []), ...loose]
  return roots.flatMap((plan) => placesIn(project, plan, part, []))
}

function placesIn(project: Project, plan: AssemblyPlan, part: string, way: Place): readonly Place[] {
  // A part inside itself is an error told before; here it only must not run on for ever.
  if (way.some((stage) => stage.plan === plan)) return []
  const ground: readonly Place[] = plan.ground === part ? [[...way, { plan, step: null }]] : []
  const inside = plan.steps.flatMap((step, at): readonly Place[] => {
    const here = [...way, { plan, step: at }]
    const isIt = puts(step, part) || step.fasteners.some((one) => one.part === part)
    const found = step.put && project.parts.get(step.put.part)?.way
    const deeper = found?.kind === 'assembly' && !isIt ? placesIn(project, found.plan, part, here) : []
    return [...(isIt ? [here] : []), ...deeper]
  })
  const built = plan.ground === null ? undefined : project.parts.get(plan.ground)?.way
  const below =
    built?.kind === 'assembly' ? placesIn(project, built.plan, part, [...way, { plan, step: null }]) : []
  return [...ground, ...inside, ...below]
}

function boardsWith(project: Project, part: string): readonly string[] {
  const uses = project.demand.get(part)?.uses ?? []
  return [...new Set(uses.flatMap(({ by, into }) => (by === 'board' && into !== null ? [into] : [])))]
}

function wayTo(assembled: Assembled, place: Place, board: string | null, effort?: number): RepairWay {
  const legs = place.map((stage) => legAt(assembled, stage, 'out', effort))
  const harm = harmOf(legs)
  const standing = place.map((stage, at) =>
    legAt(assembled, stage, at < place.length - 1 ? 'stays' : 'out', effort),
  )
  const less = harmOf(standing)
  return {
    path: place.map(({ plan, step }) => ({
      assembly: plan.of,
      step: step === null ? null : plan.steps[step]!.id,
    })),
    board,
    legs,
    harm,
    inPlace: place.length > 1 && isFarLess(less, harm) ? { legs: standing, harm: less } : null,
  }
}

function legAt(
  { orders, joins, meshes }: Assembled,
  { plan, step }: Stage,
  what: 'out' | 'surely out' | 'stays',
  effort?: number,
): RepairLeg {
  const order = orders.get(plan.of ?? '')?.order ?? plan.steps.map(({ id }) => id)
  const own = meshes?.plans.get(plan.of ?? '') ?? null
  const problem = apartProblem(plan, order, joins, own)
  const sure = apartProblem(plan, order, joins, own, false)
  const goal = (): ApartGoal => {
    if (step === null) return baring(problem)
    return what === 'stays' ? clearing(sure, step) : undoing(plan, step)
  }
  return apartLeg(what === 'out' ? problem : sure, goal(), sure, effort)
}

/** Joints destroyed, undone with care, and steps over all legs. */
export function harmOf(legs: readonly RepairLeg[]): Harm {
  const undo = legs.flatMap((leg) => leg.undo)
  const count = (cost: string): number => undo.filter((one) => one.cost === cost).length
  return { destroyed: count('destroyed'), care: count('care'), steps: undo.length }
}

/** Fewer joints destroyed, or as many and fewer undone with care, or half the steps. */
const isFarLess = (a: Harm, b: Harm): boolean =>
  a.destroyed !== b.destroyed
    ? a.destroyed < b.destroyed
    : a.care !== b.care
      ? a.care < b.care
      : 2 * a.steps <= b.steps

/**
 * Wearing parts of the device that cannot be renewed without destroying another joint than their own, by what parts,
 * openings and meshes say: words of order alone count for nothing here, what they sit in may stay where it is, and what was not
 * proved is not said.
 */
export function wornOut(assembled: Assembled): readonly WornOut[] {
  const { parts } = assembled.project
  return [...parts.values()]
    .filter(({ wears, role }) => wears && role === 'device')
    .flatMap(({ id, at }) => {
      const destroys = placesOf(assembled.project, id).flatMap((place) => surelyDestroyed(assembled, place))
      return destroys.length > 0 ? [{ part: id, at, destroys }] : []
    })
}

/** Most sets looked at for one leg: every check pays for it. */
const wornEffort = 2000

function surelyDestroyed(assembled: Assembled, place: Place): WornOut['destroys'] {
  const last = place.length - 1
  const lost = (inside: 'surely out' | 'stays'): WornOut['destroys'] => {
    const legs = place.map((stage, at) =>
      legAt(assembled, stage, at < last ? inside : 'surely out', wornEffort),
    )
    if (!legs.every(({ proved }) => proved)) return []
    return legs.flatMap(({ assembly, undo }, at) => {
      const { plan, step: wanted } = place[at]!
      const own = at === last && wanted !== null ? plan.steps[wanted] : null
      return undo.flatMap(({ step, cost }) =>
        cost === 'destroyed' && step !== own ? [{ assembly, step }] : [],
      )
    })
  }
  const [out, standing] = [lost('surely out'), lost('stays')]
  return standing.length < out.length ? standing : out
}
