import {
  Composer,
  type CST,
  type Document,
  LineCounter,
  Parser,
  YAMLParseError,
  type Node as YamlNode,
} from 'yaml'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import { firstControl, topOf } from './decode.ts'
import { depthLimit, firstTooDeep } from './nesting.ts'
import { type Page, placeOf, type Spot, textOf } from './spot.ts'
import { reportSyntax } from './syntax.ts'
import { plainTree } from './tree.ts'

/** What reading one text gives: its page always, its map where the text can be read. */
export interface Parsed {
  readonly page: Page
  readonly root: Spot<unknown> | null
}

/**
 * One YAML 1.2 text as plain data with places. Faults are reported, never thrown.
 * Gives: a root that is a map, without doubled keys, special types, endless numbers or repeats that grow without bound;
 * `null` when anything of this was reported.
 * Cost: linear in the text.
 */
export function parse(file: string, text: string, report: Report): Parsed {
  const lines = new LineCounter()
  const aliases = new Map()
  const page: Page = { file, text, lines, aliases }
  if (!mayBeRead(page, report)) return { page, root: null }
  let faults = 0
  const counting: Report = (entry, at, facts) => {
    faults += 1
    report(entry, at, facts)
  }
  const document = documentOf(page)
  if (document === null) counting(src.tooDeep, topOf(file), { limit: depthLimit })
  else if (document.errors.length > 0) reportSyntax(document, page, counting)
  else if (isEmpty(document.contents)) counting(src.emptyFile, topOf(file), { file })
  else {
    const node = document.contents as YamlNode
    const value = plainTree(page, aliases, node, counting)
    const at = placeOf(page, node)
    if (faults === 0) return { page, root: { value, at, keyAt: at, text: textOf(node), node, file, page } }
  }
  return { page, root: null }
}

/** The text as the library reads it; `null` when it nests deeper than this computer can follow. */
function documentOf({ text, lines }: Page): Document | null {
  const composer = new Composer({ version: '1.2', schema: 'core', merge: false, uniqueKeys: false })
  const tokens = untilHopeless(new Parser(lines.addNewLine).parse(text))
  try {
    const [first, second] = composer.compose(tokens, true, text.length)
    if (first && second)
      first.errors.push(new YAMLParseError(second.range.slice(0, 2) as [number, number], 'MULTIPLE_DOCS', ''))
    return first ?? null
  } catch (fault) {
    if (fault instanceof RangeError) return null
    throw fault
  }
}

/** Stops after some faults: only the first is said, and each later one costs as much as a hundred sound tokens. */
function* untilHopeless(tokens: Iterable<CST.Token>): Generator<CST.Token> {
  let faults = 0
  for (const token of tokens) {
    yield token
    if (token.type === 'error') faults += 1
    if (faults >= 20) return
  }
}

function isEmpty(contents: YamlNode | null): boolean {
  return (
    contents === null ||
    (textOf(contents) === '' && !('items' in contents) && !('source' in contents && contents.source))
  )
}

/** Checks what must hold before the text is handed to the reader: a pathological text could exhaust it. */
function mayBeRead({ file, text }: Page, report: Report): boolean {
  const control = firstControl(text)
  const deep = control < 0 ? firstTooDeep(text) : -1
  const directive = /^%.*$/m.exec(text.slice(0, 10_000))
  const beforeContent = directive && /^\s*$/.test(text.slice(0, directive.index).replace(/^[ \t]*#.*$/gm, ''))
  const offset = control >= 0 ? control : deep >= 0 ? deep : beforeContent ? directive.index : -1
  if (offset < 0) return true
  const before = text.slice(0, offset).split('\n')
  const place = { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1, length: 1 }
  if (control >= 0) {
    const code = (text.codePointAt(control) ?? 0).toString(16).toUpperCase().padStart(4, '0')
    report(src.controlCharacter, place, { code: `U+${code}` })
  } else if (deep >= 0) report(src.tooDeep, place, { limit: depthLimit })
  else report(src.directive, place, { text: (directive?.[0] ?? '').trim().slice(0, 60) })
  return false
}
