import { dayOf, instantOf, type Span } from '../base/clock.ts'
import type { Project } from '../model/project.ts'
import type { PlanSchedule, ScheduledTask } from '../model/schedule.ts'
import type { PlanTask, TaskNetwork } from '../model/tasks.ts'
import { common, joined, openIntervals, sessionsOf } from './open-hours.ts'

/** A task and where the schedule put it. */
export interface Booked {
  readonly task: PlanTask
  readonly placed: ScheduledTask
}

/** A schedule laid beside what it must obey. */
export interface Booking {
  readonly project: Project
  readonly network: TaskNetwork
  readonly schedule: PlanSchedule
  /** In the order of the network. */
  readonly all: readonly Booked[]
  readonly byId: ReadonlyMap<string, Booked>
  /** Sessions of each person. */
  readonly sessions: ReadonlyMap<string, readonly Span[]>
  /** Open intervals of each machine; `null`: always open. */
  readonly machineHours: ReadonlyMap<string, readonly Span[] | null>
}

/** Why one rule is broken, as one sentence, or `null`. */
export type Rule = (booking: Booking) => string | null

/** Days looked at before the start and after the finish, so that no session is cut off where work lies. */
const margin = 8

/** Lays a schedule beside its network. Needs: every task of the network is in the schedule. */
export function bookingOf(project: Project, network: TaskNetwork, schedule: PlanSchedule): Booking {
  const all = network.tasks.map((task) => ({ task, placed: schedule.tasks.get(task.id)! }))
  const first = project.device.start - margin
  let latest = instantOf(project.device.start, 0)
  for (const { placed } of all) latest = Math.max(latest, placed.finish)
  const last = dayOf(latest) + margin
  return {
    project,
    network,
    schedule,
    all,
    byId: new Map(all.map((booked) => [booked.task.id, booked])),
    sessions: new Map([...project.people].map(([id, person]) => [id, sessionsOf(person, first, last)])),
    machineHours: new Map(
      [...project.machines].map(([id, { hours }]) => [id, hours && openIntervals(hours, first, last)]),
    ),
  }
}

/**
 * When a task can be worked on: the common sessions of those who do it, or for work with somebody nearby the times
 * of any who may, within the machine's hours. `null`: always. Needs: people and machine are known.
 */
export function ownCalendar(booking: Booking): (booked: Booked) => readonly Span[] | null {
  const known = new Map<string, readonly Span[] | null>()
  return ({ task, placed }) => {
    const people = task.attention === 'hands' ? placed.people : task.who
    const key = JSON.stringify([task.attention, [...people].sort(), task.machine])
    if (!known.has(key)) known.set(key, calendarFor(booking, task, people))
    return known.get(key)!
  }
}

/** When at least one of the people named is in a session, or `null` where the project has nobody. */
export function somebodysHours(booking: Booking, people: readonly string[]): readonly Span[] | null {
  if (booking.project.people.size === 0) return null
  return joined(people.flatMap((person) => booking.sessions.get(person) ?? []))
}

function calendarFor(booking: Booking, task: PlanTask, people: readonly string[]): readonly Span[] | null {
  const machine = task.machine === null ? null : booking.machineHours.get(task.machine)!
  const hands = task.attention === 'none' ? null : peoplesHours(booking, task, people)
  if (machine === null || hands === null) return machine ?? hands
  return common(machine, hands)
}

function peoplesHours(booking: Booking, task: PlanTask, people: readonly string[]): readonly Span[] | null {
  if (task.attention === 'nearby') return somebodysHours(booking, people)
  const each = people.map((person) => booking.sessions.get(person)!)
  return each.length === 0 ? null : each.reduce((a, b) => common(a, b))
}
