import { type Instant, instantOf } from '../../base/clock.ts'
import type { Project } from '../../model/project.ts'
import type { PlanSchedule } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'

/** When the last of each part is there; the project's start where all is on the shelf. */
export function readyTimes(
  project: Project,
  network: TaskNetwork,
  schedule: PlanSchedule,
): ReadonlyMap<string, Instant> {
  const start = instantOf(project.device.start, 0)
  return new Map(
    [...network.ready].map(([part, tasks]) => [
      part,
      Math.max(start, ...tasks.map((task) => schedule.tasks.get(task)!.finish)),
    ]),
  )
}
