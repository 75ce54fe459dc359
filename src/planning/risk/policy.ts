/** The plan's own way of working, asked again with other times: the same order of tasks, laid out by the real scheduler. */
import { type Instant, instantOf, type Minutes } from '../../base/clock.ts'
import type { Project } from '../../model/project.ts'
import type { PlanSchedule } from '../../model/schedule.ts'
import type { TaskNetwork } from '../../model/tasks.ts'
import { timetableOf } from '../calendar/deliveries.ts'
import {
  type Blocks,
  clockOf,
  type Decoded,
  decoderOf,
  linkedBlocks,
  type Mode,
  type Network,
  networkOf,
  type Problem,
  rankByStart,
} from '../schedule/index.ts'
import { type Translated, toProblem } from '../timing/to-problem.ts'
import type { Draws } from './draws.ts'

/** Asked whether a plan laid out with the times of one sample is done, and how. */
export interface Policy {
  /** The plan as the scheduler sees it, with its own times. */
  readonly problem: Problem
  /** Later than everything: a sample that ends after this was not laid out. */
  readonly horizon: Instant
  /**
   * The plan with the times of sample `k`, one task held or pulled; `null` where something found no place.
   * The answer is good until the next question.
   */
  readonly layOut: (k: number, change?: Held | Pulled) => Laid | null
  /** The same with the plan's own times. */
  readonly asPlanned: (change?: Held | Pulled) => Laid | null
  /** What is laid out for sample `k`, good until the next question. */
  readonly networkIn: (k: number) => Network
}

/** A task kept from starting before an instant. */
export interface Held {
  readonly task: number
  readonly until: Instant
}

/** A task placed before all others that do not come before it anyway. */
export interface Pulled {
  readonly task: number
  readonly until: 'first'
}

/** One layout, with the network it was laid out in. */
export interface Laid {
  readonly found: Decoded
  readonly network: Network
}

/** What a policy is made from. */
export interface PolicySource {
  readonly project: Project
  readonly network: TaskNetwork
  readonly schedule: PlanSchedule
}

/** How far samples may run past the plan: as long again, and two months. */
function horizonOf(from: Instant, finish: Instant): Instant {
  return finish + (finish - from) + 60 * 1440
}

/** Tasks in the order in which the plan begins them. */
export function planRank({ network, schedule }: Omit<PolicySource, 'project'>): Int32Array {
  const placed = network.tasks.map(({ id }) => schedule.tasks.get(id)!)
  return rankByStart({
    start: placed.map(({ start }) => start),
    finish: placed.map(({ finish }) => finish),
  })
}

/**
 * The plan's way of working: tasks are placed in the order in which the plan begins them, each at the earliest that
 * links, hours, people and machines allow, with the times of a sample.
 * Method: the network is laid out once; a sample changes durations and timetables alone. Whoever works by it is taken
 * to keep to the order, and to put a task into a gap only where it fits as it turns out.
 * Cost: one pass of the scheduler per question.
 */
export function policyOf(source: PolicySource, draws: Draws): Policy {
  const { project, network, schedule } = source
  const from = instantOf(project.device.start, 0)
  const horizon = horizonOf(from, schedule.finish)
  const rank = planRank(source)
  const laidOut = closerToPlan(source, toProblem(project, network, from, horizon), rank)
  const { problem } = laidOut.network
  const setSample = sampledClocks(source, draws, problem, horizon)
  const live = liveNetwork(laidOut.network)
  const sampled = asker(live, laidOut.blocks, rank)
  const own = asker(liveNetwork(laidOut.network), laidOut.blocks, rank)
  return {
    problem,
    horizon,
    layOut(k, change) {
      setSample(k, live.setClocks)
      return sampled(change)
    },
    asPlanned: own,
    networkIn(k) {
      setSample(k, live.setClocks)
      return live.network
    },
  }
}

type Ask = (change?: Held | Pulled) => Laid | null

/** Lays a network out by rank, one task held or pulled for just that question. */
function asker(live: LiveNetwork, blocks: Blocks, rank: Int32Array): Ask {
  const { network } = live
  const decode = decoderOf(network, blocks)
  const ask = (order: ArrayLike<number>): Laid | null => {
    const outcome = decode(order)
    return outcome.kind === 'found' ? { found: outcome.found, network } : null
  }
  return (change) => {
    if (!change) return ask(rank)
    if (change.until === 'first') return ask(rank.map((place, task) => (task === change.task ? -1 : place)))
    const { release } = network.problem.tasks[change.task]!
    live.setRelease(change.task, Math.max(change.until, release))
    const laid = ask(rank)
    live.setRelease(change.task, release)
    return laid
  }
}

/** A problem laid out, with the blocks of its tasks. */
interface LaidOut {
  readonly network: Network
  readonly blocks: Blocks
}

/**
 * Whoever is there first does a task, as the scheduler has it, or the people of the plan alone: whichever brings the
 * plan's own times nearer to its finish.
 */
function closerToPlan({ network, schedule }: PolicySource, free: Translated, rank: Int32Array): LaidOut {
  const laidOut = (problem: Problem): LaidOut & { readonly end: Instant } => {
    const made = networkOf(problem)
    const blocks = linkedBlocks(made)
    const outcome = decoderOf(made, blocks)(rank)
    const end = outcome.kind === 'found' ? outcome.found.end : Number.POSITIVE_INFINITY
    return { network: made, blocks, end }
  }
  const first = laidOut(free.problem)
  if (first.end <= schedule.finish) return first
  const tasks = free.problem.tasks.map((task, at) => {
    const planned = schedule.tasks.get(network.tasks[at]!.id)!.people.join()
    const own = task.modes.filter((_, mode) => free.people[at]![mode]!.join() === planned)
    return own.length === 0 ? task : { ...task, modes: own }
  })
  const kept = laidOut({ ...free.problem, tasks })
  return kept.end < first.end ? kept : first
}

/** A network of which clocks and releases change between passes; links, demands and holds stay. */
interface LiveNetwork {
  readonly network: Network
  readonly setClocks: (task: number, clocks: Network['clocks'][number]) => void
  readonly setRelease: (task: number, release: Instant) => void
}

function liveNetwork(first: Network): LiveNetwork {
  const { problem } = first
  const tasks = [...problem.tasks]
  const clocks = [...first.clocks]
  return {
    network: { ...first, clocks, problem: { ...problem, tasks } },
    setClocks(task, made) {
      clocks[task] = made
    },
    setRelease(task, release) {
      tasks[task] = { ...problem.tasks[task]!, release }
    },
  }
}

/** Sets the drawn times of sample `k`, task by task; what the same task was asked before is kept. */
function sampledClocks(
  { project, network }: PolicySource,
  draws: Draws,
  problem: Problem,
  horizon: Instant,
): (k: number, set: LiveNetwork['setClocks']) => void {
  const timetable = drawnTimetables(project, problem.start, horizon)
  const remade = (at: number, change: (mode: Mode) => Mode): Network['clocks'][number] =>
    problem.tasks[at]!.modes.map((mode) => clockOf(change(mode), problem.calendars))
  const work = [...draws.minutes].map(([at, minutes]) => {
    const made = kept((key) =>
      remade(at, (mode) => withMinutes(mode, Math.floor(key / manyMinutes), key % manyMinutes)),
    )
    return { at, of: (k: number) => made(minutes.total[k]! * manyMinutes + minutes.oneGo[k]!) }
  })
  const ways = [...draws.days].map(([at, { lead, transit, out }]) => {
    const { vendor } = network.tasks[at]!.delivery!
    const made = kept((days) => remade(at, (mode) => ({ ...mode, timetable: timetable(vendor, days) })))
    return { at, of: (k: number) => made(packed(lead[k]!, transit[k]!, out[k]!)) }
  })
  const all = [...work, ...ways]
  return (k, set) => {
    for (const { at, of } of all) set(at, of(k))
  }
}

/** More minutes than one go takes: a hundred years. */
const manyMinutes = 2 ** 26

/** A mode with other minutes; what may not pause rests only between goes, so no piece of it is shorter than one go. */
function withMinutes(mode: Mode, duration: Minutes, oneGo: Minutes): Mode {
  if (oneGo === 0 || mode.pausable) return { ...mode, duration }
  return { ...mode, duration, pausable: true, least: Math.max(mode.least, oneGo) }
}

/** Answers each number once and keeps the answer. */
function kept<T>(make: (key: number) => T): (key: number) => T {
  const made = new Map<number, T>()
  return (key) => {
    const known = made.get(key)
    if (known !== undefined) return known
    const fresh = make(key)
    made.set(key, fresh)
    return fresh
  }
}

/** More days than any way takes. */
const manyDays = 4096

/** Three numbers of days as one. */
function packed(lead: number, transit: number, out: number): number {
  return (lead * manyDays + transit) * manyDays + out
}

/** Timetables by vendor and packed days, each made once. */
function drawnTimetables(project: Project, from: Instant, to: Instant) {
  const byVendor = kept((at) => {
    const vendor = vendors[at]!
    return kept((days) => {
      const [rest, outDays] = [Math.floor(days / manyDays), days % manyDays]
      const [leadDays, transitDays] = [Math.floor(rest / manyDays), rest % manyDays]
      return timetableOf(vendor, { cart: '', vendor: vendor.id, leadDays, transitDays, outDays }, from, to)
    })
  })
  const vendors = [...project.vendors.values()]
  return (vendor: string, days: number) => byVendor(vendors.findIndex(({ id }) => id === vendor))(days)
}
