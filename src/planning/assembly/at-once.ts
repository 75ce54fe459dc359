import { ancestors } from './ancestors.ts'
import type { Pricer } from './bench-cost.ts'
import { onlyOneWay } from './least-ahead.ts'
import type { RuleBook } from './rules.ts'
import { countLeft, has, type StepSet } from './step-set.ts'

/** Of the steps that may be next, one that no order is better for putting off; `null` where there is none. */
export type AtOnce = (done: StepSet, standing: number, next: readonly number[]) => number | null

/**
 * Finds steps to be taken at once: they turn nothing over, change no tool, shut nothing out, and are tests or are
 * waited for by every test left. In any order that does such a step later it can be moved to now: what it sets free
 * is free sooner, leaving it out later adds no change, and no test comes later.
 * Holds where how the work lies is one thing (`onlyOneWay`); elsewhere none is found.
 */
export function atOnce(book: RuleBook, price: Pricer): AtOnce {
  if (!onlyOneWay(price)) return () => null
  const before = ancestors(book)
  const tests = price.tests.flatMap((test, step) => (test ? [step] : []))
  return (done, standing, next) => {
    const now = price.stands(standing)
    const stays = (kind: number, at: number) => kind === 0 || kind === at
    const left = tests.filter((test) => !has(done, test))
    const found = next.find(
      (step) =>
        stays(price.from[step]!, now.from) &&
        stays(price.turn[step]!, now.turn) &&
        stays(price.tool[step]!, now.tool) &&
        (price.tests[step] || left.every((test) => has(before[test]!, step))) &&
        countLeft(done, book.shutsOut[step]!) === 0,
    )
    return found ?? null
  }
}
