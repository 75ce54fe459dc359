/** A population of plans, bred over windows of time, decoded forward and backward in turn. */
import { seededRandom } from '../../base/random.ts'
import { headsOf, shortest, tailsOf } from './critical-bounds.ts'
import { packedNeeds } from './packed-needs.ts'
import type { PlainProblem } from './plain-problem.ts'
import { type Direction, type SerialPass, serialPassOf } from './serial-pass.ts'
import { type StockRepair, stockRepairOf } from './within-stock.ts'

/** How much to breed: at most `effort` passes, fewer where a plan of `lower` units is found or `stop` says so. */
export interface PopulationOptions {
  readonly effort: number
  readonly seed: number
  readonly lower: number
  readonly stop?: (() => boolean) | undefined
  readonly progress?: ((tried: number, effort: number) => void) | undefined
}

/** A plan in units from the start, with the way of each task. */
export interface UnitPlan {
  readonly starts: Int32Array
  readonly ways: Int32Array
  readonly length: number
}

/** The best plan, `null` where every one tried uses up more than there is, and the passes made. */
export interface Bred {
  readonly plan: UnitPlan | null
  readonly tried: number
}

/** One plan: finishes counted in the direction of its pass; `worth` is its length, and more where stock is missing. */
interface Member {
  readonly finish: Int32Array
  readonly ways: Int32Array
  readonly length: number
  readonly worth: number
  readonly mark: number
}

/**
 * Passes after which a fresh and larger population begins. Fixed, so that less effort makes the same plans as more, only
 * fewer; each is a small share of the next, so that little is lost by it.
 */
const stages = [20, 100, 1_000, 5_000, 50_000, 500_000, 5_000_000, Number.POSITIVE_INFINITY]

/** Members per root of passes per task: measured on the public sample. */
const membersPerRoot = 8.2

interface Breeding {
  readonly plain: PlainProblem
  readonly options: PopulationOptions
  readonly pass: SerialPass
  readonly repair: StockRepair
  readonly chance: () => number
  readonly key: Int32Array
  /** Keys of rules of thumb, used up first. */
  readonly rules: Int32Array[]
  /** Ways of each task within capacities, shortest first. */
  readonly choices: readonly (readonly number[])[]
  readonly load: Float64Array
  readonly use: Float64Array
  readonly spread: number
  tried: number
  /** Of the forward plans. */
  best: Member | null
}

/** Ways of each task that stay within capacities, shortest first, of those the one that takes least. */
function choicesOf(plain: PlainProblem): number[][] {
  const { possible } = packedNeeds(plain)
  const { size, firstWay, duration } = plain
  const load = loadsOf(plain)
  return Array.from({ length: size }, (_, task) => {
    const ways = Array.from({ length: firstWay[task + 1]! - firstWay[task]! }, (_, k) => firstWay[task]! + k)
    return ways
      .filter((way) => possible[way])
      .sort((a, b) => duration[a]! - duration[b]! || load[a]! - load[b]! || a - b)
  })
}

/** Shares of the capacities that each way takes, added up. */
function loadsOf({ duration, capacity, need }: PlainProblem): Float64Array {
  return Float64Array.from(duration, (_, way) =>
    capacity.reduce((sum, most, k) => sum + need[way * capacity.length + k]! / Math.max(1, most), 0),
  )
}

function breedingOf(plain: PlainProblem, options: PopulationOptions): Breeding {
  const [heads, tails, lasts] = [headsOf(plain), tailsOf(plain), shortest(plain)]
  const choices = choicesOf(plain)
  const latestStart = tails.map((tail, task) => tail + lasts[task]!)
  return {
    plain,
    options,
    pass: serialPassOf(plain),
    repair: stockRepairOf(plain, choices),
    chance: seededRandom(options.seed).next,
    key: new Int32Array(plain.size),
    rules: [latestStart, tails.slice(), tails.map((tail, task) => tail - heads[task]!)],
    choices,
    load: loadsOf(plain),
    use: new Float64Array(plain.horizon + 2),
    spread: 10 * latestStart.reduce((most, each) => Math.max(most, each), 1),
    tried: 0,
    best: null,
  }
}

function spent({ tried, best, options }: Breeding): boolean {
  if (tried >= options.effort) return true
  if (best !== null && best.worth <= options.lower) return true
  return (tried & 63) === 0 && options.stop?.() === true
}

/** One pass over the keys in hand. A backward plan that would be the best is read forwards by one more pass. */
function make(breeding: Breeding, direction: Direction, ways: Int32Array, missing: number): Member {
  const { plain, pass, key, options } = breeding
  const finish = new Int32Array(plain.size)
  const length = pass(direction, key, ways, finish)
  breeding.tried++
  options.progress?.(breeding.tried, options.effort)
  let mark = 0
  for (let task = 0; task < plain.size; task++)
    mark = (Math.imul(mark, 31) + finish[task]! + 7 * ways[task]!) | 0
  const member = { finish, ways, length, mark, worth: missing > 0 ? plain.horizon + missing : length }
  if (missing > 0 || (breeding.best !== null && member.worth >= breeding.best.worth)) return member
  if (direction === 'forward') breeding.best = member
  else if (plain.symmetric && breeding.tried < options.effort) {
    key.set(finish)
    make(breeding, 'forward', ways, 0)
  }
  return member
}

/** Takes a member in, best first, unless it is there already or worse than all of a full population. */
function admit(population: Member[], member: Member, most: number): void {
  let [low, high] = [0, population.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (population[middle]!.worth <= member.worth) low = middle + 1
    else high = middle
  }
  for (let k = low - 1; k >= 0 && population[k]!.worth === member.worth; k--)
    if (population[k]!.mark === member.mark) return
  if (low >= most) return
  population.splice(low, 0, member)
  if (population.length > most) population.pop()
}

/** Two members out of nothing: by a rule of thumb while there are any, else by chance; forward, then backward from there. */
function found(breeding: Breeding, populations: Populations, most: number): void {
  const { plain, key, chance, choices, rules, spread } = breeding
  const rule = rules.shift()
  for (let task = 0; task < plain.size; task++) key[task] = rule ? rule[task]! : Math.floor(spread * chance())
  const any = (ways: readonly number[]) =>
    rule || ways.length === 1 ? ways[0]! : ways[Math.floor(chance() * ways.length)]!
  const ways = Int32Array.from(choices, any)
  const missing = breeding.repair(ways, chance)
  const first = make(breeding, 'forward', ways, missing)
  admit(populations.forward, first, most)
  if (spent(breeding)) return
  key.set(first.finish)
  admit(populations.backward, make(breeding, 'backward', ways, missing), most)
}

/** The better of two members drawn. */
function drawn(population: readonly Member[], chance: () => number): Member {
  const [a, b] = [chance() * population.length, chance() * population.length]
  return population[Math.floor(Math.min(a, b))]!
}

/** The busier of two windows of a plan, each a quarter to three quarters of it. */
function busyWindow(breeding: Breeding, { finish, ways, length }: Member): readonly [number, number] {
  const { use, load, chance, plain } = breeding
  use.fill(0, 0, length + 2)
  for (let task = 0; task < plain.size; task++) {
    const amount = load[ways[task]!]!
    use[finish[task]! - plain.duration[ways[task]!]! + 1]! += amount
    use[finish[task]! + 1]! -= amount
  }
  for (let round = 0; round < 2; round++) for (let at = 1; at <= length; at++) use[at]! += use[at - 1]!
  const wide = Math.max(1, Math.round(length * (0.25 + 0.5 * chance())))
  const a = Math.floor(chance() * (length - wide + 1))
  const b = Math.floor(chance() * (length - wide + 1))
  const busier = use[b + wide]! - use[b]! > use[a + wide]! - use[a]!
  return busier ? [b, b + wide] : [a, a + wide]
}

/** Keys of a child: its mother's order, but within the window its father's; ways likewise. Written to `key`. */
function crossed(breeding: Breeding, father: Member, mother: Member): Int32Array {
  const { plain, key, choices } = breeding
  const [from, to] = busyWindow(breeding, father)
  const apart = 4 * (plain.horizon + 1)
  const ways = plain.duration.length > plain.size ? mother.ways.slice() : mother.ways
  for (let task = 0; task < plain.size; task++) {
    const at = mother.finish[task]!
    const inside = at > from && at <= to
    key[task] = inside ? father.finish[task]! : at <= from ? at - apart : at + apart
    if (inside && choices[task]!.length > 1) ways[task] = father.ways[task]!
  }
  return ways
}

/** Now and then a task's key is moved by up to three tenths of the plan, or its way drawn anew; rarer in larger plans. */
function mutate(
  { plain, key, chance, choices }: Breeding,
  ways: Int32Array,
  length: number,
  rate: number,
): void {
  for (let task = 0; task < plain.size; task++) {
    if (chance() * plain.size < rate) key[task]! += Math.round(0.3 * length * (2 * chance() - 1))
    const open = choices[task]!
    if (open.length > 1 && chance() * plain.size < rate)
      ways[task] = open[Math.floor(chance() * open.length)]!
  }
}

interface Populations {
  readonly forward: Member[]
  readonly backward: Member[]
}

function breed(breeding: Breeding, father: Member, mother: Member, direction: Direction): Member {
  const alone = father === mother
  if (alone) breeding.key.set(mother.finish)
  const many = breeding.plain.duration.length > breeding.plain.size
  const ways = alone ? (many ? mother.ways.slice() : mother.ways) : crossed(breeding, father, mother)
  mutate(breeding, ways, mother.length, alone ? 3 : 1)
  const missing = breeding.repair(ways, breeding.chance)
  return make(breeding, direction, ways, missing)
}

/** One population from its founders to the end of its stage. */
function runStage(breeding: Breeding, from: number, to: number): void {
  const done = () => breeding.tried >= to || spent(breeding)
  const length = Math.min(to, stages.at(-2)! * 10) - from
  const most = Math.max(4, Math.round(membersPerRoot * Math.sqrt(length / breeding.plain.size)))
  const populations: Populations = { forward: [], backward: [] }
  for (let k = 0; k < most && !done(); k++) found(breeding, populations, most)
  for (let turn = 0; !done(); turn++) {
    const direction: Direction = turn % 2 === 0 ? 'forward' : 'backward'
    const parents = turn % 2 === 0 ? populations.backward : populations.forward
    for (let k = 0; k < most && !done(); k++) {
      const father = drawn(parents, breeding.chance)
      const mother = k < parents.length ? parents[k]! : drawn(parents, breeding.chance)
      admit(populations[direction], breed(breeding, father, mother, direction), most)
    }
  }
}

function planOf({ plain }: Breeding, { finish, ways, length }: Member): UnitPlan {
  return { starts: finish.map((at, task) => at - plain.duration[ways[task]!]!), ways, length }
}

/**
 * The best plan that breeding finds: children are crossed over a busy window of their father's time, decoded in the
 * other direction than their parents, and live while among the best, none twice. Populations grow from stage to stage.
 * Gives: the same for the same options; more effort is never worse, since the passes of less effort come first.
 * Source: Debels, Vanhoucke, "A decomposition-based genetic algorithm", Operations Research 55, 2007, for two populations
 * and the crossover (from memory). Cost: O(tasks + waits + units looked at) per pass.
 */
export function populationSearch(plain: PlainProblem, options: PopulationOptions): Bred {
  const breeding = breedingOf(plain, options)
  let from = 0
  for (const to of stages) {
    if (spent(breeding)) break
    runStage(breeding, from, to)
    from = to
  }
  const { best, tried } = breeding
  return { plan: best === null ? null : planOf(breeding, best), tried }
}
