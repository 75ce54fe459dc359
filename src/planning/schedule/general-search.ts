/** Problems of any kind made ready for breeding: calendars, holds, longest waits, timetables. */

import { asWritten } from './as-written.ts'
import { type BackwardPass, backwardOf } from './backward.ts'
import { type Judge, judgeOf } from './besides.ts'
import { type Bred, type Breedable, type BreedOptions, breed, type Manner, nothingBesides } from './breed.ts'
import { type Decoded, type DecodeOutcome, type Decoder, decoderOf } from './decode.ts'
import { fewerSessions } from './fewer-sessions.ts'
import type { Blocks } from './linked-blocks.ts'
import { demandsOf, type Network } from './network.ts'
import { priorityRanks } from './priority-rules.ts'

/** Windows are sought in steps of so many minutes. */
const grain = 30

/** Measured on the public sample, read as if it had calendars: passes are dear here, so few of them must do. */
const manner: Manner = {
  stages: [300, 1_000, 5_000, 50_000, 500_000, Number.POSITIVE_INFINITY],
  membersPerRoot: 8,
  climbs: true,
}

type Stuck = Extract<DecodeOutcome, { kind: 'stuck' }>

/** Both passes of a network over keys, and what the last forward one found. */
interface Passes {
  readonly network: Network
  readonly decode: Decoder
  readonly backward: BackwardPass
  readonly judge: Judge
  readonly rank: Float64Array
  readonly starts: Int32Array
  last: Decoded | null
  /** The earliest end so far: what backward passes count from. */
  end: number
  stuck: Stuck | null
}

function forward(passes: Passes, key: Int32Array, finish: Int32Array): number {
  const { rank, network } = passes
  for (let task = 0; task < rank.length; task++) rank[task] = -key[task]!
  const outcome = passes.decode(rank)
  if (outcome.kind === 'stuck') {
    passes.stuck ??= outcome
    return Number.POSITIVE_INFINITY
  }
  passes.last = outcome.found
  passes.end = Math.min(passes.end, outcome.found.end)
  const { start } = network.problem
  for (let task = 0; task < rank.length; task++) finish[task] = outcome.found.finish[task]! - start
  return outcome.found.end - start
}

/** Needs: a forward pass before it. */
function backward({ network, backward, starts, end }: Passes, key: Int32Array, finish: Int32Array): number {
  backward(key, end, starts)
  const longest = network.problem.horizon - network.problem.start
  let length = 0
  for (let task = 0; task < starts.length; task++) {
    finish[task] = Math.min(longest, end - starts[task]!)
    length = Math.max(length, finish[task]!)
  }
  return length
}

/** Share of all capacities that each task takes in the first of its modes. */
function loadsOf({ problem }: Network): Float64Array {
  return Float64Array.from(problem.tasks, ({ modes }) =>
    demandsOf(modes[0]!).reduce(
      (sum, { resource, working }) => sum + working / Math.max(1, problem.resources[resource]!.capacity),
      0,
    ),
  )
}

/** A task and all that must come before it, directly or through others; each is worked out once. */
function kinOf({ into, size }: Network): (task: number) => Int32Array {
  const known = new Map<number, Int32Array>()
  return (task) => {
    const told = known.get(task)
    if (told) return told
    const found = [task]
    const seen = new Uint8Array(size)
    seen[task] = 1
    for (const one of found)
      for (const { from, turned } of into[one]!) {
        if (turned || seen[from]) continue
        seen[from] = 1
        found.push(from)
      }
    const kin = Int32Array.from(found)
    known.set(task, kin)
    return kin
  }
}

/** Ranks, lowest first, as keys of which the highest goes first. */
const keysOf = (rank: ArrayLike<number>): Int32Array => Int32Array.from(rank, (place) => rank.length - place)

function breedableOf(passes: Passes, first: ArrayLike<number> | undefined): Breedable<Decoded> {
  const { network } = passes
  const { problem, size } = network
  const ranks = [...(first ? [() => first] : []), ...priorityRanks(network)]
  return {
    size,
    horizon: problem.horizon - problem.start,
    symmetric: false,
    grain,
    pass: (direction, key, _, finish) =>
      direction === 'forward' ? forward(passes, key, finish) : backward(passes, key, finish),
    aside: null,
    besides: () => (passes.last === null ? nothingBesides : passes.judge(passes.last)),
    keep: () => passes.last!,
    rules: ranks.map((rank) => () => keysOf(rank())),
    spread: 10 * size,
    manner,
    choices: Array.from({ length: size }, (_, task) => [task]),
    duration: Int32Array.from(problem.tasks, ({ modes }) => modes[0]!.duration),
    load: loadsOf(network),
    kin: kinOf(network),
    repair: () => 0,
  }
}

/** What a general search gives: the best plan and, where a pass got stuck, the first that did. */
export interface GeneralBred extends Bred<Decoded> {
  readonly stuck: Stuck | null
}

/** The best plan of a problem of any kind that rules and breeding find within the effort. The decoder picks the modes. */
export function generalSearch(
  network: Network,
  blocks: Blocks,
  options: BreedOptions & { readonly first?: ArrayLike<number> | undefined },
): GeneralBred {
  const passes: Passes = {
    network,
    decode: decoderOf(network, blocks),
    backward: backwardOf(network, blocks.around),
    judge: judgeOf(network),
    rank: new Float64Array(network.size),
    starts: new Int32Array(network.size),
    last: null,
    end: Number.POSITIVE_INFINITY,
    stuck: null,
  }
  const breedable = breedableOf(passes, options.first)
  // A fixed share, so that more effort breeds more.
  const forSessions = network.problem.resources.some(({ sessions }) => sessions) ? options.effort >> 2 : 0
  const { plan, tried } = breed(breedable, { ...options, effort: options.effort - forSessions })
  if (plan === null || options.stop?.()) return { plan, tried, stuck: passes.stuck }
  const fewer = fewerSessions(network, passes, plan, forSessions)
  const tidy = asWritten(network, passes, fewer, forSessions - fewer.tried)
  return { plan: tidy.plan, tried: tried + fewer.tried + tidy.tried, stuck: passes.stuck }
}
