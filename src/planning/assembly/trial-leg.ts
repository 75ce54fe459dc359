import type { AssemblyPlan, Step } from '../../model/assembly.ts'
import type { Join } from '../../model/joins.ts'
import type { TrialLeg } from '../../model/trial-fit.ts'
import { joinsOf, leavesSomething, undoCost } from '../../model/undo-cost.ts'
import { type BenchPlan, benchPlan } from './bench-plan.ts'

/** What is here on the day of a trial fit. */
export interface OnHand {
  /** Whether so many of a part are here for one device, a tried subassembly among them. */
  readonly part: (part: string, count: number) => boolean
  /** Whether tool and fixture of a step are here. */
  readonly tools: (step: Step) => boolean
  /** Whether the work and parts that a step needs are done by then. */
  readonly needs: (step: Step) => boolean
  /** Where a step stands: really done by then, done too soon to be tried before, or to come. */
  readonly stands: (step: Step) => 'done' | 'soon' | 'to come'
  /** Whether nothing but hands is missing for the step itself: it is done for good rather than tried. */
  readonly couldBeDone: (step: Step) => boolean
}

/** What can be tried of one assembly with what is here on a day; `null` where nothing can. */
export type Trial = (hand: OnHand) => TrialLeg | null

/**
 * Tries one assembly: the longest stretch that goes together and apart again without harm, on what is really done by then:
 * every step to come that destroys nothing when it is undone, whose parts and tools are here, and whose steps before it
 * are done or in the stretch. Taking out what cannot be done takes out what stands on it and nothing else, so the
 * stretch is the longest there is.
 * Needs: `order` is one in which the assembly can be built.
 */
export function trialLeg(plan: AssemblyPlan, order: readonly string[], joins: readonly Join[]): Trial {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const ordered = order.flatMap((id) => steps.get(id) ?? [])
  const known: Known = { plan, ordered, bench: benchPlan(plan), byStep: joinsOf(joins, plan.of) }
  return (hand) => longestStretch(known, hand)
}

/** What holds of an assembly on any day. */
interface Known {
  readonly plan: AssemblyPlan
  /** Its steps in the order of assembly. */
  readonly ordered: readonly Step[]
  readonly bench: BenchPlan
  readonly byStep: ReturnType<typeof joinsOf>
}

function longestStretch({ plan, ordered, bench, byStep }: Known, hand: OnHand): TrialLeg | null {
  const done = plan.steps.filter((step) => hand.stands(step) === 'done')
  if (plan.ground !== null && done.length === 0 && !hand.part(plan.ground, 1)) return null
  const stretch: Step[] = []
  const isIn = (step: Step): boolean => stretch.includes(step) || done.includes(step)
  for (const step of ordered) {
    if (hand.stands(step) !== 'to come' || !leavesSomething(step)) continue
    if (undoCost(step, byStep.get(step.id)) === 'destroyed') continue
    if (isHere(step, hand) && hand.tools(step) && standsOnStretch(plan, bench, step, isIn)) stretch.push(step)
  }
  if (stretch.length === 0) return null
  const lasting = plan.steps.filter(leavesSomething)
  return {
    assembly: plan.of,
    steps: stretch,
    early: stretch.filter((step) => !hand.couldBeDone(step)),
    care: stretch.filter((step) => undoCost(step, byStep.get(step.id)) === 'care'),
    whole: lasting.every(isIn),
    joins: stretch.flatMap(({ id }) => byStep.get(id) ?? []),
    tests: plan.steps.filter((step) => isTestToCome(step, hand) && canTry(bench, step, isIn, hand, stretch)),
  }
}

const isTestToCome = (step: Step, hand: OnHand): boolean =>
  step.test !== null && hand.stands(step) === 'to come'

const isHere = ({ put, fasteners }: Step, hand: OnHand): boolean =>
  [...(put ? [put] : []), ...fasteners].every(({ part, count }) => hand.part(part, count))

/** One of the steps that put each body it touches is in the stretch, and all that it comes after but tests and wipes. */
function standsOnStretch(
  plan: AssemblyPlan,
  bench: BenchPlan,
  step: Step,
  isIn: (step: Step) => boolean,
): boolean {
  const bodies = [step.into?.body, step.onto?.body, ...step.shuts.map(({ body }) => body)]
  const there = bodies.every((body) => {
    if (body === undefined || body === plan.ground || body === step.put?.part) return true
    const puts = bench.puts(body)
    return puts.length === 0 ? plan.ground === null : puts.some(isIn)
  })
  const named = step.after.flatMap(({ target }) => bench.stepsOf(target))
  const wanted = plan.steps.filter((one) => one.before.some((target) => bench.stepsOf(target).includes(step)))
  return there && [...named, ...wanted].filter(leavesSomething).every(isIn)
}

/** All that a test comes after is there, through other tests too, some of it from the stretch, with all that is needed. */
function canTry(
  bench: BenchPlan,
  test: Step,
  isIn: (step: Step) => boolean,
  hand: OnHand,
  stretch: readonly Step[],
): boolean {
  const found = new Set<Step>()
  const wait = [test]
  for (let step = wait.pop(); step; step = wait.pop())
    for (const one of step.after.flatMap(({ target }) => bench.stepsOf(target)))
      if (!found.has(one)) {
        found.add(one)
        wait.push(one)
      }
  const lasting = [...found].filter(leavesSomething)
  return (
    lasting.some((one) => stretch.includes(one)) &&
    lasting.every(isIn) &&
    hand.needs(test) &&
    hand.tools(test)
  )
}
