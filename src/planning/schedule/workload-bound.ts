/** A bound from below on the finish of any problem: work that must be done between two instants against the open time there. */
import { type Instant, type Minutes, minutesPerDay } from '../../base/clock.ts'
import { type Spans, unite } from '../../base/spans.ts'
import { arcLeast } from './lag.ts'
import type { Blocks } from './linked-blocks.ts'
import type { Network } from './network.ts'
import { earlyTimes, latestBoundsOf, roughOrder, type Times } from './precedence.ts'
import type { Mode } from './problem.ts'
import { emptyRun, never, runBefore } from './work-time.ts'

/** Work of some resources that lies between the early start of one task and the late finish of another. */
interface Piece {
  readonly from: number
  readonly to: number
  /** Minutes of work, times amount. */
  readonly work: number
}

/** Resources that stand in for each other, and what they surely have to do. */
interface Crew {
  readonly pieces: readonly Piece[]
  /** Open minutes of all of them together from the start of the project to an instant. */
  readonly openUntil: (at: Instant) => Minutes
}

const amountIn = (mode: Mode, resource: number): number =>
  mode.needs.reduce(
    (sum, need) => (need.resource === resource && need.during !== 'ever' ? sum + need.amount : sum),
    0,
  )

/** What a task asks of the resources at least, whichever way it is done. */
function leastWork(modes: readonly Mode[], resources: readonly number[]): number {
  return modes.reduce((least, mode) => {
    if (mode.timetable) return 0
    const amount = resources.reduce((sum, resource) => sum + amountIn(mode, resource), 0)
    return Math.min(least, amount * mode.duration)
  }, Number.POSITIVE_INFINITY)
}

/** Each resource by itself, and every set of which tasks may take one or the other. */
function crewsOf({ problem }: Network): number[][] {
  const singles = problem.resources.map((_, resource) => [resource])
  const sets = new Map<string, number[]>()
  for (const { modes } of problem.tasks) {
    if (modes.length < 2) continue
    const used = new Set(modes.flatMap(({ needs }) => needs.map(({ resource }) => resource)))
    const set = [...used]
      .filter((resource) => modes.some((mode) => amountIn(mode, resource) === 0))
      .sort((a, b) => a - b)
    if (set.length > 1) sets.set(set.join(), set)
  }
  return [...singles, ...sets.values()]
}

/** Tasks within a hold add up along the longest way through them: the resource is kept at least so long. */
function heldWork(
  { clocks, outOf }: Network,
  inside: ReadonlySet<number>,
  order: readonly number[],
): Minutes {
  const ahead = new Map<number, number>()
  let most = 0
  for (const task of [...order].reverse()) {
    if (!inside.has(task)) continue
    const after = outOf[task]!.reduce(
      (longest, arc) =>
        inside.has(arc.to) && !arc.turned && arc.fromFinish && !arc.toFinish && arc.lag >= 0
          ? Math.max(longest, ahead.get(arc.to) ?? 0)
          : longest,
      0,
    )
    const own = Math.min(...clocks[task]!.map(({ mode, duration }) => (mode.timetable ? 0 : duration)))
    ahead.set(task, own + after)
    most = Math.max(most, own + after)
  }
  return most
}

/** Open minutes up to an instant, asked in O(log spans). */
function counter(spans: Spans): (at: Instant) => Minutes {
  const before = new Float64Array((spans.length >> 1) + 1)
  for (let k = 0; 2 * k < spans.length; k++) before[k + 1] = before[k]! + spans[2 * k + 1]! - spans[2 * k]!
  return (at) => {
    let [low, high] = [0, spans.length >> 1]
    while (low < high) {
      const middle = (low + high) >> 1
      if (spans[2 * middle]! >= at) high = middle
      else low = middle + 1
    }
    if (low === 0) return 0
    return before[low - 1]! + Math.min(at, spans[2 * low - 1]!) - spans[2 * low - 2]!
  }
}

/** When a resource can do any of its work: the hours of the ways that take it, and of all ways of what it is held for. */
function openTime(
  { problem, clocks }: Network,
  resource: number,
  held: readonly number[],
): (at: Instant) => Minutes {
  const { capacity } = problem.resources[resource]!
  const ways = [
    ...clocks.flat().filter(({ mode }) => amountIn(mode, resource) > 0),
    ...held.flatMap((task) => clocks[task]!),
  ]
  const all = [...new Set(ways.map(({ spans }) => spans))]
  if (all.includes(null)) return (at) => capacity * (at - problem.start)
  const spans = all.reduce<Spans>((sum, one) => unite(sum, one!), new Int32Array())
  const count = counter(spans)
  return (at) => capacity * count(at)
}

function crewOf(
  network: Network,
  { inside }: Blocks,
  order: readonly number[],
  resources: readonly number[],
): Crew {
  const { problem } = network
  const own = problem.tasks.flatMap(({ modes }, task): Piece[] => {
    const work = leastWork(modes, resources)
    return work > 0 ? [{ from: task, to: task, work }] : []
  })
  const holds = problem.holds.flatMap(({ resource, amount, from, to }, index) => {
    if (!resources.includes(resource)) return []
    return [{ from, to, work: amount * heldWork(network, inside[index]!, order), tasks: [...inside[index]!] }]
  })
  const held = holds.flatMap(({ tasks }) => tasks)
  const opens = resources.map((resource) => openTime(network, resource, held))
  return {
    pieces: [...own, ...holds],
    openUntil: (at) => opens.reduce((sum, open) => sum + open(at), 0),
  }
}

/** Latest start and finish of every task. */
export type LateBounds = Times

/** The late bounds of a network, its early times worked out anew. */
export function lateBoundsOf(network: Network, end: Instant): LateBounds | null {
  const outcome = earlyTimes(network, null, arcLeast)
  return 'lost' in outcome ? null : lateBounds(network, outcome.times, end, roughOrder(network))
}

/**
 * No task is later than this in a schedule that is done by `end`; `null` where some task then has no time at all.
 * Unlike the late times of a plan these hold for every choice of modes, and need not be a schedule together.
 */
function lateBounds(
  network: Network,
  early: Times,
  end: Instant,
  order: readonly number[],
): LateBounds | null {
  const { size, clocks } = network
  const late = { start: new Int32Array(size).fill(never), finish: new Int32Array(size).fill(never) }
  const run = emptyRun()
  for (let round = 0, moved = true; moved && round < size; round++) {
    moved = false
    for (let k = size - 1; k >= 0; k--) {
      const task = order[k]!
      const bounds = latestBoundsOf(network, late, task)
      let [start, finish] = [-never, -never]
      for (const clock of clocks[task]!) {
        if (!runBefore(clock, bounds.start, Math.min(end, bounds.finish), run)) continue
        start = Math.max(start, run.start)
        finish = Math.max(finish, run.finish)
      }
      if (start < early.start[task]! || finish < early.finish[task]!) return null
      moved ||= start < late.start[task]! || finish < late.finish[task]!
      late.start[task] = start
      late.finish[task] = finish
    }
    if (!network.arcs.some(({ turned }) => turned)) break
  }
  return late
}

/** Whether some stretch of time is asked for more work than is open in it. Cost: O(pieces^2). */
function overloaded({ pieces, openUntil }: Crew, early: Times, late: Times): boolean {
  const byEnd = [...pieces].sort((a, b) => late.finish[a.to]! - late.finish[b.to]!)
  const ends = Float64Array.from(byEnd, ({ to }) => openUntil(late.finish[to]!))
  const begins = Int32Array.from(byEnd, ({ from }) => early.start[from]!)
  const works = Float64Array.from(byEnd, ({ work }) => work)
  for (const begin of new Set(begins)) {
    const opened = openUntil(begin)
    let work = 0
    for (let k = 0; k < begins.length; k++) {
      if (begins[k]! < begin) continue
      work += works[k]!
      if (work > ends[k]! - opened) return true
    }
  }
  return false
}

/** Most pieces of work of one crew that are looked at: past it the quadratic test is not worth its time. */
const mostPieces = 1_500

/** Tasks past which the bound is found to a day: each look takes long, and nobody plans so much to the minute. */
const many = 1_000

/**
 * An instant before which no schedule finishes: the least end, from `lower` up to `upper`, at which no task lacks time
 * and no crew lacks open minutes between any two instants. Method: bisection, since less time never lacks less; of
 * many tasks to within a day, unless the bound is `upper` itself.
 * Gives: `lower` where nothing more can be said. Cost: O(log(upper - lower) x (arcs + pieces^2)).
 */
export function workloadBound(network: Network, blocks: Blocks, lower: Instant, upper: Instant): Instant {
  const outcome = earlyTimes(network, null, arcLeast)
  if ('lost' in outcome) return lower
  const early = outcome.times
  const order = roughOrder(network)
  const crews = crewsOf(network)
    .map((resources) => crewOf(network, blocks, order, resources))
    .filter(({ pieces }) => pieces.length > 0 && pieces.length <= mostPieces)
  const refuted = (end: Instant): boolean => {
    const late = lateBounds(network, early, end, order)
    return late === null || crews.some((crew) => overloaded(crew, early, late))
  }
  const grain = network.size > many ? minutesPerDay : 1
  if (grain > 1 && lower < upper && refuted(upper - 1)) return upper
  let [low, high] = [lower, upper]
  while (high - low >= grain) {
    const middle = (low + high) >> 1
    if (refuted(middle)) low = middle + 1
    else high = middle
  }
  return low
}
