import { nextSteps, type Rule, ruleBook } from './rules.ts'
import { keyOf, type StepSet, setOf, withStep } from './step-set.ts'

/**
 * How many orders of so many steps keep all rules, exactly; `null` when more than `most` sets of done steps would
 * have to be held at once.
 * Method: orders are counted by the set of steps done, one layer for each number of steps. Cost: sets x steps.
 */
export function countOrders(size: number, rules: readonly Rule[], most = 1_000_000): bigint | null {
  const book = ruleBook(size, rules)
  const start = setOf([], book.words)
  let layer = new Map<number | string, { done: StepSet; ways: bigint }>([
    [keyOf(start), { done: start, ways: 1n }],
  ])
  for (let taken = 0; taken < size; taken++) {
    const next: typeof layer = new Map()
    for (const { done, ways } of layer.values()) {
      for (const step of nextSteps(book, done)) {
        const more = withStep(done, step)
        const key = keyOf(more)
        const entry = next.get(key)
        if (entry) entry.ways += ways
        else next.set(key, { done: more, ways })
      }
      if (next.size > most) return null
    }
    layer = next
  }
  return [...layer.values()][0]?.ways ?? 0n
}
