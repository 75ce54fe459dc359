import type { Diagnostic } from '../diagnostics/message.ts'
import type { Exit, exits } from './terminal.ts'

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`

/** How many errors and warnings a file has, in a line. */
export function sayCounts(file: string, diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ level }) => level === 'error').length
  const warnings = diagnostics.length - errors
  const name = file === '-' ? '<stdin>' : file
  if (errors === 0 && warnings === 0) return `${name}: no errors, no warnings`
  return `${name}: ${plural(errors, 'error')}, ${plural(warnings, 'warning')}`
}

/** Exit code for what was found. */
export function exitOf(diagnostics: readonly Diagnostic[], codes: typeof exits): Exit {
  return diagnostics.some(({ level }) => level === 'error') ? codes.errors : codes.fine
}
