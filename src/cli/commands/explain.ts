import { explain, explainText } from '../../diagnostics/explain.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** `fettle explain CODE`: the reason behind a message, with an example. */
export function runExplain(code: string, terminal: Terminal): Exit {
  const text = explainText(code)
  if (!explain(code)) throw new UsageError(text.trimEnd())
  terminal.out(text)
  return exits.fine
}
