import { dayOf, type Instant } from '../../base/clock.ts'
import { groupByEach } from '../../base/group-by.ts'
import type { Spans } from '../../base/spans.ts'
import type { Project } from '../../model/project.ts'
import type { HoursOf } from '../../model/schedule.ts'
import type { LinkWhy, PlanTask, TaskNetwork } from '../../model/tasks.ts'
import { timetableOf, workDays } from '../calendar/deliveries.ts'
import { join, machineHours, meet, sessionsOf, toolDates } from '../calendar/open-hours.ts'
import type { Calendar, Link, Mode, Need, Problem, Resource, Task } from '../schedule/problem.ts'

/** A problem for the scheduler, with what its numbers stand for. */
export interface Translated {
  readonly problem: Problem
  /** People of each mode of each task. */
  readonly people: readonly (readonly (readonly string[])[])[]
  /** Resource names, in words. */
  readonly resources: readonly string[]
  /** What each calendar is made of: it is open where all of these are. */
  readonly hours: readonly (readonly OpenTimes[])[]
}

/** Whose hours, and when they are. */
export interface OpenTimes extends HoursOf {
  readonly spans: Spans
}

/** Most sets of people tried for one task. */
const mostTeams = 24

/** Every set of so many people, in the order they are named. */
function teams(who: readonly string[], count: number): readonly (readonly string[])[] {
  if (count === 0) return [[]]
  return who.flatMap((one, at) => teams(who.slice(at + 1), count - 1).map((rest) => [one, ...rest]))
}

/** Calendars by key, each made once. */
class CalendarList {
  readonly list: Calendar[] = []
  readonly hours: (readonly OpenTimes[])[] = []
  readonly #index = new Map<string, number>()

  index(id: string, hours: () => readonly OpenTimes[]): number {
    const known = this.#index.get(id)
    if (known !== undefined) return known
    const parts = hours()
    this.list.push({ id, spans: meet(parts.map(({ spans }) => spans))! })
    this.hours.push(parts)
    this.#index.set(id, this.list.length - 1)
    return this.list.length - 1
  }
}

interface World {
  readonly project: Project
  readonly from: Instant
  readonly to: Instant
  readonly calendars: CalendarList
  readonly resourceIndex: ReadonlyMap<string, number>
  readonly sessions: ReadonlyMap<string, Spans>
  readonly machines: ReadonlyMap<string, Spans | null>
  readonly tools: ReadonlyMap<string, Spans | null>
  readonly heldTools: ReadonlyMap<string, readonly string[]>
}

const weekdaysOnly = { weekly: [true, true, true, true, true, false, false], off: [] }

function resourcesOf(
  project: Project,
  network: TaskNetwork,
): readonly (Resource & { readonly says: string })[] {
  const one = (kind: string, id: string, capacity: number) => ({ id: `${kind}:${id}`, says: id, capacity })
  const resources = [
    ...[...project.people.keys()].map((id) => one('person', id, 1)),
    ...[...project.machines.values()].map(({ id, capacity }) => one('machine', id, capacity)),
    ...[...project.tools.values()].map(({ id, qty }) => one('tool', id, qty)),
    ...[...network.fixtures].map(([id, count]) => one('fixture', id, count)),
  ]
  // The order of entries in a file decides nothing.
  return resources.sort((a, b) => (a.id < b.id ? -1 : 1))
}

/** The calendar a task works on with these people; `null`: always. Its key names what it is made of. */
function calendarOf(world: World, task: PlanTask, team: readonly string[]): number | null {
  const tools = [...task.tools, ...(world.heldTools.get(task.id) ?? [])].filter((tool) =>
    world.tools.get(tool),
  )
  const machine = task.machine !== null && world.machines.get(task.machine) ? task.machine : null
  const watchers = task.attention === 'nearby' ? [...task.who].sort() : []
  const key = [
    ...team,
    ...(watchers.length > 0 ? [watchers.join(' or ')] : []),
    ...(machine === null ? [] : [machine]),
    ...tools,
  ].join(' and ')
  if (key === '') return null
  return world.calendars.index(key, () => {
    const session = (person: string) => world.sessions.get(person)!
    const near: readonly OpenTimes[] =
      watchers.length > 0 ? [{ kind: 'people', names: watchers, spans: join(watchers.map(session)) }] : []
    return [
      ...team.map((name): OpenTimes => ({ kind: 'people', names: [name], spans: session(name) })),
      ...near,
      ...(machine === null
        ? []
        : [{ kind: 'machine', names: [machine], spans: world.machines.get(machine)! } as const]),
      ...tools.map((name): OpenTimes => ({ kind: 'tool', names: [name], spans: world.tools.get(name)! })),
    ]
  })
}

function needsOf(world: World, task: PlanTask, team: readonly string[]): readonly Need[] {
  const need = (key: string, during: Need['during']): Need => ({
    resource: world.resourceIndex.get(key)!,
    amount: 1,
    during,
  })
  return [
    ...team.map((person) => need(`person:${person}`, 'work')),
    ...(task.takesMachine && task.machine !== null ? [need(`machine:${task.machine}`, 'span')] : []),
    ...task.tools.map((tool) => need(`tool:${tool}`, 'span')),
    ...task.fixtures.map((fixture) => need(`fixture:${fixture}`, 'span')),
  ]
}

/** What the hands of a team cost for so many minutes of each. */
function costOf({ people }: Project, team: readonly string[], minutes: number): number {
  return team.reduce((sum, person) => sum + (people.get(person)!.rate.valueOf() * minutes) / 60, 0)
}

function modesOf(
  world: World,
  task: PlanTask,
): { readonly modes: readonly Mode[]; readonly people: readonly (readonly string[])[] } {
  // Sorted: the order in which people are written must not decide a tie.
  const people =
    task.attention === 'hands' ? teams([...task.who].sort(), task.people).slice(0, mostTeams) : [[]]
  const vendor = task.delivery ? world.project.vendors.get(task.delivery.vendor)! : null
  const timetable = vendor && task.delivery ? timetableOf(vendor, task.delivery, world.from, world.to) : null
  const modes = people.map(
    (team): Mode => ({
      duration: task.minutes,
      calendar: calendarOf(world, task, team),
      pausable: task.pausable,
      least: task.least,
      needs: needsOf(world, task, team),
      timetable,
      cost: costOf(world.project, team, task.handsMinutes),
    }),
  )
  return { modes, people }
}

function worldOf(
  project: Project,
  network: TaskNetwork,
  resources: readonly Resource[],
  from: Instant,
  to: Instant,
): World {
  const toolHolds = network.holds.filter(({ kind }) => kind === 'tool')
  const held = groupByEach(toolHolds, ({ from: first, to: last }) => new Set([first, last]))
  return {
    project,
    from,
    to,
    calendars: new CalendarList(),
    resourceIndex: new Map(resources.map(({ id }, index) => [id, index])),
    sessions: new Map(
      [...project.people.values()].map((person) => [person.id, sessionsOf(person, from, to)]),
    ),
    machines: new Map(
      [...project.machines.values()].map((machine) => [machine.id, machineHours(machine, from, to)]),
    ),
    tools: new Map([...project.tools.values()].map((tool) => [tool.id, toolDates(tool, from, to)])),
    heldTools: new Map([...held].map(([task, holds]) => [task, holds.map(({ resource }) => resource)])),
  }
}

/** How much each order wants to go out early, by cart: every one a little, more the longer it may take than at best. */
function orderWeights({ tasks }: TaskNetwork): ReadonlyMap<string, number> {
  return new Map(
    tasks.flatMap(({ delivery }) => (delivery ? [[delivery.cart, 1 + (delivery.spreadDays ?? 0)]] : [])),
  )
}

/** Links between which a part or an assembly lies half done. */
const halfDone: ReadonlySet<LinkWhy> = new Set(['route', 'assembly', 'cure', 'load'])

/** Earlier goes first among equals: orders, then what runs by itself, then the rest. */
const preference: Readonly<Partial<Record<PlanTask['kind'], number>>> = { order: 2, load: 1, run: 1 }

/** The network as a problem for the scheduler, with calendars from the project's start to `to`. */
export function toProblem(project: Project, network: TaskNetwork, from: Instant, to: Instant): Translated {
  const resources = resourcesOf(project, network)
  const world = worldOf(project, network, resources, from, to)
  const index = new Map(network.tasks.map((task, at) => [task.id, at]))
  const made = network.tasks.map((task) => modesOf(world, task))
  const weights = orderWeights(network)
  const tasks = network.tasks.map(
    (task, at): Task => ({
      id: task.id,
      release: task.release,
      modes: made[at]!.modes,
      preference: preference[task.kind] ?? 0,
      listed: task.listed ?? at,
      uncertain: task.kind === 'order' ? (weights.get(task.subject.cart!) ?? 1) : 0,
    }),
  )
  const links = network.links.map(
    (link): Link => ({
      from: index.get(link.from)!,
      to: index.get(link.to)!,
      type: 'FS',
      lag: 'minutes' in link.lag ? link.lag.minutes : { days: link.lag.workingDays, calendar: 0 },
      longest: link.within,
      halfDone: halfDone.has(link.why),
    }),
  )
  const holds = network.holds.map((hold) => ({
    resource: world.resourceIndex.get(`${hold.kind}:${hold.resource}`)!,
    amount: 1,
    from: index.get(hold.from)!,
    to: index.get(hold.to)!,
  }))
  const problem: Problem = {
    start: from,
    horizon: to,
    resources: resources.map((resource) => {
      const sessions = world.sessions.get(resource.says)
      return resource.id.startsWith('person:') && sessions ? { ...resource, sessions } : resource
    }),
    calendars: world.calendars.list,
    tasks,
    links,
    holds,
    dayCalendars: [{ id: 'Monday to Friday', days: workDays(weekdaysOnly, dayOf(from), dayOf(to)) }],
  }
  return {
    problem,
    people: made.map(({ people }) => people),
    resources: resources.map(({ says }) => says),
    hours: world.calendars.hours,
  }
}
