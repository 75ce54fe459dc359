/** Earliest starts and longest ways to the end, of plain problems, capacities dropped. */
import type { PlainProblem, Waits } from './plain-problem.ts'

/** Shortest duration of each task among its ways. */
export function shortest(plain: PlainProblem): Int32Array {
  const { size, firstWay, duration } = plain
  return Int32Array.from({ length: size }, (_, task) =>
    duration.subarray(firstWay[task]!, firstWay[task + 1]!).reduce((least, each) => Math.min(least, each)),
  )
}

function longestWays(
  plain: PlainProblem,
  waits: Waits,
  from: Int32Array,
  order: Iterable<number>,
): Int32Array {
  const lasts = shortest(plain)
  const at = from.slice()
  for (const task of order) {
    for (let k = waits.first[task]!; k < waits.first[task + 1]!; k++) {
      const other = waits.task[k]!
      at[task] = Math.max(at[task]!, at[other]! + lasts[other]! + waits.lag[k]!)
    }
  }
  return at
}

/** The earliest start of every task, in units. */
export function headsOf(plain: PlainProblem): Int32Array {
  return longestWays(plain, plain.before, plain.release, plain.order)
}

/** Units that pass at least between each task's finish and the end of the plan. */
export function tailsOf(plain: PlainProblem): Int32Array {
  return longestWays(plain, plain.after, new Int32Array(plain.size), plain.order.slice().reverse())
}
