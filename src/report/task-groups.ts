import type { Results } from '../model/results.ts'
import type { ScheduledTask } from '../model/schedule.ts'
import type { PlanTask } from '../model/tasks.ts'

/** A task with where it went in time. */
export interface PlacedTask {
  readonly task: PlanTask
  readonly at: ScheduledTask
}

/** Tasks about one thing, by start. */
export interface TaskGroup {
  readonly label: string
  readonly tasks: readonly PlacedTask[]
}

/** What a task is about, in words: a part, an order, a plate, the device, or other work. */
export function groupLabel({ subject }: PlanTask): string {
  if (subject.step !== null)
    return subject.assembly === null ? 'Device: assembly and tests' : `Assembly: ${subject.assembly}`
  if (subject.plate !== null) return `Plate: ${subject.plate}`
  if (subject.part !== null) return `Part: ${subject.part}`
  if (subject.cart !== null) return `Order: ${subject.cart}`
  return 'Other work'
}

/** Every task under what it is about; groups and tasks by start, then by name. */
export function taskGroups({ network, schedule }: Results): readonly TaskGroup[] {
  const groups = new Map<string, PlacedTask[]>()
  for (const task of network.tasks) {
    const at = schedule.tasks.get(task.id)
    if (!at) continue
    const label = groupLabel(task)
    const held = groups.get(label)
    if (held) held.push({ task, at })
    else groups.set(label, [{ task, at }])
  }
  const all = [...groups].map(([label, tasks]) => ({ label, tasks: tasks.sort(byStart) }))
  return all.sort((a, b) => firstStart(a) - firstStart(b) || (a.label < b.label ? -1 : 1))
}

const firstStart = ({ tasks }: TaskGroup): number => tasks[0]?.at.start ?? 0

function byStart(a: PlacedTask, b: PlacedTask): number {
  return a.at.start - b.at.start || a.at.finish - b.at.finish || (a.task.id < b.task.id ? -1 : 1)
}
