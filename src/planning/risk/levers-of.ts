/** What would bring the date nearer, each solved again. */
import { type Instant, instantOf, minutesPerDay } from '../../base/clock.ts'
import type { Hours, Project } from '../../model/project.ts'
import type { Lever } from '../../model/risk.ts'
import type { Timetable } from '../schedule/index.ts'
import { decoderOf, networkOf, type Problem, scheduleProblem } from '../schedule/index.ts'
import { toProblem } from '../timing/to-problem.ts'
import type { SampleSource } from './lay-out-samples.ts'
import { planRank } from './policy.ts'

/** Most changes solved again, schedules tried for each, and changes told. */
const mostChanges = 12
const effort = 2
const mostTold = 5

/** A change and the problem that it makes of the plan. */
interface Change {
  readonly kind: Lever['kind']
  readonly of: string
  readonly weekday: number | null
  readonly problem: () => Problem
}

/**
 * The changes that bring the finish nearest: a cart ordered one vendor day earlier, one more evening a week for a
 * person, a second of a machine. Each is solved again, in the plan's own order of tasks and by a short search, and the
 * better of the two counts; so a gain is real, and a larger one may be possible.
 * Gives: at most five with a gain of half a day or more, most days first. Cost: at most 12 short searches.
 */
export function leversOf(source: SampleSource): readonly Lever[] {
  const { schedule } = source
  const rank = planRank(source)
  return changesOf(source)
    .slice(0, mostChanges)
    .map(({ kind, of, weekday, problem }): Lever => {
      const finish = Math.min(schedule.finish, solvedAgain(problem(), rank))
      return { kind, of, weekday, finish, days: (schedule.finish - finish) / minutesPerDay }
    })
    .filter(({ days }) => days >= 0.5)
    .sort((a, b) => b.days - a.days || (a.of < b.of ? -1 : 1))
    .slice(0, mostTold)
}

function solvedAgain(problem: Problem, rank: Int32Array): Instant {
  const own = decoderOf(networkOf(problem))(rank)
  const searched = scheduleProblem(problem, { effort, seed: 1 })
  return Math.min(
    own.kind === 'found' ? own.found.end : Number.POSITIVE_INFINITY,
    searched.kind === 'found' ? searched.schedule.finish : Number.POSITIVE_INFINITY,
  )
}

/** Changes worth a try: of carts and machines those on the chain that sets the date; without them it stays as it is. */
function changesOf(source: SampleSource): readonly Change[] {
  const { project, network, schedule } = source
  const chain = new Set(schedule.drivingChain.map(({ task }) => task))
  const tasks = network.tasks.map((task, at) => ({ ...task, at, driving: chain.has(task.id) }))
  const from = instantOf(project.device.start, 0)
  const to = schedule.finish + 30 * minutesPerDay
  const again = (changed: Project): Problem => toProblem(changed, network, from, to).problem
  const people = [...project.people.keys()].flatMap((id): readonly Change[] => {
    const free = freeEvening(project.people.get(id)!.hours)
    if (!free) return []
    const { weekday, hours } = free
    return [
      { kind: 'one more evening', of: id, weekday, problem: () => again(withHours(project, id, hours)) },
    ]
  })
  const busy = tasks.filter(({ machine, driving }) => machine !== null && driving)
  const machines = [...new Set(busy.map(({ machine }) => machine!))].map(
    (id): Change => ({
      kind: 'second machine',
      of: id,
      weekday: null,
      problem: () => again(withMachine(project, id)),
    }),
  )
  const carts = tasks
    .filter(({ delivery, driving }) => delivery !== null && driving)
    .map(
      ({ delivery, at }): Change => ({
        kind: 'order earlier',
        of: delivery!.cart,
        weekday: null,
        problem: () => withEarlierRide(again(project), at),
      }),
    )
  return [...people, ...machines, ...carts]
}

/** Hours with one more evening, on the first day of the week that has none, as long as the first that is there. */
function freeEvening(hours: Hours | null): { readonly weekday: number; readonly hours: Hours } | null {
  const usual = hours?.weekly.find((spans) => spans.length > 0)
  const weekday = hours?.weekly.findIndex((spans) => spans.length === 0) ?? -1
  if (!hours || !usual || weekday < 0) return null
  const weekly = hours.weekly.map((spans, day) => (day === weekday ? usual : spans))
  return { weekday, hours: { ...hours, weekly } }
}

function withHours(project: Project, person: string, hours: Hours): Project {
  const people = new Map(project.people)
  people.set(person, { ...people.get(person)!, hours })
  return { ...project, people }
}

function withMachine(project: Project, id: string): Project {
  const machines = new Map(project.machines)
  const machine = machines.get(id)!
  machines.set(id, { ...machine, capacity: machine.capacity + 1 })
  return { ...project, machines }
}

/** The delivery comes as if it had been ordered one vendor day earlier, though not before it is ordered. */
function withEarlierRide(problem: Problem, delivery: number): Problem {
  const tasks = [...problem.tasks]
  const task = tasks[delivery]!
  tasks[delivery] = {
    ...task,
    modes: task.modes.map((mode) =>
      mode.timetable ? { ...mode, timetable: earlier(mode.timetable) } : mode,
    ),
  }
  return { ...problem, tasks }
}

function earlier({ leaveBefore, arrives }: Timetable): Timetable {
  const before = (k: number): Instant => arrives[Math.max(0, k - 1)]!
  return { leaveBefore, arrives: arrives.map((_, k) => Math.max(before(k), leaveBefore[k]!)) }
}
