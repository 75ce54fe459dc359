import { generateProject } from '../../.dev/generate-project.mjs'
import { type CompileOptions, type Planned, plan } from '../../src/compile.ts'
import type { Diagnostic } from '../../src/diagnostics/message.ts'
import type { Results } from '../../src/model/results.ts'

/** Random projects, small ones first; the same on every machine. */
export const projects: readonly string[] = Array.from({ length: 10 }, (_, at) =>
  generateProject({ tasks: 25 + 8 * at, seed: 1000 + at }),
)

/** How much is tried where the number of schedules does not matter. */
export const quick: CompileOptions = { effort: 4, seed: 1 }

/** A project's text planned in memory. */
export function planText(text: string, options: CompileOptions = quick): Planned {
  return plan('-', { ...options, stdin: text })
}

/** The results of a text that must have a plan. */
export function resultsOf(text: string, options: CompileOptions = quick): Results {
  const { results, diagnostics } = planText(text, options)
  if (!results) throw new Error(`no plan: ${diagnostics.map(said).join('; ')}\n${text}`)
  return results
}

/** A finding without its place. */
export function said({ code, level, says, mend }: Diagnostic): string {
  return `${level} ${code} ${says} / ${mend}`
}
