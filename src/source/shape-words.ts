import type { ShapeError } from './generated/validate-project.js'
import type { ShapePlace } from './shape-place.ts'

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  integer: 'a whole number',
  number: 'a number',
  array: 'a list',
  object: 'a map',
  boolean: 'yes or no',
}

/** What the language wants, in words: a text, a number or a map. */
export function wantedText(types: readonly string[]): string {
  const words = types.map((type) => kinds[type] ?? type)
  const last = words.pop() ?? 'something else'
  return words.length === 0 ? last : `${words.join(', ')} or ${last}`
}

/** What stands there, in words. */
export function foundText(value: unknown): string {
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object') return 'a map'
  if (typeof value === 'string') return 'a text'
  return typeof value === 'number' ? 'a number' : 'a truth value'
}

/** A bound in words. */
export function boundText({ keyword, params }: ShapeError): string {
  return keyword === 'minimum' ? `at least ${params.limit}` : `at most ${params.limit}`
}

/** What a map is, by its own name where it has one. */
export function whereText({ key, inList, fact, def }: ShapePlace): string {
  if (def === '#/$defs/project') return 'a project'
  if (def === '#/$defs/shop') return 'a shop'
  const title = fact.title ? fact.title.toLowerCase() : ''
  if (inList) return title ? `this ${title}` : `an entry of \`${key}\``
  return title && title !== key.toLowerCase() ? `the ${title} \`${key}\`` : `\`${key}\``
}
