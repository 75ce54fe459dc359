/** Plain problems made ready for breeding. */
import { type Bred, type Breedable, type BreedOptions, breed, type Manner, nothingBesides } from './breed.ts'
import { headsOf, shortest, tailsOf } from './critical-bounds.ts'
import { packedNeeds } from './packed-needs.ts'
import { parallelPassOf } from './parallel-pass.ts'
import type { PlainProblem } from './plain-problem.ts'
import { serialPassOf } from './serial-pass.ts'
import { stockRepairOf } from './within-stock.ts'

/** A plan in units from the start, with the way of each task. */
export interface UnitPlan {
  readonly starts: Int32Array
  readonly ways: Int32Array
  readonly length: number
}

/** Shares of the capacities that each way takes, added up. */
function loadsOf({ duration, capacity, need }: PlainProblem): Float64Array {
  return Float64Array.from(duration, (_, way) =>
    capacity.reduce((sum, most, k) => sum + need[way * capacity.length + k]! / Math.max(1, most), 0),
  )
}

/** Ways of each task that stay within capacities, shortest first, of those the one that takes least. */
function choicesOf(plain: PlainProblem, load: Float64Array): number[][] {
  const { possible } = packedNeeds(plain)
  const { size, firstWay, duration } = plain
  return Array.from({ length: size }, (_, task) => {
    const ways = Array.from({ length: firstWay[task + 1]! - firstWay[task]! }, (_, k) => firstWay[task]! + k)
    return ways
      .filter((way) => possible[way])
      .sort((a, b) => duration[a]! - duration[b]! || load[a]! - load[b]! || a - b)
  })
}

/** Latest start first, latest finish first, least float first: as keys of which the highest goes first. */
function rulesOf(plain: PlainProblem): { readonly rules: (() => Int32Array)[]; readonly spread: number } {
  const [heads, tails, lasts] = [headsOf(plain), tailsOf(plain), shortest(plain)]
  const latestStart = tails.map((tail, task) => tail + lasts[task]!)
  const float = tails.map((tail, task) => tail - heads[task]!)
  return {
    rules: [latestStart, tails, float].map((keys) => () => keys),
    spread: 10 * latestStart.reduce((most, each) => Math.max(most, each), 1),
  }
}

/** Measured on the public sample. */
const manner: Manner = {
  stages: [20, 100, 1_000, 5_000, 50_000, 500_000, 5_000_000, Number.POSITIVE_INFINITY],
  membersPerRoot: 8.2,
  climbs: false,
}

function breedableOf(plain: PlainProblem): Breedable<UnitPlan> {
  const load = loadsOf(plain)
  const choices = choicesOf(plain, load)
  const parallel = parallelPassOf(plain)
  return {
    size: plain.size,
    horizon: plain.horizon,
    symmetric: plain.symmetric,
    grain: 1,
    pass: serialPassOf(plain),
    aside: (_, key, ways, finish) => parallel(key, ways, finish),
    besides: () => nothingBesides,
    keep: (finish, ways, length) => ({
      starts: finish.map((at, task) => at - plain.duration[ways[task]!]!),
      ways,
      length,
    }),
    ...rulesOf(plain),
    kin: null,
    manner,
    choices,
    duration: plain.duration,
    load,
    repair: stockRepairOf(plain, choices),
  }
}

/** The best plan of a plain problem that breeding finds within the effort; `null` where all that were tried use up too much. */
export function populationSearch(plain: PlainProblem, options: BreedOptions): Bred<UnitPlan> {
  return breed(breedableOf(plain), options)
}
