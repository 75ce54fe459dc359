/** Serial generation on flat arrays, in either direction of time. */
import { packedNeeds } from './packed-needs.ts'
import type { PlainProblem, Waits } from './plain-problem.ts'

/** Which way time runs: backwards, a task's start is counted from the end of the plan to its finish. */
export type Direction = 'forward' | 'backward'

/**
 * One schedule: tasks by falling key (who must wait for whom is seen to), each at its earliest fit in the direction.
 * Gives: the length; finishes, counted in the direction, are written to `finish`. `ways` names the way of each task.
 */
export type SerialPass = (
  direction: Direction,
  key: Int32Array,
  ways: Int32Array,
  finish: Int32Array,
) => number

/** Numbers sorted by falling key, lower number first among equals: counted, not compared. */
function sorterOf(size: number): (key: Int32Array, order: Int32Array) => void {
  let counts = new Int32Array(1024)
  return (key, order) => {
    let [least, most] = [key[0]!, key[0]!]
    for (let k = 1; k < size; k++) {
      const at = key[k]!
      if (at < least) least = at
      else if (at > most) most = at
    }
    const range = most - least + 2
    if (range > counts.length) counts = new Int32Array(2 * range)
    else counts.fill(0, 0, range)
    for (let k = 0; k < size; k++) counts[most - key[k]! + 1]!++
    for (let at = 1; at < range; at++) counts[at]! += counts[at - 1]!
    for (let k = 0; k < size; k++) order[counts[most - key[k]!]!++] = k
  }
}

/**
 * The passes of a problem; they share one board. Needs: every way asked for is within capacities.
 * Cost: O(tasks + waits + units looked at) for one pass.
 */
export function serialPassOf(plain: PlainProblem): SerialPass {
  const { size, duration, release, horizon } = plain
  const { words, full, guard, need } = packedNeeds(plain)
  const span = horizon + 1
  const free = new Int32Array(words * span)
  const order = new Int32Array(size)
  const sort = sorterOf(size)
  const noRelease = new Int32Array(size)
  let used = span

  function wipe(): void {
    for (let word = 0; word < words; word++) free.fill(full[word]!, word * span, word * span + used)
    used = 0
  }

  function fitOne(way: number, from: number, length: number): number {
    const [amount, mask] = [need[way]!, guard[0]!]
    let start = from
    for (let at = from; at < start + length; at++) {
      if (((free[at]! - amount) & mask) !== mask) start = at + 1
    }
    for (let at = start; at < start + length; at++) free[at]! -= amount
    return start
  }

  function fitMany(way: number, from: number, length: number): number {
    let start = from
    for (let at = from; at < start + length; at++) {
      for (let word = 0; word < words; word++) {
        const left = free[word * span + at]! - need[way * words + word]!
        if ((left & guard[word]!) !== guard[word]) start = at + 1
      }
    }
    for (let word = 0; word < words; word++) {
      const amount = need[way * words + word]!
      for (let at = start; at < start + length; at++) free[word * span + at]! -= amount
    }
    return start
  }

  const settle = words === 1 ? fitOne : fitMany

  return (direction, key, ways, finish) => {
    const waits: Waits = direction === 'forward' ? plain.before : plain.after
    const { first, task: other, lag } = waits
    const from = direction === 'forward' ? release : noRelease
    sort(key, order)
    wipe()
    finish.fill(-1)
    let length = 0
    const place = (task: number): void => {
      let at = from[task]!
      for (let k = first[task]!, end = first[task + 1]!; k < end; k++) {
        const one = other[k]!
        if (finish[one]! < 0) place(one)
        const bound = finish[one]! + lag[k]!
        if (bound > at) at = bound
      }
      const lasts = duration[ways[task]!]!
      const done = settle(ways[task]!, at, lasts) + lasts
      finish[task] = done
      if (done > length) length = done
      if (done > used) used = done
    }
    for (let k = 0; k < size; k++) {
      const task = order[k]!
      if (finish[task]! < 0) place(task)
    }
    return length
  }
}
