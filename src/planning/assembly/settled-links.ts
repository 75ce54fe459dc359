import type { Condition, Rule } from './rules.ts'

/** A link between two steps by number. */
export interface Pair {
  readonly before: number
  readonly after: number
}

/**
 * The links that make a rule hold in every order that keeps them, its choices settled as in the order given.
 * Of several conditions the one with the fewest links is taken. Of an opening that is shut and opened in turn, the
 * step is tied to the last change before it and the first after it; that the changes keep their own order is for
 * their own rules.
 * Needs: `place` says where each step stands in an order that keeps the rule.
 */
export function settledLinks({ step, any }: Rule, place: ArrayLike<number>): readonly Pair[] {
  const ways = any.flatMap((condition) => {
    const pairs = pairsOf(condition, step, place)
    return pairs === null ? [] : [pairs]
  })
  return ways.reduce((best, pairs) => (pairs.length < best.length ? pairs : best), ways[0] ?? [])
}

/** Links for one condition; `null` where it does not hold in the order. */
function pairsOf(condition: Condition, step: number, place: ArrayLike<number>): readonly Pair[] | null {
  const sorted = (steps: readonly number[]) => [...steps].sort((a, b) => place[a]! - place[b]!)
  const isBefore = (other: number) => place[other]! < place[step]!
  if (condition.kind === 'some done') {
    const first = sorted(condition.of)[0]
    return first !== undefined && isBefore(first) ? [{ before: first, after: step }] : null
  }
  if (condition.kind === 'not all done') {
    const last = sorted(condition.of).at(-1)
    if (last === undefined || isBefore(last)) return null
    return last === step ? [] : [{ before: step, after: last }]
  }
  const shutBy = condition.shuts.filter(isBefore).length - condition.opens.filter(isBefore).length
  if (shutBy > 0 !== condition.is) return null
  const changes = sorted([...condition.shuts, ...condition.opens]).filter((other) => other !== step)
  const last = changes.filter(isBefore).at(-1)
  const next = changes.find((other) => !isBefore(other))
  return [
    ...(last === undefined ? [] : [{ before: last, after: step }]),
    ...(next === undefined ? [] : [{ before: step, after: next }]),
  ]
}
