import { nameList, nearNames } from '../base/near-names.ts'
import { allMessages, messageOf } from './catalogue.ts'
import { examples } from './generated/examples.ts'

/** What is known about one code. */
export interface Explanation {
  readonly code: string
  readonly level: 'error' | 'warning'
  readonly why: string
  /** A project file that earns the code; `null` where none is at hand. */
  readonly example: string | null
}

/** Reason and example of a code, in capitals or not; `null` when there is no such code. */
export function explain(code: string): Explanation | null {
  const entry = messageOf(code)
  if (!entry) return null
  const example = Object.hasOwn(examples, entry.code) ? (examples[entry.code] ?? null) : null
  return { code: entry.code, level: entry.level, why: entry.why, example }
}

/** The explanation as text, or what to type where there is no such code. */
export function explainText(code: string): string {
  const found = explain(code)
  if (!found) {
    const near = nearNames(
      code.toUpperCase(),
      allMessages().map((entry) => entry.code),
    )
    return `there is no code \`${code}\`${near.length > 0 ? `; did you mean ${nameList(near, 'or')}?` : ''}\n`
  }
  const example =
    found.example === null ? '' : `\nExample:\n\n${found.example.replace(/^(?=.)/gm, '    ').trimEnd()}\n`
  return `${found.code} (${found.level})\n\n${found.why}\n${example}`
}
