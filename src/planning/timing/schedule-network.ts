import { type Instant, instantOf, minutesPerDay } from '../../base/clock.ts'
import type { Project } from '../../model/project.ts'
import type { NoSchedule, PlanSchedule } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import { type SearchOptions, scheduleProblem } from '../schedule/index.ts'
import { fromSchedule } from './from-schedule.ts'
import { toProblem } from './to-problem.ts'

/** Years the calendars reach to, tried one after the other while the schedule does not fit. */
const yearsAhead = [2, 6, 20]

/**
 * When everything in the network is done.
 * Gives: a schedule that keeps every rule, or why there is none; "none found" where nothing is proved.
 */
export function scheduleNetwork(
  project: Project,
  network: TaskNetwork,
  options: SearchOptions,
): PlanSchedule | NoSchedule {
  const from: Instant = instantOf(project.device.start, 0)
  let last: NoSchedule = { kind: 'none found', why: 'beyond horizon', tasks: [] }
  for (const years of yearsAhead) {
    const translated = toProblem(project, network, from, from + years * 366 * minutesPerDay)
    const outcome = scheduleProblem(translated.problem, options)
    if (outcome.kind === 'found') return fromSchedule(network, translated, outcome)
    const tasks = (outcome.kind === 'impossible' ? outcome.tasks : outcome.stuck).map(
      (at) => network.tasks[at]!.id,
    )
    last = { kind: outcome.kind, why: outcome.why, tasks }
    if (outcome.why !== 'beyond horizon') return last
  }
  return last
}
