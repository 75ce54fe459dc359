import type { ThreePoint } from '../base/three-point.ts'
import type { PrintJob } from '../model/project.ts'
import type { Results } from '../model/results.ts'
import type { PlanTask } from '../model/tasks.ts'
import type { Row } from './cells.ts'
import { blank, sayMinutes, text, tick } from './make-cells.ts'
import { plannedFor, sayDays } from './planned-days.ts'
import { runOfTask } from './run-of-task.ts'
import { sayCount, sayRange, sentences } from './say-time.ts'

/** Of all tasks about a plate those of its print job, by start. */
export function platePrint({ schedule }: Results, tasks: readonly PlanTask[]): readonly PlanTask[] {
  return byStart(
    schedule,
    tasks.filter(({ subject }) => subject.cart === null),
  )
}

/** Of all tasks about a part printed alone those of its print job, by start. */
export function partPrint({ schedule }: Results, tasks: readonly PlanTask[]): readonly PlanTask[] {
  const mine = ({ subject, kind }: PlanTask): boolean =>
    subject.routeStep === null && subject.cart === null && kind !== 'ready'
  return byStart(schedule, tasks.filter(mine))
}

function byStart({ tasks }: Results['schedule'], print: readonly PlanTask[]): readonly PlanTask[] {
  const start = ({ id }: PlanTask): number => tasks.get(id)?.start ?? 0
  return [...print].sort((a, b) => start(a) - start(b))
}

const does: Readonly<Record<string, string>> = {
  load: 'Prepare and start',
  run: 'Print',
  unload: 'Take off',
  wash: 'Wash',
  dry: 'Let dry',
  cure: 'Cure',
}

/** What lies on a run and how it grows: at its start which of several it is, at its print layers and material. */
function sayRun(results: Results, task: PlanTask, stage: 'load' | 'run'): readonly (string | null)[] {
  const found = runOfTask(results.project, task)
  if (!found) return []
  const { run, at, of } = found
  if (stage === 'load') {
    const lying = run.loads.map(({ part, pieces }) => sayCount(part, pieces)).join(', ')
    return of > 1 ? [`job ${at + 1} of ${of}: ${lying}`] : []
  }
  const high = run.heightMm === null ? null : `${Number(run.heightMm.toPrecision(3))} mm high`
  const layers = run.layers === null ? null : `${run.layers} layers`
  const growing = [layers, high].filter((one) => one !== null).join(', ')
  return [growing === '' ? null : growing, run.worked.find((line) => line.startsWith('material of')) ?? null]
}

/** A row for each stage of a print job; the first says what goes on. */
export function printRows(results: Results, job: PrintJob, tasks: readonly PlanTask[]): readonly Row[] {
  return tasks.map((task, at): Row => {
    const stage = task.id.split(' / ').at(-1)!
    const planned = plannedFor(results, [task])
    const range = sayRange(job[stage === 'run' ? 'time' : (stage as 'load')] as ThreePoint | null)
    const says = sentences(
      task.machine === null ? null : `on ${task.machine}`,
      stage === 'load' && job.material !== null ? `material: ${job.material}` : null,
      range && `time ${range}`,
      ...(stage === 'load' || stage === 'run' ? sayRun(results, task, stage) : []),
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
        blank(),
        text(says),
        text(sayMinutes(task.minutes), { indent: 1 }),
        text(planned ? sayDays(planned) : ''),
        tick(),
      ],
    }
  })
}
