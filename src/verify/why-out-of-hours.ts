import { type Span, sayInstant } from '../base/clock.ts'
import { type Booked, type Booking, type Rule, somebodysHours } from './booking.ts'
import { holds } from './open-hours.ts'
import { first } from './why-misplaced.ts'

/** Why a piece of work lies outside the hours of its machine or of the people it needs, or `null`. */
export const whyOutOfHours: Rule = (booking) => {
  const union = unionByPeople(booking)
  return first(booking.all, (booked) =>
    booked.task.delivery ? null : (whyMachineShut(booking, booked) ?? whyNobodyThere(booking, union, booked)),
  )
}

type Union = (people: readonly string[]) => readonly Span[] | null

function unionByPeople(booking: Booking): Union {
  const known = new Map<string, readonly Span[] | null>()
  return (people) => {
    const key = JSON.stringify(people)
    if (!known.has(key)) known.set(key, somebodysHours(booking, people))
    return known.get(key)!
  }
}

function whyMachineShut(booking: Booking, { task, placed }: Booked): string | null {
  if (task.machine === null) return null
  const hours = booking.machineHours.get(task.machine)
  if (hours === undefined)
    return `task \`${task.id}\` runs on \`${task.machine}\`, which is no machine of the project`
  const shut = hours && placed.pieces.find((piece) => !holds(hours, piece))
  return shut ? `${atPiece(task.id, shut)} lies outside the hours of \`${task.machine}\`` : null
}

function whyNobodyThere(booking: Booking, union: Union, { task, placed }: Booked): string | null {
  if (task.attention === 'none') return null
  if (task.attention === 'nearby') {
    const hours = union(task.who)
    const alone = hours && placed.pieces.find((piece) => !holds(hours, piece))
    return alone ? `${atPiece(task.id, alone)} has nobody nearby` : null
  }
  for (const person of placed.people) {
    const away = placed.pieces.find((piece) => !holds(booking.sessions.get(person) ?? [], piece))
    if (away) return `${atPiece(task.id, away)} lies outside the sessions of \`${person}\``
  }
  return null
}

function atPiece(task: string, { open, close }: Span): string {
  return `task \`${task}\`: its piece from ${sayInstant(open)} to ${sayInstant(close)}`
}
