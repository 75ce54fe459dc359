import { takeApart } from '../../compile.ts'
import { renderGnu } from '../../diagnostics/render-gnu.ts'
import { reportJson } from '../../emit/json/report-json.ts'
import { apartText } from '../../emit/terminal/apart-text.ts'
import { compileOptions, type SharedOptions } from '../read-options.ts'
import { sayCounts } from '../say-counts.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** Options of `fettle apart`, as commander hands them over. */
export interface ApartOptions extends SharedOptions {
  readonly json?: boolean
}

/** `fettle apart FILE PART`: the way to a part for repair, with the least harm, and the way back. */
export function runApart(file: string, part: string, options: ApartOptions, terminal: Terminal): Exit {
  const { diagnostics, texts, answer } = takeApart(file, part, compileOptions(file, options, terminal.folder))
  if (answer === null) {
    terminal.err(renderGnu(diagnostics, { colour: terminal.colour, texts }))
    terminal.err(`${sayCounts(file, diagnostics)}\n`)
    return exits.errors
  }
  if ('unknown' in answer) throw new UsageError(answer.unknown)
  terminal.out(options.json ? reportJson(answer) : apartText(answer))
  return exits.fine
}
