import type { UndoCost } from '../../model/undo-cost.ts'
import type { ApartNeed, ApartProblem } from './apart-needs.ts'

/** The steps that are undone, in a good order of undoing. */
export interface Apart {
  readonly undo: readonly number[]
  /** Whether nothing does less harm. */
  readonly proved: boolean
}

/** Most sets of undone steps looked at. */
export const usualApartEffort = 20_000

/** Any number of the lesser harm is better than one of the greater, for fewer than a thousand steps. */
const weights: Readonly<Record<UndoCost, number>> = { destroyed: 1_000_000, care: 1000, none: 0 }

/**
 * The least harm that meets the goal: fewest joints destroyed, then fewest undone with care, then fewest steps.
 * Method: best-first search over sets of undone steps; what must be undone in any case is the bound, so that only real
 * choices make it wide. Where the effort ends first, all that may be in the way is taken and thinned out.
 * Gives: undone in the order of building turned round, as far as may be.
 * Cost: at most `effort` sets, each tried with every step.
 */
export function leastApart(
  problem: ApartProblem,
  goal: readonly ApartNeed[],
  effort: number = usualApartEffort,
): Apart {
  const found = bestSet(problem, goal, effort)
  if (found !== null) return { undo: undoOrder(problem, found)!, proved: true }
  return { undo: thinned(problem, goal), proved: false }
}

const bit = (step: number): bigint => 1n << BigInt(step)
const holds = (gone: bigint, step: number): boolean => (gone & bit(step)) !== 0n
const setOf = (steps: Iterable<number>): bigint => [...steps].reduce((set, step) => set | bit(step), 0n)

const isMet = (need: ApartNeed, gone: bigint): boolean =>
  need.ways.some(({ steps, least }) => steps.filter((step) => holds(gone, step)).length >= least)

const costOf = ({ costs }: ApartProblem, step: number): number => weights[costs[step]!] + 1

/** Steps reached from the goal by needs; all ways of each, or only where there is one way and it takes all. */
function reached(problem: ApartProblem, goal: readonly ApartNeed[], forcedOnly: boolean): Set<number> {
  const found = new Set<number>()
  const wait = [...goal]
  for (let need = wait.pop(); need; need = wait.pop()) {
    const [only] = need.ways
    const forced = need.ways.length === 1 && only!.least === only!.steps.length
    if (forcedOnly && !forced) continue
    for (const step of need.ways.flatMap(({ steps }) => steps)) {
      if (found.has(step)) continue
      found.add(step)
      wait.push(...problem.needs[step]!)
    }
  }
  return found
}

interface Tried {
  readonly gone: bigint
  readonly cost: number
  readonly bound: number
  readonly born: number
}

/** The least set that meets the goal; `null`: the effort ended before one was proved. */
function bestSet(
  problem: ApartProblem,
  goal: readonly ApartNeed[],
  effort: number,
): readonly number[] | null {
  const moves = [...reached(problem, goal, false)].sort((a, b) => problem.place[b]! - problem.place[a]!)
  const forced = [...reached(problem, goal, true)]
  const rest = (gone: bigint): number =>
    forced.reduce((sum, step) => sum + (holds(gone, step) ? 0 : costOf(problem, step)), 0)
  const queue: Tried[] = [{ gone: 0n, cost: 0, bound: rest(0n), born: 0 }]
  const seen = new Set<bigint>()
  for (let born = 0; queue.length > 0 && seen.size < effort; ) {
    const { gone, cost } = takeLeast(queue)
    if (seen.has(gone)) continue
    seen.add(gone)
    if (goal.every((need) => isMet(need, gone))) return moves.filter((step) => holds(gone, step))
    for (const step of moves) {
      if (holds(gone, step) || !problem.needs[step]!.every((need) => isMet(need, gone))) continue
      const next = gone | bit(step)
      if (seen.has(next)) continue
      const paid = cost + costOf(problem, step)
      born++
      push(queue, { gone: next, cost: paid, bound: paid + rest(next), born })
    }
  }
  return null
}

/** Least bound first, then what is furthest on, then what was found first. */
const isBefore = (a: Tried, b: Tried): boolean =>
  a.bound !== b.bound ? a.bound < b.bound : a.cost !== b.cost ? a.cost > b.cost : a.born < b.born

function push(queue: Tried[], one: Tried): void {
  let at = queue.push(one) - 1
  while (at > 0) {
    const up = (at - 1) >> 1
    if (!isBefore(queue[at]!, queue[up]!)) return
    swap(queue, at, up)
    at = up
  }
}

function takeLeast(queue: Tried[]): Tried {
  const least = queue[0]!
  const last = queue.pop()!
  if (queue.length === 0) return least
  queue[0] = last
  for (let at = 0; ; ) {
    let first = at
    for (const child of [2 * at + 1, 2 * at + 2])
      if (child < queue.length && isBefore(queue[child]!, queue[first]!)) first = child
    if (first === at) return least
    swap(queue, at, first)
    at = first
  }
}

function swap(queue: Tried[], a: number, b: number): void {
  const one = queue[a]!
  queue[a] = queue[b]!
  queue[b] = one
}

/** The order in which these steps can be undone, the latest built first; `null`: they cannot. */
export function undoOrder(problem: ApartProblem, steps: readonly number[]): readonly number[] | null {
  const left = [...steps].sort((a, b) => problem.place[b]! - problem.place[a]!)
  const order: number[] = []
  let gone = 0n
  while (left.length > 0) {
    const at = left.findIndex((step) => problem.needs[step]!.every((need) => isMet(need, gone)))
    if (at < 0) return null
    const [step] = left.splice(at, 1)
    order.push(step!)
    gone |= bit(step!)
  }
  return order
}

/** Everything that may be in the way, less what can be left: the greatest harm is tried first. */
function thinned(problem: ApartProblem, goal: readonly ApartNeed[]): readonly number[] {
  let kept = [...reached(problem, goal, false)]
  for (const step of [...kept].sort((a, b) => costOf(problem, b) - costOf(problem, a) || a - b)) {
    const without = kept.filter((one) => one !== step)
    const gone = setOf(without)
    if (goal.every((need) => isMet(need, gone)) && undoOrder(problem, without)) kept = without
  }
  return undoOrder(problem, kept)!
}
