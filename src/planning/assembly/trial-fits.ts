import { type Day, dayOf, type Instant, instantOf } from '../../base/clock.ts'
import { groupBy } from '../../base/group-by.ts'
import { listSpans } from '../../base/spans.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../../model/assembly.ts'
import { plansAsBuilt } from '../../model/assembly-plans.ts'
import type { Join } from '../../model/joins.ts'
import type { Project, Target } from '../../model/project.ts'
import type { PlanSchedule } from '../../model/schedule.ts'
import type { PlanTask, TaskNetwork } from '../../model/tasks.ts'
import type { TrialFit, TrialLeg } from '../../model/trial-fit.ts'
import { sessionsOf } from '../calendar/open-hours.ts'
import { type OnHand, type Trial, trialLeg } from './trial-leg.ts'

/** What trial fits are found from. */
export interface Tryable {
  readonly project: Project
  /** Orders by assembly; `''` is the device. */
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  readonly joins: readonly Join[]
  readonly network: TaskNetwork
  readonly schedule: PlanSchedule
  readonly readyAt: ReadonlyMap<string, Instant>
}

/** The same, with what any evening asks of it. */
interface Trying extends Tryable {
  /** Assemblies that can be built, as they are built. */
  readonly trials: readonly { readonly assembly: AssemblyPlan; readonly trial: Trial }[]
  /** Tasks of the first of each batch, by assembly; `null` is the device. */
  readonly firsts: ReadonlyMap<string | null, readonly PlanTask[]>
}

function trialsOf({ project, orders, joins }: Tryable): Trying['trials'] {
  return plansAsBuilt(project).flatMap((assembly) => {
    const order = orders.get(assembly.of ?? '')?.order
    return order ? [{ assembly, trial: trialLeg(assembly, order, joins) }] : []
  })
}

function firstsOf({ tasks }: TaskNetwork): Trying['firsts'] {
  const own = tasks.filter((task) => task.subject.step !== null && isFirst(task))
  return groupBy(own, ({ subject }) => subject.assembly)
}

/** Fewest steps that are worth a trial. Source: common practice, no source. */
const fewest = 2
/** What is done for good so many days later needs no trial. Source: common practice, no source. */
const soonDays = 2

/**
 * Days on which a trial fit is worth while, at most two: the first on which something can be found out, and the first
 * of the longest stretch. Tried is what the plan does on a later day, on what is really done by then.
 */
export function trialFits(given: Tryable): readonly TrialFit[] {
  const plan: Trying = { ...given, trials: trialsOf(given), firsts: firstsOf(given.network) }
  const freedom = freedomOf(plan)
  const all = evenings(plan).flatMap((at) => {
    const fit = trialFit(plan, at, freedom(at))
    return fit && isUseful(fit) ? [fit] : []
  })
  const longest = all.reduce<TrialFit | null>(
    (best, fit) => (best === null || stepsOf(fit) > stepsOf(best) ? fit : best),
    null,
  )
  return all.filter((fit, at) => at === 0 || fit === longest)
}

/** When the first person's hours begin, on every day of the plan on which there are any. */
function evenings({ project, schedule }: Tryable): readonly Instant[] {
  const from = instantOf(project.device.start, 0)
  const opens = [...project.people.values()].flatMap((person) =>
    listSpans(sessionsOf(person, from, schedule.finish)).map(({ open }) => open),
  )
  const first = new Map<Day, Instant>()
  for (const open of opens.sort((a, b) => a - b)) if (!first.has(dayOf(open))) first.set(dayOf(open), open)
  return [...first.values()]
}

const stepsOf = ({ legs }: TrialFit): number => legs.reduce((sum, { steps }) => sum + steps.length, 0)

/** Whether enough of it cannot be done for good yet, and it tells something: a fit, a chain, a test, or some checks. */
function isUseful({ legs, chains }: TrialFit): boolean {
  const early = legs.flatMap((leg) => leg.early)
  const checks = early.filter(({ check }) => check !== null).length
  const tells = legs.some(({ joins, tests }) => joins.length > 0 || tests.length > 0) || checks > 1
  return early.length >= fewest && (tells || chains.length > 0)
}

/** What can be tried at an instant, from what is here by then, of what is done on a later day; `null`: nothing. */
function trialFit(plan: Trying, at: Instant, isFree: (task: string) => boolean): TrialFit | null {
  const day = dayOf(at)
  const tried = new Set<string>()
  const legs: TrialLeg[] = []
  for (const { assembly, trial } of plan.trials) {
    const hand: OnHand = {
      ...onHand(plan, day, at, tried),
      stands: standing(plan, assembly, day, at),
      couldBeDone: doable(plan, assembly, isFree),
    }
    const leg = trial(hand)
    if (!leg) continue
    legs.push(leg)
    if (leg.whole && assembly.of !== null) tried.add(assembly.of)
  }
  return legs.length === 0 ? null : { day, legs, chains: chainsIn(plan.project, legs) }
}

/** For each task whether it waits, at an instant, for nothing but steps like it: only hands are missing. */
type Freedom = (at: Instant) => (task: string) => boolean

function freedomOf({ network, schedule }: Tryable): Freedom {
  const isStep = new Set(network.tasks.flatMap(({ id, subject }) => (subject.step === null ? [] : [id])))
  const before = new Map<string, string[]>()
  for (const { from, to } of network.links) {
    const known = before.get(to)
    if (known) known.push(from)
    else before.set(to, [from])
  }
  const byStart = network.tasks.map(({ id }) => schedule.tasks.get(id)!).sort((a, b) => a.start - b.start)
  return (at) => {
    const free = new Set<string>()
    // What waits begins no earlier than what it waits for, so those are settled before it.
    for (const { id, finish } of byStart)
      if (finish <= at || (isStep.has(id) && (before.get(id) ?? []).every((from) => free.has(from))))
        free.add(id)
    return (task) => free.has(task)
  }
}

/** Whether only hands are missing for a step of the first of a batch. */
function doable(
  { firsts }: Trying,
  { of }: AssemblyPlan,
  isFree: (task: string) => boolean,
): OnHand['couldBeDone'] {
  const free = new Set(
    (firsts.get(of) ?? []).flatMap(({ subject, id }) => (isFree(id) ? [subject.step!] : [])),
  )
  return ({ id }) => free.has(id)
}

const isFirst = ({ subject }: PlanTask): boolean => (subject.device ?? subject.lot ?? 0) === 0

/** How the first of a batch stands: what is done and cured at an instant, and what is done on that day or soon after. */
function standing(
  { firsts, schedule }: Trying,
  { of }: AssemblyPlan,
  day: Day,
  at: Instant,
): OnHand['stands'] {
  const times = new Map<string, { start: Instant; finish: Instant }>()
  for (const { id, subject } of firsts.get(of) ?? []) {
    const { start, finish } = schedule.tasks.get(id)!
    const known = times.get(subject.step!) ?? { start, finish }
    times.set(subject.step!, {
      start: Math.min(known.start, start),
      finish: Math.max(known.finish, finish),
    })
  }
  return ({ id }) => {
    const time = times.get(id)
    if (!time || time.finish <= at) return 'done'
    return time.start < instantOf(day + soonDays, 0) ? 'soon' : 'to come'
  }
}

function onHand(
  plan: Trying,
  day: Day,
  at: Instant,
  tried: ReadonlySet<string>,
): Omit<OnHand, 'stands' | 'couldBeDone'> {
  const { project, readyAt } = plan
  const isReady = (part: string): boolean =>
    (readyAt.get(part) ?? 0) <= at || firstIsBuilt(plan, part, day, at)
  const onShelf = (part: string, count: number): boolean => {
    const demand = project.demand.get(part)
    return demand !== undefined && demand.fromStock >= Math.max(count, demand.perDevice)
  }
  const isHere = (part: string, count: number): boolean =>
    tried.has(part) || onShelf(part, count) || isReady(part)
  return {
    part: isHere,
    tools: (step) => toolsAreHere(project, step, day, (part) => isHere(part, 1)),
    needs: ({ needs }) => needs.every((target) => isDone(plan, target, at, isHere)),
  }
}

/** Whether the first of a part of kind assembly is put together, with its tests. */
function firstIsBuilt(plan: Trying, part: string, day: Day, at: Instant): boolean {
  const way = plan.project.parts.get(part)?.way
  if (way?.kind !== 'assembly') return false
  const stands = standing(plan, way.plan, day, at)
  return way.plan.steps.every((step) => stands(step) === 'done')
}

function toolsAreHere(
  project: Project,
  { tool, fixture }: Step,
  day: Day,
  isHere: (part: string) => boolean,
): boolean {
  if (fixture !== null && !isHere(fixture)) return false
  const resource = tool?.resource
  if (resource?.kind === 'part') return isHere(resource.id)
  if (resource?.kind !== 'tool') return true
  const { from, until } = project.tools.get(resource.id)!
  return (from === null || from <= day) && (until === null || day <= until)
}

function isDone(
  { network, schedule }: Tryable,
  target: Target,
  at: Instant,
  isHere: (part: string, count: number) => boolean,
): boolean {
  if (target.kind === 'part') return isHere(target.id, 1)
  if (target.kind !== 'work') return true
  return network.tasks
    .filter(({ subject }) => subject.work === target.id)
    .every(({ id }) => schedule.tasks.get(id)!.finish <= at)
}

/** Chains of which every part is in the trial. */
function chainsIn(project: Project, legs: readonly TrialLeg[]): readonly string[] {
  const plans = new Map(plansAsBuilt(project).map((plan) => [plan.of, plan]))
  const there = new Set<string>()
  const add = (part: string): void => {
    if (there.has(part)) return
    there.add(part)
    const way = project.parts.get(part)?.way
    if (way?.kind !== 'assembly') return
    if (way.plan.ground !== null) add(way.plan.ground)
    for (const { put } of way.plan.steps) if (put) add(put.part)
  }
  for (const { assembly, steps } of legs) {
    const { ground } = plans.get(assembly)!
    if (ground !== null) add(ground)
    for (const { put } of steps) if (put) add(put.part)
  }
  return [...project.chains.values()]
    .filter(({ sum }) => sum.every(({ of }) => of !== null && there.has(of.part)))
    .map(({ id }) => id)
}
