import { planReport } from '../../compile.ts'
import { renderGnu } from '../../diagnostics/render-gnu.ts'
import { whyText } from '../../emit/terminal/why.ts'
import { compileOptions, type SharedOptions } from '../read-options.ts'
import { sayCounts } from '../say-counts.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** `fettle why FILE THING`: when, after what, how late, for how much, and from which lines. */
export function runWhy(file: string, thing: string, options: SharedOptions, terminal: Terminal): Exit {
  const { diagnostics, texts, report } = planReport(file, {
    ...compileOptions(file, options, terminal.folder),
    samples: 0,
  })
  if (!report) {
    terminal.err(renderGnu(diagnostics, { colour: terminal.colour, texts }))
    terminal.err(`${sayCounts(file, diagnostics)}\n`)
    return exits.errors
  }
  const answer = whyText(report, thing)
  if (answer.kind === 'unknown') throw new UsageError(answer.says)
  terminal.out(answer.text)
  return exits.fine
}
