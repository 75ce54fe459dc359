import { dayOf, type Instant, instantOf, weekday } from '../base/clock.ts'
import type { Vendor } from '../model/project.ts'

/** Most days looked ahead for a day on which the vendor takes orders. */
const farthest = 400

/** The vendor's first cut-off after an instant, before which an order counts for that day; `null`: none within a year. */
export function nextCutoff({ days, cutoff }: Vendor, after: Instant): Instant | null {
  for (let day = dayOf(after); day < dayOf(after) + farthest; day++) {
    const open =
      days.weekly[weekday(day)] === true && !days.off.some(({ first, last }) => first <= day && day <= last)
    if (open && instantOf(day, cutoff) > after) return instantOf(day, cutoff)
  }
  return null
}
