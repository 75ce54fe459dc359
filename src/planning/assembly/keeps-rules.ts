import { mayTake, type RuleBook } from './rules.ts'
import { add, setOf } from './step-set.ts'

/** Whether an order of all steps keeps the rules. */
export function keepsRules(book: RuleBook, order: readonly number[]): boolean {
  const done = setOf([], book.words)
  for (const step of order) {
    if (!mayTake(book, done, step)) return false
    add(done, step)
  }
  return true
}
