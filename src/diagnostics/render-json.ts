import type { Diagnostic } from './message.ts'

/**
 * Findings as JSON text for other programs: one object each with code, level, place, words, mend and notes, in the
 * order given. Lines and columns count from 1, columns in UTF-16 units.
 */
export function renderJson(diagnostics: readonly Diagnostic[]): string {
  const plain = diagnostics.map(({ code, level, at, says, mend, notes }) => ({
    code,
    level,
    at,
    says,
    mend,
    notes,
  }))
  return `${JSON.stringify({ diagnostics: plain }, null, 2)}\n`
}
