import { formatInstant, parseDay } from '../../src/base/clock.ts'
import { type CompileOptions, plan } from '../../src/compile.ts'
import type { Results } from '../../src/model/results.ts'

/** A tiny project planned from its text; any error in it is a fault of the test. */
export function planned(text: string, options: CompileOptions = {}): Results {
  const { results, diagnostics } = plan('-', { ...options, stdin: text })
  if (!results) throw new Error(diagnostics.map(({ code, says }) => `${code} ${says}`).join('\n'))
  return results
}

/** Codes of the errors in a project. */
export function errorsOf(text: string): readonly string[] {
  return plan('-', { stdin: text }).diagnostics.flatMap(({ level, code }) =>
    level === 'error' ? [code] : [],
  )
}

/** Pieces of a task as `2026-03-02T19:30 2026-03-02T20:00`, one line each. */
export function pieces(results: Results, task: string): readonly string[] {
  const placed = results.schedule.tasks.get(task)
  if (!placed) throw new Error(`no task ${task} among\n${[...results.schedule.tasks.keys()].join('\n')}`)
  return placed.pieces.map(({ open, close }) => `${formatInstant(open)} ${formatInstant(close)}`)
}

/** Start and finish of a task. */
export function times(results: Results, task: string): string {
  const placed = results.schedule.tasks.get(task)
  if (!placed) throw new Error(`no task ${task} among\n${[...results.schedule.tasks.keys()].join('\n')}`)
  return `${formatInstant(placed.start)} ${formatInstant(placed.finish)}`
}

export const dayNamed = (text: string): number => parseDay(text)!
