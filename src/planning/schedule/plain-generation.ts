/** Schedules of plain problems: bred, bounded, and where asked proved. */
import type { PlainProblem } from './plain-problem.ts'
import { populationSearch, type UnitPlan } from './population-search.ts'
import type { Placement, Problem, ScheduleOutcome } from './problem.ts'
import type { Lesson } from './proof-state.ts'
import { type Proof, proveFinish } from './prove-finish.ts'
import type { SearchOptions } from './search-options.ts'
import { unitBound } from './unit-bound.ts'

function placementsOf(plain: PlainProblem, { starts, ways }: UnitPlan): Placement[] {
  return Array.from(starts, (at, task) => {
    const start = plain.start + at * plain.unit
    const finish = start + plain.duration[ways[task]!]! * plain.unit
    return {
      mode: ways[task]! - plain.firstWay[task]!,
      start,
      finish,
      pieces: [{ open: start, close: finish }],
    }
  })
}

function provedFurther(plain: PlainProblem, plan: UnitPlan, lower: number, options: SearchOptions): Proof {
  const known = { starts: plan.starts, lower, upper: plan.length, nodes: 0 }
  const nodes = options.nodes ?? 0
  const single = plain.duration.length === plain.size
  if (nodes === 0 || !single || lower >= plan.length) return known
  const { stop, learned } = options
  const inMinutes = (one: Lesson) => ({ ...one, at: plain.start + one.at * plain.unit })
  return proveFinish(plain, {
    starts: plan.starts,
    lower,
    nodes,
    ...(stop ? { stop } : {}),
    ...(learned ? { learned: (lesson) => learned(lesson.map(inMinutes)) } : {}),
  })
}

/**
 * The best schedule of a plain problem within the effort, its bound, and where nodes are allowed its proof.
 * Gives: `null` where no schedule was found or it passes the horizon.
 */
export function plainGeneration(
  problem: Problem,
  plain: PlainProblem,
  options: SearchOptions,
): ScheduleOutcome | null {
  const lower = unitBound(plain)
  const { plan, tried } = populationSearch(plain, { ...options, effort: Math.max(1, options.effort), lower })
  if (plan === null) return null
  const proof = provedFurther(plain, plan, lower, options)
  const placements = placementsOf(plain, { ...plan, starts: proof.starts })
  const finish = plain.start + proof.upper * plain.unit
  if (finish > problem.horizon) return null
  return {
    kind: 'found',
    schedule: { placements, finish },
    bound: plain.start + proof.lower * plain.unit,
    proved: proof.lower >= proof.upper,
    stats: { schedulesTried: tried, nodes: proof.nodes },
  }
}
