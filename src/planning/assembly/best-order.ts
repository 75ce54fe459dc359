import { fresh, type Pricer, priceOf, withoutTests } from './bench-cost.ts'
import { type Explorer, explorer, type Stand } from './explorer.ts'
import { findOrder, orderOfTheRest } from './find-order.ts'
import { improveOrder } from './improve-order.ts'
import { narrowOrder } from './narrow-order.ts'
import type { RuleBook } from './rules.ts'
import { setOf } from './step-set.ts'

/** The order chosen. */
export interface Best {
  readonly order: readonly number[]
  readonly cost: number
  /** No order has fewer turnings over, or as many and fewer tool changes. */
  readonly proved: boolean
  /** Of those that have as few, none has earlier tests, or as early and is nearer to the order written. */
  readonly nearest: boolean
  /** States gone into. */
  readonly states: number
}

/** How much may be tried, counted in states (a set of steps done and how the bench stands). */
export interface Effort {
  /**
   * For each question: whether fewer turnings and tool changes can do, whether a better order exists, whether an equal
   * one is nearer to the order written. Of assemblies of more than 40 steps fewer states, which each take longer.
   */
  readonly states: number
  /** States kept for each number of steps done while looking for a good order without proof. */
  readonly width: number
  /** Most sets of steps gone into while all orders are counted; 0: they are not counted. */
  readonly counted: number
}

/** The effort taken where nothing else is said. */
export const usualEffort: Effort = { states: 120_000, width: 60, counted: 200_000 }

/** Steps up to which all states of the effort may be gone into. */
const usualSteps = 40

/** States kept for the first order, which the search then betters. */
const firstWidth = 4

/**
 * The cheapest order that keeps the rules, of equal ones the first by step number; `null` where none exists, and
 * `undefined` where none was found within the effort.
 * Method: branch and bound over sets of done steps and standings, from a first good order down; first with tests left
 * aside, when many steps may be taken at once and the fewest turnings and tool changes are soon known, then with them.
 * Where the states run out, the best of that, of a wider search without proof and of small moves is the answer.
 */
export function bestOrder(
  book: RuleBook,
  price: Pricer,
  effort: Effort = usualEffort,
): Best | null | undefined {
  if (orderOfTheRest(book, setOf([], book.words)) === null) return null
  const explore = explorer(book, price)
  const first = firstOrder(book, explore, effort)
  if (first === null || first === undefined) return first
  const fewest = fewestChanges(book, price, first, effort)
  explore.allow(lessForMany(effort.states, book.size))
  const lowered = lower(explore, price, start(book), better(price, first, fewest.order))
  if (!lowered.proved) {
    const order = withoutProof(book, price, explore, lowered.order, effort)
    const states = fewest.states + explore.states()
    return { order, cost: priceOf(price, order), proved: fewest.proved, nearest: false, states }
  }
  const cost = priceOf(price, lowered.order)
  explore.allow(lessForMany(effort.states, book.size))
  const settled = nearestOf(explore, start(book), lowered.order, cost)
  return { ...settled, cost, proved: true, states: fewest.states + explore.states() }
}

/** Of so many states those that may be gone into: the work of each grows with the square of the steps. */
export const lessForMany = (states: number, steps: number): number =>
  Math.ceil(states * Math.min(1, (usualSteps / steps) ** 2))

const start = (book: RuleBook): Stand => ({ done: setOf([], book.words), standing: fresh, place: 0 })

function firstOrder(
  book: RuleBook,
  explore: Explorer,
  { states, width }: Effort,
): readonly number[] | null | undefined {
  const narrow = narrowOrder(book, explore, Math.min(firstWidth, width))
  if (narrow !== null) return narrow
  const any = findOrder(book, states)
  return any.order ?? (any.certain ? null : undefined)
}

/** Asks for a cheaper order until there is none or the states run out. */
function lower(
  explore: Explorer,
  price: Pricer,
  from: Stand,
  first: readonly number[],
): { order: readonly number[]; proved: boolean } {
  let order = first
  for (;;) {
    const found = explore.complete(from, priceOf(price, order) - 1)
    if (!found) return { order, proved: found === null }
    order = found
  }
}

/** Turnings and tool changes made as few as can be, tests left aside; the same order where there are no tests. */
function fewestChanges(
  book: RuleBook,
  price: Pricer,
  order: readonly number[],
  effort: Effort,
): Pick<Best, 'order' | 'proved' | 'states'> {
  if (!price.tests.includes(true)) return { order, proved: false, states: 0 }
  const untested = withoutTests(price)
  const explore = explorer(book, untested)
  explore.allow(lessForMany(effort.states, book.size))
  return { ...lower(explore, untested, start(book), order), states: explore.states() }
}

function withoutProof(
  book: RuleBook,
  price: Pricer,
  explore: Explorer,
  known: readonly number[],
  { width }: Effort,
): readonly number[] {
  const wide = narrowOrder(book, explore, width)
  const improved = improveOrder(book, price, known)
  return better(price, improved, wide && improveOrder(book, price, wide))
}

function better(price: Pricer, one: readonly number[], other: readonly number[] | null): readonly number[] {
  return other !== null && priceOf(price, other) < priceOf(price, one) ? other : one
}

/** Of the orders that cost as little the first by step number, asked for step by step. Needs: `known` costs just that. */
function nearestOf(
  explore: Explorer,
  from: Stand,
  known: readonly number[],
  cost: number,
): { order: readonly number[]; nearest: boolean } {
  let [stand, left, rest] = [from, cost, known]
  const order: number[] = []
  while (rest.length > 0) {
    for (const move of explore.moves(stand, left, true)) {
      const found = move.step === rest[0] ? rest.slice(1) : withinOf(explore, move, left)
      if (found === undefined) return { order: [...order, ...rest], nearest: false }
      if (found === null) continue
      order.push(move.step)
      ;[stand, left, rest] = [move.to, left - move.cost, found]
      break
    }
  }
  return { order, nearest: true }
}

const withinOf = (
  explore: Explorer,
  { cost, to }: { readonly cost: number; readonly to: Stand },
  budget: number,
): readonly number[] | null | undefined => explore.complete(to, budget - cost)
