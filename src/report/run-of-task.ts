import type { PrintRun } from '../model/print.ts'
import type { Project } from '../model/project.ts'
import type { PlanTask } from '../model/tasks.ts'

/** The run of a printer that a task belongs to, and which of how many; `null` for other tasks. */
export function runOfTask(
  { plates, parts }: Project,
  { id, subject }: PlanTask,
): { readonly run: PrintRun; readonly at: number; readonly of: number } | null {
  const way = parts.get(subject.part ?? '')?.way
  const runs =
    subject.plate !== null
      ? plates.get(subject.plate)?.runs
      : way?.kind === 'printed'
        ? way.runs[subject.lot ?? 0]
        : undefined
  const [, said] = / (\d+) of \d+ \/ [a-z]+$/.exec(id) ?? []
  const at = said === undefined || (runs?.length ?? 0) < 2 ? 0 : Number(said) - 1
  const run = runs?.[at]
  return run && runs ? { run, at, of: runs.length } : null
}
