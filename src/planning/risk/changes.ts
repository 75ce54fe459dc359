/** What may be changed to bring the date nearer, each as the problem that it makes of the plan. */
import { type Instant, instantOf, type Minutes, minutesPerDay } from '../../base/clock.ts'
import type { Hours, Project } from '../../model/project.ts'
import type { Lever } from '../../model/risk.ts'
import type { PlanTask, TaskNetwork } from '../../model/tasks.ts'
import { timetableOf } from '../calendar/deliveries.ts'
import type { Problem, Timetable } from '../schedule/index.ts'
import { toProblem } from '../timing/to-problem.ts'
import type { SampleSource } from './lay-out-samples.ts'

/** A change and the problem that it makes of the plan. */
export interface Change extends Pick<Lever, 'kind' | 'of' | 'person' | 'weekday'> {
  readonly problem: () => Problem
}

/** The plan as it is, and what may be changed of it. */
export interface Changes {
  readonly base: Problem
  /** Most promising first. */
  readonly list: readonly Change[]
}

/** How much a task bears on the date: on the chain that sets it, or on that of a share of the samples. */
export type Bearing = (task: number) => number

/** A task bears on the date from this share of the samples on, or with no more float than this. */
const leastShare = 0.1
const leastFloat: Minutes = 180

/**
 * All changes worth a try. People: each evening that they are not there. Machines and carts: those with a task that is
 * on the chain that sets the date, or on that of a tenth of the samples, or that has less than an evening's float.
 */
export function changesOf(source: SampleSource, shareOf: Bearing): Changes {
  const { project, network, schedule } = source
  const from = instantOf(project.device.start, 0)
  const to = schedule.finish + 30 * minutesPerDay
  const base = toProblem(project, network, from, to).problem
  const world: World = { project, network, from, to, base }
  const busy = bearingOf(source, shareOf)
  const machines = [...new Set(busy.flatMap(({ task: { machine } }) => machine ?? []))]
  // Where links and hours alone keep the date, no machine brings it nearer.
  const alone = [...schedule.tasks.values()].reduce((last, { earlyFinish }) => Math.max(last, earlyFinish), 0)
  const room = schedule.finish > alone
  const list = inTurn([
    busy.flatMap(({ task, at }) => (task.delivery ? [earlierOrder(world, task.delivery.cart, at)] : [])),
    room ? machines.map((id) => secondMachine(world, id)) : [],
    moreEvenings(world),
    machines.flatMap((id) => anyHours(world, id)),
    machines.flatMap((id) => moreUsers(world, id, busy)),
  ])
  return { base, list }
}

/** A task by its number. */
interface Numbered {
  readonly task: PlanTask
  readonly at: number
}

/** Tasks that bear on the date, those first that do most. */
function bearingOf({ network, schedule }: SampleSource, shareOf: Bearing): readonly Numbered[] {
  const chain = new Set(schedule.drivingChain.map(({ task }) => task))
  const weightOf = (id: string, at: number): number => {
    if (chain.has(id)) return 1
    const near = schedule.tasks.get(id)!.float <= leastFloat
    return Math.max(shareOf(at), near ? leastShare : 0)
  }
  return network.tasks
    .map((task, at) => ({ task, at, weight: weightOf(task.id, at) }))
    .filter(({ weight }) => weight >= leastShare)
    .sort((a, b) => b.weight - a.weight || a.at - b.at)
}

/** The first of each list, then the second of each. */
function inTurn<T>(lists: readonly (readonly T[])[]): readonly T[] {
  const most = Math.max(...lists.map(({ length }) => length))
  return Array.from({ length: most }, (_, at) => lists.flatMap((list) => list.slice(at, at + 1))).flat()
}

interface World {
  readonly project: Project
  readonly network: TaskNetwork
  readonly from: Instant
  readonly to: Instant
  readonly base: Problem
}

const again = ({ from, to, ...world }: World, project: Project, network = world.network): Problem =>
  toProblem(project, network, from, to).problem

const nobody = { person: null, weekday: null }

/** The delivery comes as if it had been ordered one vendor day earlier, though not before it is ordered. */
function earlierOrder({ base, project, network, from, to }: World, cart: string, delivery: number): Change {
  const problem = (): Problem => {
    const way = network.tasks[delivery]!.delivery!
    // From a fortnight before the start, so that there is a day before its first.
    const wide = timetableOf(project.vendors.get(way.vendor)!, way, from - 14 * minutesPerDay, to)
    const tasks = [...base.tasks]
    const task = tasks[delivery]!
    const modes = task.modes.map((mode) =>
      mode.timetable ? { ...mode, timetable: earlier(mode.timetable, wide) } : mode,
    )
    tasks[delivery] = { ...task, modes }
    return { ...base, tasks }
  }
  return { kind: 'order earlier', of: cart, ...nobody, problem }
}

function earlier({ leaveBefore, arrives }: Timetable, wide: Timetable): Timetable {
  const before = (k: number): Instant => {
    const at = wide.leaveBefore.indexOf(leaveBefore[k]!)
    return at > 0 ? wide.arrives[at - 1]! : arrives[k]!
  }
  return { leaveBefore, arrives: arrives.map((_, k) => Math.max(before(k), leaveBefore[k]!)) }
}

function secondMachine({ base }: World, id: string): Change {
  const resources = base.resources.map((one) =>
    one.id === `machine:${id}` ? { ...one, capacity: one.capacity + 1 } : one,
  )
  return { kind: 'second machine', of: id, ...nobody, problem: () => ({ ...base, resources }) }
}

function anyHours(world: World, id: string): readonly Change[] {
  const { project } = world
  const machine = project.machines.get(id)!
  if (machine.hours === null) return []
  const machines = new Map(project.machines).set(id, { ...machine, hours: null })
  return [{ kind: 'any hours', of: id, ...nobody, problem: () => again(world, { ...project, machines }) }]
}

/** Each weekday on which a person is not there, as long as on the first of the week that they are. */
function moreEvenings(world: World): readonly Change[] {
  const { project } = world
  return [...project.people.values()].flatMap((person) => {
    const { hours } = person
    const usual = hours?.weekly.find((spans) => spans.length > 0)
    if (!hours || !usual) return []
    return hours.weekly.flatMap((spans, weekday): readonly Change[] => {
      if (spans.length > 0) return []
      const weekly = hours.weekly.map((own, day) => (day === weekday ? usual : own))
      const more: Hours = { ...hours, weekly }
      const people = new Map(project.people).set(person.id, { ...person, hours: more })
      const problem = () => again(world, { ...project, people })
      return [{ kind: 'one more evening', of: person.id, person: null, weekday, problem }]
    })
  })
}

/** Each person who may not do what is done on a machine and bears on the date. */
function moreUsers(world: World, id: string, busy: readonly Numbered[]): readonly Change[] {
  const { project, network } = world
  const some = busy.map(({ task }) => task).filter(({ machine, who }) => machine === id && who.length > 0)
  const left = [...project.people.keys()].filter((person) => some.some(({ who }) => !who.includes(person)))
  return left.map((person): Change => {
    const problem = (): Problem => {
      const tasks = network.tasks.map((task) =>
        task.machine !== id || task.who.length === 0 || task.who.includes(person)
          ? task
          : { ...task, who: [...task.who, person] },
      )
      return again(world, project, { ...network, tasks })
    }
    return { kind: 'one more user', of: id, person, weekday: null, problem }
  })
}
