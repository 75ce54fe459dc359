import { type Day, dayOf, type Instant, instantOf, minutesPerDay, weekday } from '../base/clock.ts'
import type { DayPattern, Vendor } from '../model/project.ts'
import type { Delivery } from '../model/tasks.ts'
import { inRanges } from './open-hours.ts'

/** Past this many days in a row nothing is waited for: the pattern has no days. */
const mostDays = 40_000

const mondayToFriday: DayPattern = { weekly: [true, true, true, true, true, false, false], off: [] }

/**
 * When goods ordered at `order` can be used, or `null` where a pattern of days never comes.
 *
 * The reading of the rule, to the letter:
 * - Day 0 is the day of the order if that is a vendor day and the clock reads strictly less than `cutoff`; else the
 *   next vendor day after it.
 * - The shipping day is day 0 advanced by `leadDays` vendor days, the arrival day the shipping day advanced by
 *   `transitDays` carrier days. Advancing by n takes the n-th such day strictly after; advancing by 0 stays, even on
 *   a day that is none.
 * - Goods can be used from `post` on the arrival day. Where that instant lies before the order itself (no lead, no
 *   transit, the post early in the day), they are used from `post` on the arrival day advanced by 1 carrier day.
 * - Outside work with `outDays` above 0: the parcel is posted on the day that would be day 0 of an order (a vendor day,
 *   by the vendor's cutoff). It is there on the posting day advanced by `outDays` carrier days, and day 0 is the first
 *   vendor day on or after that. With `outDays` 0 the parts are handed over as an order is.
 */
export function usableFrom(order: Instant, delivery: Delivery, vendor: Vendor): Instant | null {
  const day0 =
    delivery.outDays > 0 ? reached(order, delivery, vendor) : counted(order, vendor.days, vendor.cutoff)
  const shipped = advanced(vendor.days, day0, delivery.leadDays)
  const arrived = advanced(vendor.carrier, shipped, delivery.transitDays)
  if (arrived === null) return null
  if (instantOf(arrived, vendor.post) >= order) return instantOf(arrived, vendor.post)
  const later = advanced(vendor.carrier, arrived, 1)
  return later === null ? null : instantOf(later, vendor.post)
}

/** The same clock time `days` days of Monday to Friday later. */
export function workingDaysLater(from: Instant, days: number): Instant {
  const day = advanced(mondayToFriday, dayOf(from), days)!
  return instantOf(day, from - dayOf(from) * minutesPerDay)
}

/** Day 0 of outside work: the first vendor day on or after the parcel has come. */
function reached(order: Instant, delivery: Delivery, vendor: Vendor): Day | null {
  const posted = counted(order, vendor.days, vendor.cutoff)
  const there = advanced(vendor.carrier, posted, delivery.outDays)
  return there === null ? null : onOrAfter(vendor.days, there)
}

function counted(order: Instant, pattern: DayPattern, cutoff: number): Day | null {
  const day = dayOf(order)
  const inTime = order - instantOf(day, 0) < cutoff
  return onOrAfter(pattern, inTime ? day : day + 1)
}

function onOrAfter(pattern: DayPattern, from: Day): Day | null {
  for (let day = from; day < from + mostDays; day++) if (counts(pattern, day)) return day
  return null
}

function advanced(pattern: DayPattern, from: Day | null, days: number): Day | null {
  let day = from
  for (let left = days; left > 0 && day !== null; left--) day = onOrAfter(pattern, day + 1)
  return day
}

function counts(pattern: DayPattern, day: Day): boolean {
  return (pattern.weekly[weekday(day)] ?? false) && !inRanges(pattern.off, day)
}
