import type { UndoCost } from '../../model/undo-cost.ts'
import { type ApartNeed, isMet, type UndoneWay } from './apart-need.ts'
import type { ApartProblem } from './apart-needs.ts'

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
 * Method: best-first search over sets of undone steps; the bound is what must be undone in any case, with the least that
 * any of the choices adds to it. Where the effort ends first, all that may be in the way is taken and thinned out.
 * Needs: the steps of `within` alone, where given, meet the goal.
 * Gives: undone in the order of building turned round, as far as may be.
 * Cost: at most `effort` sets, each tried with every step.
 */
export function leastApart(
  problem: ApartProblem,
  goal: readonly ApartNeed[],
  effort: number = usualApartEffort,
  within?: ReadonlySet<number>,
): Apart {
  const all = [...reached(problem, goal)]
  const moves = within ? all.filter((step) => within.has(step)) : all
  const found = bestSet(problem, goal, moves, effort)
  if (found !== null) return { undo: undoOrder(problem, found)!, proved: true }
  return { undo: thinned(problem, goal, moves), proved: false }
}

const bit = (step: number): bigint => 1n << BigInt(step)
const holds = (gone: bigint, step: number): boolean => (gone & bit(step)) !== 0n

const costOf = ({ costs }: ApartProblem, step: number): number => weights[costs[step]!] + 1

/** Steps reached from the goal by needs, all ways of each. */
function reached(problem: ApartProblem, goal: readonly ApartNeed[]): Set<number> {
  const found = new Set<number>()
  const wait = [...goal]
  for (let need = wait.pop(); need; need = wait.pop())
    for (const step of need.ways.flat().flatMap(({ steps }) => steps)) {
      if (found.has(step)) continue
      found.add(step)
      wait.push(...problem.needs[step]!)
    }
  return found
}

/** Steps that a way takes in any case. */
const takenBy = (way: UndoneWay): readonly number[] =>
  way.flatMap(({ steps, least }) => (least >= steps.length ? steps : []))

/** These steps and all that must be undone with them in any case: what every way of a need takes. */
function forcedBy({ needs }: ApartProblem, from: Iterable<number>): ReadonlySet<number> {
  const found = new Set<number>()
  const wait = [...from]
  for (let step = wait.pop(); step !== undefined; step = wait.pop()) {
    if (found.has(step)) continue
    found.add(step)
    wait.push(...needs[step]!.flatMap(takenAnyway))
  }
  return found
}

function takenAnyway({ ways }: ApartNeed): readonly number[] {
  const [first, ...rest] = ways.map(takenBy)
  return (first ?? []).filter((step) => rest.every((way) => way.includes(step)))
}

/** Most choices that the bound looks at. */
const mostChoices = 8

/** No less than what is still to be paid once these are undone. */
function boundOf(problem: ApartProblem, goal: readonly ApartNeed[]): (gone: bigint) => number {
  const forced = forcedBy(problem, goal.flatMap(takenAnyway))
  const left = (steps: Iterable<number>, gone: bigint): number => {
    let sum = 0
    for (const step of steps) if (!holds(gone, step)) sum += costOf(problem, step)
    return sum
  }
  const needs = [...goal, ...[...forced].flatMap((step) => problem.needs[step]!)]
  const choices = needs
    .filter(({ ways }) => ways.length > 1)
    .map(({ ways }) => ways.map((way) => forcedBy(problem, [...forced, ...takenBy(way)])))
    .map((sets) => ({ sets, least: Math.min(...sets.map((set) => left(set, 0n))) }))
    .filter(({ least }) => least > left(forced, 0n))
    .sort((a, b) => b.least - a.least)
    .slice(0, mostChoices)
  return (gone) =>
    choices.reduce(
      (most, { sets }) => Math.max(most, Math.min(...sets.map((set) => left(set, gone)))),
      left(forced, gone),
    )
}

/** Whether needs are met, told from the set of what is undone. */
function ready(needs: readonly ApartNeed[]): (gone: bigint) => boolean {
  const all = needs.map(({ ways }) =>
    ways.map((way) =>
      way.map(({ steps, least }) => ({
        steps,
        least,
        mask: steps.reduce((set, step) => set | bit(step), 0n),
      })),
    ),
  )
  const some = ({ steps, least, mask }: (typeof all)[number][number][number], gone: bigint): boolean => {
    const met = gone & mask
    if (least === 1) return met !== 0n
    return least === steps.length ? met === mask : steps.filter((step) => holds(gone, step)).length >= least
  }
  return (gone) => all.every((ways) => ways.some((way) => way.every((one) => some(one, gone))))
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
  from: readonly number[],
  effort: number,
): readonly number[] | null {
  const moves = [...from].sort((a, b) => problem.place[b]! - problem.place[a]!)
  const may = new Map(moves.map((step) => [step, ready(problem.needs[step]!)]))
  const isReached = ready(goal)
  const rest = boundOf(problem, goal)
  const queue: Tried[] = [{ gone: 0n, cost: 0, bound: rest(0n), born: 0 }]
  const seen = new Set<bigint>()
  for (let born = 0; queue.length > 0 && seen.size < effort; ) {
    const { gone, cost } = takeLeast(queue)
    if (seen.has(gone)) continue
    seen.add(gone)
    if (isReached(gone)) return moves.filter((step) => holds(gone, step))
    for (const step of moves) {
      const next = gone | bit(step)
      if (holds(gone, step) || seen.has(next) || !may.get(step)!(gone)) continue
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
  const gone = new Set<number>()
  const isGone = (step: number): boolean => gone.has(step)
  while (left.length > 0) {
    const at = left.findIndex((step) => problem.needs[step]!.every(({ ways }) => isMet(ways, isGone)))
    if (at < 0) return null
    for (const step of left.splice(at, 1)) gone.add(step)
  }
  return [...gone]
}

/** Everything that may be in the way, less what can be left: the greatest harm is tried first. */
function thinned(
  problem: ApartProblem,
  goal: readonly ApartNeed[],
  from: readonly number[],
): readonly number[] {
  let kept = [...from]
  for (const step of [...kept].sort((a, b) => costOf(problem, b) - costOf(problem, a) || a - b)) {
    const without = kept.filter((one) => one !== step)
    const isGone = (one: number): boolean => without.includes(one)
    if (goal.every(({ ways }) => isMet(ways, isGone)) && undoOrder(problem, without)) kept = without
  }
  return undoOrder(problem, kept)!
}
