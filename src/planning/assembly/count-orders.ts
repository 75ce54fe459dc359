import { inOneOrder, interchangeable } from './interchangeable.ts'
import { partsApart } from './parts-apart.ts'
import { mayTake, type Rule, type RuleBook, ruleBook } from './rules.ts'
import { countIn, has, keyOf, type StepSet, setOf } from './step-set.ts'

/**
 * How many orders of so many steps keep all rules, exactly; `null` when more than `most` sets of steps would have to
 * be gone into.
 * Method: what is left of the steps falls apart into parts that no rule ties together any more; each is counted by
 * itself and they are shuffled into each other. A part that does not fall apart is counted by its first step. Steps
 * that can change places are counted in one order, times the ways to exchange them. Cost: sets x steps x rules.
 */
export function countOrders(size: number, rules: readonly Rule[], most = 1_000_000): bigint | null {
  const classes = interchangeable(size, rules, () => true)
  const book = ruleBook(size, [...rules, ...inOneOrder(classes)])
  const one = counter(book, most)(setOf(numbersBelow(size), book.words))
  return one === null ? null : classes.reduce((product, { length }) => product * factorial(length), one)
}

function counter(book: RuleBook, most: number): (left: StepSet) => bigint | null {
  const all = setOf(numbersBelow(book.size), book.words)
  const apart = partsApart(book)
  const known = new Map<number | string, bigint>()
  const ofPart = (left: StepSet): bigint | null => {
    const key = keyOf(left)
    const told = known.get(key)
    if (told !== undefined) return told
    if (known.size >= most) return null
    const done = all.map((word, w) => word & ~left[w]!)
    let sum = 0n
    for (let step = 0; step < book.size; step++) {
      if (!has(left, step) || !mayTake(book, done, step)) continue
      const ways = ofAll(without(left, step))
      if (ways === null) return null
      sum += ways
    }
    known.set(key, sum)
    return sum
  }
  const ofAll = (left: StepSet): bigint | null => {
    const parts = apart(left)
    if (parts.length === 1) return ofPart(parts[0]!)
    let [ways, placed] = [1n, 0]
    for (const part of parts) {
      const own = ofPart(part)
      if (own === null) return null
      const steps = countIn(part, all)
      placed += steps
      ways *= own * choose(placed, steps)
    }
    return ways
  }
  return ofAll
}

const numbersBelow = (size: number): readonly number[] => Array.from({ length: size }, (_, step) => step)

function without(set: StepSet, step: number): StepSet {
  const rest = set.slice()
  rest[step >>> 5]! &= ~(1 << (step & 31))
  return rest
}

const factorial = (n: number): bigint => numbersBelow(n).reduce((product, k) => product * BigInt(k + 1), 1n)

const choose = (n: number, k: number): bigint => factorial(n) / (factorial(k) * factorial(n - k))
