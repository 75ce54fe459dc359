import { linksBy, type Network, startToStart } from './network.ts'
import { topologicalOrder } from './topological-order.ts'

/** An order of the activities in which links point forward, or `null` where they form a ring. */
export function activityOrder(network: Network): number[] | null {
  return topologicalOrder(linksBy(network, 'from').map((list) => list.map((i) => network.links[i]!.to)))
}

/**
 * Earliest start of every activity when each waits for its links and none starts before 0.
 * Method: the longest path, relaxed in topological order (textbook). Needs: `order` from `activityOrder`.
 * Cost: O(activities + links).
 */
export function earliestStarts(network: Network, order: readonly number[]): number[] {
  const leaving = linksBy(network, 'from')
  const starts = network.durations.map(() => 0)
  for (const activity of order) {
    for (const i of leaving[activity]!) {
      const link = network.links[i]!
      const start = starts[activity]! + startToStart(network, link)
      if (start > starts[link.to]!) starts[link.to] = start
    }
  }
  return starts
}

/**
 * Latest start of every activity that keeps all finishes at `finish` or before.
 * Needs: `order` from `activityOrder`. Cost: O(activities + links).
 */
export function latestStarts(network: Network, order: readonly number[], finish: number): number[] {
  const leaving = linksBy(network, 'from')
  const starts = network.durations.map((duration) => finish - duration)
  for (const activity of [...order].reverse()) {
    for (const i of leaving[activity]!) {
      const link = network.links[i]!
      starts[activity] = Math.min(starts[activity]!, starts[link.to]! - startToStart(network, link))
    }
  }
  return starts
}

/** The last finish of all, 0 for no activity. */
export function lastFinish(network: Network, starts: readonly number[]): number {
  return starts.reduce((last, start, i) => Math.max(last, start + network.durations[i]!), 0)
}
