/** Finish-start, start-start, finish-finish, start-finish: which event of `to` waits for which event of `from`. */
export type LinkType = 'FS' | 'SS' | 'FF' | 'SF'

/** The event of `to` comes no earlier than the event of `from` plus `lag`; a lag may be negative. */
export interface NetworkLink {
  readonly from: number
  readonly to: number
  readonly type: LinkType
  readonly lag: number
}

/** Activities by number with their durations, and the links between them. Any one unit of time throughout. */
export interface Network {
  readonly durations: readonly number[]
  readonly links: readonly NetworkLink[]
}

/** One of the two events of an activity. */
export type End = 'start' | 'finish'

/** The event of the earlier activity that a link leaves from. */
export function leavesFrom(type: LinkType): End {
  return type[0] === 'F' ? 'finish' : 'start'
}

/** The event of the later activity that a link holds back. */
export function arrivesAt(type: LinkType): End {
  return type[1] === 'F' ? 'finish' : 'start'
}

/** How long after the start of `from` a link lets `to` start; negative where `to` may start before. */
export function startToStart({ durations }: Network, { from, to, type, lag }: NetworkLink): number {
  const before = leavesFrom(type) === 'finish' ? durations[from]! : 0
  const after = arrivesAt(type) === 'finish' ? durations[to]! : 0
  return before + lag - after
}

/** For each activity the numbers of the links that leave it, or that arrive at it. */
export function linksBy(network: Network, side: 'from' | 'to'): number[][] {
  const lists: number[][] = network.durations.map(() => [])
  for (const [i, link] of network.links.entries()) lists[link[side]]!.push(i)
  return lists
}
