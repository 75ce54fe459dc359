/** How much of one resource is taken over time. */
import type { Instant, Minutes } from '../../base/clock.ts'
import { never } from './work-time.ts'

/**
 * Use of one resource as a staircase over time, in two flat arrays: from `times[k]` up to the next time, `levels[k]`
 * is taken. Cost: a question or a change finds its place in O(log steps), then touches the steps in its interval; a
 * change may move the steps behind it (one memory move).
 */
export class Occupation {
  readonly #capacity: number
  #times = new Int32Array(16)
  #levels = new Int32Array(16)
  #count = 1

  /** Nothing taken of `capacity`. */
  constructor(capacity: number) {
    this.#capacity = capacity
    this.#times[0] = -never
  }

  /** Gives everything back. */
  clear(): void {
    this.#count = 1
    this.#levels[0] = 0
  }

  /** Index of the step that `at` lies on. */
  #step(at: Instant): number {
    const times = this.#times
    let low = 0
    let high = this.#count
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (times[middle]! <= at) low = middle
      else high = middle
    }
    return low
  }

  /** Makes `at` the beginning of a step and gives its index. */
  #split(at: Instant): number {
    const k = this.#step(at)
    if (this.#times[k] === at) return k
    if (this.#count === this.#times.length) this.#grow()
    this.#times.copyWithin(k + 2, k + 1, this.#count)
    this.#levels.copyWithin(k + 2, k + 1, this.#count)
    this.#times[k + 1] = at
    this.#levels[k + 1] = this.#levels[k]!
    this.#count++
    return k + 1
  }

  #grow(): void {
    const times = new Int32Array(2 * this.#count)
    const levels = new Int32Array(2 * this.#count)
    times.set(this.#times)
    levels.set(this.#levels)
    this.#times = times
    this.#levels = levels
  }

  /** Joins step `k` to the one before where both are level. */
  #join(k: number): void {
    if (k <= 0 || k >= this.#count || this.#levels[k] !== this.#levels[k - 1]) return
    this.#times.copyWithin(k, k + 1, this.#count)
    this.#levels.copyWithin(k, k + 1, this.#count)
    this.#count--
  }

  /** Takes `amount` during `[open, close)`; a negative amount gives it back. */
  take(open: Instant, close: Instant, amount: number): void {
    if (close <= open || amount === 0) return
    const first = this.#split(open)
    const last = this.#split(close)
    for (let k = first; k < last; k++) this.#levels[k]! += amount
    this.#join(last)
    this.#join(first)
  }

  /** Whether within `[open, close)` nothing is free for as long as `least`, 1 or more. */
  isFull(open: Instant, close: Instant, least: Minutes): boolean {
    let from = open
    for (let k = this.#step(open); k < this.#count && this.#times[k]! < close; k++) {
      if (this.#levels[k]! < this.#capacity) continue
      if (this.#times[k]! - from >= least) return false
      from = k + 1 < this.#count ? this.#times[k + 1]! : close
    }
    return close - from < least
  }

  /** The first instant within `[open, close)` from which on `amount` is free for as long as `least`; `never` where none is. */
  gapWithin(open: Instant, close: Instant, amount: number, least: Minutes): Instant {
    const most = this.#capacity - amount
    let from = open
    for (let k = this.#step(open); k < this.#count && this.#times[k]! < close; k++) {
      if (this.#levels[k]! <= most) continue
      if (this.#times[k]! - from >= least) return from
      from = k + 1 < this.#count ? this.#times[k + 1]! : never
    }
    return close - from >= least ? from : never
  }

  /** Where the last stretch within `[open, close)` that leaves less than `amount` free ends; `-never` where all is free. */
  blockedUntil(open: Instant, close: Instant, amount: number): Instant {
    if (close <= open) return -never
    const most = this.#capacity - amount
    const first = this.#step(open)
    for (let k = this.#step(close - 1); k >= first; k--) {
      if (this.#levels[k]! > most) return k + 1 < this.#count ? this.#times[k + 1]! : never
    }
    return -never
  }

  /** Where the first stretch within `[open, close)` that leaves less than `amount` free begins; `never` where all is free. */
  blockedFrom(open: Instant, close: Instant, amount: number): Instant {
    if (close <= open) return never
    const most = this.#capacity - amount
    for (let k = this.#step(open); k < this.#count && this.#times[k]! < close; k++) {
      if (this.#levels[k]! > most) return this.#times[k]!
    }
    return never
  }
}
