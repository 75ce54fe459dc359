/** A calendar day: whole days since 1970-01-01. */
export type Day = number
/** A wall-clock instant without time zone: whole minutes since 1970-01-01 00:00. */
export type Instant = number
/** A span in minutes. */
export type Minutes = number
/** A span in seconds. */
export type Seconds = number

/** Minutes of a whole day. */
export const minutesPerDay = 1440

/** Half-open interval `[open, close)` of instants. */
export interface Span {
  readonly open: Instant
  readonly close: Instant
}

const isoDay = /^(\d{4})-(\d{2})-(\d{2})$/

/** The day written as `YYYY-MM-DD`, or `null` where no such day exists (2026-02-30) or the year is before 2000. */
export function parseDay(text: string): Day | null {
  const parts = isoDay.exec(text)
  if (!parts) return null
  const [year, month, date] = [Number(parts[1]), Number(parts[2]), Number(parts[3])]
  if (year < 2000) return null
  const ms = Date.UTC(year, month - 1, date)
  const back = new Date(ms)
  if (back.getUTCMonth() !== month - 1 || back.getUTCDate() !== date) return null
  return ms / 86_400_000
}

/** The day as `YYYY-MM-DD`. */
export function formatDay(day: Day): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10)
}

/** Weekday of a day: 0 Monday .. 6 Sunday (ISO 8601 order, less one). */
export function weekday(day: Day): number {
  return (((day + 3) % 7) + 7) % 7
}

/** Short weekday names, Monday first. */
export const weekdayNames = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const

/** The instant `minutes` after midnight of `day`. */
export function instantOf(day: Day, minutes: Minutes): Instant {
  return day * minutesPerDay + minutes
}

/** The day an instant falls on. */
export function dayOf(instant: Instant): Day {
  return Math.floor(instant / minutesPerDay)
}

/** The instant as local ISO time `YYYY-MM-DDTHH:MM`. */
export function formatInstant(instant: Instant): string {
  return new Date(instant * 60_000).toISOString().slice(0, 16)
}

/** The instant as a person reads it: `Mon 2026-02-02 19:30`. */
export function sayInstant(instant: Instant): string {
  const day = dayOf(instant)
  return `${weekdayNames[weekday(day)]} ${formatInstant(instant).replace('T', ' ')}`
}

/** Minutes since midnight of `HH:MM` (00:00 to 24:00), or `null`. */
export function parseTimeOfDay(text: string): Minutes | null {
  const parts = /^(\d{1,2}):(\d{2})$/.exec(text.trim())
  if (!parts) return null
  const minutes = Number(parts[1]) * 60 + Number(parts[2])
  return Number(parts[2]) < 60 && minutes <= minutesPerDay ? minutes : null
}
