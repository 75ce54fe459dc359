import { fresh } from './bench-cost.ts'
import type { Explorer, Stand } from './explorer.ts'
import type { RuleBook } from './rules.ts'
import { keyOf, setOf } from './step-set.ts'

interface Partial extends Stand {
  readonly cost: number
  readonly least: number
  readonly steps: readonly number[]
}

/**
 * A good order soon: for each number of steps done only the `width` most promising states are kept. `null`: they all
 * ran into dead ends, which does not mean that there is no order.
 */
export function narrowOrder(book: RuleBook, explore: Explorer, width: number): readonly number[] | null {
  const start = { done: setOf([], book.words), standing: fresh, place: 0 }
  let layer: readonly Partial[] = [{ ...start, cost: 0, least: 0, steps: [] }]
  for (let place = 0; place < book.size && layer.length > 0; place++) {
    const reached = new Map<string, Partial>()
    for (const one of layer) {
      for (const { step, cost, least, to } of explore.moves(one, Number.POSITIVE_INFINITY, false)) {
        const key = `${keyOf(to.done)}/${to.standing}`
        const next = { ...to, cost: one.cost + cost, least: one.cost + least, steps: [...one.steps, step] }
        const known = reached.get(key)
        if (!known || next.cost < known.cost) reached.set(key, next)
      }
    }
    layer = [...reached.values()].sort((a, b) => a.least - b.least).slice(0, width)
  }
  return layer[0]?.steps ?? null
}
