/** Bounds from below on the length of a plain problem, without any search. */
import { headsOf, shortest, tailsOf } from './critical-bounds.ts'
import type { PlainProblem } from './plain-problem.ts'

/** What each task has at least, whichever way it is done. */
interface Least {
  readonly plain: PlainProblem
  readonly heads: Int32Array
  readonly tails: Int32Array
  readonly lasts: Int32Array
}

/** The least of something over the ways of each task. */
function leastOver({ size, firstWay }: PlainProblem, of: (way: number) => number): Int32Array {
  return Int32Array.from({ length: size }, (_, task) => {
    let least = Number.POSITIVE_INFINITY
    for (let way = firstWay[task]!; way < firstWay[task + 1]!; way++) least = Math.min(least, of(way))
    return least
  })
}

/** The longest way through the network. */
function pathBound({ heads, tails, lasts }: Least): number {
  return heads.reduce((most, head, task) => Math.max(most, head + lasts[task]! + tails[task]!), 0)
}

/**
 * Work of all tasks that start no earlier than one instant and leave so much time after them, spread over the capacity.
 * Cost: O(resources x tasks^2).
 */
function workBound({ plain, heads, tails }: Least): number {
  const { capacity, need, duration } = plain
  const byTail = Array.from(tails, (_, task) => task).sort((a, b) => tails[b]! - tails[a]!)
  let bound = 0
  for (const [resource, most] of capacity.entries()) {
    const work = leastOver(plain, (way) => need[way * capacity.length + resource]! * duration[way]!)
    for (const head of new Set(heads)) {
      let sum = 0
      for (const task of byTail) {
        if (heads[task]! < head || work[task] === 0) continue
        sum += work[task]!
        bound = Math.max(bound, head + Math.ceil(sum / most) + tails[task]!)
      }
    }
  }
  return bound
}

/** Pairs of tasks that no capacity lets run at once: one comes after the other. Cost: O(resources x tasks^2). */
function pairBound({ plain, heads, tails, lasts }: Least): number {
  const { size, capacity, need } = plain
  let bound = 0
  for (const [resource, most] of capacity.entries()) {
    const least = leastOver(plain, (way) => need[way * capacity.length + resource]!)
    for (let a = 0; a < size; a++) {
      for (let b = a + 1; b < size; b++) {
        if (least[a]! + least[b]! <= most || lasts[a] === 0 || lasts[b] === 0) continue
        const both = lasts[a]! + lasts[b]!
        bound = Math.max(bound, both + Math.min(heads[a]! + tails[b]!, heads[b]! + tails[a]!))
      }
    }
  }
  return bound
}

/** No plan is shorter, in units: by the longest path, by work over capacity, and by pairs that must take turns. */
export function unitBound(plain: PlainProblem): number {
  const least = { plain, heads: headsOf(plain), tails: tailsOf(plain), lasts: shortest(plain) }
  return Math.max(pathBound(least), workBound(least), pairBound(least))
}
