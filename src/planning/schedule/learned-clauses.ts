/** Statements of which at least one must hold, learned from conflicts, and what follows from them. */
import type { BoundTrail, Statement } from './bound-trail.ts'

const head = 2

/**
 * Clauses in one flat store: at `clause` its length, then how many levels it joined, then its statements. Two of them
 * are watched: a clause is looked at only when a watched one turns false.
 */
export class LearnedClauses {
  readonly #trail: BoundTrail
  #store: Int32Array = new Int32Array(1 << 16)
  #end = 0
  #all: number[] = []
  /** By statement: the clauses that watch it, each after another statement whose truth spares the look. */
  readonly #watchers: number[][]

  constructor(trail: BoundTrail) {
    this.#trail = trail
    this.#watchers = Array.from({ length: 2 * trail.atoms }, () => [])
  }

  get count(): number {
    return this.#all.length
  }

  /** Takes in a clause, the first two statements watched. Needs: two statements or more. */
  add(statements: readonly Statement[], levels: number): number {
    const clause = this.#end
    while (clause + head + statements.length > this.#store.length) {
      const more = new Int32Array(2 * this.#store.length)
      more.set(this.#store)
      this.#store = more
    }
    this.#store[clause] = statements.length
    this.#store[clause + 1] = levels
    this.#store.set(statements, clause + head)
    this.#end += head + statements.length
    this.#all.push(clause)
    this.#watch(clause)
    return clause
  }

  #watch(clause: number): void {
    const [a, b] = [this.#store[clause + head]!, this.#store[clause + head + 1]!]
    this.#watchers[a]!.push(b, clause)
    this.#watchers[b]!.push(a, clause)
  }

  /** The statements of a clause, denied; without its first, which the others made true, where `implied`. */
  explain(clause: number, implied: boolean, into: Statement[]): void {
    const end = clause + head + this.#store[clause]!
    for (let k = clause + head + (implied ? 1 : 0); k < end; k++) into.push(this.#store[k]! ^ 1)
  }

  /** What follows now that a statement is false. Gives: the clause no statement of which can hold any more, or -1. */
  denied(statement: Statement): number {
    const watchers = this.#watchers[statement]!
    const trail = this.#trail
    let kept = 0
    let k = 0
    let broken = -1
    while (k < watchers.length) {
      const spare = watchers[k]!
      const clause = watchers[k + 1]!
      k += 2
      if (trail.truth(spare) > 0) {
        watchers[kept++] = spare
        watchers[kept++] = clause
        continue
      }
      const store = this.#store
      const at = clause + head
      if (store[at] === statement) {
        store[at] = store[at + 1]!
        store[at + 1] = statement
      }
      const first = store[at]!
      if (first !== spare && trail.truth(first) > 0) {
        watchers[kept++] = first
        watchers[kept++] = clause
        continue
      }
      if (this.#rewatch(clause, first)) continue
      watchers[kept++] = first
      watchers[kept++] = clause
      if (trail.truth(first) < 0) {
        broken = clause
        break
      }
      trail.make(first, 4 * clause)
    }
    while (k < watchers.length) watchers[kept++] = watchers[k++]!
    watchers.length = kept
    return broken
  }

  /** Watches a statement that is not false in place of the second. */
  #rewatch(clause: number, first: Statement): boolean {
    const store = this.#store
    const second = clause + head + 1
    const end = clause + head + store[clause]!
    for (let k = second + 1; k < end; k++) {
      const statement = store[k]!
      if (this.#trail.truth(statement) < 0) continue
      store[k] = store[second]!
      store[second] = statement
      this.#watchers[statement]!.push(first, clause)
      return true
    }
    return false
  }

  /** Forgets the worse half: clauses that join many levels. Needs: no bound beyond level 0 stands. */
  forget(): void {
    const levels = (clause: number) => this.#store[clause + 1]!
    const ranked = [...this.#all].sort((a, b) => levels(a) - levels(b) || b - a)
    const kept = ranked
      .filter((clause, k) => k < ranked.length / 2 || levels(clause) <= 2)
      .sort((a, b) => a - b)
    for (const watchers of this.#watchers) watchers.length = 0
    let end = 0
    this.#all = kept.map((clause) => {
      const length = head + this.#store[clause]!
      this.#store.copyWithin(end, clause, clause + length)
      end += length
      return end - length
    })
    this.#end = end
    for (const clause of this.#all) this.#watch(clause)
  }
}
