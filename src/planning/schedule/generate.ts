/** The face of the scheduler: a problem and an effort in, a schedule or an honest refusal out. */

import { generalGeneration } from './general-generation.ts'
import { whyImpossible } from './impossible.ts'
import { type Network, networkOf } from './network.ts'
import { plainGeneration } from './plain-generation.ts'
import { type PlainProblem, plainProblem } from './plain-problem.ts'
import type { Problem, ScheduleOutcome } from './problem.ts'
import type { SearchOptions } from './search-options.ts'
import { stockGeneration, usesStock } from './stock-modes.ts'

/** Schedules tried by the general decoder before modes are bred. */
const effortOfRules = 20

/** Anything that makes schedules: the same problem and options give the same answer. */
export type Generator = (problem: Problem, options: SearchOptions) => ScheduleOutcome

/** Whether some task has several modes and nothing is used up: then the general decoder's choice is a fair start. */
function choosesModes(problem: Problem): boolean {
  return problem.tasks.some(({ modes }) => modes.length > 1) && !usesStock(problem)
}

function otherwise(network: Network, options: SearchOptions): ScheduleOutcome {
  const { problem } = network
  return usesStock(problem) ? stockGeneration(problem, options) : generalGeneration(network, options)
}

function bred(network: Network, plain: PlainProblem, options: SearchOptions): ScheduleOutcome {
  return plainGeneration(network.problem, plain, options) ?? otherwise(network, options)
}

/** The better of a few general schedules, which come first, and bred ones with what effort is left. */
function byBoth(network: Network, plain: PlainProblem, options: SearchOptions): ScheduleOutcome {
  const general = generalGeneration(network, { ...options, effort: Math.min(options.effort, effortOfRules) })
  if (general.kind !== 'found') return bred(network, plain, options)
  const used = general.stats.schedulesTried
  if (general.proved || used >= options.effort) return general
  const plan = plainGeneration(network.problem, plain, { ...options, effort: options.effort - used })
  if (plan?.kind !== 'found') return general
  const best = plan.schedule.finish < general.schedule.finish ? plan : general
  const bound = Math.max(plan.bound, general.bound)
  const stats = { ...plan.stats, schedulesTried: plan.stats.schedulesTried + used }
  return { ...best, bound, proved: best.schedule.finish === bound, stats }
}

/**
 * A schedule for the problem, as good as the effort allows, with a bound and whether it is proved the earliest; or a
 * proof that there is none; or that none was found. Problems without calendars, holds and longest waits are searched
 * on flat arrays, all others by the general decoder.
 * Needs: indices in the problem are in range, calendars and timetables are sorted.
 * Gives: without nodes, more effort never gives a later finish; at the same effort, more nodes never do.
 */
export const scheduleProblem: Generator = (problem, options) => {
  const network = networkOf(problem)
  const impossible = whyImpossible(network)
  if (impossible) return impossible
  const plain = plainProblem(network)
  if (plain === null) return otherwise(network, options)
  return choosesModes(problem) ? byBoth(network, plain, options) : bred(network, plain, options)
}
