import type { ThreePoint } from '../base/three-point.ts'
import type { PrintJob } from '../model/project.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import type { Row } from './cells.ts'
import { sayMinutes, text, tick } from './make-cells.ts'
import { plannedFor, sayDays } from './planned-days.ts'
import { sayRange, sentences } from './say-time.ts'

/** The tasks of a print job in their order: of a plate, or of a part printed alone. */
export function printTasks(
  results: Results,
  of: { readonly plate: string } | { readonly part: string },
): readonly PlanTask[] {
  const mine = ({ subject, kind }: PlanTask): boolean =>
    'plate' in of
      ? subject.plate === of.plate && subject.cart === null
      : subject.part === of.part && subject.routeStep === null && subject.cart === null && kind !== 'ready'
  const start = ({ id }: PlanTask): number => results.schedule.tasks.get(id)?.start ?? 0
  return results.network.tasks.filter(mine).sort((a, b) => start(a) - start(b))
}

const does: Readonly<Record<string, string>> = {
  load: 'Prepare and start',
  run: 'Print',
  unload: 'Take off',
  wash: 'Wash',
  dry: 'Let dry',
  cure: 'Cure',
}

/** A row for each stage of a print job; the first says what goes on. */
export function printRows(results: Results, job: PrintJob, tasks: readonly PlanTask[]): readonly Row[] {
  return tasks.map((task, at): Row => {
    const stage = task.id.split(' / ').at(-1)!
    const planned = plannedFor(results, ({ id }) => id === task.id)
    const range = sayRange(job[stage === 'run' ? 'time' : (stage as 'load')] as ThreePoint | null)
    const says = sentences(
      task.machine === null ? null : `on ${task.machine}`,
      stage === 'load' && job.material !== null ? `material: ${job.material}` : null,
      range && `time ${range}`,
      task.attention === 'none'
        ? 'nobody needed'
        : task.attention === 'nearby'
          ? 'stay within earshot'
          : null,
    )
    return {
      cells: [
        text(`${at + 1}`),
        text(does[stage] ?? stage, { role: 'strong' }),
        text(says),
        text(sayMinutes(task.minutes), { indent: 1 }),
        text(planned ? sayDays(planned) : ''),
        tick(),
      ],
    }
  })
}
