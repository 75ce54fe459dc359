import { type Namespaces, namespaces, readTag, type Tag, tagOf } from './xml-tag.ts'

/** Why a text is no XML that is read, and where. */
export interface XmlFault {
  readonly what: string
  readonly at: number
  /** It has a document type, which is not read at all. */
  readonly documentType: boolean
}

/** Bounds that no sensible file meets. Common practice, no source. */
const [deepest, mostNamespaces] = [200, 200]

interface Open {
  readonly written: string
  readonly spaces: Namespaces
}

interface State {
  readonly open: Open[]
  rooted: boolean
}

/** Is told of each start tag; gives `false` to read no further. */
export type TagReader = (tag: Tag) => boolean

/**
 * Reads the start tags of an XML text in order; comments, instructions and text are passed over, entities of the five
 * named kinds and of numbers are read in attributes.
 * Gives: a fault where a tag is broken, a prefix has no namespace, ends do not fit starts, or the text stops before its
 * outermost element ends.
 * Cost: O(characters).
 */
export function scanTags(text: string, reader: TagReader): XmlFault | null {
  const state: State = { open: [], rooted: false }
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
    const past = passOne(text, at, state, reader)
    if (past === null) return null
    if (typeof past !== 'number') return past
    at = past
  }
  const inside = state.open.at(-1)
  if (inside) return fault(`it stops within \`${inside.written.slice(0, 40)}\``, text.length)
  return state.rooted ? null : fault('it holds no element', text.length)
}

/** Where the text goes on after the mark at `at`; `null` where the reader wants no more. */
function passOne(text: string, at: number, state: State, reader: TagReader): number | XmlFault | null {
  switch (text[at + 1]) {
    case '?':
      return passed(text, '?>', at)
    case '/':
      return endTag(text, at, state)
    case '!':
      if (text.startsWith('<!--', at)) return passed(text, '-->', at)
      if (text.startsWith('<![CDATA[', at)) return passed(text, ']]>', at)
      return { what: 'it has a document type', at, documentType: text.startsWith('<!DOCTYPE', at) }
    default:
      return startTag(text, at, state, reader)
  }
}

function startTag(text: string, at: number, state: State, reader: TagReader): number | XmlFault | null {
  const around = state.open.at(-1)
  if (!around && state.rooted) return fault('more follows after its outermost element', at)
  const raw = readTag(text, at)
  if (!raw) return fault('a tag is broken', at)
  state.rooted = true
  const tag = tagOf(raw, around?.spaces ?? namespaces, at)
  if (!tag) return fault('a prefix has no namespace', at)
  if (state.open.length >= deepest || tag.spaces.size > mostNamespaces)
    return fault('it is nested too deep or has too many namespaces', at)
  if (!raw.closed) state.open.push({ written: raw.written, spaces: tag.spaces })
  return reader(tag) ? raw.past : null
}

function endTag(text: string, at: number, { open }: State): number | XmlFault {
  const close = text.indexOf('>', at)
  const written = text.slice(at + 2, Math.max(close, at + 2)).trimEnd()
  const last = open.pop()
  if (close < 0 || last?.written !== written)
    return fault(`\`</${written.slice(0, 40)}>\` ends what does not stand open`, at)
  return close + 1
}

function passed(text: string, mark: string, at: number): number | XmlFault {
  const found = text.indexOf(mark, at + 2)
  return found < 0 ? fault(`\`${text.slice(at, at + 4)}\` is not closed`, at) : found + mark.length
}

function fault(what: string, at: number): XmlFault {
  return { what, at, documentType: false }
}
