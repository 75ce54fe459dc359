import type { AssemblyOrder, AssemblyPlan, OrderConstraint, OrderLink, Step } from '../../model/assembly.ts'
import type { Project } from '../../model/project.ts'
import { type BenchStep, pricer } from './bench-cost.ts'
import { benchPlan } from './bench-plan.ts'
import { bestOrder, type Effort, usualEffort } from './best-order.ts'
import { orderConstraints } from './constraints.ts'
import { findConflict } from './find-conflict.ts'
import { keepAsked } from './keep-asked.ts'
import { type Rule, ruleBook } from './rules.ts'
import { ruleCompiler } from './rules-of.ts'
import { settledLinks } from './settled-links.ts'

/** Most sets of steps looked at for each statement tried when a conflict is made small. */
const conflictEffort = 20_000

/**
 * The order in which one assembly goes together: the least by turnings over, then tool changes, then tests early,
 * then as written; or the statements that cannot hold together. `asked`: what the meshes ask; typed statements win, and
 * what they leave no room for is set aside.
 */
export function orderAssembly(
  plan: AssemblyPlan,
  _project: Project,
  effort: Effort = usualEffort,
  asked: readonly OrderConstraint[] = [],
): AssemblyOrder {
  const { constraints: typed, void: without } = orderConstraints(plan)
  const compile = ruleCompiler(benchPlan(plan))
  const { kept, setAside } = keepAsked(plan.steps.length, typed, asked, compile)
  const constraints = [...typed, ...kept]
  const statements = constraints.map(compile)
  const book = ruleBook(plan.steps.length, statements.flat())
  const price = pricer(plan.steps.map(benchStep))
  const common = { of: plan.of, at: plan.at, constraints, void: without, setAside }
  const best = bestOrder(book, price, effort)
  if (best) {
    const { turns, toolChanges } = price.apart(best.cost)
    const links = linksOf(plan, constraints, statements, best.order)
    const order = best.order.map((number) => plan.steps[number]!.id)
    return { ...common, order, links, ...noConflict, minimal: false, proved: best.proved, turns, toolChanges }
  }
  const none = { ...common, order: null, links: [], turns: 0, toolChanges: 0 }
  if (best === undefined) return { ...none, ...noConflict, minimal: false, proved: false }
  const found = findConflict(plan.steps.length, statements, conflictEffort)
  return {
    ...none,
    conflict: found.statements.map((number) => constraints[number]!),
    ring: found.ring?.map((number) => plan.steps[number]!.id) ?? null,
    minimal: found.minimal,
    proved: true,
  }
}

const noConflict = { conflict: [], ring: null }

/** A tool is named, or the machine it is done on stands for it. */
function benchStep({ from, turn, tool, machine, test }: Step): BenchStep {
  return { from, turn, tool: tool?.text ?? machine, test: test !== null }
}

function linksOf(
  plan: AssemblyPlan,
  constraints: readonly OrderConstraint[],
  statements: readonly (readonly Rule[])[],
  order: readonly number[],
): readonly OrderLink[] {
  const place: number[] = []
  for (const [k, number] of order.entries()) place[number] = k
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
