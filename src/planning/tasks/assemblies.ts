import { groupByEach } from '../../base/group-by.ts'
import type { Place } from '../../base/place.ts'
import type { AssemblyOrder, AssemblyPlan, Step } from '../../model/assembly.ts'
import { touched } from '../assembly/touched.ts'
import { type Ground, nobody, readyFor, readyWhole, stepKey } from './ground.ts'

/** Steps of every subassembly and of the device, one set per instance. */
export function buildAssemblies(ground: Ground): void {
  const { project } = ground
  for (const part of project.parts.values()) {
    const pieces = (project.demand.get(part.id)?.toGet ?? 0) * part.tries
    if (part.way.kind === 'assembly' && pieces > 0) buildAssembly(ground, part.way.plan, pieces)
  }
  if (project.assembly) buildAssembly(ground, project.assembly, project.device.qty)
}

interface Instance {
  readonly plan: AssemblyPlan
  readonly index: number
  readonly of: number
  /** `` or ` of device 2`. */
  readonly suffix: string
}

/** Tasks of one step: its work, then its cure where it has one. */
type StepTasks = readonly string[]

function buildAssembly(ground: Ground, plan: AssemblyPlan, instances: number): void {
  const order = ground.orders.get(plan.of ?? '')
  if (!order?.order) return
  const byStep = new Map<string, StepTasks[]>()
  const place = new Map(order.order.map((step, at) => [step, at]))
  for (const step of [...plan.steps].sort((a, b) => place.get(a.id)! - place.get(b.id)!)) {
    const count = step.together ? 1 : instances
    const tasks = Array.from({ length: count }, (_, index) =>
      buildStep(ground, { plan, index, of: count, suffix: suffixOf(plan, index, count) }, step),
    )
    byStep.set(step.id, tasks)
    ground.steps.set(stepKey(plan.of, step.id), tasks)
  }
  linkOrder(ground, plan, order, byStep, instances)
  linkCures(ground, plan, order.order, byStep, instances)
  linkWaits(ground, plan, byStep, instances)
  setReady(ground, plan, byStep, instances)
}

const suffixOf = (plan: AssemblyPlan, index: number, count: number): string =>
  count === 1 ? '' : ` (${plan.of === null ? 'device' : plan.of} ${index + 1})`

/** Tasks of a step for an instance; a step done together serves all. */
function tasksOf(byStep: ReadonlyMap<string, readonly StepTasks[]>, step: string, index: number): StepTasks {
  const tasks = byStep.get(step) ?? []
  return tasks[Math.min(index, tasks.length - 1)] ?? []
}

function buildStep(ground: Ground, instance: Instance, step: Step): StepTasks {
  const { plan } = instance
  const id = `${plan.of === null ? 'assembly' : plan.of} / ${step.id}${instance.of === 1 ? '' : ` ${instance.index + 1}`}`
  const subject = {
    assembly: plan.of,
    step: step.id,
    device: plan.of === null ? instance.index : null,
    part: plan.of,
    lot: plan.of === null ? null : instance.index,
  }
  const machine = step.machine ?? (step.tool?.resource?.kind === 'machine' ? step.tool.resource.id : null)
  const tools = step.tool?.resource?.kind === 'tool' ? [step.tool.resource.id] : []
  const hands = ground.build.task({
    id,
    kind: step.test === null ? 'step' : 'test',
    at: step.at,
    subject,
    time: step.time,
    labour: step,
    machine,
    tools,
    title: `${titleOf(step)}${instance.suffix}`,
  })
  const cure = step.cure
    ? ground.build.task({
        id: `${id} / cure`,
        kind: 'cure',
        at: step.at,
        subject,
        time: step.cure,
        labour: nobody,
        title: `Cure: ${step.id}${instance.suffix}`,
      })
    : null
  if (cure !== null) ground.build.link(hands, cure, 'cure', step.at)
  if (step.fixture !== null) ground.build.hold('fixture', step.fixture, hands, cure ?? hands)
  ground.later.push(() => linkParts(ground, instance, step, hands))
  return cure === null ? [hands] : [hands, cure]
}

const titleOf = (step: Step): string => {
  if (step.test !== null) return `Test: ${step.test}`
  if (step.put) return `Put ${step.put.part}${step.put.count > 1 ? ` x${step.put.count}` : ''}`
  return step.action ?? step.id
}

/** A step waits for the parts it uses, as many as this instance and those before it take. */
function linkParts(ground: Ground, instance: Instance, step: Step, task: string): void {
  const share = (instance.index + 1) / instance.of
  const wait = (part: string, at: Place): void =>
    ground.build.linkAll(readyFor(ground, part, share), [task], 'part', at)
  if (step.put) wait(step.put.part, step.put.at)
  for (const one of step.fasteners) wait(one.part, one.at)
  const { ground: base } = instance.plan
  if (base !== null && (step.into?.body === base || step.onto?.body === base || isFirst(instance.plan, step)))
    wait(base, step.at)
  if (step.fixture !== null)
    ground.build.linkAll(readyWhole(ground, step.fixture), [task], 'fixture', step.at)
  if (step.tool?.resource?.kind === 'part')
    ground.build.linkAll(readyWhole(ground, step.tool.resource.id), [task], 'tool', step.at)
}

const isFirst = (plan: AssemblyPlan, step: Step): boolean => plan.steps[0]?.id === step.id

/** The links that the order's constraints need; a step with a cure is done when it is cured only for what touches it. */
function linkOrder(
  ground: Ground,
  plan: AssemblyPlan,
  order: AssemblyOrder,
  byStep: ReadonlyMap<string, readonly StepTasks[]>,
  instances: number,
): void {
  for (const { before, after, constraint } of order.links) {
    for (let index = 0; index < instances; index++) {
      const from = tasksOf(byStep, before, index).at(-1)
      const to = tasksOf(byStep, after, index)[0]
      if (from !== undefined && to !== undefined && from !== to)
        ground.build.link(from, to, 'assembly', constraint.at ?? plan.at)
    }
  }
}

/**
 * Nothing touches what is curing: steps on the same body come before it or after, as in the order. A step beyond the
 * next one that cures on the same body waits for that one, and needs no link of its own.
 */
function linkCures(
  ground: Ground,
  plan: AssemblyPlan,
  order: readonly string[],
  byStep: ReadonlyMap<string, readonly StepTasks[]>,
  instances: number,
): void {
  const steps = new Map(plan.steps.map((step) => [step.id, step]))
  const touching = groupByEach(order.keys(), (place) => touched(steps.get(order[place]!)!))
  const link = (before: number, after: number, at: Place): void => {
    for (let index = 0; index < instances; index++)
      ground.build.link(
        tasksOf(byStep, order[before]!, index).at(-1)!,
        tasksOf(byStep, order[after]!, index)[0]!,
        'cure',
        at,
      )
  }
  const cures = (place: number): boolean => steps.get(order[place]!)!.cure !== null
  for (const places of touching.values()) {
    for (const [k, place] of places.entries()) {
      if (!cures(place)) continue
      const { at } = steps.get(order[place]!)!
      const before = places.slice(0, k).findLastIndex(cures)
      for (const other of places.slice(Math.max(0, before), k)) link(other, place, at)
      const next = places.findIndex((other, j) => j > k && cures(other))
      for (const other of places.slice(k + 1, next < 0 ? undefined : next + 1)) link(place, other, at)
    }
  }
}

/** `within`: the longest wait after the step written just before, from the end of its hands work. */
function linkWaits(
  ground: Ground,
  plan: AssemblyPlan,
  byStep: ReadonlyMap<string, readonly StepTasks[]>,
  instances: number,
): void {
  for (const [place, step] of plan.steps.entries()) {
    const before = plan.steps[place - 1]
    if (step.within === null || !before) continue
    for (let index = 0; index < instances; index++) {
      ground.build.link(
        tasksOf(byStep, before.id, index)[0]!,
        tasksOf(byStep, step.id, index)[0]!,
        'after',
        step.at,
        { minutes: 0 },
        step.within,
      )
    }
  }
}

/** An instance is ready when all its steps are done. */
function setReady(
  ground: Ground,
  plan: AssemblyPlan,
  byStep: ReadonlyMap<string, readonly StepTasks[]>,
  instances: number,
): void {
  if (plan.of === null) return
  const ready = Array.from({ length: instances }, (_, index) =>
    plan.steps.map((step) => tasksOf(byStep, step.id, index).at(-1)!),
  )
  ground.ready.set(plan.of, ready)
}
