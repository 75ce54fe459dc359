/** How late each task may start without moving the plan's finish. */
import type { Instant } from '../../base/clock.ts'
import { networkOf } from './network.ts'
import { lateTimes, type Times } from './precedence.ts'
import type { Problem, Schedule } from './problem.ts'
import { resourceOrder } from './resource-order.ts'

/**
 * The latest start and finish of each task that keep the schedule's finish, backwards over links, longest waits, holds
 * and the schedule's own order on machines and people, on each task's calendar or timetable, in its chosen mode.
 * Needs: a schedule that satisfies the problem. Gives: all latest times together satisfy the problem too, and none is
 * before the schedule's own. Tasks that share a person by working in each other's pauses keep their own times.
 * Cost: O(arcs x log spans) per round, as the passes of the plain critical path, plus the order on the resources.
 */
export function latestStarts(problem: Problem, schedule: Schedule): Times {
  const { links, pinned } = resourceOrder(problem, schedule)
  const network = networkOf(problem, links)
  const modes = Int32Array.from(schedule.placements, (placement) => placement.mode)
  const own: Times = {
    start: Int32Array.from(schedule.placements, (placement) => placement.start),
    finish: Int32Array.from(schedule.placements, (placement) => placement.finish),
  }
  const late = lateTimes(network, modes, schedule.finish, (task) =>
    pinned.has(task) ? own.start[task]! : null,
  )
  // Lags in counted days can make "late" and "possible" disagree; the schedule itself is always possible.
  const possible = late?.start.every((at, task) => at >= own.start[task]!)
  return possible === true && late !== null ? late : own
}

/**
 * The latest start of each task that keeps the schedule's finish by links and calendars alone, the order on machines
 * and people left out. Each date is for one task by itself; never before its own start in the schedule.
 */
export function latestAlone(problem: Problem, schedule: Schedule): readonly Instant[] {
  const modes = Int32Array.from(schedule.placements, ({ mode }) => mode)
  const late = lateTimes(networkOf(problem), modes, schedule.finish)
  return schedule.placements.map(({ start }, task) => Math.max(start, late?.start[task] ?? start))
}
