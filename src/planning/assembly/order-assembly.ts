import { placesOf } from '../../base/places-of.ts'
import type { AssemblyOrder, AssemblyPlan, OrderConstraint, OrderLink, Step } from '../../model/assembly.ts'
import type { PlanMeshes } from '../../model/from-meshes.ts'
import type { Project } from '../../model/project.ts'
import { ancestors } from './ancestors.ts'
import { type BenchStep, type Pricer, pricer } from './bench-cost.ts'
import { benchPlan } from './bench-plan.ts'
import { bestOrder, type Effort, lessForMany, usualEffort } from './best-order.ts'
import { orderConstraints } from './constraints.ts'
import { countOrders } from './count-orders.ts'
import { findConflict } from './find-conflict.ts'
import { inOneOrder, interchangeable } from './interchangeable.ts'
import { keepAsked } from './keep-asked.ts'
import { type Rule, ruleBook } from './rules.ts'
import { ruleCompiler } from './rules-of.ts'
import { settledLinks } from './settled-links.ts'
import { type MeshSides, noSides, sidesFromMeshes, sideText } from './sides-from-meshes.ts'
import { has } from './step-set.ts'

/** Most sets of steps looked at for each statement tried when a conflict is made small. */
const conflictEffort = 20_000

/**
 * The order in which one assembly goes together: the least by turnings over, then tool changes, then tests early,
 * then as written; or the statements that cannot hold together. `asked`: what the meshes ask; typed statements win, and
 * what they leave no room for is set aside. `meshes`: where a step types no direction, the only one that they leave
 * counts for its turnings.
 */
export function orderAssembly(
  plan: AssemblyPlan,
  _project: Project,
  effort: Effort = usualEffort,
  asked: readonly OrderConstraint[] = [],
  meshes: PlanMeshes | null = null,
): AssemblyOrder {
  const { constraints: typed, void: without } = orderConstraints(plan)
  const compile = ruleCompiler(benchPlan(plan))
  const size = plan.steps.length
  const { kept, setAside } = keepAsked(size, typed, asked, compile)
  const constraints = [...typed, ...kept]
  const statements = constraints.map(compile)
  const rules = statements.flat()
  const sides = meshes ? sidesLeft(plan, meshes, rules) : noSides
  const price = pricer(plan.steps.map((step) => benchStep(step, sides)))
  const best = bestOrder(ruleBook(size, [...rules, ...inOneOrder(alike(size, rules, price))]), price, effort)
  const common = { ...nothing, of: plan.of, at: plan.at, constraints, void: without, setAside }
  if (best) {
    const { proved, nearest, states } = best
    const { turns, toolChanges } = price.apart(best.cost)
    const links = linksOf(plan, constraints, statements, best.order)
    const order = best.order.map((number) => plan.steps[number]!.id)
    const feasibleOrders =
      effort.counted > 0
        ? countOrders(size, rules, lessForMany(lessForMany(effort.counted, size), size))
        : null
    const sidesByMeshes = { steps: sides.only.size, counted: sides.counted }
    return {
      ...common,
      order,
      links,
      proved,
      nearest,
      states,
      turns,
      sidesByMeshes,
      toolChanges,
      feasibleOrders,
    }
  }
  if (best === undefined) return common
  const { statements: conflict, ring, minimal, smallest } = findConflict(size, statements, conflictEffort)
  return {
    ...common,
    conflict: conflict.map((number) => constraints[number]!),
    ring: ring?.map((number) => plan.steps[number]!.id) ?? null,
    minimal,
    smallest,
    proved: true,
    feasibleOrders: 0n,
  }
}

/** Steps that may change places with each other and are the same work at the bench: one order of them stands for all. */
function alike(size: number, rules: readonly Rule[], price: Pricer): readonly (readonly number[])[] {
  const { from, turn, tool, tests } = price
  return interchangeable(size, rules, (one, other) =>
    [from, turn, tool, tests].every((list) => list[one] === list[other]),
  )
}

const nothing = {
  order: null,
  links: [],
  conflict: [],
  ring: null,
  minimal: false,
  smallest: false,
  proved: false,
  nearest: false,
  states: 0,
  turns: 0,
  sidesByMeshes: { steps: 0, counted: false },
  toolChanges: 0,
  feasibleOrders: null,
}

/** A tool is named, or the machine it is done on stands for it. */
function benchStep(step: Step, sides: MeshSides): BenchStep {
  const { turn, tool, machine, test } = step
  return { from: sideText(step, sides), turn, tool: tool?.text ?? machine, test: test !== null }
}

function sidesLeft(plan: AssemblyPlan, meshes: PlanMeshes, rules: readonly Rule[]): MeshSides {
  const before = ancestors(ruleBook(plan.steps.length, rules))
  return sidesFromMeshes(
    plan,
    meshes,
    (step) => new Set(plan.steps.flatMap(({ id }, other) => (has(before[step]!, other) ? [id] : []))),
  )
}

function linksOf(
  plan: AssemblyPlan,
  constraints: readonly OrderConstraint[],
  statements: readonly (readonly Rule[])[],
  order: readonly number[],
): readonly OrderLink[] {
  const place = placesOf(order)
  const links = new Map<string, OrderLink>()
  for (const [k, constraint] of constraints.entries()) {
    for (const pair of statements[k]!.flatMap((rule) => settledLinks(rule, place))) {
      const key = `${pair.before},${pair.after}`
      const [before, after] = [plan.steps[pair.before]!.id, plan.steps[pair.after]!.id]
      if (!links.has(key)) links.set(key, { before, after, constraint })
    }
  }
  return [...links.values()]
}
