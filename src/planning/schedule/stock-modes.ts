/** Problems of any kind that use something up: modes are settled first, then the rest is scheduled. */
import { seededRandom } from '../../base/random.ts'
import { generalGeneration } from './general-generation.ts'
import { networkOf } from './network.ts'
import { amountsOf } from './plain-problem.ts'
import type { Mode, Problem, ScheduleOutcome } from './problem.ts'
import type { SearchOptions } from './search-options.ts'
import { stockRepairOf } from './within-stock.ts'

/** How often modes are drawn before they are given up. */
const draws = 50

const usesUp = ({ needs }: Mode): boolean => needs.some(({ during }) => during === 'ever')

/** Whether any mode uses something up. */
export function usesStock({ tasks }: Problem): boolean {
  return tasks.some(({ modes }) => modes.some(usesUp))
}

/** One mode per task so that all together stay within what there is, short ones first; `null` where none was found. */
function settledModes(problem: Problem, seed: number): readonly number[] | null {
  const { tasks, resources } = problem
  const ways = tasks.flatMap(({ modes }) => modes)
  const first = [0]
  for (const { modes } of tasks) first.push(first.at(-1)! + modes.length)
  const fits = (mode: Mode) =>
    mode.needs.every(({ resource, amount }) => amount <= resources[resource]!.capacity)
  const choices = tasks.map(({ modes }, task) =>
    modes
      .flatMap((mode, k) => (fits(mode) ? [first[task]! + k] : []))
      .sort((a, b) => ways[a]!.duration - ways[b]!.duration || a - b),
  )
  const capacity = Int32Array.from(resources, (resource) => resource.capacity)
  const spent = amountsOf(problem, ways, true)
  const repair = stockRepairOf({ size: tasks.length, capacity, spent }, choices)
  const { next } = seededRandom(seed)
  for (let draw = 0; draw < draws; draw++) {
    const picked = Int32Array.from(
      choices,
      (open) => open[draw === 0 ? 0 : Math.floor(next() * open.length)]!,
    )
    if (repair(picked, next) === 0) return Array.from(picked, (way, task) => way - first[task]!)
  }
  return null
}

/**
 * A schedule where something is used up and the problem is not a plain one: tasks that may use anything up get one
 * mode each, so the search is among times alone. Gives: what it finds keeps every rule; nothing is proved.
 */
export function stockGeneration(problem: Problem, options: SearchOptions): ScheduleOutcome {
  const picked = settledModes(problem, options.seed)
  const users = problem.tasks.flatMap(({ modes }, task) => (modes.some(usesUp) ? [task] : []))
  if (picked === null) return { kind: 'none found', stuck: users, why: 'no room' }
  const settled = new Set(users)
  const tasks = problem.tasks.map((task, k) =>
    settled.has(k) ? { ...task, modes: [task.modes[picked[k]!]!] } : task,
  )
  const outcome = generalGeneration(networkOf({ ...problem, tasks }), options)
  if (outcome.kind !== 'found') return outcome
  const placements = outcome.schedule.placements.map((placement, k) =>
    settled.has(k) ? { ...placement, mode: picked[k]! } : placement,
  )
  return { ...outcome, schedule: { ...outcome.schedule, placements }, bound: problem.start, proved: false }
}
