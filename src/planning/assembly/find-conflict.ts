import { findRings } from '../../graph/find-rings.ts'
import { findOrder, orderOfTheRest } from './find-order.ts'
import { type Rule, ruleBook } from './rules.ts'
import { setOf } from './step-set.ts'

/** Statements that cannot hold together, by number. */
export interface Conflict {
  readonly statements: readonly number[]
  /** Steps that wait for each other, where it is a plain ring: the statement of the same place makes each wait for the one before it. */
  readonly ring: readonly number[] | null
  /** Whether each of them is needed: without it the others can hold together. */
  readonly minimal: boolean
}

/**
 * Statements that no order can keep together, few and none to spare: a shortest ring of plain waits where there is
 * one, else what is left when every statement that can be spared is taken out, tried from the last to the first and
 * from the first to the last, whichever leaves fewer.
 * Needs: no order keeps all of them. Cost: one search for an order for each statement, twice; `most` sets in each.
 */
export function findConflict(size: number, statements: readonly (readonly Rule[])[], most: number): Conflict {
  const ring = plainRing(size, statements)
  if (ring) return ring
  const all = statements.map((_, number) => number)
  const down = filtered(size, statements, [...all].reverse(), most)
  const up = filtered(size, statements, all, most)
  return up.statements.length < down.statements.length ? up : down
}

function plainRing(size: number, statements: readonly (readonly Rule[])[]): Conflict | null {
  const successors: number[][] = Array.from({ length: size }, () => [])
  const by = new Map<string, number>()
  for (const [number, rules] of statements.entries()) {
    for (const { step, any } of rules) {
      const [only] = any
      if (any.length !== 1 || only!.kind !== 'some done' || only!.of.length !== 1) continue
      const first = only!.of[0]!
      if (by.has(`${first},${step}`)) continue
      by.set(`${first},${step}`, number)
      successors[first]!.push(step)
    }
  }
  const rings = findRings(successors).map(({ ring }) => ring)
  if (rings.length === 0) return null
  const ring = rings.reduce((best, one) => (one.length < best.length ? one : best))
  const used = ring.map((step, k) => by.get(`${ring.at(k - 1)},${step}`)!)
  return { statements: used, ring, minimal: true }
}

function filtered(
  size: number,
  statements: readonly (readonly Rule[])[],
  trials: readonly number[],
  most: number,
): Conflict {
  const kept = new Set(trials)
  let minimal = true
  for (const trial of trials) {
    kept.delete(trial)
    const book = ruleBook(
      size,
      [...kept].flatMap((number) => statements[number]!),
    )
    const found = orderOfTheRest(book, setOf([], book.words)) === null ? null : findOrder(book, most)
    if (found === null || (found.order === null && found.certain)) continue
    kept.add(trial)
    if (found.order === null) minimal = false
  }
  return { statements: [...kept].sort((a, b) => a - b), ring: null, minimal }
}
