/** Why a schedule breaks its problem, minute by minute and rule by rule; written for tests, sharing nothing with the engine. */
import type { Link, Mode, Placement, Problem, Schedule } from '../../../../src/planning/schedule/problem.ts'

function isOpen(problem: Problem, mode: Mode, t: number): boolean {
  if (mode.calendar === null) return true
  const { spans } = problem.calendars[mode.calendar]!
  for (let k = 0; k < spans.length; k += 2) if (spans[k]! <= t && t < spans[k + 1]!) return true
  return false
}

/** Length of the open window that begins at or holds `t`, counted from `t`. */
function openFrom(problem: Problem, mode: Mode, t: number, enough: number): number {
  let minutes = 0
  while (minutes < enough && isOpen(problem, mode, t + minutes)) minutes++
  return minutes
}

function expectedPieces(problem: Problem, mode: Mode, start: number): [number, number][] | null {
  if (mode.timetable) {
    const k = mode.timetable.leaveBefore.findIndex((leave) => start < leave)
    return k < 0 ? null : [[start, mode.timetable.arrives[k]!]]
  }
  if (!isOpen(problem, mode, start)) return null
  if (mode.duration === 0) return [[start, start]]
  const pieces: [number, number][] = []
  let left = mode.duration
  for (let t = start; left > 0; ) {
    if (t > problem.horizon) return null
    const room = openFrom(problem, mode, t, left)
    if (room < left && !mode.pausable) return null
    if (room === 0 || (room < left && room < mode.least)) {
      if (t === start) return null
      t += Math.max(1, room)
      continue
    }
    pieces.push([t, t + room])
    t += room
    left -= room
  }
  return pieces
}

function whyPlacedWrong(problem: Problem, placement: Placement, index: number): string | null {
  const task = problem.tasks[index]!
  const { start, finish, pieces } = placement
  const expected = expectedPieces(problem, task.modes[placement.mode]!, start)
  if (start < Math.max(task.release, problem.start)) return `${task.id} starts too early`
  if (!expected) return `${task.id} cannot start at ${start}`
  const got = pieces.map(({ open, close }) => [open, close])
  if (JSON.stringify(got) !== JSON.stringify(expected))
    return `${task.id}: pieces ${JSON.stringify(got)}, not ${JSON.stringify(expected)}`
  return finish === expected.at(-1)![1] ? null : `${task.id}: wrong finish`
}

function daysOn(days: Int32Array, at: number, n: number): number {
  let day = Math.floor(at / 1440)
  const clock = at - day * 1440
  for (let left = Math.abs(n); left > 0; ) {
    day += Math.sign(n)
    if (day < -10_000) return Number.NEGATIVE_INFINITY
    if (day > 1_000_000) return Number.POSITIVE_INFINITY
    if (days.includes(day)) left--
  }
  return day * 1440 + clock
}

function whyLinkBroken(problem: Problem, link: Link, placements: readonly Placement[]): string | null {
  const from = placements[link.from]![link.type[0] === 'F' ? 'finish' : 'start']
  const to = placements[link.to]![link.type[1] === 'F' ? 'finish' : 'start']
  const least =
    typeof link.lag === 'number'
      ? from + link.lag
      : daysOn(problem.dayCalendars[link.lag.calendar]!.days, from, link.lag.days)
  if (to < least) return `link ${link.from} ${link.type} ${link.to} broken`
  return link.longest !== null && to - from > link.longest
    ? `longest wait ${link.from} ${link.to} missed`
    : null
}

function whyOverfull(problem: Problem, placements: readonly Placement[]): string | null {
  const used = problem.resources.map(() => new Map<number, number>())
  const usedUp = problem.resources.map(() => 0)
  const use = (resource: number, amount: number, open: number, close: number) => {
    for (let t = open; t < close; t++) used[resource]!.set(t, (used[resource]!.get(t) ?? 0) + amount)
  }
  for (const [k, placement] of placements.entries()) {
    for (const need of problem.tasks[k]!.modes[placement.mode]!.needs) {
      if (need.during === 'ever') {
        usedUp[need.resource]! += need.amount
        continue
      }
      const times =
        need.during === 'span' ? [{ open: placement.start, close: placement.finish }] : placement.pieces
      for (const { open, close } of times) use(need.resource, need.amount, open, close)
    }
  }
  for (const hold of problem.holds)
    use(hold.resource, hold.amount, placements[hold.from]!.start, placements[hold.to]!.finish)
  for (const [r, resource] of problem.resources.entries())
    if (usedUp[r]! > resource.capacity) return `${resource.id} used up`
  for (const [r, minutes] of used.entries()) {
    for (const [t, amount] of minutes)
      if (amount > problem.resources[r]!.capacity) return `${problem.resources[r]!.id} overfull at ${t}`
  }
  return null
}

/** The first rule that the schedule breaks, in words, or `null`. */
export function whyBroken(problem: Problem, schedule: Schedule): string | null {
  const { placements } = schedule
  if (placements.length !== problem.tasks.length) return 'a placement is missing'
  for (const [k, placement] of placements.entries()) {
    const why = whyPlacedWrong(problem, placement, k)
    if (why) return why
  }
  for (const link of problem.links) {
    const why = whyLinkBroken(problem, link, placements)
    if (why) return why
  }
  if (schedule.finish !== Math.max(problem.start, ...placements.map(({ finish }) => finish)))
    return 'wrong finish'
  return whyOverfull(problem, placements)
}
