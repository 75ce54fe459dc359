import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { Redoing, RepairLeg, UndoBecause, Undoing, UndoWhy } from '../../model/repair.ts'
import { isCleaning, leavesSomething } from '../../model/undo-cost.ts'
import { type ApartNeed, metWay } from './apart-need.ts'
import type { ApartProblem } from './apart-needs.ts'
import { leastApart } from './apart-search.ts'
import { apartWays } from './apart-ways.ts'
import { type BenchPlan, benchPlan } from './bench-plan.ts'

/** What is wanted of one assembly. */
export interface ApartGoal {
  /** Something of it is undone, or all that stands in its way. */
  readonly needs: readonly ApartNeed[]
  /** The step that is left standing while what it put is worked on; `null`: none. */
  readonly worked: number | null
}

/** Undoes one step. */
export function undoing(plan: AssemblyPlan, step: number): ApartGoal {
  const { at } = plan.steps[step]!
  return { needs: [{ ways: [[{ steps: [step], least: 1 }]], at, why: 'wanted', sure: true }], worked: null }
}

/** What touches the thing or shuts it in; what holds it or keeps hands off its screws may stay. */
const inTheWay: ReadonlySet<UndoWhy> = new Set(['on', 'in', 'shut', 'mates', 'way out', 'stops'])

/** Clears what stands on what a step put or shuts it in, and leaves the step itself. */
export function clearing(problem: ApartProblem, step: number): ApartGoal {
  const needs = problem.needs[step]!.filter(({ why }) => inTheWay.has(why))
  return { needs, worked: step }
}

/** Undoes everything, so that the body the rest is on lies bare. */
export function baring(problem: ApartProblem): ApartGoal {
  const needs = problem.plan.steps.flatMap((step, at) =>
    problem.leaves[at] ? undoing(problem.plan, at).needs.map((need) => ({ ...need, at: step.at })) : [],
  )
  return { needs, worked: null }
}

/** What is undone in one assembly to reach a goal, and the way back. `sure` is the same assembly without words of order. */
export function apartLeg(
  problem: ApartProblem,
  goal: ApartGoal,
  sure: ApartProblem,
  effort?: number,
): RepairLeg {
  const { plan } = problem
  const { undo, proved } = leastApart(problem, goal.needs, effort)
  // Of what is undone, so that another way that is as good without words of order is none of its doubts.
  const needed = new Set(leastApart(sure, goal.needs, effort, new Set(undo)).undo)
  const because = reasons(problem, goal, undo)
  const ways = apartWays(problem, undo)
  return {
    assembly: plan.of,
    undo: undo.map(
      (step): Undoing => ({
        step: plan.steps[step]!,
        cost: problem.costs[step]!,
        because: because.get(step) ?? null,
        byWordsAlone: !needed.has(step),
        along: along(problem, step, undo),
        way: ways.get(step) ?? null,
      }),
    ),
    back: wayBack(plan, undo, goal.worked, ways),
    proved,
  }
}

/** Of each step undone, the statement that asks for it: of what comes off last, so that the reason leads to the goal. */
function reasons(
  problem: ApartProblem,
  goal: ApartGoal,
  undo: readonly number[],
): ReadonlyMap<number, UndoBecause> {
  const { plan, needs } = problem
  const found = new Map<number, UndoBecause>()
  const note = (asks: readonly ApartNeed[], of: number, gone: readonly number[]): void => {
    for (const { ways, at, why, sure } of asks) {
      const way = metWay(ways, (step) => gone.includes(step)) ?? []
      for (const step of way.flatMap(({ steps }) => steps))
        found.set(step, { step: plan.steps[of]!.id, why, at, sure })
    }
  }
  for (const [at, step] of undo.entries()) note(needs[step]!, step, undo.slice(0, at))
  if (goal.worked !== null) note(goal.needs, goal.worked, undo)
  for (const { why, ways } of goal.needs)
    if (why === 'wanted') for (const step of ways.flat().flatMap(({ steps }) => steps)) found.delete(step)
  return found
}

/** Parts joined for good to what a step put. */
function along({ plan, comesAlong }: ApartProblem, step: number, undo: readonly number[]): readonly string[] {
  return plan.steps.flatMap(({ put }, other) =>
    put && !undo.includes(other) && comesAlong(other, step) ? [put.part] : [],
  )
}

/** What is done again, turned round, with the wipes before it and the tests and adjustments after it. */
function wayBack(
  plan: AssemblyPlan,
  undo: readonly number[],
  worked: number | null,
  ways: ReturnType<typeof apartWays>,
): readonly Redoing[] {
  const bench = benchPlan(plan)
  const again = undo.map((step) => plan.steps[step]!).reverse()
  const back: Redoing[] = again.flatMap((step) => [
    ...preparing(plan, bench, step).map((one) => ({ step: one, what: 'prepare' as const, way: null })),
    { step, what: 'again' as const, way: ways.get(plan.steps.indexOf(step)) ?? null },
  ])
  const touched = new Set([...again, ...(worked === null ? [] : [plan.steps[worked]!])])
  const later = laterSteps(plan, bench)
  const done = new Set(back.map(({ step }) => step))
  for (const step of plan.steps) {
    if (done.has(step) || leavesSomething(step) || isCleaning(step) || step.opens.length > 0) continue
    const before = [...later(step)]
    if (!before.some((one) => touched.has(one))) continue
    const at = back.findLastIndex((one) => before.includes(one.step))
    back.splice(at + 1, 0, { step, what: 'repeat', way: null })
    done.add(step)
  }
  return back
}

/** Actions that leave nothing to undo and that a step comes after: its wipe, its cleaning. */
function preparing({ steps }: AssemblyPlan, bench: BenchPlan, step: Step): readonly Step[] {
  const written = step.within === null ? undefined : steps[steps.indexOf(step) - 1]
  const named = step.after.flatMap(({ target }) => bench.stepsOf(target))
  const before = new Set(written ? [written, ...named] : named)
  return steps.filter((one) => before.has(one) && one.action !== null && !leavesSomething(one))
}

/** All steps that a step comes after, by what it says and by what it touches. */
function laterSteps(plan: AssemblyPlan, bench: BenchPlan): (step: Step) => ReadonlySet<Step> {
  const direct = new Map(plan.steps.map((step) => [step, comesAfter(plan, bench, step)]))
  return (step) => {
    const found = new Set<Step>()
    const wait = [...direct.get(step)!]
    for (let one = wait.pop(); one; one = wait.pop()) {
      if (found.has(one)) continue
      found.add(one)
      wait.push(...direct.get(one)!)
    }
    return found
  }
}

function comesAfter(plan: AssemblyPlan, bench: BenchPlan, step: Step): readonly Step[] {
  const bodies = [step.into?.body, step.onto?.body, ...step.reaches.map(({ text }) => text)]
  const written = plan.steps[plan.steps.indexOf(step) - 1]
  return [
    ...step.after.flatMap(({ target }) => bench.stepsOf(target)),
    ...bodies.flatMap((body) => (body === undefined ? [] : bench.puts(body))),
    ...plan.steps.filter((one) => one.before.some((target) => bench.stepsOf(target).includes(step))),
    ...(step.within !== null && written ? [written] : []),
  ].filter((one) => one !== step)
}
