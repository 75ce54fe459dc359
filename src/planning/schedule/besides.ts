/** What a schedule is judged by besides its finish: lateness before it; cost, sessions and waiting after it. */
import type { Besides } from './breed.ts'
import type { Decoded } from './decode.ts'
import type { Network } from './network.ts'
import { emptyRun, runFrom, spanBefore } from './work-time.ts'

/** Judges schedules of one network. */
export type Judge = (decoded: Decoded) => Besides

/** A resource of which used sessions are counted, as one asked task after the other fills them. */
interface Counted {
  readonly resource: number
  readonly spans: Int32Array
  readonly used: Uint8Array
}

/** Sessions used, by resource: index into its spans. */
export type SessionsUsed = ReadonlyMap<number, ReadonlyMap<number, number>>

function countedOf({ problem }: Network): Counted[] {
  return problem.resources.flatMap(({ sessions }, resource) =>
    sessions ? [{ resource, spans: sessions, used: new Uint8Array(sessions.length >> 1) }] : [],
  )
}

/** Calls `tell` with every stretch of work of a task that a counted resource does, by index of its session. */
function eachStretch(
  network: Network,
  { start, mode }: Decoded,
  counted: readonly Counted[],
  tell: (counted: Counted, session: number, minutes: number) => void,
): void {
  const run = emptyRun()
  for (let task = 0; task < network.size; task++) {
    const demands = network.demands[task]![mode[task]!]!
    for (const one of counted) {
      if (!demands.some(({ resource }) => resource === one.resource)) continue
      runFrom(network.clocks[task]![mode[task]!]!, start[task]!, run)
      for (let k = 0; k < run.pieces.length; k += 2)
        tell(one, spanBefore(one.spans, run.pieces[k]!), run.pieces[k + 1]! - run.pieces[k]!)
    }
  }
}

/** Minutes worked in each session that is used at all. */
export function sessionsUsed(network: Network, decoded: Decoded): SessionsUsed {
  const counted = countedOf(network)
  const used = new Map(counted.map(({ resource }) => [resource, new Map<number, number>()]))
  eachStretch(network, decoded, counted, ({ resource }, session, minutes) => {
    const of = used.get(resource)!
    if (session >= 0) of.set(session, (of.get(session) ?? 0) + minutes)
  })
  return used
}

/**
 * The judge of a network. Late are the minutes by which tasks pass their due times, added up. Ties, first things first:
 * cost of the modes taken, sessions used, minutes that half-done work waits, weighted minutes that uncertain tasks wait,
 * and last that tasks go in the order in which they are listed, so that of two alike the first goes first.
 * No ties where the problem says nothing of the kind.
 */
export function judgeOf(network: Network): Judge {
  const { tasks, links, start: begin } = network.problem
  const counted = countedOf(network)
  const due = tasks.flatMap((task, at) => (task.due === undefined ? [] : [{ at, due: task.due }]))
  const uncertain = tasks.flatMap((task, at) => (task.uncertain ? [{ at, weight: task.uncertain }] : []))
  const waiting = links.filter(({ halfDone }) => halfDone)
  const costs = tasks.some(({ modes }) => modes.some(({ cost }) => cost))
  const ties = costs || counted.length > 0 || uncertain.length > 0 || waiting.length > 0
  return (decoded) => {
    const { start, finish, mode } = decoded
    let late = 0
    for (const one of due) late += Math.max(0, finish[one.at]! - one.due)
    if (!ties) return { late, ties: [] }
    let cost = 0
    if (costs)
      for (let task = 0; task < tasks.length; task++) cost += tasks[task]!.modes[mode[task]!]!.cost ?? 0
    let sessions = 0
    for (const { used } of counted) used.fill(0)
    eachStretch(network, decoded, counted, ({ used }, session) => {
      if (session < 0 || used[session]) return
      used[session] = 1
      sessions++
    })
    let waits = 0
    for (const { from, to } of waiting) waits += Math.max(0, start[to]! - finish[from]!)
    let early = 0
    for (const { at, weight } of uncertain) early += weight * (start[at]! - begin)
    let written = 0
    for (let task = 0; task < tasks.length; task++)
      written += (tasks.length - (tasks[task]!.listed ?? task)) * (start[task]! - begin)
    return { late, ties: [cost, sessions, waits, early, written] }
  }
}
