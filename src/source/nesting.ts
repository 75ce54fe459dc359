import { Lexer } from 'yaml'

/** How deep entries may be nested. */
export const depthLimit = 64

/**
 * Where a text first nests deeper than the reader could follow, or -1.
 * Why: the reader calls itself once per level, and how deep it gets depends on the computer. Columns bound the levels
 * of indentation (at most two each), brackets are counted.
 * Cost: linear in the text.
 */
export function firstTooDeep(text: string): number {
  const column = /^(?=[ ?:-]{160}) *[^ #\r\n]/m.exec(text)
  const bracket = mayHaveDeepBrackets(text) ? firstDeepBracket(text) : -1
  const places = [column?.index ?? -1, bracket].filter((at) => at >= 0)
  return places.length > 0 ? Math.min(...places) : -1
}

function mayHaveDeepBrackets(text: string): boolean {
  let depth = 0
  for (const character of text) {
    if (character === '[' || character === '{') depth += 1
    else if ((character === ']' || character === '}') && depth > 0) depth -= 1
    if (depth > depthLimit) return true
  }
  return false
}

/** Pieces that stand for no text: begin of a document, end of a bracket, begin of a scalar. */
const marks = new Set(['\u0002', '\u0018', '\u001f'])

/** Counts with the reader's own eye for quotes and comments; slower, so only where it may matter. */
function firstDeepBracket(text: string): number {
  let depth = 0
  let offset = 0
  for (const piece of new Lexer().lex(text)) {
    if (piece === '[' || piece === '{') depth += 1
    else if (piece === ']' || piece === '}') depth = Math.max(0, depth - 1)
    if (depth > depthLimit) return offset
    if (!marks.has(piece)) offset += piece.length
  }
  return -1
}
