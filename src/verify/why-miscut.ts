import { sayInstant } from '../base/clock.ts'
import type { ThreePoint } from '../base/three-point.ts'
import type { Booked, Rule } from './booking.ts'
import { first } from './why-misplaced.ts'

/** Why the pieces of a task are not its whole time, in order, from its start to its finish, or `null`. */
export const whyMiscut: Rule = (booking) =>
  first(booking.all, (booked) => whyOutOfLine(booked) ?? whyWrongAmount(booked) ?? whyBroken(booked))

function whyOutOfLine({ task, placed }: Booked): string | null {
  let end = placed.start
  for (const [i, { open, close }] of placed.pieces.entries()) {
    const says = `task \`${task.id}\` has a piece from ${sayInstant(open)} to ${sayInstant(close)}`
    if (close < open || (close === open && task.minutes > 0 && !task.delivery))
      return `${says}, which takes no time`
    if (open < placed.start) return `${says}, before the task starts ${sayInstant(placed.start)}`
    if (close > placed.finish) return `${says}, past the task's finish ${sayInstant(placed.finish)}`
    if (i > 0 && open < end) return `${says}, which begins before the piece before it ends`
    end = close
  }
  return null
}

function whyWrongAmount({ task, placed }: Booked): string | null {
  if (task.delivery) return null
  const says = `task \`${task.id}\``
  const wanted = task.time ? wholeMinutes(task.time) : task.minutes
  if (task.minutes !== wanted)
    return `${says} is planned with ${task.minutes} min, its mean asks for ${wanted} min`
  const [opening, closing] = [
    placed.pieces[0]?.open ?? placed.start,
    placed.pieces.at(-1)?.close ?? placed.start,
  ]
  if (opening !== placed.start) {
    return `${says} starts ${sayInstant(placed.start)}, its first piece opens ${sayInstant(opening)}`
  }
  const worked = placed.pieces.reduce((sum, { open, close }) => sum + close - open, 0)
  if (worked !== task.minutes) return `${says} is worked on for ${worked} min and takes ${task.minutes} min`
  if (closing === placed.finish) return null
  return `${says} finishes ${sayInstant(placed.finish)}, its last piece closes ${sayInstant(closing)}`
}

function whyBroken({ task, placed }: Booked): string | null {
  if (placed.pieces.length < 2 || task.delivery) return null
  const says = `task \`${task.id}\` pauses ${sayInstant(placed.pieces[0]!.close)}`
  if (!task.pausable) return `${says} but may not pause`
  const runsAlone = task.attention === 'none' && (task.kind === 'run' || task.kind === 'cure')
  return runsAlone ? `${says} but a ${task.kind} that nobody attends is one unbroken piece` : null
}

/** The mean in whole minutes, rounded up once. */
function wholeMinutes({ mean }: ThreePoint): number {
  const perMinute = 60n * mean.d
  return Number((mean.s * mean.n + perMinute - 1n) / perMinute)
}
