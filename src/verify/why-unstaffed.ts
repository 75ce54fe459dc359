import { type Instant, sayInstant } from '../base/clock.ts'
import type { Booked, Booking, Rule } from './booking.ts'
import { first } from './why-misplaced.ts'

/** Why a task lacks the people it needs, or a person is in two places at once, or `null`. */
export const whyUnstaffed: Rule = (booking) =>
  first(booking.all, (booked) => whyWrongPeople(booking, booked)) ?? whyTwoAtOnce(booking)

function whyWrongPeople({ project }: Booking, { task, placed }: Booked): string | null {
  const says = `task \`${task.id}\` at ${sayInstant(placed.start)}`
  const { people } = placed
  if (new Set(people).size < people.length) return `${says} has the same person twice`
  const stranger = people.find((person) => !task.who.includes(person) || !project.people.has(person))
  if (stranger !== undefined) return `${says} is done by \`${stranger}\`, who may not do it`
  if (task.attention === 'none') return people.length > 0 ? `${says} has people but nobody is needed` : null
  if (task.attention === 'nearby' || project.people.size === 0) return null
  // A task without time takes nobody.
  if (task.minutes === 0 && people.length === 0) return null
  if (people.length !== task.people) return `${says} has ${people.length} people and needs ${task.people}`
  const users = (task.machine !== null && project.machines.get(task.machine)?.users) || []
  const barred = users.length > 0 ? people.find((person) => !users.includes(person)) : undefined
  return barred === undefined ? null : `${says} is done by \`${barred}\`, who may not use \`${task.machine}\``
}

interface Turn {
  readonly task: string
  readonly open: Instant
  readonly close: Instant
}

/** Whether two pieces of hands work of one person overlap: each begins after all before it have ended. */
function whyTwoAtOnce({ all }: Booking): string | null {
  const turns = new Map<string, Turn[]>()
  for (const { task, placed } of all) {
    if (task.attention !== 'hands') continue
    for (const person of placed.people) {
      const own = turns.get(person) ?? []
      own.push(...placed.pieces.map(({ open, close }) => ({ task: task.id, open, close })))
      turns.set(person, own)
    }
  }
  return first([...turns], ([person, own]) => whyOverlap(person, own))
}

function whyOverlap(person: string, turns: readonly Turn[]): string | null {
  const sorted = turns.filter(({ open, close }) => open < close).sort((a, b) => a.open - b.open)
  for (const [i, turn] of sorted.entries()) {
    const before = sorted[i - 1]
    if (before && turn.open < before.close) {
      return `\`${person}\` works on \`${before.task}\` and \`${turn.task}\` at once, ${sayInstant(turn.open)}`
    }
  }
  return null
}
