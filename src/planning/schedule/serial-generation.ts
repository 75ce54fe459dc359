/** Schedules by serial generation under priority rules, each improved backward and forward, then with shaken orders. */
import { seededRandom } from '../../base/random.ts'
import { type BackwardPass, backwardOf } from './backward.ts'
import { type Decoded, type DecodeOutcome, type Decoder, decoderOf, scheduleOf, whyStuck } from './decode.ts'
import { type Blocks, linkedBlocks } from './linked-blocks.ts'
import type { Network } from './network.ts'
import { capacityFreeBound } from './precedence.ts'
import { priorityRanks, ranked } from './priority-rules.ts'
import type { ScheduleOutcome } from './problem.ts'
import type { Lesson } from './proof-state.ts'

/** How much to try and with which seed. Effort is the largest number of schedules tried, backward passes included. */
export interface SearchOptions {
  readonly effort: number
  readonly seed: number
  /** Told now and then how many schedules were tried; never changes what is found. */
  readonly progress?: (tried: number, effort: number) => void
  /** Most dead ends met in a search for a proof that nothing finishes earlier; 0 where not given. Plain problems only. */
  readonly nodes?: number
  /** Asked now and then; true ends the search. What is found then depends on when it said so. */
  readonly stop?: () => boolean
  /** Told every lesson of the proof search; never changes what is found. */
  readonly learned?: (lesson: readonly Lesson[]) => void
}

type Stuck = Extract<DecodeOutcome, { kind: 'stuck' }>

/** A search in hand: what it has spent and the best it has seen. */
interface Search {
  readonly network: Network
  readonly decode: Decoder
  readonly backward: BackwardPass
  readonly effort: number
  /** No schedule finishes before this, so one that does not finish later ends the search. */
  readonly bound: number
  readonly progress: SearchOptions['progress']
  readonly stop: SearchOptions['stop']
  tried: number
  ended: boolean
  best: Decoded | null
  stuck: Stuck | null
}

function spent(search: Search): boolean {
  search.progress?.(search.tried, search.effort)
  if (search.ended || search.tried >= search.effort || search.best?.end === search.bound) return true
  return search.stop?.() === true
}

function tryRank(search: Search, rank: ArrayLike<number>): Decoded | null {
  search.tried++
  const outcome = search.decode(rank)
  if (outcome.kind === 'stuck') {
    search.stuck ??= outcome
    return null
  }
  if (search.best === null || outcome.found.end < search.best.end) search.best = outcome.found
  return outcome.found
}

/** Backward, then forward in the order found, as long as the finish comes earlier. */
function improve(search: Search, first: Decoded | null): Decoded | null {
  let current = first
  while (current !== null && !spent(search)) {
    // A pair that no longer fits ends the search: a lone try in its place would not be among those of more effort.
    search.ended = search.tried + 2 > search.effort
    if (search.ended) return current
    search.tried++
    const next = tryRank(search, ranked(search.network, search.backward(current)))
    if (next === null || next.end >= current.end)
      return next !== null && next.end === current.end ? next : current
    current = next
  }
  return current
}

/** How far a start is shaken, as shares of the plan's length, in turn. */
const shakes = [0.05, 0.12, 0.03, 0.25, 0.08]

function shaken(network: Network, base: Decoded, share: number, chance: () => number): Int32Array {
  const reach = share * (base.end - network.problem.start)
  return ranked(
    network,
    Float64Array.from(base.start, (at) => at + reach * (2 * chance() - 1)),
  )
}

function shakeOn(search: Search, seed: number): void {
  const chance = seededRandom(seed).next
  let current = search.best
  for (let round = 0; current !== null && !spent(search); round++) {
    const rank = shaken(search.network, current, shakes[round % shakes.length]!, chance)
    const found = improve(search, tryRank(search, rank))
    if (found !== null && found.end <= current.end) current = found
  }
}

/** Random orders, where no rule has led to any schedule at all. */
function guess(search: Search, seed: number): void {
  const chance = seededRandom(seed + 1).next
  const { network } = search
  while (search.best === null && !spent(search)) {
    tryRank(search, ranked(network, Float64Array.from({ length: network.size }, chance)))
  }
}

/**
 * The best schedule that rules, backward-forward improvement and shaken orders find within the effort.
 * Gives: the same for the same problem and options; more effort never gives a later finish, since the tries of less
 * effort come first. Stops early where the finish equals that of the plan without capacities.
 */
export function serialGeneration(network: Network, options: SearchOptions): ScheduleOutcome {
  const blocks = linkedBlocks(network)
  const relaxed = capacityFreeBound(network)
  if ('lost' in relaxed) {
    const block = blocks.blockOf[relaxed.lost]!
    return {
      kind: 'none found',
      stuck: blocks.members[block]!,
      why: whyStuck(network, blocks, block, 'beyond horizon'),
    }
  }
  const search = searchOf(network, blocks, options, relaxed.bound)
  for (const rank of priorityRanks(network)) {
    if (!spent(search)) improve(search, tryRank(search, rank))
  }
  guess(search, options.seed)
  shakeOn(search, options.seed)
  if (search.best === null) {
    const { stuck, why } = search.stuck!
    return { kind: 'none found', stuck, why }
  }
  return {
    kind: 'found',
    schedule: scheduleOf(network, search.best),
    bound: relaxed.bound,
    proved: search.best.end === relaxed.bound,
    stats: { schedulesTried: search.tried, nodes: 0 },
  }
}

function searchOf(network: Network, blocks: Blocks, options: SearchOptions, bound: number): Search {
  const decode = decoderOf(network, blocks)
  const backward = backwardOf(network, blocks.inside)
  const effort = Math.max(1, options.effort)
  const { progress, stop } = options
  return {
    network,
    decode,
    backward,
    effort,
    bound,
    progress,
    stop,
    tried: 0,
    ended: false,
    best: null,
    stuck: null,
  }
}
