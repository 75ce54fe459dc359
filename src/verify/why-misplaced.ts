import { type Instant, instantOf, minutesPerDay, sayInstant } from '../base/clock.ts'
import type { Project } from '../model/project.ts'
import type { PlanSchedule, ScheduledTask } from '../model/schedule.ts'
import type { PlanTask, TaskNetwork } from '../model/tasks.ts'

/** A plan past this is no plan, and its calendar would be too long to write out. */
const mostMinutes = 100 * 366 * minutesPerDay

/** Why the schedule is not one start and finish for each task, none too early, closed by its finish, or `null`. */
export function whyMisplaced(project: Project, network: TaskNetwork, schedule: PlanSchedule): string | null {
  const start = instantOf(project.device.start, 0)
  return (
    whyNotEachOnce(network, schedule) ??
    first(network.tasks, (task) => whyOffStart(start, task, schedule.tasks.get(task.id)!)) ??
    whyWrongFinish(start, schedule)
  )
}

/** The first sentence that one of a list gives. */
export function first<T>(list: readonly T[], why: (one: T) => string | null): string | null {
  for (const one of list) {
    const said = why(one)
    if (said !== null) return said
  }
  return null
}

function whyNotEachOnce(network: TaskNetwork, schedule: PlanSchedule): string | null {
  const known = new Set<string>()
  for (const { id } of network.tasks) {
    if (known.has(id)) return `task \`${id}\` stands twice in the network`
    known.add(id)
    const placed = schedule.tasks.get(id)
    if (!placed) return `task \`${id}\` is not scheduled`
    if (placed.id !== id) return `task \`${id}\` is scheduled under the name \`${placed.id}\``
  }
  for (const id of schedule.tasks.keys()) {
    if (!known.has(id)) return `task \`${id}\` is scheduled but is not in the network`
  }
  return null
}

function whyOffStart(start: Instant, task: PlanTask, placed: ScheduledTask): string | null {
  const instants = [placed.start, placed.finish, ...placed.pieces.flatMap(({ open, close }) => [open, close])]
  if (!instants.every(Number.isSafeInteger)) return `task \`${task.id}\` has a time that is no whole minute`
  const says = `task \`${task.id}\` starts ${sayInstant(placed.start)}`
  if (placed.start < start) return `${says}, before the project's start ${sayInstant(start)}`
  if (placed.start < task.release) return `${says}, before its release ${sayInstant(task.release)}`
  if (placed.finish < placed.start) return `${says} and finishes earlier, ${sayInstant(placed.finish)}`
  if (placed.finish > start + mostMinutes)
    return `task \`${task.id}\` finishes over a hundred years after the start`
  return null
}

function whyWrongFinish(start: Instant, schedule: PlanSchedule): string | null {
  let latest = start
  for (const { finish } of schedule.tasks.values()) latest = Math.max(latest, finish)
  const says = `the schedule says it finishes ${sayInstant(schedule.finish)}`
  if (schedule.finish !== latest) return `${says}, but its last task finishes ${sayInstant(latest)}`
  if (schedule.lowerBound > latest)
    return `${says}, earlier than its bound ${sayInstant(schedule.lowerBound)}`
  return null
}
