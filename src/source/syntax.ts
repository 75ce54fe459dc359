import { type Document, isCollection, isScalar, visit, type YAMLError, type Node as YamlNode } from 'yaml'
import type { Place } from '../base/place.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import { depthLimit } from './nesting.ts'
import { type Page, placeOf } from './spot.ts'

/** The shape of one fault of syntax: the reader's own error with the text around it. */
interface Fault {
  readonly page: Page
  readonly document: Document
  readonly offset: number
  readonly message: string
  readonly report: Report
}

/**
 * Reports the first fault of syntax of a file in our own words. The later ones mostly follow from it: after a bracket
 * that is never closed nothing is where it seems to be.
 * Needs: a document with errors.
 */
export function reportSyntax(document: Document, page: Page, report: Report): void {
  const errors = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0])
  const deep = errors.find((error) => error.code === 'RESOURCE_EXHAUSTION')
  const error = deep ?? errors[0]
  if (!error) return
  const { code, message } = error as YAMLError
  const fault = { page, document, offset: Math.min(error.pos[0], page.text.length), message, report }
  const tell = tellers[code] ?? unreadable
  tell(fault)
}

const tellers: Readonly<Record<string, (fault: Fault) => void>> = {
  TAB_AS_INDENT: (fault) => fault.report(src.tabIndent, placeAt(fault, 1), {}),
  MULTIPLE_DOCS: (fault) => fault.report(src.severalDocuments, placeAt(fault, 3), {}),
  RESOURCE_EXHAUSTION: (fault) => fault.report(src.tooDeep, placeAt(fault, 1), { limit: depthLimit }),
  BAD_SCALAR_START: (fault) => fault.report(src.reservedStart, placeAt(fault), { text: restOfLine(fault) }),
  BAD_DIRECTIVE: (fault) => fault.report(src.directive, placeAt(fault), { text: restOfLine(fault) }),
  BLOCK_AS_IMPLICIT_KEY: colonOrIndent,
  MULTILINE_IMPLICIT_KEY: notAPair,
  MISSING_CHAR: missingSign,
  BAD_INDENT: indentOrBracket,
  BAD_DQ_ESCAPE: badEscape,
}

function colonOrIndent(fault: Fault): void {
  const text = restOfLine(fault)
  const line = /^[^\r\n]*/.exec(fault.page.text.slice(fault.offset))?.[0] ?? ''
  if (/:(\s|$)/.test(line)) fault.report(src.colonInText, placeAt(fault), { text })
  else fault.report(src.badIndent, nextLine(fault), {})
}

function notAPair(fault: Fault): void {
  fault.report(src.notAPair, placeAt(fault), { text: restOfLine(fault) })
}

function missingSign(fault: Fault): void {
  if (/closing/.test(fault.message) && reportOpenQuote(fault)) return
  if (/to end with|must end|flow/i.test(fault.message) && reportOpenBracket(fault)) return
  if (/followed by map values/.test(fault.message)) notAPair(fault)
  else unreadable(fault)
}

function indentOrBracket(fault: Fault): void {
  if (/flow/i.test(fault.message) && reportOpenBracket(fault)) return
  fault.report(src.badIndent, placeAt(fault), {})
}

function reportOpenQuote(fault: Fault): boolean {
  const { page, offset } = fault
  const open = lastNode(fault, (node) => {
    const [from, to] = node.range ?? [0, 0]
    const sign = page.text[from]
    return isScalar(node) && (sign === '"' || sign === "'") && from <= offset && to >= offset - 1
  })
  if (!open) return false
  const sign = page.text[open.range?.[0] ?? 0] ?? '"'
  fault.report(src.notClosed, { ...placeOf(page, open), length: 1 }, { sign, close: sign })
  return true
}

function reportOpenBracket(fault: Fault): boolean {
  const { page, offset } = fault
  const open = lastNode(fault, (node) => {
    const [from, to] = node.range ?? [0, 0]
    const closed = /[\]}]/.test(page.text[to - 1] ?? '')
    return isCollection(node) && node.flow === true && from < offset && to <= offset + 1 && !closed
  })
  const sign = page.text[open?.range?.[0] ?? -1]
  if (!open || (sign !== '[' && sign !== '{')) return false
  fault.report(
    src.notClosed,
    { ...placeOf(page, open), length: 1 },
    { sign, close: sign === '[' ? ']' : '}' },
  )
  return true
}

/** The last node, in the order written, of which a claim holds. */
function lastNode({ document }: Fault, holds: (node: YamlNode) => boolean): YamlNode | null {
  let found: YamlNode | null = null
  visit(document, {
    Node: (_key, node) => {
      if (holds(node as YamlNode)) found = node as YamlNode
    },
  })
  return found
}

function badEscape(fault: Fault): void {
  const text = /\\[^\s"]?/.exec(fault.page.text.slice(fault.offset))?.[0] ?? '\\'
  fault.report(src.badEscape, placeAt(fault, text.length), { text })
}

function unreadable(fault: Fault): void {
  const text = /^[^\s,]+/.exec(restOfLine(fault))?.[0] ?? ''
  fault.report(src.unreadable, placeAt(fault, Math.max(1, text.length)), { text })
}

/** What stands from the fault to the end of its line, a comment left off and long text cut. */
function restOfLine({ page, offset }: Fault): string {
  const line = /^[^\r\n]*/.exec(page.text.slice(offset, offset + 500))?.[0] ?? ''
  return line
    .replace(/\s#.*$/, '')
    .trim()
    .slice(0, 80)
}

function placeAt(fault: Fault, length?: number): Place {
  const { page, offset } = fault
  const { line, col } = page.lines.linePos(offset)
  const meant = length ?? restOfLine(fault).length
  return { file: page.file, line: Math.max(1, line), column: Math.max(1, col), length: meant }
}

/** The first sign of the next line that says something. */
function nextLine(fault: Fault): Place {
  const rest = fault.page.text.slice(fault.offset)
  const gap = /^[^\r\n]*(?:\r\n|\n|\r)(?:[ \t]*(?:#[^\r\n]*)?(?:\r\n|\n|\r))*[ \t]*/.exec(rest)
  return placeAt({ ...fault, offset: fault.offset + (gap?.[0].length ?? 0) })
}
