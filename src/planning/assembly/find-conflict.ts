import { findRings } from '../../graph/find-rings.ts'
import { type Found, findOrder } from './find-order.ts'
import { keepsRules } from './keeps-rules.ts'
import { type Rule, ruleBook } from './rules.ts'
import { smallestConflict } from './smallest-conflict.ts'

/** Statements that cannot hold together, by number. */
export interface Conflict {
  readonly statements: readonly number[]
  /** Steps that wait for each other, where it is a plain ring: the statement of the same place makes each wait for the one before it. */
  readonly ring: readonly number[] | null
  /** Whether each of them is needed: without it the others can hold together. */
  readonly minimal: boolean
  /** Whether no fewer statements are in conflict. */
  readonly smallest: boolean
}

/**
 * Statements that no order can keep together, few and none to spare: a shortest ring of plain waits where there is
 * one, else what is left when every statement that can be spared is taken out, tried from the last to the first and
 * from the first to the last, whichever leaves fewer. Of not too many statements a smallest set is then looked for.
 * Needs: no order keeps all of them. Cost: one search for an order for each statement, twice, and for each round of
 * `smallestConflict`; `most` sets in each.
 */
export function findConflict(size: number, statements: readonly (readonly Rule[])[], most: number): Conflict {
  const found = plainRing(size, statements) ?? fewest(size, statements, most)
  if (!found.minimal) return found
  const grown = (from: readonly number[]) => grow(size, statements, from, most)
  const smallest = smallestConflict({ count: statements.length, grown }, found.statements)
  if (smallest.statements === found.statements) return { ...found, smallest: smallest.smallest }
  return { ...smallest, ring: null, minimal: true }
}

function fewest(size: number, statements: readonly (readonly Rule[])[], most: number): Conflict {
  const all = statements.map((_, number) => number)
  const down = filtered(size, statements, [...all].reverse(), most)
  const up = filtered(size, statements, all, most)
  return up.statements.length < down.statements.length ? up : down
}

/** As many statements as hold together with those given: at first all that an order for them keeps, then one by one. */
function grow(
  size: number,
  statements: readonly (readonly Rule[])[],
  from: readonly number[],
  most: number,
): readonly number[] | null | undefined {
  const holdsIn = (order: readonly number[]) => (number: number) =>
    keepsRules(ruleBook(size, statements[number]!), order)
  const all = statements.map((_, number) => number)
  const first = orderFor(size, statements, from, most)
  if (first.order === null) return first.certain ? null : undefined
  let kept = all.filter(holdsIn(first.order))
  for (const number of all) {
    if (kept.includes(number)) continue
    const found = orderFor(size, statements, [...kept, number], most)
    if (found.order !== null) kept = all.filter(holdsIn(found.order))
    else if (!found.certain) return undefined
  }
  return kept
}

function orderFor(
  size: number,
  statements: readonly (readonly Rule[])[],
  of: readonly number[],
  most: number,
): Found {
  return findOrder(
    ruleBook(
      size,
      of.flatMap((number) => statements[number]!),
    ),
    most,
  )
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
  return { statements: used, ring, minimal: true, smallest: false }
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
    const found = orderFor(size, statements, [...kept], most)
    if (found.order === null && found.certain) continue
    kept.add(trial)
    if (found.order === null) minimal = false
  }
  return { statements: [...kept].sort((a, b) => a - b), ring: null, minimal, smallest: false }
}
