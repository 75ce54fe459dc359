import { type Chain, type CriticalNet, foldChains, listChains } from './critical-chains.ts'
import { activityOrder, earliestStarts, lastFinish, latestStarts } from './longest-paths.ts'
import { linksBy, type Network, startToStart } from './network.ts'

/** When an activity can and must happen; time 0 is the start of the project. */
export interface ActivityTimes {
  readonly earlyStart: number
  readonly earlyFinish: number
  readonly lateStart: number
  readonly lateFinish: number
  /** How far it can slip without a later finish of the project. */
  readonly totalFloat: number
  /** How far it can slip without moving any other activity from its early start, or the finish of the project. */
  readonly freeFloat: number
}

/** The network solved. */
export interface CriticalPath {
  readonly finish: number
  /** One per activity. */
  readonly times: readonly ActivityTimes[]
  /** One per link: whether it alone already holds its activity at its early start. */
  readonly binding: readonly boolean[]
  /** Every chain of binding links from time 0 to the finish, up to the number asked for. */
  readonly chains: readonly Chain[]
  /** How many such chains there are, exactly. */
  readonly chainCount: bigint
}

/**
 * Early and late times, floats and every critical chain of a network with all four kinds of link and lags of either
 * sign; `null` where the links form a ring. No activity starts before 0. Exact where durations and lags are whole.
 *
 * Total float is late less early start. Free float is the least slack of any link that leaves, and no more than the
 * time from the early finish to the end of the project.
 * Method: forward and backward pass (critical path method). Cost: O((activities + links) log activities), and what
 * listing `most` chains takes.
 */
export function criticalPath(network: Network, most = 20): CriticalPath | null {
  const net = criticalNet(network)
  if (!net) return null
  return {
    finish: net.finish,
    times: activityTimes(net, latestStarts(network, net.order, net.finish)),
    binding: net.binding,
    chains: listChains(net, most),
    chainCount: foldChains<bigint>(net, {
      none: 0n,
      begun: 1n,
      join: (a, b) => a + b,
      pass: (count) => count,
    }),
  }
}

/** The critical activities and binding links of a network, or `null` where the links form a ring. */
export function criticalNet(network: Network): CriticalNet | null {
  const order = activityOrder(network)
  if (!order) return null
  const starts = earliestStarts(network, order)
  const finish = lastFinish(network, starts)
  const late = latestStarts(network, order, finish)
  const binding = network.links.map((_, i) => slack(network, starts, i) === 0)
  return { network, order, starts, finish, binding, critical: starts.map((start, i) => start === late[i]) }
}

function activityTimes({ network, starts, finish }: CriticalNet, late: readonly number[]): ActivityTimes[] {
  const leaving = linksBy(network, 'from')
  return starts.map((earlyStart, i) => {
    const duration = network.durations[i]!
    const slacks = leaving[i]!.map((link) => slack(network, starts, link))
    return {
      earlyStart,
      earlyFinish: earlyStart + duration,
      lateStart: late[i]!,
      lateFinish: late[i]! + duration,
      totalFloat: late[i]! - earlyStart,
      freeFloat: slacks.reduce((least, own) => Math.min(least, own), finish - (earlyStart + duration)),
    }
  })
}

/** How much later than a link asks for its activity starts. */
function slack(network: Network, starts: readonly number[], i: number): number {
  const link = network.links[i]!
  return starts[link.to]! - starts[link.from]! - startToStart(network, link)
}
