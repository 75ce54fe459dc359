import type { RuleBook } from './rules.ts'
import { has, type StepSet, setOf } from './step-set.ts'

/** By step: all that must be done before it in every order, as far as its required steps and theirs tell. */
export function ancestors(book: RuleBook): readonly StepSet[] {
  const all: (StepSet | null)[] = Array.from({ length: book.size }, () => null)
  const gather = (step: number): StepSet => {
    const known = all[step]
    if (known) return known
    const set = setOf([], book.words)
    // Stands in while its own are gathered, so that a ring ends.
    all[step] = set
    for (let other = 0; other < book.size; other++) {
      if (!has(book.required[step]!, other)) continue
      for (const [w, word] of gather(other).entries()) set[w]! |= word
      set[other >>> 5]! |= 1 << (other & 31)
    }
    return set
  }
  for (let step = 0; step < book.size; step++) gather(step)
  return all as readonly StepSet[]
}
