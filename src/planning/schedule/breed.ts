/** Plans bred over windows of time, decoded forward and backward in turn. */
import { seededRandom } from '../../base/random.ts'
import type { Direction } from './serial-pass.ts'

/**
 * One schedule: tasks by falling key (who must wait for whom is seen to), each at its best fit in the direction.
 * Gives: the length, infinite where a task found no place; finishes, counted in the direction, are written to `finish`.
 */
export type Pass = (direction: Direction, key: Int32Array, ways: Int32Array, finish: Int32Array) => number

/** How populations follow each other. */
export interface Manner {
  /**
   * Passes after which a larger population begins, rising to infinity. Fixed, so that less effort makes the same plans
   * as more, only fewer; each is a small share of the next, so that little is lost by it.
   */
  readonly stages: readonly number[]
  /** Members per root of passes per task. */
  readonly membersPerRoot: number
  /** Whether passes go on in turn from a rule as long as the plan gets better, and the best is in every population. */
  readonly climbs: boolean
}

/** What can be bred. Ways are numbered through all tasks; times are whole numbers from 0. `P` is what is kept of the best plan. */
export interface Breedable<P> {
  readonly size: number
  /** No pass is longer, in either direction. */
  readonly horizon: number
  /** Whether a plan read backwards is a plan too. */
  readonly symmetric: boolean
  /** Width of the steps in which a window is sought. */
  readonly grain: number
  readonly pass: Pass
  /** Another way to make a forward plan, by which half of those out of nothing are made; `null`: none. */
  readonly aside: Pass | null
  /** What else is asked of the forward pass just made: `late` goes before the length, `ties` after it, first things first; less is better. */
  readonly besides: () => Besides
  /** What is kept of the forward pass just made. */
  readonly keep: (finish: Int32Array, ways: Int32Array, length: number) => P
  /** Keys to begin with, each worked out when its turn comes; used up one by one. */
  readonly rules: (() => Int32Array)[]
  /** Keys by chance lie between 0 and this. */
  readonly spread: number
  readonly manner: Manner
  /** Ways open to each task, the usual one first. */
  readonly choices: readonly (readonly number[])[]
  /** Duration and share of all capacities of each way. */
  readonly duration: Int32Array
  readonly load: Float64Array
  /** All that must come before a task, itself included; `null` where kin are not moved together. */
  readonly kin: ((task: number) => Int32Array) | null
  /** Changes ways until what they use up is there. Gives: how much is still missing. */
  readonly repair: (ways: Int32Array, chance: () => number) => number
}

/** What a plan is judged by besides its length. */
export interface Besides {
  readonly late: number
  readonly ties: ArrayLike<number>
}

/** A plan that is only as long as it is. */
export const nothingBesides: Besides = { late: 0, ties: [] }

/** How much to breed: at most `effort` passes, fewer where a plan of `lower` leaves nothing to wish or `stop` says so. */
export interface BreedOptions {
  readonly effort: number
  readonly seed: number
  readonly lower: number
  readonly stop?: (() => boolean) | undefined
  readonly progress?: ((tried: number, effort: number) => void) | undefined
}

/** The best plan, `null` where there was none, and the passes made. */
export interface Bred<P> {
  readonly plan: P | null
  readonly tried: number
}

/** One plan: finishes counted in the direction of its pass; `worth` is its length and more where it is late or stock is missing. */
interface Member {
  readonly finish: Int32Array
  readonly ways: Int32Array
  readonly length: number
  readonly worth: number
  readonly ties: ArrayLike<number>
  readonly mark: number
}

/** Share of children of which kin are moved: measured on the demos, where it finds more, and on the public sample, where it costs nothing. */
const kinRate = 0.3

/** A unit of lateness weighs more than any length. */
const lateWeight = 2 ** 24

interface Breeding<P> {
  readonly of: Breedable<P>
  readonly options: BreedOptions
  readonly chance: () => number
  readonly key: Int32Array
  readonly use: Float64Array
  tried: number
  /** Of the forward plans. */
  best: Member | null
  kept: P | null
}

interface Populations {
  readonly forward: Member[]
  readonly backward: Member[]
}

/** Whether the first list is less than the second at the first place where they differ. */
export function lessTied(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! < b[k]!
  return false
}

const less = (a: Member, b: Member): boolean =>
  a.worth < b.worth || (a.worth === b.worth && lessTied(a.ties, b.ties))

function spent<P>({ tried, best, options }: Breeding<P>): boolean {
  if (tried >= options.effort) return true
  if (best !== null && best.worth <= options.lower && best.ties.length === 0) return true
  return (tried & 63) === 0 && options.stop?.() === true
}

function markOf(finish: Int32Array, ways: Int32Array): number {
  let mark = 0
  for (let task = 0; task < finish.length; task++)
    mark = (Math.imul(mark, 31) + finish[task]! + 7 * ways[task]!) | 0
  return mark
}

/**
 * One pass over the keys in hand; `null` where it led nowhere. A backward plan that would be the best is read forwards
 * by one more pass, where that is a plan.
 */
function make<P>(
  breeding: Breeding<P>,
  direction: Direction,
  ways: Int32Array,
  missing: number,
  pass: Pass = breeding.of.pass,
): Member | null {
  const { of, key, options } = breeding
  const finish = new Int32Array(of.size)
  const length = pass(direction, key, ways, finish)
  breeding.tried++
  options.progress?.(breeding.tried, options.effort)
  if (length === Number.POSITIVE_INFINITY) return null
  const { late, ties } = direction === 'forward' ? of.besides() : nothingBesides
  const worth = missing > 0 ? of.horizon + missing : length + lateWeight * late
  const member = { finish, ways, length, worth, ties, mark: markOf(finish, ways) }
  if (missing > 0 || (breeding.best !== null && !less(member, breeding.best))) return member
  if (direction === 'forward') {
    breeding.best = member
    breeding.kept = of.keep(finish, ways, length)
  } else if (of.symmetric && breeding.tried < options.effort) {
    key.set(finish)
    make(breeding, 'forward', ways, 0)
  }
  return member
}

/** Takes a member in, best first, unless it is there already or worse than all of a full population. */
function admit(population: Member[], member: Member | null, most: number): void {
  if (member === null) return
  let [low, high] = [0, population.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (less(member, population[middle]!)) high = middle
    else low = middle + 1
  }
  for (let k = low - 1; k >= 0 && !less(population[k]!, member); k--)
    if (population[k]!.mark === member.mark) return
  if (low >= most) return
  population.splice(low, 0, member)
  if (population.length > most) population.pop()
}

/** Members out of nothing: by a rule of thumb while there are any, else by chance; forward, then backward from there. */
function found<P>(breeding: Breeding<P>, populations: Populations, most: number): void {
  const { of, key, chance } = breeding
  const rule = of.rules.shift()?.()
  for (let task = 0; task < of.size; task++) key[task] = rule ? rule[task]! : Math.floor(of.spread * chance())
  const any = (ways: readonly number[]) =>
    rule || ways.length === 1 ? ways[0]! : ways[Math.floor(chance() * ways.length)]!
  const ways = Int32Array.from(of.choices, any)
  const missing = of.repair(ways, chance)
  const aside = !rule && of.aside !== null && chance() < 0.5
  let last = make(breeding, 'forward', ways, missing, aside ? of.aside! : of.pass)
  admit(populations.forward, last, most)
  while (last !== null && !spent(breeding)) {
    key.set(last.finish)
    const back = make(breeding, 'backward', ways, missing)
    admit(populations.backward, back, most)
    if (!of.manner.climbs || !rule || back === null || spent(breeding)) return
    key.set(back.finish)
    const next = make(breeding, 'forward', ways, missing)
    admit(populations.forward, next, most)
    last = next !== null && less(next, last) ? next : null
  }
}

/** The better of two members drawn. */
function drawn(population: readonly Member[], chance: () => number): Member {
  const [a, b] = [chance() * population.length, chance() * population.length]
  return population[Math.floor(Math.min(a, b))]!
}

/** The busier of two windows of a plan, each a quarter to three quarters of it. */
function busyWindow<P>(
  { use, chance, of }: Breeding<P>,
  { finish, ways, length }: Member,
): readonly [number, number] {
  const { load, duration, grain } = of
  const steps = Math.ceil(length / grain)
  use.fill(0, 0, steps + 2)
  for (let task = 0; task < of.size; task++) {
    const amount = load[ways[task]!]!
    const last = Math.ceil(finish[task]! / grain)
    use[Math.max(0, last - Math.ceil(duration[ways[task]!]! / grain)) + 1]! += amount
    use[last + 1]! -= amount
  }
  for (let round = 0; round < 2; round++) for (let at = 1; at <= steps; at++) use[at]! += use[at - 1]!
  const wide = Math.max(1, Math.round(steps * (0.25 + 0.5 * chance())))
  const a = Math.floor(chance() * (steps - wide + 1))
  const b = Math.floor(chance() * (steps - wide + 1))
  const from = use[b + wide]! - use[b]! > use[a + wide]! - use[a]! ? b : a
  return [from * grain, (from + wide) * grain]
}

/** Keys of a child: its mother's order, but within the window its father's; ways likewise. Written to `key`. */
function crossed<P>(breeding: Breeding<P>, father: Member, mother: Member): Int32Array {
  const { of, key } = breeding
  const [from, to] = busyWindow(breeding, father)
  const apart = 4 * (of.horizon + 1)
  const ways = of.duration.length > of.size ? mother.ways.slice() : mother.ways
  for (let task = 0; task < of.size; task++) {
    const at = mother.finish[task]!
    const inside = at > from && at <= to
    key[task] = inside ? father.finish[task]! : at <= from ? at - apart : at + apart
    if (inside && of.choices[task]!.length > 1) ways[task] = father.ways[task]!
  }
  return ways
}

/** Now and then a task's key is moved by up to three tenths of the plan, or its way drawn anew; rarer in larger plans. */
function mutate<P>({ of, key, chance }: Breeding<P>, ways: Int32Array, length: number, rate: number): void {
  for (let task = 0; task < of.size; task++) {
    if (chance() * of.size < rate) key[task]! += Math.round(0.3 * length * (2 * chance() - 1))
    const open = of.choices[task]!
    if (open.length > 1 && chance() * of.size < rate) ways[task] = open[Math.floor(chance() * open.length)]!
  }
}

/** Now and then all that leads up to a task is moved forward together, by up to three tenths of the plan. */
function promote<P>({ of, key, chance }: Breeding<P>, length: number, direction: Direction): void {
  const earlier = Math.round(0.3 * length * chance()) * (direction === 'forward' ? 1 : -1)
  for (const task of of.kin!(Math.floor(chance() * of.size))) key[task]! += earlier
}

function bear<P>(breeding: Breeding<P>, father: Member, mother: Member, direction: Direction): Member | null {
  const alone = father === mother
  if (alone) breeding.key.set(mother.finish)
  const many = breeding.of.duration.length > breeding.of.size
  const ways = alone ? (many ? mother.ways.slice() : mother.ways) : crossed(breeding, father, mother)
  mutate(breeding, ways, mother.length, alone ? 3 : 1)
  if (breeding.of.kin !== null && breeding.chance() < kinRate) promote(breeding, mother.length, direction)
  const missing = breeding.of.repair(ways, breeding.chance)
  return make(breeding, direction, ways, missing)
}

/** The best so far, and its plan read backwards, into new populations. */
function carryOver<P>(breeding: Breeding<P>, best: Member, { forward, backward }: Populations): void {
  forward.push(best)
  breeding.key.set(best.finish)
  admit(backward, make(breeding, 'backward', best.ways, 0), 1)
}

/** One population from its founders to the end of its stage. */
function runStage<P>(breeding: Breeding<P>, from: number, to: number): void {
  const done = () => breeding.tried >= to || spent(breeding)
  const { manner, size } = breeding.of
  const length = Math.min(to, manner.stages.at(-2)! * 10) - from
  const most = Math.max(4, Math.round(manner.membersPerRoot * Math.sqrt(length / size)))
  const populations: Populations = { forward: [], backward: [] }
  if (manner.climbs && breeding.best !== null) carryOver(breeding, breeding.best, populations)
  for (let k = 0; k < most && !done(); k++) found(breeding, populations, most)
  for (let turn = 0; !done(); turn++) {
    const direction: Direction = turn % 2 === 0 ? 'forward' : 'backward'
    const parents = turn % 2 === 0 ? populations.backward : populations.forward
    if (parents.length === 0) found(breeding, populations, most)
    for (let k = 0; k < most && parents.length > 0 && !done(); k++) {
      const father = drawn(parents, breeding.chance)
      const mother = k < parents.length ? parents[k]! : drawn(parents, breeding.chance)
      admit(populations[direction], bear(breeding, father, mother, direction), most)
    }
  }
}

/**
 * The best plan that breeding finds: children are crossed over a busy window of their father's time, decoded in the
 * other direction than their parents, and live while among the best, none twice. Populations grow from stage to stage.
 * Gives: the same for the same options; more effort is never worse, since the passes of less effort come first.
 * Source: Debels, Vanhoucke, "A decomposition-based genetic algorithm", Operations Research 55, 2007, for two populations
 * and the crossover (from memory). Cost: one pass and O(tasks + steps of the plan) for each child.
 */
export function breed<P>(of: Breedable<P>, options: BreedOptions): Bred<P> {
  const breeding: Breeding<P> = {
    of,
    options,
    chance: seededRandom(options.seed).next,
    key: new Int32Array(of.size),
    use: new Float64Array(Math.ceil(of.horizon / of.grain) + 3),
    tried: 0,
    best: null,
    kept: null,
  }
  let from = 0
  for (const to of of.manner.stages) {
    if (spent(breeding)) break
    runStage(breeding, from, to)
    from = to
  }
  return { plan: breeding.kept, tried: breeding.tried }
}
