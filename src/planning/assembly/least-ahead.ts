import { ancestors } from './ancestors.ts'
import type { Pricer, Standing } from './bench-cost.ts'
import { type ChangesAhead, changesAhead } from './changes-ahead.ts'
import type { RuleBook } from './rules.ts'
import { countLeft, has, holdsAll, type StepSet, setOf } from './step-set.ts'

/** No less than this is still to come; never more than the truth. Past `room` it need not be exact. */
export type LeastAhead = (done: StepSet, standing: number, place: number, room: number) => number

/**
 * What an order still costs at the least from a state: turnings over and tool changes that the required steps force
 * (`changesAhead`), one event for every pair of side and tool not yet visited, and for each test the steps it waits for.
 * Turnings weigh most: where there are just as few of them, the pairs left over must be tool changes.
 */
export function leastAhead(book: RuleBook, price: Pricer): LeastAhead {
  const turns = turnsAhead(book, price)
  const tools = changesAhead(book, price.tool)
  const pairs = [
    pairsAhead(book, price.from, price.tool, (now) => now.from),
    pairsAhead(book, price.turn, price.tool, (now) => now.turn),
  ]
  const tests = testsAhead(book, price)
  return (done, standing, place, room) => {
    const now = price.stands(standing)
    const turnings = turns(done, now, place)
    if (turnings * price.units.turn > room) return turnings * price.units.turn
    const visits = Math.max(...pairs.map((ahead) => ahead(done, now, place)))
    const changes = Math.max(tools(done, now.tool, true), visits - turnings)
    return turnings * price.units.turn + changes * price.units.tool + tests(done, place)
  }
}

/** Whether turnings come from directions alone or from sides up alone, so that how the work lies is one thing. */
export const onlyOneWay = ({ from, turn }: Pricer): boolean =>
  from.every((kind) => kind === 0) || turn.every((kind) => kind === 0)

function turnsAhead(book: RuleBook, price: Pricer): (done: StepSet, now: Standing, place: number) => number {
  const { from, turn } = price
  const sides: ChangesAhead = changesAhead(book, turn)
  if (turn.every((kind) => kind === 0)) {
    const directions = changesAhead(book, from)
    return (done, now) => directions(done, now.from, true)
  }
  if (onlyOneWay(price)) return (done, now, place) => sides(done, now.turn, place === 0)
  return (done, now, place) => {
    if (place === 0) return sides(done, 0, true)
    const free = countKinds(turn, done) + (now.from === 0 ? 1 : 0)
    const both = kindsLeft(turn, done, now.turn) + Math.max(0, kindsLeft(from, done, now.from) - free)
    return Math.max(both, sides(done, now.turn, false))
  }
}

/** How many different kinds other than 0 and `but` the steps not done have. */
function kindsLeft(of: readonly number[], done: StepSet, but: number): number {
  const kinds = new Set<number>()
  for (const [step, kind] of of.entries()) if (kind > 0 && kind !== but && !has(done, step)) kinds.add(kind)
  return kinds.size
}

function countKinds(of: readonly number[], done: StepSet): number {
  return of.reduce((count, kind, step) => count + (kind > 0 && !has(done, step) ? 1 : 0), 0)
}

/** Each pair of kinds first met from now on takes a change of one or the other, but the one at hand. */
function pairsAhead(
  book: RuleBook,
  kinds: readonly number[],
  tools: readonly number[],
  at: (now: Standing) => number,
): (done: StepSet, now: Standing, place: number) => number {
  const steps = new Map<string, { kind: number; tool: number; of: number[] }>()
  for (const [step, kind] of kinds.entries()) {
    const tool = tools[step]!
    if (kind === 0 || tool === 0) continue
    const pair = steps.get(`${kind},${tool}`) ?? { kind, tool, of: [] }
    steps.set(`${kind},${tool}`, pair)
    pair.of.push(step)
  }
  const pairs = [...steps.values()].map(({ of, ...pair }) => ({ ...pair, of: setOf(of, book.words) }))
  return (done, now, place) => {
    const here = at(now)
    let count = 0
    for (const { kind, tool, of } of pairs)
      if ((kind !== here || tool !== now.tool) && !holdsAll(done, of)) count++
    const unknown = place === 0 || here === 0 || now.tool === 0
    return Math.max(0, unknown ? count - 1 : count)
  }
}

/** Sum of the places of the tests left, each after all that it waits for and no two at one place. */
function testsAhead(book: RuleBook, price: Pricer): (done: StepSet, place: number) => number {
  const before = ancestors(book)
  const tests = price.tests.flatMap((test, step) => (test ? [step] : []))
  return (done, place) => {
    const earliest: number[] = []
    for (const test of tests) if (!has(done, test)) earliest.push(place + 1 + countLeft(done, before[test]!))
    earliest.sort((a, b) => a - b)
    let [sum, last] = [0, 0]
    for (const one of earliest) {
      last = Math.max(last + 1, one)
      sum += last
    }
    return sum
  }
}
