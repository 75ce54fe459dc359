import type { Project } from '../model/project.ts'
import type { PlanSchedule } from '../model/schedule.ts'
import type { TaskNetwork } from '../model/tasks.ts'
import { bookingOf, type Rule } from './booking.ts'
import { whyMiscut } from './why-miscut.ts'
import { whyMisdelivered } from './why-misdelivered.ts'
import { first, whyMisplaced } from './why-misplaced.ts'
import { whyOutOfHours } from './why-out-of-hours.ts'
import { whyOutOfOrder } from './why-out-of-order.ts'
import { whyOverfull } from './why-overfull.ts'
import { whyUnstaffed } from './why-unstaffed.ts'
import { whyWronglyPaused } from './why-wrongly-paused.ts'

/** In this order: each may count on those before it. */
const rules: readonly Rule[] = [
  whyMiscut,
  whyMisdelivered,
  whyUnstaffed,
  whyOutOfHours,
  whyWronglyPaused,
  whyOutOfOrder,
  whyOverfull,
]

/**
 * The first rule of time that a schedule breaks, as one sentence with the task and the instants, or `null` where
 * it keeps them all. Restates hours, sessions, attention, pauses, links, places and deliveries from their meaning,
 * and shares nothing with what made the schedule.
 * Cost: O(n log n) for n pieces, and the open intervals of every person and machine once.
 */
export function whyInfeasible(project: Project, network: TaskNetwork, schedule: PlanSchedule): string | null {
  const misplaced = whyMisplaced(project, network, schedule)
  if (misplaced !== null) return misplaced
  const booking = bookingOf(project, network, schedule)
  return first(rules, (rule) => rule(booking))
}
