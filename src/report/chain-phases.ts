import { dayOf, type Instant } from '../base/clock.ts'
import type { Results } from '../model/results.ts'
import type { ChainStep } from '../model/schedule.ts'
import type { PlanTask } from '../model/tasks.ts'
import { sayBecause } from './say-because.ts'
import { groupLabel } from './task-groups.ts'

/** Neighbouring elements of the driving chain about one thing. */
export interface ChainPhase {
  readonly label: string
  readonly start: Instant
  readonly finish: Instant
  readonly steps: readonly ChainStep[]
  /** Why its first element did not begin earlier. */
  readonly says: string
}

/** A way by post, unpacking included, is told apart from the work around it: often it is most of the time. */
function phaseLabel(task: PlanTask): string {
  const { cart } = task.subject
  const coming = cart !== null && (task.kind === 'delivery' || task.kind === 'receive')
  return coming ? `On its way: ${cart}` : groupLabel(task)
}

/** The driving chain told by what it is about, in order. */
export function chainPhases(results: Results): readonly ChainPhase[] {
  const labels = new Map(results.network.tasks.map((task) => [task.id, phaseLabel(task)]))
  const runs: ChainStep[][] = []
  for (const step of results.schedule.drivingChain) {
    const last = runs.at(-1)
    if (last && labels.get(last[0]!.task) === labels.get(step.task)) last.push(step)
    else runs.push([step])
  }
  return runs.map((steps) => ({
    label: labels.get(steps[0]!.task) ?? steps[0]!.task,
    start: steps[0]!.start,
    finish: Math.max(...steps.map(({ finish }) => finish)),
    steps,
    says: sayBecause(results, steps[0]!),
  }))
}

/** Whole days from one instant's day to another's. */
export function daysBetween(from: Instant, to: Instant): number {
  return dayOf(to) - dayOf(from)
}
