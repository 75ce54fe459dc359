import type { OrderConstraint } from '../../model/assembly.ts'
import { findOrder } from './find-order.ts'
import { ruleBook } from './rules.ts'
import type { Compiler } from './rules-of.ts'

/** What is kept of what was asked, and what typed statements leave no room for. */
export interface KeptAsked {
  readonly kept: readonly OrderConstraint[]
  readonly setAside: readonly OrderConstraint[]
}

/** Most sets of steps looked at for one trial. */
const effort = 20_000

/**
 * Of the constraints asked besides the typed ones, those that still leave an order: all where they do, else taken one
 * by one as they come. Where the typed ones alone leave none, all is set aside: the conflict is among them.
 * Cost: one search for an order, or one for each constraint.
 */
export function keepAsked(
  size: number,
  typed: readonly OrderConstraint[],
  asked: readonly OrderConstraint[],
  compile: Compiler,
): KeptAsked {
  if (asked.length === 0) return { kept: [], setAside: [] }
  const rules = typed.flatMap(compile)
  const leavesOrder = (more: readonly OrderConstraint[]): boolean =>
    findOrder(ruleBook(size, [...rules, ...more.flatMap(compile)]), effort).order !== null
  if (!leavesOrder([])) return { kept: [], setAside: asked }
  if (leavesOrder(asked)) return { kept: asked, setAside: [] }
  const kept: OrderConstraint[] = []
  const setAside: OrderConstraint[] = []
  for (const one of asked) (leavesOrder([...kept, one]) ? kept : setAside).push(one)
  return { kept, setAside }
}
