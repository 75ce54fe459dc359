import { arrivesAt, type End, leavesFrom, linksBy, type Network, type NetworkLink } from './network.ts'

/** An activity on a chain, with the event the chain comes to first and the one it goes on from. */
export interface ChainStep {
  readonly activity: number
  readonly enters: End
  /** Where this differs from `enters` the chain runs through the activity's duration; else past it. */
  readonly leaves: End
}

/** One unbroken run of binding links from time 0 to the finish. */
export interface Chain {
  readonly steps: readonly ChainStep[]
  /** The links between them, one fewer than steps. */
  readonly links: readonly number[]
}

/** What the chains run over: the critical activities, and the binding links among them. */
export interface CriticalNet {
  readonly network: Network
  readonly order: readonly number[]
  readonly starts: readonly number[]
  readonly finish: number
  readonly critical: readonly boolean[]
  readonly binding: readonly boolean[]
}

/** How to sum over every chain without listing any. */
export interface ChainFold<T> {
  /** The value of no chain at all. */
  readonly none: T
  /** The value of a chain that has just begun. */
  readonly begun: T
  readonly join: (a: T, b: T) => T
  readonly pass: (value: T, step: ChainStep) => T
}

/**
 * A sum over every chain: `join` of the values that `pass` builds up step by step. Needs: `pass` distributes over
 * `join`. Cost: O(activities + links).
 */
export function foldChains<T>(net: CriticalNet, { none, begun, join, pass }: ChainFold<T>): T {
  const doors = new Doors(net)
  const arrived = net.starts.map(() => ({ start: none, finish: none }))
  const through = (activity: number, enters: End, leaves: End) =>
    pass(arrived[activity]![enters], { activity, enters, leaves })
  const begin = (activity: number, leaves: End) =>
    doors.mayBegin(activity, leaves) ? pass(begun, { activity, enters: 'start', leaves }) : none
  let total = none
  for (const activity of net.order) {
    if (!net.critical[activity]) continue
    for (const link of doors.leaving(activity)) {
      const leaves = leavesFrom(link.type)
      const value = join(through(activity, 'start', leaves), through(activity, 'finish', leaves))
      const next = arrived[link.to]!
      next[arrivesAt(link.type)] = join(next[arrivesAt(link.type)], join(value, begin(activity, leaves)))
    }
    if (doors.mayEnd(activity, 'start')) total = join(total, through(activity, 'start', 'finish'))
    if (doors.mayEnd(activity, 'start')) total = join(total, begin(activity, 'finish'))
    if (doors.mayEnd(activity, 'finish')) total = join(total, through(activity, 'finish', 'finish'))
  }
  return total
}

/**
 * Up to `most` chains, by their activities' numbers from the front. No chain is part of a longer one.
 * Cost: O(most x length x links of an activity).
 */
export function listChains(net: CriticalNet, most: number): Chain[] {
  const doors = new Doors(net)
  const found: Chain[] = []
  const open: Front[] = [...net.critical.keys()]
    .filter((activity) => net.critical[activity])
    .map((activity) => ({ activity, enters: 'start' as const, behind: null }))
    .reverse()
  for (let front = open.pop(); front && found.length < most; front = open.pop()) {
    const { activity, enters, behind } = front
    const goesOn = (leaves: End) => behind !== null || doors.mayBegin(activity, leaves)
    if (doors.mayEnd(activity, enters) && goesOn('finish')) found.push(chainTo(front))
    for (const link of [...doors.leaving(activity)].reverse()) {
      if (!goesOn(leavesFrom(link.type))) continue
      open.push({ activity: link.to, enters: arrivesAt(link.type), behind: { front, link } })
    }
  }
  return found
}

/** A chain begun and not yet at the finish, kept as its last activity and what came before. */
interface Front {
  readonly activity: number
  readonly enters: End
  readonly behind: { readonly front: Front; readonly link: NumberedLink } | null
}

function chainTo(last: Front): Chain {
  const steps: ChainStep[] = [{ activity: last.activity, enters: last.enters, leaves: 'finish' }]
  const links: number[] = []
  for (let behind = last.behind; behind; behind = behind.front.behind) {
    const { front, link } = behind
    steps.push({ activity: front.activity, enters: front.enters, leaves: leavesFrom(link.type) })
    links.push(link.number)
  }
  return { steps: steps.reverse(), links: links.reverse() }
}

interface NumberedLink extends NetworkLink {
  readonly number: number
}

/** Where chains may begin, go on and end, so that none is the front or the back of another. */
class Doors {
  private readonly out: readonly NumberedLink[][]
  private readonly into: readonly NumberedLink[][]

  constructor(private readonly net: CriticalNet) {
    const { network } = net
    const keep = (list: number[]) =>
      distinct(list.filter((i) => net.binding[i]).map((i) => numbered(network, i)))
    const critical = (link: NumberedLink) => net.critical[link.from]! && net.critical[link.to]!
    this.out = linksBy(network, 'from').map((list) => keep(list).filter(critical))
    this.into = linksBy(network, 'to').map((list) => keep(list).filter(critical))
  }

  leaving(activity: number): readonly NumberedLink[] {
    return this.out[activity]!
  }

  /** At time 0 with nothing binding before it; one held by its finish alone begins a chain only through its duration. */
  mayBegin(activity: number, leaves: End): boolean {
    if (
      this.net.starts[activity] !== 0 ||
      this.into[activity]!.some(({ type }) => arrivesAt(type) === 'start')
    )
      return false
    return this.into[activity]!.length === 0 || (leaves === 'finish' && this.duration(activity) > 0)
  }

  /** At the finish with nothing binding after it; the mirror of `mayBegin`. */
  mayEnd(activity: number, enters: End): boolean {
    if (this.net.starts[activity]! + this.duration(activity) !== this.net.finish) return false
    if (this.out[activity]!.some(({ type }) => leavesFrom(type) === 'finish')) return false
    return this.out[activity]!.length === 0 || (enters === 'start' && this.duration(activity) > 0)
  }

  private duration(activity: number): number {
    return this.net.network.durations[activity]!
  }
}

function numbered(network: Network, number: number): NumberedLink {
  return { ...network.links[number]!, number }
}

/** Links by the activity they lead to and then by number; a link written twice counts once. */
function distinct(links: readonly NumberedLink[]): NumberedLink[] {
  const seen = new Set<string>()
  return [...links]
    .sort((a, b) => a.to - b.to || a.number - b.number)
    .filter(({ from, to, type }) => !seen.has(`${from} ${to} ${type}`) && seen.add(`${from} ${to} ${type}`))
}
