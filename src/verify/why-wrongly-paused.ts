import { type Minutes, type Span, sayInstant } from '../base/clock.ts'
import { type Booked, ownCalendar, type Rule } from './booking.ts'
import { meeting } from './open-hours.ts'
import { first } from './why-misplaced.ts'

/**
 * Why work pauses though its calendar is open, or begins a piece that is too short, or `null`.
 * An opening is passed over only where it is shorter than the least piece and too short to end the task.
 */
export const whyWronglyPaused: Rule = (booking) => {
  const calendar = ownCalendar(booking)
  return first(booking.all, (booked) => {
    if (booked.task.delivery || booked.placed.pieces.length < 2) return null
    return whyTooShort(booked) ?? whyIdle(booked, calendar(booked))
  })
}

function whyTooShort({ task, placed }: Booked): string | null {
  const short = placed.pieces.slice(0, -1).find(({ open, close }) => close - open < task.least)
  if (!short) return null
  const piece = `a piece of ${short.close - short.open} min at ${sayInstant(short.open)}`
  return `task \`${task.id}\` begins ${piece}, shorter than ${task.least} min, that does not end it`
}

function whyIdle({ task, placed }: Booked, calendar: readonly Span[] | null): string | null {
  let left = task.minutes
  for (const [i, piece] of placed.pieces.slice(0, -1).entries()) {
    left -= piece.close - piece.open
    const gap = { open: piece.close, close: placed.pieces[i + 1]!.open }
    const says = `task \`${task.id}\` rests from ${sayInstant(gap.open)} to ${sayInstant(gap.close)}`
    if (calendar === null) return `${says} though nothing shuts`
    if (gap.open === gap.close) return `task \`${task.id}\` is cut at ${sayInstant(gap.open)} without a pause`
    const missed = meeting(calendar, gap).find((opening) => couldBeWorked(opening, gap, left, task.least))
    if (missed) return `${says} though it could go on at ${sayInstant(Math.max(missed.open, gap.open))}`
  }
  return null
}

function couldBeWorked(opening: Span, gap: Span, left: Minutes, least: Minutes): boolean {
  if (opening.open < gap.open || opening.close > gap.close) return true
  const minutes = opening.close - opening.open
  return minutes >= least || minutes >= left
}
