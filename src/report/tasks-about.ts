import { groupBy } from '../base/group-by.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'

/** The tasks of a plan by what they are about, each list in the order of the network. */
export interface TasksAbout {
  readonly part: (id: string) => readonly PlanTask[]
  readonly plate: (id: string) => readonly PlanTask[]
  readonly cart: (id: string) => readonly PlanTask[]
  /** Tasks of steps, of the device where no part is named. */
  readonly assembly: (of: string | null) => readonly PlanTask[]
}

/** Looks once through the tasks of a plan, so that each sheet need not search them again for every part. */
export function tasksAbout({ network }: Results): TasksAbout {
  const by = (key: 'part' | 'plate' | 'cart' | 'assembly', tasks = network.tasks) => {
    const groups = groupBy(tasks, ({ subject }) => subject[key])
    return (id: string | null) => groups.get(id) ?? []
  }
  const steps = network.tasks.filter(({ subject }) => subject.step !== null)
  return { part: by('part'), plate: by('plate'), cart: by('cart'), assembly: by('assembly', steps) }
}
