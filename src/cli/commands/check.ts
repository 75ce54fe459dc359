import { check } from '../../compile.ts'
import { renderGnu } from '../../diagnostics/render-gnu.ts'
import { renderJson } from '../../diagnostics/render-json.ts'
import { compileOptions, type SharedOptions } from '../read-options.ts'
import { exitOf, sayCounts } from '../say-counts.ts'
import { type Exit, exits, type Terminal } from '../terminal.ts'

/** `fettle check FILE`: everything that is wrong or doubtful, in one run. */
export function runCheck(
  file: string,
  options: SharedOptions & { readonly json?: boolean },
  terminal: Terminal,
): Exit {
  const { diagnostics, texts } = check(file, compileOptions(file, options, terminal.folder))
  if (options.json) terminal.out(renderJson(diagnostics))
  else terminal.err(renderGnu(diagnostics, { colour: terminal.colour, texts }))
  if (!options.json) terminal.err(`${sayCounts(file, diagnostics)}\n`)
  return exitOf(diagnostics, exits)
}
