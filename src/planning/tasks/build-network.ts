import { instantOf } from '../../base/clock.ts'
import type { AssemblyOrder, AssemblyPlan } from '../../model/assembly.ts'
import { assemblyPlans } from '../../model/assembly-plans.ts'
import type { Project, Target } from '../../model/project.ts'
import type { Purchase } from '../../model/purchase.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import { buildAssemblies } from './assemblies.ts'
import { NetworkBuilder } from './builder.ts'
import { buildCarts, linkAfter, linkCarts, orderTask } from './carts.ts'
import { type Ground, lineKey, readyWhole, stepKey } from './ground.ts'
import { buildParts } from './parts.ts'
import { buildPrints } from './prints.ts'
import { buildWork } from './work.ts'

function groundOf(project: Project, purchase: Purchase, orders: ReadonlyMap<string, AssemblyOrder>): Ground {
  const lines = purchase.carts.flatMap((cart) =>
    cart.lines.map((line) => [lineKey(line.what), { cart, line }] as const),
  )
  return {
    project,
    purchase,
    orders,
    build: new NetworkBuilder(instantOf(project.device.start, 0)),
    people: [...project.people.keys()],
    lines: new Map(lines),
    ready: new Map(),
    begun: new Map(),
    received: new Map(),
    steps: new Map(),
    later: [],
  }
}

/** The tasks after which a target is done: for one device where the target is per device, else for all. */
function finishedBy(ground: Ground, target: Target, device: number | null): readonly string[] {
  if (target.kind === 'work') return [`work ${target.id}`]
  if (target.kind === 'part') return readyWhole(ground, target.id)
  const plan = assemblyPlans(ground.project).find(({ of }) => of === target.assembly)
  const ids =
    target.kind === 'step'
      ? [target.id]
      : (plan?.steps ?? [])
          .filter(({ shuts }) =>
            shuts.some((one) => one.body === target.body && one.opening === target.opening),
          )
          .map(({ id }) => id)
  return ids.flatMap((id) => {
    const instances = ground.steps.get(stepKey(target.assembly, id)) ?? []
    const wanted = device === null ? instances : [instances[Math.min(device, instances.length - 1)] ?? []]
    return wanted.flatMap((tasks) => tasks.slice(-1))
  })
}

/** Whether a target lies among the steps of one assembly: its order then sees to it. */
function inside(plan: AssemblyPlan, target: Target): boolean {
  if (target.kind === 'step' || target.kind === 'opening') return target.assembly === plan.of
  return target.kind === 'part' && plan.steps.some((step) => step.put?.part === target.id)
}

function linkSteps(ground: Ground): void {
  for (const plan of assemblyPlans(ground.project)) {
    for (const step of plan.steps) {
      for (const [device, tasks] of (ground.steps.get(stepKey(plan.of, step.id)) ?? []).entries()) {
        const first = tasks.slice(0, 1)
        for (const need of step.needs)
          if (!inside(plan, need))
            ground.build.linkAll(finishedBy(ground, need, device), first, 'needs', need.at)
        for (const after of step.after) {
          const own = inside(plan, after.target)
          // Order alone is the assembly's; a lag or longest wait is still a matter of time.
          const timed = after.within !== null || 'workingDays' in after.lag || after.lag.minutes > 0
          const same =
            after.target.kind === 'part'
              ? partSteps(ground, plan, after.target.id, device)
              : finishedBy(ground, after.target, device)
          if (!own)
            linkAfter(
              ground,
              finishedBy(ground, after.target, null),
              first,
              after.at,
              after.lag,
              after.within,
            )
          else if (timed) linkAfter(ground, same, first, after.at, after.lag, after.within)
        }
      }
    }
  }
}

function partSteps(ground: Ground, plan: AssemblyPlan, part: string, device: number): readonly string[] {
  return plan.steps
    .filter((step) => step.put?.part === part)
    .flatMap((step) =>
      finishedBy(ground, { kind: 'step', assembly: plan.of, id: step.id, at: step.at }, device),
    )
}

/** What a made part or a plate must come after. */
function linkMade(ground: Ground): void {
  for (const part of ground.project.parts.values()) {
    if (part.way.kind === 'bought') continue
    const first =
      part.way.kind === 'assembly' ? firstSteps(ground, part.way.plan) : (ground.begun.get(part.id) ?? [])
    for (const after of part.after)
      linkAfter(ground, finishedBy(ground, after.target, null), first, after.at, after.lag, after.within)
  }
  for (const plate of ground.project.plates.values()) {
    const first = ground.begun.get(`plate ${plate.id}`) ?? []
    for (const after of plate.after)
      linkAfter(ground, finishedBy(ground, after.target, null), first, after.at, after.lag, after.within)
  }
}

function firstSteps(ground: Ground, plan: AssemblyPlan): readonly string[] {
  return plan.steps.flatMap((step) =>
    (ground.steps.get(stepKey(plan.of, step.id)) ?? []).flatMap((tasks) => tasks.slice(0, 1)),
  )
}

/** How many of each fixture there will be: those here and those made. */
function fixturesOf(project: Project): ReadonlyMap<string, number> {
  const fixtures = [...project.parts.values()].filter(({ role }) => role === 'fixture')
  return new Map(
    fixtures.map(({ id }) => [
      id,
      Math.max(1, (project.demand.get(id)?.toGet ?? 0) + (project.demand.get(id)?.fromStock ?? 0)),
    ]),
  )
}

/**
 * The whole network: orders, deliveries, routes, shared print jobs, boards, fixtures, work and assembly.
 * Needs: every assembly of `orders` has an order. Gives: tasks, links and holds sorted by id.
 */
export function buildNetwork(
  project: Project,
  purchase: Purchase,
  orders: ReadonlyMap<string, AssemblyOrder>,
): TaskNetwork {
  const ground = groundOf(project, purchase, orders)
  buildCarts(ground)
  buildWork(ground)
  buildParts(ground)
  buildPrints(ground)
  buildAssemblies(ground)
  for (const link of ground.later) link()
  linkCarts(ground, (target, device) => finishedBy(ground, target, device))
  linkOutsideNeeds(ground)
  linkSteps(ground)
  linkMade(ground)
  linkWorkTargets(ground)
  const ready = [...project.parts.keys()].map((part) => [part, readyWhole(ground, part)] as const)
  return ground.build.network(fixturesOf(project), new Map(ready))
}

function linkWorkTargets(ground: Ground): void {
  for (const work of ground.project.work.values()) {
    const task = [`work ${work.id}`]
    for (const need of work.needs)
      ground.build.linkAll(finishedBy(ground, need, null), task, 'needs', need.at)
    for (const after of work.after)
      linkAfter(ground, finishedBy(ground, after.target, null), task, after.at, after.lag, after.within)
  }
}

/** Outside work waits for what its route step needs, beside what its offer needs. */
function linkOutsideNeeds(ground: Ground): void {
  for (const { cart } of ground.lines.values()) {
    for (const { what } of cart.lines) {
      if (what.kind !== 'outside') continue
      const way = ground.project.parts.get(what.part)?.way
      const step = way && 'route' in way ? way.route[what.routeStep] : undefined
      if (step?.kind !== 'outside') continue
      for (const need of step.needs)
        ground.build.linkAll(finishedBy(ground, need, null), [orderTask(cart)], 'needs', need.at)
    }
  }
}
