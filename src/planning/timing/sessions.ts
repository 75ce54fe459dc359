import { type Instant, instantOf } from '../../base/clock.ts'
import { listSpans } from '../../base/spans.ts'
import type { Project } from '../../model/project.ts'
import type { PlanSchedule, Session } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import { sessionsOf } from '../calendar/open-hours.ts'

/** Every session in which something is done, with what, by time and then person. */
export function plannedSessions(
  project: Project,
  network: TaskNetwork,
  schedule: PlanSchedule,
): readonly Session[] {
  const from: Instant = instantOf(project.device.start, 0)
  const sessions = [...project.people.values()].flatMap((person) => {
    const pieces = network.tasks.flatMap((task) => {
      const placed = schedule.tasks.get(task.id)!
      return placed.people.includes(person.id)
        ? placed.pieces.map((piece) => ({ task: task.id, ...piece }))
        : []
    })
    const spans = listSpans(sessionsOf(person, from, schedule.finish + 1440))
    return spans.flatMap((span): readonly Session[] => {
      const work = pieces.filter((piece) => span.open <= piece.open && piece.close <= span.close)
      if (work.length === 0) return []
      return [
        {
          person: person.id,
          ...span,
          work: work.sort((a, b) => a.open - b.open || a.close - b.close || (a.task < b.task ? -1 : 1)),
        },
      ]
    })
  })
  return sessions.sort((a, b) => a.open - b.open || (a.person < b.person ? -1 : 1))
}
