import { ancestors } from './ancestors.ts'
import type { RuleBook } from './rules.ts'
import { StateTable } from './state-table.ts'
import { add, countIn, has, holdsAll, type StepSet, setOf } from './step-set.ts'

/** Most states remembered; past them a plainer bound serves. */
const mostRemembered = 20_000

/** No fewer changes of kind are still to come. `free`: the first kind costs nothing while none is known (0). */
export type ChangesAhead = (done: StepSet, current: number, free: boolean) => number

/**
 * How often the kind (side up, direction or tool) must still change, where only what each step requires is asked:
 * with one kind at hand everything that can be done with it is done before it is changed, which is never worse,
 * since such steps only set others free. Of all sequences of kinds the shortest counts.
 * Needs: no ring in what steps require. Gives: exact for rules of that form, else no more than the truth.
 */
export function changesAhead(book: RuleBook, kinds: readonly number[]): ChangesAhead {
  const known = new StateTable(book.words)
  const sets = setsOfKinds(book, kinds)
  if (sets.length <= 1) return () => 0
  const close = closer(book, kinds)
  const kindsLeft = (done: StepSet, but: number): number => {
    let left = 0
    for (const [kind, set] of sets.entries()) if (kind > 0 && kind !== but && !holdsAll(done, set)) left++
    return left
  }
  const atHand = (done: StepSet, kind: number): boolean => {
    for (let step = 0; step < book.size; step++)
      if (kinds[step] === kind && !has(done, step) && holdsAll(done, book.required[step]!)) return true
    return false
  }
  const ahead = (done: StepSet, kind: number): number => {
    const least = kindsLeft(done, kind)
    if (least === 0) return 0
    const told = known.get(done, kind)
    if (!Number.isNaN(told)) return told
    if (known.size >= mostRemembered) return least
    let best = Number.POSITIVE_INFINITY
    for (let next = 1; next < sets.length && best > least; next++)
      if (next !== kind && atHand(done, next)) best = Math.min(best, 1 + ahead(close(done, next), next))
    const value = best === Number.POSITIVE_INFINITY ? least : best
    known.put(done, kind, value)
    return value
  }
  return (done, current, free) => {
    const all = close(done, current)
    if (current > 0 || !free) return ahead(all, current)
    let best = Number.POSITIVE_INFINITY
    for (let kind = 1; kind < sets.length; kind++)
      if (atHand(all, kind)) best = Math.min(best, ahead(close(all, kind), kind))
    return best === Number.POSITIVE_INFINITY ? 0 : best
  }
}

/** Steps by kind; what is of no kind stands first. */
function setsOfKinds(book: RuleBook, kinds: readonly number[]): readonly StepSet[] {
  const most = Math.max(0, ...kinds)
  return Array.from({ length: most + 1 }, (_, kind) =>
    setOf(
      kinds.flatMap((one, step) => (one === kind ? [step] : [])),
      book.words,
    ),
  )
}

/** Gives what is done once all has been done that a kind allows. */
function closer(book: RuleBook, kinds: readonly number[]): (done: StepSet, kind: number) => StepSet {
  const all = setOf(
    Array.from({ length: book.size }, (_, step) => step),
    book.words,
  )
  const before = ancestors(book)
  const later = (step: number): number => countIn(all, before[step]!)
  const inOrder = kinds.map((_, step) => step).sort((a, b) => later(a) - later(b) || a - b)
  const allowed = (kind: number) => inOrder.filter((step) => kinds[step] === 0 || kinds[step] === kind)
  const byKind = Array.from({ length: Math.max(0, ...kinds) + 1 }, (_, kind) => allowed(kind))
  return (from, kind) => {
    const done = from.slice()
    for (const step of byKind[kind]!)
      if (!has(done, step) && holdsAll(done, book.required[step]!)) add(done, step)
    return done
  }
}
