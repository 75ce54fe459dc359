import { nextSteps, type RuleBook } from './rules.ts'
import { has, holdsAny, keyOf, type StepSet, setOf, withStep } from './step-set.ts'

/** Whether some order keeps the rules. */
export type Found =
  | { readonly order: readonly number[] }
  /** `certain`: none exists; else none was found before the sets that may be tried ran out. */
  | { readonly order: null; readonly certain: boolean }

/**
 * An order of the steps not yet done that keeps all but the mixed rules, built from its end; `null` when there is
 * none. A step can come last of the rest when nothing left needs it and of each of its sets one comes later still.
 * Both only get easier as the end grows, so taking any such step never leads astray.
 * Source: precedence of the kind and/or, Möhring, Skutella and Stork, "Scheduling with AND/OR precedence
 * constraints" (2004); from memory. Cost: O(steps² x rules of a step).
 */
export function orderOfTheRest(book: RuleBook, done: StepSet): number[] | null {
  const later = new Uint32Array(book.words)
  const rest: number[] = []
  for (let step = 0; step < book.size; step++) if (!has(done, step)) rest.push(step)
  const end: number[] = []
  while (rest.length > 0) {
    const at = rest.findLastIndex((step) => canBeLast(book, rest, later, step))
    if (at < 0) return null
    const [step] = rest.splice(at, 1)
    end.push(step!)
    later[step! >>> 5]! |= 1 << (step! & 31)
  }
  return end.reverse()
}

function canBeLast(book: RuleBook, rest: readonly number[], later: StepSet, step: number): boolean {
  return (
    book.beforeLast[step]!.every((set) => holdsAny(later, set) || has(set, step)) &&
    !rest.some((other) => has(book.required[other]!, step))
  )
}

/**
 * Some order that keeps all rules. Without mixed rules the answer is certain at once; with them sets of done steps
 * are searched depth first, each set at most once and at most `most` of them.
 */
export function findOrder(book: RuleBook, most: number): Found {
  const loose = orderOfTheRest(book, setOf([], book.words))
  if (loose === null) return { order: null, certain: true }
  return book.plain ? { order: loose } : searchDeep(book, most)
}

interface Visit {
  readonly done: StepSet
  readonly next: readonly number[]
  tried: number
}

function searchDeep(book: RuleBook, most: number): Found {
  const start = setOf([], book.words)
  const seen = new Set([keyOf(start)])
  const path: Visit[] = [{ done: start, next: nextSteps(book, start), tried: 0 }]
  while (path.length > 0) {
    if (path.length > book.size)
      return { order: path.slice(0, -1).map(({ next, tried }) => next[tried - 1]!) }
    const top = path.at(-1)!
    const step = top.next[top.tried++]
    if (step === undefined) {
      path.pop()
      continue
    }
    const done = withStep(top.done, step)
    const key = keyOf(done)
    if (seen.has(key)) continue
    if (seen.size >= most) return { order: null, certain: false }
    seen.add(key)
    const open = orderOfTheRest(book, done) !== null
    path.push({ done, next: open ? nextSteps(book, done) : [], tried: 0 })
  }
  return { order: null, certain: true }
}
