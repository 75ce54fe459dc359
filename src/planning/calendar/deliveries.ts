import { type Day, dayOf, type Instant, instantOf, weekday } from '../../base/clock.ts'
import type { DayPattern, Vendor } from '../../model/project.ts'
import type { Delivery } from '../../model/tasks.ts'

/** Whether a day counts. */
export function isWorkDay(pattern: DayPattern, day: Day): boolean {
  return (
    pattern.weekly[weekday(day)] === true &&
    !pattern.off.some(({ first, last }) => first <= day && day <= last)
  )
}

/** Days that count between two days, the first included. */
export function workDays(pattern: DayPattern, from: Day, to: Day): Int32Array {
  const days: number[] = []
  for (let day = from; day < to; day++) if (isWorkDay(pattern, day)) days.push(day)
  return Int32Array.from(days)
}

/** The day itself where it counts, else the next that does. Needs: the pattern has a day. */
function onOrAfter(pattern: DayPattern, day: Day): Day {
  let at = day
  while (!isWorkDay(pattern, at)) at++
  return at
}

/** So many counting days after a day; none: the day itself. */
function advance(pattern: DayPattern, day: Day, count: number): Day {
  let at = day
  for (let left = count; left > 0; left--) at = onOrAfter(pattern, at + 1)
  return at
}

/** The day an order counts from that is placed on a vendor day before the cut-off. */
function arrivalDay(vendor: Vendor, delivery: Delivery, posted: Day): Day {
  const reached =
    delivery.outDays > 0 ? onOrAfter(vendor.days, advance(vendor.carrier, posted, delivery.outDays)) : posted
  const shipped = advance(vendor.days, reached, delivery.leadDays)
  return advance(vendor.carrier, shipped, delivery.transitDays)
}

/**
 * When an order must be placed to be usable when: strictly before the cut-off of a vendor day it counts that day as
 * day 0; lead in vendor days, transit in carrier days, usable from the post on the day it arrives, and where that post
 * was before the order, from the post of the next carrier day.
 */
export function timetableOf(
  vendor: Vendor,
  delivery: Delivery,
  from: Instant,
  to: Instant,
): { readonly leaveBefore: Int32Array; readonly arrives: Int32Array } {
  const leaveBefore: number[] = []
  const arrives: number[] = []
  for (const day of workDays(vendor.days, dayOf(from), dayOf(to))) {
    const cutoff = instantOf(day, vendor.cutoff)
    const arrival = arrivalDay(vendor, delivery, day)
    const usable = instantOf(arrival, vendor.post)
    const ride = (until: Instant, at: Instant): void => {
      if (until <= from || until <= (leaveBefore.at(-1) ?? from)) return
      leaveBefore.push(until)
      arrives.push(at)
    }
    // Without lead and transit the post may have been before the order: then it is the next carrier day's.
    ride(Math.min(cutoff, usable + 1), usable)
    ride(cutoff, instantOf(advance(vendor.carrier, arrival, 1), vendor.post))
  }
  return { leaveBefore: Int32Array.from(leaveBefore), arrives: Int32Array.from(arrives) }
}
