import type { RuleBook } from './rules.ts'
import { add, has, type StepSet, setOf } from './step-set.ts'

/** The steps left, in parts such that no rule that may still say something ties two of them together. */
export type Apart = (left: StepSet) => readonly StepSet[]

/** Splits what is left of the steps where the order of one part asks nothing of another's. */
export function partsApart(book: RuleBook): Apart {
  const always = lastingTies(book)
  const mixed = book.mixed.flatMap((rules, step) => rules.map((rule) => ({ step, rule })))
  const ties = always.map((set) => set.slice())
  let touched = new Set<number>()
  const tiesOf = (left: StepSet): readonly StepSet[] => {
    if (mixed.length === 0) return always
    for (const step of touched) ties[step]!.set(always[step]!)
    touched = new Set()
    const done = left.map((word) => ~word)
    for (const { step, rule } of mixed)
      if (has(left, step) && !rule.settled(done)) tie(ties, step, rule.looksAt, touched)
    return ties
  }
  return (left) => {
    const ties = tiesOf(left)
    const rest = left.slice()
    const parts: StepSet[] = []
    for (let first = lowest(rest); first >= 0; first = lowest(rest)) parts.push(takePart(rest, first, ties))
    return parts
  }
}

/** Ties of waits and of what must come before the last of a list, both ways. */
function lastingTies(book: RuleBook): readonly StepSet[] {
  const ties = Array.from({ length: book.size }, () => setOf([], book.words))
  for (let step = 0; step < book.size; step++) {
    tie(ties, step, book.required[step]!)
    for (const set of book.beforeLast[step]!) if (!has(set, step)) tie(ties, step, set)
  }
  return ties
}

/** Ties a step to those of a set, both ways; which rows changed is noted in `touched`. */
function tie(ties: readonly StepSet[], step: number, to: StepSet, touched?: Set<number>): void {
  touched?.add(step)
  for (const [w, word] of to.entries())
    for (let left = word; left !== 0; left &= left - 1) {
      const other = 32 * w + 31 - Math.clz32(left & -left)
      add(ties[step]!, other)
      add(ties[other]!, step)
      touched?.add(other)
    }
}

/** Takes the part that `first` belongs to out of `rest`. */
function takePart(rest: StepSet, first: number, ties: readonly StepSet[]): StepSet {
  const part = setOf([first], rest.length)
  const fresh = part.slice()
  for (let step = first; step >= 0; step = lowest(fresh)) {
    fresh[step >>> 5]! &= ~(1 << (step & 31))
    rest[step >>> 5]! &= ~(1 << (step & 31))
    for (let w = 0; w < rest.length; w++) {
      const more = ties[step]![w]! & rest[w]! & ~part[w]!
      part[w]! |= more
      fresh[w]! |= more
    }
  }
  return part
}

/** The lowest step of a set; -1 where it is empty. */
function lowest(set: StepSet): number {
  for (let w = 0; w < set.length; w++) if (set[w] !== 0) return 32 * w + 31 - Math.clz32(set[w]! & -set[w]!)
  return -1
}
