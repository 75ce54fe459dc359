/** Parallel generation on flat arrays: time goes on from event to event, and whatever may start and fits starts. */
import { packedNeeds } from './packed-needs.ts'
import type { PlainProblem } from './plain-problem.ts'

/** One schedule: at each instant the tasks that may start, by falling key, as far as they fit. Finishes go to `finish`. */
export type ParallelPass = (key: Int32Array, ways: Int32Array, finish: Int32Array) => number

/** The forward pass of a problem. Needs: every way asked for is within capacities. Cost: O(tasks x (waits + tasks ready)). */
export function parallelPassOf(plain: PlainProblem): ParallelPass {
  const { size, duration, release, before, after } = plain
  const { words, full, guard, need } = packedNeeds(plain)
  const free = new Int32Array(words)
  const unmet = new Int32Array(size)
  const from = new Int32Array(size)
  const open: number[] = []
  const running: number[] = []

  const fits = (way: number): boolean => {
    for (let word = 0; word < words; word++) {
      const left = free[word]! - need[way * words + word]!
      if ((left & guard[word]!) !== guard[word]) return false
    }
    return true
  }
  const take = (way: number, sign: 1 | -1): void => {
    for (let word = 0; word < words; word++) free[word]! -= sign * need[way * words + word]!
  }
  /** Takes a task in where it stands by key; what is open is in falling key. */
  const admit = (task: number, key: Int32Array): void => {
    let at = open.length
    open.push(task)
    while (at > 0 && key[open[at - 1]!]! < key[task]!) {
      open[at] = open[at - 1]!
      at--
    }
    open[at] = task
  }

  /** Gives back what has ended by now; the next end. */
  const giveBack = (now: number, ways: Int32Array, finish: Int32Array): number => {
    let next = Number.POSITIVE_INFINITY
    for (let k = running.length - 1; k >= 0; k--) {
      const task = running[k]!
      if (finish[task]! > now) next = Math.min(next, finish[task]!)
      else {
        take(ways[task]!, -1)
        running[k] = running.at(-1)!
        running.pop()
      }
    }
    return next
  }
  /** Tells those that wait for a task that it is done; whether any of them is now open. */
  const tell = (task: number, done: number, key: Int32Array): boolean => {
    const count = open.length
    for (let k = after.first[task]!; k < after.first[task + 1]!; k++) {
      const other = after.task[k]!
      from[other] = Math.max(from[other]!, done + after.lag[k]!)
      if (--unmet[other]! === 0) admit(other, key)
    }
    return open.length > count
  }
  const begin = (key: Int32Array): void => {
    free.set(full)
    from.set(release)
    open.length = 0
    running.length = 0
    for (let task = 0; task < size; task++) {
      unmet[task] = before.first[task + 1]! - before.first[task]!
      if (unmet[task] === 0) admit(task, key)
    }
  }

  return (key, ways, finish) => {
    begin(key)
    let [left, now, length] = [size, 0, 0]
    while (left > 0) {
      let next = giveBack(now, ways, finish)
      for (let k = 0; k < open.length; ) {
        const task = open[k]!
        const way = ways[task]!
        if (from[task]! > now) next = Math.min(next, from[task]!)
        if (from[task]! > now || (duration[way]! > 0 && !fits(way))) {
          k++
          continue
        }
        open.splice(k, 1)
        left--
        const done = now + duration[way]!
        finish[task] = done
        length = Math.max(length, done)
        if (done > now) {
          take(way, 1)
          running.push(task)
          next = Math.min(next, done)
        }
        // What has just opened may go before what was passed over.
        if (tell(task, done, key)) k = 0
      }
      now = next
    }
    return length
  }
}
