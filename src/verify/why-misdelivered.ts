import { sayInstant } from '../base/clock.ts'
import type { Booked, Booking, Rule } from './booking.ts'
import { usableFrom } from './count-days.ts'
import { first } from './why-misplaced.ts'

/** Why goods do not come on the day that cutoff, lead and transit give, or `null`. Reading: see `usableFrom`. */
export const whyMisdelivered: Rule = (booking) => first(booking.all, (booked) => whyWrongDay(booking, booked))

function whyWrongDay({ project }: Booking, { task, placed }: Booked): string | null {
  if (!task.delivery) return null
  const vendor = project.vendors.get(task.delivery.vendor)
  if (!vendor)
    return `task \`${task.id}\` comes from \`${task.delivery.vendor}\`, which is no vendor of the project`
  const says = `task \`${task.id}\`, ordered ${sayInstant(placed.start)}`
  const usable = usableFrom(placed.start, task.delivery, vendor)
  if (usable === null) return `${says}, never arrives: vendor or carrier has no days`
  if (usable === placed.finish) return null
  return `${says}, is said to be here ${sayInstant(placed.finish)}; the timetable gives ${sayInstant(usable)}`
}
