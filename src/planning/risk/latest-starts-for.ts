import type { Instant } from '../../base/clock.ts'
import type { Network, Problem } from '../schedule/index.ts'
import { latestShifted } from '../schedule/lag.ts'
import { never as beyond, emptyRun, runBefore } from '../schedule/work-time.ts'

/** Later than everything: nothing waits for it. */
const never = Number.POSITIVE_INFINITY

/**
 * The latest start of each task with which everything may still be done by an instant, links and hours kept, whoever and
 * whatever is busy left out, each task by the way of doing it that may start last. So a task that starts later surely
 * makes the finish later; -Infinity where no start is early enough. Longest waits and holds are left out too.
 * Needs: tasks in `order` come after those they wait for. Cost: O(links + ways of doing a task x log spans).
 */
export function latestStartsFor(network: Network, order: readonly number[], finish: Instant): Float64Array {
  const { problem, clocks } = network
  const latest = new Float64Array(problem.tasks.length)
  const run = emptyRun()
  for (let k = order.length - 1; k >= 0; k--) {
    const task = order[k]!
    const by = finishBy(network, latest, task, finish)
    latest[task] = clocks[task]!.reduce(
      (last, clock) =>
        by !== -never && runBefore(clock, beyond, by, run) ? Math.max(last, run.start) : last,
      -never,
    )
  }
  return latest
}

/** The latest finish of a task that those that wait for it allow. */
function finishBy({ problem, outOf }: Network, latest: Float64Array, task: number, finish: Instant): Instant {
  let by = finish
  for (const { to, link, turned } of outOf[task]!) {
    if (link < 0 || turned) continue
    const { lag } = problem.links[link]!
    const start = latest[to]!
    if (start === -never) return -never
    by = Math.min(
      by,
      typeof lag === 'number' ? start - lag : latestShifted(daysOf(problem, lag.calendar), start, lag.days),
    )
  }
  return by
}

const daysOf = ({ dayCalendars }: Problem, calendar: number): Int32Array => dayCalendars[calendar]!.days
