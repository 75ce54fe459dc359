import type { Place } from '../base/place.ts'
import type { Diagnostic } from './message.ts'
import { harmless, harmlessInPlace, widthOfText } from './width.ts'

/** How findings are printed. */
export interface RenderOptions {
  readonly colour: boolean
  /** Texts of the files, for the line at fault; a file that is not there is printed without. */
  readonly texts: ReadonlyMap<string, string>
}

type Paint = (style: 'place' | 'error' | 'warning' | 'note' | 'mend', text: string) => string

/**
 * Findings as text: place, level, fact and code; the line at fault with its part underlined; further places; the mend.
 * Gives: one line feed after each line, the empty text when there is nothing; nothing a terminal would obey but colours.
 * Source: form of `file:line:column: message` from the GNU Coding Standards, section 4.4.
 */
export function renderGnu(diagnostics: readonly Diagnostic[], options: RenderOptions): string {
  const lines = new Map<string, readonly string[]>()
  for (const { at } of diagnostics) {
    const text = options.texts.get(at.file)
    if (text !== undefined && !lines.has(at.file))
      lines.set(at.file, text.replace(/^\ufeff/, '').split(/\r?\n/))
  }
  const paint = options.colour ? coloured : plain
  return diagnostics.map((each) => renderOne(each, lines.get(each.at.file) ?? [], paint)).join('')
}

function renderOne(found: Diagnostic, lines: readonly string[], paint: Paint): string {
  const head = `${paint('place', placeText(found.at))}: ${paint(found.level, `${found.level}:`)}`
  const notes = found.notes.map(
    ({ at, says }) => `${paint('place', placeText(at))}: ${paint('note', 'note:')} ${harmless(says)}`,
  )
  const mend = found.mend ? [`  ${paint('mend', 'mend:')} ${harmless(found.mend)}`] : []
  const all = [
    `${head} ${harmless(found.says)} [${found.code}]`,
    ...excerpt(found.at, lines, paint),
    ...notes,
    ...mend,
  ]
  return `${all.join('\n')}\n`
}

const placeText = (at: Place): string => `${harmless(at.file)}:${at.line}:${at.column}`

const widest = 96

/** The line at fault, cut around the column where it is long, and a line of signs below the part meant. */
function excerpt(at: Place, lines: readonly string[], paint: Paint): readonly string[] {
  const whole = lines[at.line - 1]
  if (whole === undefined || whole.trim() === '') return []
  const margin = whole.length - whole.trimStart().length
  const start = Math.min(at.column - 1, whole.length)
  const from = Math.max(Math.min(margin, start), start > widest ? start - 40 : 0)
  const shown = whole.slice(from, from + widest)
  const before = from > margin ? '…' : ''
  const after = from + widest < whole.length ? '…' : ''
  const meant = shown.slice(start - from, start - from + Math.max(1, at.length))
  const indent = ' '.repeat(widthOfText(before + harmlessInPlace(shown.slice(0, start - from))))
  const signs = '^'.repeat(Math.max(1, widthOfText(harmlessInPlace(meant))))
  return [`    ${before}${harmlessInPlace(shown)}${after}`.trimEnd(), `    ${indent}${paint('error', signs)}`]
}

const plain: Paint = (_style, text) => text
const codes = { place: '1', error: '1;31', warning: '1;33', note: '1;36', mend: '1;32' } as const
const coloured: Paint = (style, text) => `\u001b[${codes[style]}m${text}\u001b[0m`
