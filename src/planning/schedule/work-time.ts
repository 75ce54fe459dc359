/**
 * When one task, done one way, is at work: its pieces on its calendar, from a start or up to a finish.
 *
 * An instant is open when some span has `open <= t < close`; a closing instant is not open. A zero-minute task with a
 * calendar lies at an open instant. A pausable task works through every open minute from its start, but does not begin
 * a piece shorter than `least` unless that piece ends it. So the start alone decides the pieces, and a later start
 * never finishes earlier: both directions below are exact, not searches.
 */
import type { Instant, Minutes } from '../../base/clock.ts'
import { firstClosingAfter } from '../../base/spans.ts'
import type { Calendar, Mode, Placement } from './problem.ts'

/** Beyond every instant; its negative lies before every instant. */
export const never = 2 ** 30

/** A start, the finish it leads to, and the pieces between as `[open0, close0, open1, ...]`; written over by each question. */
export interface Run {
  start: Instant
  finish: Instant
  pieces: Instant[]
}

/** A mode beside its calendar's spans: what the arithmetic needs and nothing more. */
export interface Clock {
  readonly mode: Mode
  readonly spans: Int32Array | null
  readonly duration: Minutes
  /** The shortest piece that may begin the task; 1 or more unless the task lasts no time. */
  readonly first: Minutes
}

/** The clock of a mode. */
export function clockOf(mode: Mode, calendars: readonly Calendar[]): Clock {
  const spans = mode.calendar === null ? null : calendars[mode.calendar]!.spans
  const first = mode.pausable ? Math.min(Math.max(mode.least, 1), mode.duration) : mode.duration
  return { mode, spans, duration: mode.duration, first }
}

/** A run that holds no answer yet. */
export function emptyRun(): Run {
  return { start: 0, finish: 0, pieces: [] }
}

/** Index of the last span that opens at or before `at`; -1 where none does. Cost: O(log spans). */
export function spanBefore(spans: Int32Array, at: Instant): number {
  let low = 0
  let high = spans.length >> 1
  while (low < high) {
    const middle = (low + high) >> 1
    if (spans[2 * middle]! > at) high = middle
    else low = middle + 1
  }
  return low - 1
}

function writeOne(run: Run, start: Instant, finish: Instant): true {
  run.start = start
  run.finish = finish
  if (run.pieces.length !== 2) run.pieces.length = 2
  run.pieces[0] = start
  run.pieces[1] = finish
  return true
}

/** Works from `start`, inside span `k`, through open time until the duration is used up. */
function workThrough(clock: Clock, k: number, start: Instant, run: Run): boolean {
  const spans = clock.spans!
  let left = clock.duration
  let used = 0
  for (let j = k; 2 * j < spans.length; j++) {
    const open = j === k ? start : spans[2 * j]!
    const room = spans[2 * j + 1]! - open
    if (room < left && room < clock.mode.least) continue
    const close = open + Math.min(room, left)
    run.pieces[used++] = open
    run.pieces[used++] = close
    left -= close - open
    if (left > 0) continue
    if (run.pieces.length !== used) run.pieces.length = used
    run.start = start
    run.finish = close
    return true
  }
  return false
}

function rideFrom(clock: Clock, at: Instant, run: Run): boolean {
  const { leaveBefore, arrives } = clock.mode.timetable!
  let low = 0
  let high = leaveBefore.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (leaveBefore[middle]! > at) high = middle
    else low = middle + 1
  }
  return low < leaveBefore.length && writeOne(run, at, arrives[low]!)
}

/**
 * The run with the earliest start at or after `at`; false where the calendar or the timetable ends before it fits.
 * Gives: the earliest start and, since later starts never finish earlier, the earliest finish.
 * Cost: O(log spans + spans touched).
 */
export function runFrom(clock: Clock, at: Instant, run: Run): boolean {
  if (clock.mode.timetable) return rideFrom(clock, at, run)
  const { spans, duration, first } = clock
  if (spans === null) return writeOne(run, at, at + duration)
  for (let k = firstClosingAfter(spans, at); 2 * k < spans.length; k++) {
    const start = Math.max(at, spans[2 * k]!)
    const room = spans[2 * k + 1]! - start
    if (room < first) continue
    if (room >= duration) return writeOne(run, start, start + duration)
    return workThrough(clock, k, start, run)
  }
  return false
}

/** Not started after one instant, not finished after another. */
interface Latest {
  readonly start: Instant
  readonly finish: Instant
}

function rideBefore(clock: Clock, latest: Instant, finish: Instant, run: Run): boolean {
  const { leaveBefore, arrives } = clock.mode.timetable!
  let k = arrives.length - 1
  while (k >= 0 && arrives[k]! > finish) k--
  return k >= 0 && rideFrom(clock, Math.min(latest, leaveBefore[k]! - 1), run)
}

/** Latest start of a pausable task within span `k`, no later than `by.start`, that still finishes by `by.finish`. */
function latestWithin(clock: Clock, k: number, by: Latest, run: Run): boolean {
  const fits = (start: Instant) => workThrough(clock, k, start, run) && run.finish <= by.finish
  let low = clock.spans![2 * k]!
  if (by.start < low) return false
  // Where no piece is passed over, this is it.
  if (fits(by.start)) return true
  if (!fits(low)) return false
  let high = by.start - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (fits(middle)) low = middle
    else high = middle - 1
  }
  return fits(low)
}

function pausableBefore(clock: Clock, by: Latest, run: Run): boolean {
  const spans = clock.spans!
  let open = 0
  for (let k = spanBefore(spans, by.finish - 1); k >= 0; k--) {
    const [opens, closes] = [spans[2 * k]!, spans[2 * k + 1]!]
    open += Math.min(by.finish, closes) - opens
    if (open < clock.duration || opens > by.start) continue
    // Started later, less is open up to the finish than the work takes.
    const start = Math.min(by.start, closes - clock.first, opens + open - clock.duration)
    if (latestWithin(clock, k, { start, finish: by.finish }, run)) return true
  }
  return false
}

/**
 * The run with the latest start, at or before `latest`, that finishes at or before `finish`; false where there is none.
 * Cost: O(spans touched x log span length).
 */
export function runBefore(clock: Clock, latest: Instant, finish: Instant, run: Run): boolean {
  if (clock.mode.timetable) return rideBefore(clock, latest, finish, run)
  const { spans, duration } = clock
  const start = Math.min(latest, finish - duration)
  if (spans === null) return writeOne(run, start, start + duration)
  if (clock.mode.pausable && duration > 0) return pausableBefore(clock, { start: latest, finish }, run)
  for (let k = spanBefore(spans, start); k >= 0; k--) {
    const at = Math.min(start, spans[2 * k + 1]! - Math.max(duration, 1))
    if (at >= spans[2 * k]!) return writeOne(run, at, at + duration)
  }
  return false
}

/** The earliest run that starts at or after `at` and finishes at or after `finish`; false where there is none. */
export function runAfter(clock: Clock, at: Instant, finish: Instant, run: Run): boolean {
  if (!runFrom(clock, at, run)) return false
  if (run.finish >= finish) return true
  if (!runBefore(clock, never, finish - 1, run)) return false
  return runFrom(clock, Math.max(at, run.start + 1), run)
}

/** A run as a placement of mode number `mode`. */
export function placementOf(run: Run, mode: number): Placement {
  const pieces = []
  for (let k = 0; k < run.pieces.length; k += 2)
    pieces.push({ open: run.pieces[k]!, close: run.pieces[k + 1]! })
  return { mode, start: run.start, finish: run.finish, pieces }
}

/** Where a mode goes when started at or after `start`: earliest start, pieces, finish; `null` where nothing fits any more. */
export function finishFrom(
  mode: Mode,
  calendars: readonly Calendar[],
  start: Instant,
): Omit<Placement, 'mode'> | null {
  const run = emptyRun()
  if (!runFrom(clockOf(mode, calendars), start, run)) return null
  const { mode: _, ...placed } = placementOf(run, 0)
  return placed
}

/** Where a mode goes when it must finish by `finish`: latest start, pieces, finish; `null` where nothing fits before. */
export function startFor(
  mode: Mode,
  calendars: readonly Calendar[],
  finish: Instant,
): Omit<Placement, 'mode'> | null {
  const run = emptyRun()
  if (!runBefore(clockOf(mode, calendars), never, finish, run)) return null
  const { mode: _, ...placed } = placementOf(run, 0)
  return placed
}
