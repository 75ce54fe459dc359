import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'

const indexes = new WeakMap<Results, ReadonlyMap<string, PlanTask>>()

/** Tasks by id; made once for a plan. */
export function tasksById(results: Results): ReadonlyMap<string, PlanTask> {
  const known = indexes.get(results)
  if (known) return known
  const made = new Map(results.network.tasks.map((task) => [task.id, task]))
  indexes.set(results, made)
  return made
}

/** What a task is called. */
export function titleOf(results: Results, task: string): string {
  return tasksById(results).get(task)?.title ?? task
}

/** Who does a task and on what, in words; empty where nobody and nothing is needed. */
export function sayWho(results: Results, task: PlanTask): string {
  const people = results.schedule.tasks.get(task.id)?.people ?? []
  const watch = task.attention === 'nearby' ? ['someone nearby'] : []
  return [...people, ...watch, ...(task.machine === null ? [] : [task.machine])].join(', ')
}

/** What a task is about: the key under which the schedule shows it. */
export function aboutOf({ subject, kind }: PlanTask): {
  readonly group: 'orders' | 'work' | 'making' | 'assembly'
  readonly name: string
} {
  if (subject.step !== null) return { group: 'assembly', name: subject.part ?? 'the device' }
  if (subject.work !== null) return { group: 'work', name: subject.work }
  if (subject.plate !== null) return { group: 'making', name: `plate ${subject.plate}` }
  if (subject.part !== null) return { group: 'making', name: subject.part }
  return { group: kind === 'work' ? 'work' : 'orders', name: subject.cart ?? 'other' }
}
