import { type Instant, instantOf, type Minutes, minutesPerDay } from '../../base/clock.ts'
import { listSpans, type Spans } from '../../base/spans.ts'
import type { Project } from '../../model/project.ts'
import type { TooLong } from '../../model/schedule.ts'
import type { PlanTask, TaskNetwork } from '../../model/tasks.ts'
import { join, machineHours, meet, sessionsOf } from '../calendar/open-hours.ts'

const longestIn = (spans: Spans): Minutes =>
  listSpans(spans).reduce((most, { open, close }) => Math.max(most, close - open), 0)

/** Two years show every weekday pattern and most exceptions. */
const lookAhead = 2 * 366 * minutesPerDay

/** Tasks of which what must be done in one go is longer than every window they could be done in. */
export function tooLongTasks(project: Project, network: TaskNetwork): readonly TooLong[] {
  const from: Instant = instantOf(project.device.start, 0)
  const to = from + lookAhead
  const sessions = new Map(
    [...project.people.values()].map((person) => [person.id, sessionsOf(person, from, to)]),
  )
  const known = new Map<string, Minutes | null>()
  return network.tasks.flatMap((task): readonly TooLong[] => {
    if (task.delivery || task.minutes === 0) return []
    // Work that may pause still needs a window as long as its least piece.
    const unbroken = task.pausable ? Math.min(task.least, task.minutes) : task.minutes
    const key = JSON.stringify([task.attention, task.who, task.people, task.machine])
    if (!known.has(key)) known.set(key, longestWindow(project, task, sessions, from, to))
    const longest = known.get(key)!
    if (longest === null || unbroken <= longest) return []
    return [
      {
        task: task.id,
        minutes: unbroken,
        longest,
        whose: sayWhose(task),
        unattended: task.attention === 'none',
      },
    ]
  })
}

function longestWindow(
  project: Project,
  task: PlanTask,
  sessions: ReadonlyMap<string, Spans>,
  from: Instant,
  to: Instant,
): Minutes | null {
  const machine = task.machine === null ? null : machineHours(project.machines.get(task.machine)!, from, to)
  if (task.attention === 'none') return machine ? longestIn(machine) : null
  const hours = task.who.map((person) => sessions.get(person)!)
  // One of the people at a time, or someone near: for two at once any pair's meeting is shorter still, and the scheduler says so.
  const options = task.attention === 'nearby' ? [join(hours)] : hours
  return Math.max(0, ...options.map((spans) => longestIn(meet([spans, machine])!)))
}

function sayWhose(task: PlanTask): string {
  const people = task.attention === 'none' ? [] : [task.who.join(' or ')]
  return [...people, ...(task.machine === null ? [] : [task.machine])].join(' with ')
}
