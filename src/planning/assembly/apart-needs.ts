import type { Place } from '../../base/place.ts'
import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { PlanMeshes } from '../../model/from-meshes.ts'
import type { Join } from '../../model/joins.ts'
import type { Target } from '../../model/project.ts'
import type { UndoWhy } from '../../model/repair.ts'
import { isLoose, joinsOf, leavesSomething, type UndoCost, undoCost } from '../../model/undo-cost.ts'
import type { ApartNeed, UndoneSome } from './apart-need.ts'
import { type BenchPlan, benchPlan } from './bench-plan.ts'
import { meshNeeds } from './mesh-needs.ts'
import { bodyOf, puts } from './seats.ts'

/** One assembly read backwards; a step's number is its place in the plan. */
export interface ApartProblem {
  readonly plan: AssemblyPlan
  /** `null`: nothing of it has a mesh. */
  readonly meshes: PlanMeshes | null
  /** Place of each step in the order it was built in. */
  readonly place: readonly number[]
  readonly costs: readonly UndoCost[]
  /** Whether there is something to undo. */
  readonly leaves: readonly boolean[]
  readonly needs: readonly (readonly ApartNeed[])[]
  /** Whether a step's part stays joined for good to what another step put, and comes along with it. */
  readonly comesAlong: (step: number, of: number) => boolean
}

/**
 * What stands in the way of undoing each step: parts put onto or into what it put and later mates of it, a way out that
 * is shut, and steps that were written to come after it. What is joined for good to its part comes along instead. Where
 * several steps put the same part, nothing tells on which copy the rest stands: all that came later is in the way.
 * `meshes`: what stops parts on their way out is in the way too. `words` false leaves out what words of order alone ask
 * for.
 */
export function apartProblem(
  plan: AssemblyPlan,
  order: readonly string[],
  joins: readonly Join[],
  meshes: PlanMeshes | null,
  words = true,
): ApartProblem {
  const bench = benchPlan(plan)
  const { steps } = plan
  const byStep = joinsOf(joins, plan.of)
  const costs = steps.map((step) => undoCost(step, byStep.get(step.id)))
  const place = steps.map(({ id }) => order.indexOf(id))
  const reading: Reading = { bench, steps, place, costs, leaves: steps.map(leavesSomething) }
  const along = (one: number, of: number): boolean => comesAlong(reading, one, of)
  const ofMeshes = meshes ? meshNeeds({ plan, place, costs, comesAlong: along }, meshes) : () => []
  const needs = steps.map((step, at) => {
    const typed = [...standing(reading, at), ...wordsOfOrder(reading, at), ...waysOut(reading, step)]
    const all = [...ofMeshes(at), ...typed]
    return words ? all : all.filter(({ sure }) => sure)
  })
  return {
    plan,
    meshes,
    place,
    costs,
    leaves: reading.leaves,
    needs,
    comesAlong: along,
  }
}

interface Reading {
  readonly bench: BenchPlan
  readonly steps: readonly Step[]
  readonly place: readonly number[]
  readonly costs: readonly UndoCost[]
  readonly leaves: readonly boolean[]
}

function comesAlong({ steps, costs }: Reading, step: number, of: number): boolean {
  const [one, other] = [steps[step]!, steps[of]!]
  const body = bodyOf(one)
  return costs[step] === 'destroyed' && one.put !== null && body !== null && puts(other, body.body)
}

/** Numbers of steps with something to undo that came later than the one given. */
const laterThan = ({ place, leaves }: Reading, of: number): readonly number[] =>
  place.flatMap((at, number) => (leaves[number] && at > place[of]! ? [number] : []))

const single = (step: number, at: Place, why: UndoWhy, sure: boolean): ApartNeed => ({
  ways: [[{ steps: [step], least: 1 }]],
  at,
  why,
  sure,
})

/** Later steps that stand on what a step put. */
function standing(reading: Reading, of: number): readonly ApartNeed[] {
  const step = reading.steps[of]!
  return laterThan(reading, of).flatMap((number): readonly ApartNeed[] => {
    if (comesAlong(reading, number, of)) return []
    const touch = touchOf(reading.steps[number]!, step)
    return touch ? [single(number, touch.at, touch.why, true)] : []
  })
}

function touchOf(later: Step, step: Step): { readonly at: Place; readonly why: UndoWhy } | null {
  const { into, onto, shuts, mates } = later
  if (onto && puts(step, onto.body)) return { at: onto.at, why: 'on' }
  if (into && puts(step, into.body)) return { at: into.at, why: 'in' }
  const shut = shuts.find(({ body }) => puts(step, body))
  if (shut) return { at: shut.at, why: 'shut' }
  const mate = mates?.find(({ part }) => part === step.put?.part && part !== later.put?.part)
  return mate ? { at: mate.at, why: 'mates' } : null
}

/** Later steps that were written to come after a step. What lies loose is held by them. */
function wordsOfOrder(reading: Reading, of: number): readonly ApartNeed[] {
  const { bench, steps } = reading
  const step = steps[of]!
  const names = (target: Target, one: Step): boolean => bench.stepsOf(target).includes(one)
  return laterThan(reading, of).flatMap((number): readonly ApartNeed[] => {
    if (comesAlong(reading, number, of)) return []
    const later = steps[number]!
    const sure = isLoose(step) && later.put !== null
    const after = later.after.find(({ target }) => names(target, step))
    const before = step.before.find((target) => names(target, later))
    if (after) return [single(number, after.at, 'after', sure)]
    return before ? [single(number, before.at, 'before', sure)] : []
  })
}

/** Openings that must be open for a step to be undone. */
function waysOut(reading: Reading, step: Step): readonly ApartNeed[] {
  const { bench } = reading
  const { into } = step
  const own = into ? passes(reading, step, into.body, into.through, into.at, 'way out', []) : []
  const reached = step.reaches.flatMap(({ text, at }) => {
    for (const [body, openings] of bench.plan.openings)
      for (const opening of openings)
        if (`${body}.${opening}` === text) return passes(reading, step, body, opening, at, 'reaches', [])
    return wentIn(reading, step, text).flatMap((put) =>
      passes(reading, step, put.into!.body, put.into!.through, at, 'reaches', []),
    )
  })
  return [...own, ...reached, ...beforeLast(reading, step)]
}

/** Steps that put a body into another before a step came. */
function wentIn({ bench, steps, place }: Reading, step: Step, body: string): readonly Step[] {
  const built = (one: Step): number => place[steps.indexOf(one)]!
  return bench.puts(body).filter((put) => put.into !== null && built(put) < built(step))
}

/** One opening of a body is open, and one of each body that it has been put in. */
function passes(
  reading: Reading,
  step: Step,
  body: string,
  through: string | null,
  at: Place,
  why: UndoWhy,
  seen: readonly string[],
): readonly ApartNeed[] {
  if (seen.includes(body)) return []
  const { bench } = reading
  const openings = through === null ? (bench.plan.openings.get(body) ?? []) : [through]
  const ways = openings.map((opening) => [undoneToOpen(reading, step, body, opening)])
  const open = openings.length === 0 || ways.some(([some]) => some!.least <= 0)
  const around = wentIn(reading, step, body).flatMap((put) =>
    passes(reading, step, put.into!.body, null, at, why, [...seen, body]),
  )
  return [...(open ? [] : [{ ways, at, why, sure: true }]), ...around]
}

/**
 * How many of the steps that shut an opening are undone before it is open: the last of several half covers, or so many
 * that as many are left as steps opened it again. A step that shuts it goes through as it opens it.
 */
function undoneToOpen(reading: Reading, step: Step, body: string, opening: string): UndoneSome {
  const { bench, steps } = reading
  const shuts = bench.shuts(body, opening)
  const opens = bench.opens(body, opening).length
  const wanted = opens === 0 ? Math.min(1, shuts.length) : shuts.length - opens
  const others = shuts.filter((one) => one !== step).map((one) => steps.indexOf(one))
  return { steps: others, least: wanted - (shuts.length - others.length) }
}

/** What was done before the last of some steps can be got at while one of them is undone. */
function beforeLast(reading: Reading, step: Step): readonly ApartNeed[] {
  const { bench, steps, leaves } = reading
  const [first] = step.beforeLastOf
  if (!first || !leavesSomething(step)) return []
  const of = [...new Set(step.beforeLastOf.flatMap((target) => bench.stepsOf(target)))]
  const numbers = of.map((one) => steps.indexOf(one))
  if (numbers.length === 0 || of.includes(step) || numbers.some((number) => !leaves[number])) return []
  const sure = step.beforeLastOf.every(({ kind }) => kind === 'opening')
  return [{ ways: [[{ steps: numbers, least: 1 }]], at: first.at, why: 'before_last_of', sure }]
}
