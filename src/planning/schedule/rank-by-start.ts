import { placesOf } from '../../base/places-of.ts'

/** Ranks of tasks in the order in which a plan begins them; what begins together goes by finish, then by number. */
export function rankByStart({
  start,
  finish,
}: {
  readonly start: ArrayLike<number>
  readonly finish: ArrayLike<number>
}): Int32Array {
  const order = Array.from(start, (_, task) => task)
  return placesOf(order.sort((a, b) => start[a]! - start[b]! || finish[a]! - finish[b]! || a - b))
}
