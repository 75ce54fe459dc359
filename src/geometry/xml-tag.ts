/** Namespaces by their prefix; the one without prefix under ''. */
export type Namespaces = ReadonlyMap<string, string>

/** One start tag of an XML text. */
export interface Tag {
  /** Without its prefix. */
  readonly name: string
  /** The namespace; '' where it has none. */
  readonly space: string
  /** By name; one with a prefix by its namespace, a blank and its name. */
  readonly attributes: ReadonlyMap<string, string>
  /** Those in force at it. */
  readonly spaces: Namespaces
  /** Where it begins in the text. */
  readonly at: number
  /** It has no content. */
  readonly closed: boolean
}

/** A start tag as written, and where the text goes on. */
export interface RawTag {
  readonly written: string
  readonly attributes: ReadonlyMap<string, string>
  readonly prefixed: boolean
  readonly closed: boolean
  readonly past: number
}

/** The start tag at a `<`; `null` where it is none: not closed, an attribute without quotes or there twice. */
export function readTag(text: string, at: number): RawTag | null {
  const nameEnd = wordEnd(text, at + 1)
  if (nameEnd === at + 1) return null
  const attributes = new Map<string, string>()
  let here = pastBlanks(text, nameEnd)
  let prefixed = false
  for (let code = text.charCodeAt(here); code !== 62 && code !== 47; code = text.charCodeAt(here)) {
    const keyEnd = wordEnd(text, here)
    const equals = pastBlanks(text, keyEnd)
    const open = pastBlanks(text, equals + 1)
    const quote = text[open]
    if (keyEnd === here || text.charCodeAt(equals) !== 61 || (quote !== '"' && quote !== "'")) return null
    const close = text.indexOf(quote, open + 1)
    const key = text.slice(here, keyEnd)
    if (close < 0 || attributes.has(key)) return null
    attributes.set(key, plain(text.slice(open + 1, close)))
    prefixed ||= key.includes(':') || key === 'xmlns'
    here = pastBlanks(text, close + 1)
  }
  const closed = text.charCodeAt(here) === 47
  const past = here + (closed ? 2 : 1)
  if (text.charCodeAt(past - 1) !== 62) return null
  return { written: text.slice(at + 1, nameEnd), attributes, prefixed, closed, past }
}

/** Those in force before any is named. */
export const namespaces: Namespaces = new Map([
  ['', ''],
  ['xml', 'http://www.w3.org/XML/1998/namespace'],
  ['xmlns', 'http://www.w3.org/2000/xmlns/'],
])

/** A start tag with its namespaces looked up, those around it given; `null` where a prefix has none. */
export function tagOf(raw: RawTag, around: Namespaces, at: number): Tag | null {
  const spaces = raw.prefixed ? spacesOf(raw, around) : around
  const colon = raw.written.indexOf(':')
  const prefix = colon < 0 ? '' : raw.written.slice(0, colon)
  const space = spaces.get(prefix)
  const attributes = raw.prefixed ? expanded(raw.attributes, spaces) : raw.attributes
  if (space === undefined || attributes === null) return null
  return {
    name: colon < 0 ? raw.written : raw.written.slice(colon + 1),
    space,
    attributes,
    spaces,
    at,
    closed: raw.closed,
  }
}

function spacesOf({ attributes }: RawTag, around: Namespaces): Namespaces {
  const declared = [...attributes].flatMap(([key, value]): readonly (readonly [string, string])[] => {
    if (key === 'xmlns') return [['', value.trim()]]
    return key.startsWith('xmlns:') ? [[key.slice(6), value.trim()]] : []
  })
  return declared.length > 0 ? new Map([...around, ...declared]) : around
}

function expanded(
  attributes: ReadonlyMap<string, string>,
  spaces: Namespaces,
): ReadonlyMap<string, string> | null {
  const full = new Map<string, string>()
  for (const [key, value] of attributes) {
    const colon = key.indexOf(':')
    const space = colon < 0 ? '' : spaces.get(key.slice(0, colon))
    if (space === undefined) return null
    full.set(colon < 0 ? key : `${space} ${key.slice(colon + 1)}`, value)
  }
  return full
}

/** Past the letters of a name: at a blank, `/`, `>`, `=` or `<`. */
function wordEnd(text: string, from: number): number {
  let at = from
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (isBlank(code) || code === 47 || (code >= 60 && code <= 62)) break
  }
  return at
}

function pastBlanks(text: string, from: number): number {
  let at = from
  while (isBlank(text.charCodeAt(at))) at++
  return at
}

function isBlank(code: number): boolean {
  return code === 32 || code === 9 || code === 10 || code === 13
}

const named: ReadonlyMap<string, string> = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
])

function plain(text: string): string {
  if (!text.includes('&')) return text
  return text.replace(/&(#x[0-9a-fA-F]{1,6}|#[0-9]{1,7}|[a-z]{2,4});/g, (whole, word: string) => {
    if (!word.startsWith('#')) return named.get(word) ?? whole
    const code = word.startsWith('#x') ? Number.parseInt(word.slice(2), 16) : Number(word.slice(1))
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole
  })
}
