import type { Effort } from './fit-bars.ts'

/** Pieces to choose from: what each kind is worth, how long it is with its cut, and how many there are. */
export interface Worth {
  readonly values: readonly number[]
  readonly weights: readonly number[]
  readonly counts: readonly number[]
}

/** A choice of pieces, and what it is worth. */
export interface WorthSet {
  readonly take: readonly number[]
  readonly value: number
}

/**
 * The pieces of the most worth that go into so much room; `null` where the effort ran out.
 * Method: bounded knapsack by depth first, worth per length descending, cut off by the worth that the rest of the room
 * could hold at best (textbook). `gain` is the least difference that matters. Cost: exponential at worst.
 */
export function fullestWorth(worth: Worth, room: number, gain: number, effort: Effort): WorthSet | null {
  const { values, weights, counts } = worth
  const order = [...values.keys()]
    .filter((k) => values[k]! > 0 && counts[k]! > 0 && weights[k]! <= room)
    .sort((a, b) => values[b]! * weights[a]! - values[a]! * weights[b]! || a - b)
  const take = values.map(() => 0)
  let best: WorthSet = { take: [...take], value: 0 }
  const grow = (at: number, left: number, value: number): void => {
    effort.left -= 1
    if (value > best.value) best = { take: [...take], value }
    const kind = order[at]
    if (kind === undefined || effort.left <= 0) return
    const weight = weights[kind]!
    if (value + (values[kind]! / Math.max(weight, 1)) * left < best.value + gain && weight > 0) return
    const most = weight === 0 ? counts[kind]! : Math.min(counts[kind]!, Math.floor(left / weight))
    for (let count = most; count >= 0; count -= 1) {
      take[kind] = count
      grow(at + 1, left - count * weight, value + count * values[kind]!)
    }
    take[kind] = 0
  }
  grow(0, room, 0)
  return effort.left > 0 ? best : null
}
