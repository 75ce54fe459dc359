import { type Pricer, priceOf } from './bench-cost.ts'
import { keepsRules } from './keeps-rules.ts'
import type { RuleBook } from './rules.ts'

/** Most steps gone through while other orders are priced. */
const mostWork = 2_000_000

/** Longest stretch that is moved whole. */
const longest = 6

/** An order made cheaper by moving stretches of a few steps elsewhere as long as that helps and the rules are kept. */
export function improveOrder(book: RuleBook, price: Pricer, order: readonly number[]): readonly number[] {
  let best = order
  let cost = priceOf(price, best)
  let work = 0
  for (let better = true; better; ) {
    better = false
    for (const other of neighbours(best)) {
      work += other.length
      if (work > mostWork) return best
      const sum = priceOf(price, other)
      if (sum >= cost || !keepsRules(book, other)) continue
      best = other
      cost = sum
      better = true
      break
    }
  }
  return best
}

function* neighbours(order: readonly number[]): Generator<readonly number[]> {
  for (let length = 1; length <= Math.min(longest, order.length - 1); length++) {
    for (let from = 0; from + length <= order.length; from++) {
      const stretch = order.slice(from, from + length)
      const rest = [...order.slice(0, from), ...order.slice(from + length)]
      for (let to = 0; to <= rest.length; to++)
        if (to !== from) yield [...rest.slice(0, to), ...stretch, ...rest.slice(to)]
    }
  }
}
