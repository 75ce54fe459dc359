/** One start tag of an XML text. */
export interface Tag {
  readonly name: string
  readonly attributes: ReadonlyMap<string, string>
  /** Where it begins in the text. */
  readonly at: number
  /** It has no content. */
  readonly closed: boolean
}

/**
 * Calls `start` for each start tag of an XML text and `end` for each end tag, in order; comments, instructions and
 * text are passed over, entities of the five named kinds and of numbers are read in attributes.
 * No well-formedness is asked for: what is no tag is passed. Cost: O(characters).
 */
export function scanTags(text: string, start: (tag: Tag) => void, end: (name: string) => void): void {
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
    if (text.startsWith('<!--', at)) at = after(text, '-->', at)
    else if (text.startsWith('<![CDATA[', at)) at = after(text, ']]>', at)
    else if (text[at + 1] === '?' || text[at + 1] === '!') at = after(text, '>', at)
    else if (text[at + 1] === '/') {
      const past = after(text, '>', at)
      end(text.slice(at + 2, past - 1).trim())
      at = past
    } else at = startTag(text, at, start)
  }
}

function after(text: string, mark: string, at: number): number {
  const found = text.indexOf(mark, at)
  return found < 0 ? text.length : found + mark.length
}

function startTag(text: string, at: number, start: (tag: Tag) => void): number {
  const nameEnd = wordEnd(text, at + 1)
  const attributes = new Map<string, string>()
  let here = nameEnd
  for (;;) {
    while (isBlank(text.charCodeAt(here))) here++
    const code = text.charCodeAt(here)
    if (Number.isNaN(code)) return text.length
    if (code === 62 || code === 47) break
    const keyEnd = wordEnd(text, here)
    const equals = text.indexOf('=', keyEnd)
    const open = equals < 0 ? -1 : quoteAfter(text, equals + 1)
    const close = open < 0 ? -1 : text.indexOf(text[open]!, open + 1)
    if (close < 0) return text.length
    attributes.set(text.slice(here, keyEnd), plain(text.slice(open + 1, close)))
    here = close + 1
  }
  const closed = text.charCodeAt(here) === 47
  start({ name: text.slice(at + 1, nameEnd), attributes, at, closed })
  return after(text, '>', here)
}

/** Past the letters of a name: at a blank, `/`, `>` or `=`. */
function wordEnd(text: string, from: number): number {
  let at = from
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (isBlank(code) || code === 47 || code === 62 || code === 61) break
  }
  return Math.max(at, from + 1)
}

function quoteAfter(text: string, from: number): number {
  let at = from
  while (isBlank(text.charCodeAt(at))) at++
  return text[at] === '"' || text[at] === "'" ? at : -1
}

function isBlank(code: number): boolean {
  return code === 32 || code === 9 || code === 10 || code === 13
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

function plain(text: string): string {
  if (!text.includes('&')) return text
  return text.replace(/&(#x[0-9a-fA-F]{1,6}|#[0-9]{1,7}|[a-z]{2,4});/g, (whole, word: string) => {
    if (!word.startsWith('#')) return named[word] ?? whole
    const code = Number.parseInt(
      word.startsWith('#x') ? word.slice(2) : word.slice(1),
      word.startsWith('#x') ? 16 : 10,
    )
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole
  })
}
