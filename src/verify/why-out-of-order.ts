import { sayInstant } from '../base/clock.ts'
import type { TaskLink } from '../model/tasks.ts'
import type { Booking, Rule } from './booking.ts'
import { workingDaysLater } from './count-days.ts'
import { first } from './why-misplaced.ts'

/** Why a task does not wait for, or waits too long after, a task it is linked to, or `null`. */
export const whyOutOfOrder: Rule = (booking) =>
  first(booking.network.links, (link) => whyLinkBroken(booking, link))

function whyLinkBroken({ byId }: Booking, link: TaskLink): string | null {
  const [from, to] = [byId.get(link.from), byId.get(link.to)]
  if (!from || !to) return `the link from \`${link.from}\` to \`${link.to}\` names no two tasks`
  const { finish } = from.placed
  const { start } = to.placed
  const ready =
    'minutes' in link.lag ? finish + link.lag.minutes : workingDaysLater(finish, link.lag.workingDays)
  const says = `task \`${link.to}\` starts ${sayInstant(start)}`
  if (start < ready) return `${says}, before \`${link.from}\` lets it, ${sayInstant(ready)} (${link.why})`
  if (link.within === null || start <= finish + link.within) return null
  return `${says}, over ${link.within} min after \`${link.from}\` finished ${sayInstant(finish)}`
}
