/** Longest text of one cell. Source: Microsoft, "Excel specifications and limits". */
export const longestText = 32_767
/** Most line feeds in one cell. Source: Microsoft, "Excel specifications and limits". */
export const mostLineFeeds = 253

const cutMark = ' [cut: too long for one cell]'

/**
 * Text as a cell may hold it: one kind of line end, no control characters, cut with a visible mark at the
 * format's limits, and with `_x0041_`-like text kept literal.
 * Gives: what a reader of the file sees is the text given, or its beginning and the mark.
 */
export function safeText(text: string): string {
  const plain = withoutControls(text.replace(/\r\n?/g, '\n'))
  return cutToLength(escapeCodes(cutToLines(plain)))
}

/** What may have to go; halves of letters are looked at in the text itself. */
const doubtful = /[^\t\n\u0020-\ud7ff\ue000-\ufffd]/

function withoutControls(text: string): string {
  if (!doubtful.test(text)) return text
  let out = ''
  for (const letter of text) out += isAllowed(letter.codePointAt(0)!) ? letter : replacement(letter)
  return out
}

/** Source: XML 1.0 (fifth edition), production 2 `Char`. */
function isAllowed(code: number): boolean {
  if (code < 0x20) return code === 0x09 || code === 0x0a
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff
}

function replacement(letter: string): string {
  return letter.codePointAt(0)! < 0x20 ? '' : '\ufffd'
}

function cutToLines(text: string): string {
  const lines = text.split('\n')
  if (lines.length - 1 <= mostLineFeeds) return text
  return lines.slice(0, mostLineFeeds).join('\n') + cutMark
}

/** Readers decode `_xHHHH_` into one character; an escaped underscore keeps the text as written. */
function escapeCodes(text: string): string {
  return text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
}

function cutToLength(text: string): string {
  if (text.length <= longestText) return text
  let end = longestText - cutMark.length
  const last = text.charCodeAt(end - 1)
  if (last >= 0xd800 && last <= 0xdbff) end -= 1
  return text.slice(0, end) + cutMark
}

/** Longest address of a link. Source: from memory, the spreadsheet's own limit. */
const longestUrl = 2_079

/** The address if it is one that a person may safely be led to (http, https, mailto), else `null`. */
export function safeUrl(url: string): string | null {
  const text = url.trim()
  if (!/^(https?:\/\/|mailto:)\S+$/i.test(text) || !URL.canParse(text)) return null
  const { href } = new URL(text)
  return href.length <= longestUrl ? href : null
}
