import {
  type Alias,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Scalar,
  type YAMLMap,
  type Node as YamlNode,
} from 'yaml'
import { nearNames } from '../base/near-names.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import { firstControl } from './decode.ts'
import { depthLimit } from './nesting.ts'
import { behind, type Page, placeOf, textOf } from './spot.ts'

/** How many values a file may spell out, repeated ones counted each time. */
export const valueLimit = 200_000

/** How many faults of one file are listed. */
const faultLimit = 100

/** What the walk over one file carries along. */
interface Walk {
  readonly page: Page
  readonly aliases: Map<Alias, YamlNode>
  readonly report: Report
  /** Marked values seen so far; the later of two equal marks counts. */
  readonly anchors: Map<string, YamlNode>
  /** Marked values that are not finished yet. */
  readonly open: Set<YamlNode>
  /** Finished marked values with the count of what they spell out. */
  readonly done: Map<YamlNode, { readonly value: unknown; readonly count: number; readonly depth: number }>
  count: number
  faults: number
  full: boolean
}

/**
 * The plain data of a file's content, faults reported. Maps have no prototype, so that no key means anything by itself;
 * a repeated value is the same data, not a copy. Fills `aliases` with what each repeat stands for.
 * Needs: text without errors of syntax. Cost: linear in the values.
 */
export function plainTree(
  page: Page,
  aliases: Map<Alias, YamlNode>,
  root: YamlNode,
  report: Report,
): unknown {
  const base = { page, aliases, anchors: new Map(), open: new Set<YamlNode>(), done: new Map() }
  const walk: Walk = {
    ...base,
    count: 0,
    faults: 0,
    full: false,
    report: (entry, at, facts) =>
      limited(
        walk,
        () => report(entry, at, facts),
        () => report(src.moreFaults, at, { limit: faultLimit }),
      ),
  }
  if (!isMap(root)) {
    report(src.notAMap, placeOf(page, root), { found: isSeq(root) ? 'a list' : 'a text or number' })
    return null
  }
  return plain(walk, root, 0, false)
}

/** Passes findings on up to a limit, then ends the walk: so many mostly have one cause, and each may cost a search. */
function limited(walk: Walk, tell: () => void, tellLast: () => void): void {
  walk.faults += 1
  if (walk.faults <= faultLimit) tell()
  else if (!walk.full) tellLast()
  walk.full ||= walk.faults > faultLimit
}

function plain(walk: Walk, node: unknown, depth: number, underPrice: boolean): unknown {
  if (walk.full || node === null || node === undefined) return null
  walk.count += 1
  if (walk.count > valueLimit) return tooMany(walk, node)
  if (isAlias(node)) return repeated(walk, node, depth)
  if (depth > depthLimit) {
    walk.full = true
    walk.report(src.tooDeep, placeOf(walk.page, node), { limit: depthLimit })
    return null
  }
  const content = node as YamlNode
  reportTag(walk, content)
  const anchor = 'anchor' in content ? content.anchor : undefined
  if (!anchor) return contentOf(walk, content, depth, underPrice)
  const before = walk.count
  walk.anchors.set(anchor, content)
  walk.open.add(content)
  const value = contentOf(walk, content, depth, underPrice)
  walk.open.delete(content)
  walk.done.set(content, { value, count: walk.count - before + 1, depth: heightOf(value) })
  return value
}

function contentOf(walk: Walk, node: YamlNode, depth: number, underPrice: boolean): unknown {
  if (isMap(node)) return plainMap(walk, node, depth, underPrice)
  if (isSeq(node)) return node.items.map((item) => plain(walk, item, depth + 1, false))
  return isScalar(node) ? plainScalar(walk, node) : null
}

function plainMap(walk: Walk, map: YAMLMap, depth: number, underPrice: boolean): unknown {
  const value = Object.create(null) as Record<string, unknown>
  const firsts = new Map<string, unknown>()
  for (const { key, value: content } of map.items) {
    const name = keyName(walk, map, key, content, underPrice)
    if (name === null) continue
    const first = firsts.get(name)
    if (first !== undefined) {
      const placed = { id: name, at: placeOf(walk.page, first) }
      walk.report(src.doubledKey, placeOf(walk.page, key), { first: placed })
    }
    const prices = underPrice || name === 'price' || name === 'area price'
    const inside = plain(walk, content, depth + 1, prices)
    if (first === undefined) value[name] = inside
    firsts.set(name, first ?? key)
  }
  return value
}

/** `{price: 4,20}` is two entries, a 4 and a key 20 with nothing behind it: the number with a point that was meant, or `null`. */
function commaDecimal(map: YAMLMap, key: unknown, content: unknown, text: string): string | null {
  const before = map.items[map.items.findIndex((pair) => pair.key === key) - 1]
  const empty = content === null || (isScalar(content) && textOf(content) === '')
  const whole = before ? textOf(before.value) : ''
  return map.flow && empty && /^\d+$/.test(text) && /^-?\d+$/.test(whole) ? `${whole}.${text}` : null
}

/** The key as typed; `null` where it is no name and nothing may hang on it. */
function keyName(
  walk: Walk,
  map: YAMLMap,
  key: unknown,
  content: unknown,
  underPrice: boolean,
): string | null {
  const { page, report } = walk
  const at = placeOf(page, isScalar(key) || isMap(key) || isSeq(key) || isAlias(key) ? key : (content ?? map))
  if (!isScalar(key)) {
    const found = isAlias(key) ? 'a repeat' : isMap(key) ? 'a map' : isSeq(key) ? 'a list' : 'missing'
    report(src.keyNotText, at, { text: '', found, decimal: null })
    return null
  }
  reportTag(walk, key)
  if (key.anchor) walk.anchors.set(key.anchor, key)
  const text = textOf(key)
  if (key.type !== 'PLAIN') reportEscaped(walk, key, text, true)
  if (text === '<<' && key.type === 'PLAIN') {
    report(src.mergeKey, at, {})
    return null
  }
  const found = whyNoName(key, text, underPrice)
  if (found) report(src.keyNotText, at, { text, found, decimal: commaDecimal(map, key, content, text) })
  return found && text === '' ? null : text
}

/** What a bare key is instead of a name; breaks of a price are bare counts. */
function whyNoName(key: Scalar, text: string, underPrice: boolean): string | null {
  if (text === '') return key.value === null ? 'missing' : 'empty'
  if (key.value === null) return 'the empty value'
  if (typeof key.value === 'boolean') return 'a truth value'
  if (typeof key.value !== 'number') return null
  return underPrice && /^[1-9]\d{0,8}$/.test(text) ? null : 'a number'
}

/** A control character that came in by an escape such as `"\\u0007"`; a line break is one in a name alone. */
function reportEscaped({ page, report }: Walk, scalar: Scalar, text: string, inName: boolean): void {
  const at = firstControl(inName ? text.replace(/[\n\t]/g, '\u0001') : text)
  if (at < 0) return
  const code = (text.codePointAt(at) ?? 0).toString(16).toUpperCase().padStart(4, '0')
  report(src.controlCharacter, placeOf(page, scalar), { code: `U+${code}` })
}

function plainScalar(walk: Walk, scalar: Scalar): unknown {
  const { page, report } = walk
  const { value } = scalar
  if (typeof value === 'string' && scalar.type !== 'PLAIN') reportEscaped(walk, scalar, value, false)
  if (typeof value !== 'number') return typeof value === 'string' || typeof value === 'boolean' ? value : null
  const text = textOf(scalar)
  if (/nan|inf/i.test(text)) report(src.notANumber, placeOf(page, scalar), { text })
  else if (!Number.isFinite(value) || Math.abs(value) >= 1e15)
    report(src.numberTooLarge, placeOf(page, scalar), { text })
  return Number.isFinite(value) ? value : null
}

function repeated(walk: Walk, alias: Alias, depth: number): unknown {
  const { page, report, anchors, aliases } = walk
  const name = alias.source
  const target = anchors.get(name)
  const at = placeOf(page, alias)
  if (!target) report(src.unknownAlias, at, { name, near: nearNames(name, anchors.keys()) })
  else if (walk.open.has(target)) report(src.aliasInItself, at, { name })
  else {
    const known = walk.done.get(target)
    aliases.set(alias, target)
    walk.count += known?.count ?? 0
    if (walk.count > valueLimit) return tooMany(walk, alias)
    if (depth + (known?.depth ?? 0) <= depthLimit) return known ? known.value : textOf(behind(page, target))
    walk.full = true
    report(src.tooDeep, at, { limit: depthLimit })
  }
  return null
}

function tooMany(walk: Walk, node: unknown): null {
  walk.full = true
  walk.report(src.tooManyValues, placeOf(walk.page, node), { limit: valueLimit })
  return null
}

/** Levels below a value; a list or map of plain values has one. */
function heightOf(value: unknown): number {
  if (value === null || typeof value !== 'object') return 0
  let height = 0
  for (const each of Object.values(value)) height = Math.max(height, heightOf(each))
  return height + 1
}

const plainTags = /^tag:yaml\.org,2002:(str|int|float|bool|null|map|seq)$/

function reportTag({ page, report }: Walk, node: YamlNode): void {
  const tag = isAlias(node) ? undefined : node.tag
  if (!tag || plainTags.test(tag)) return
  const from = node.range?.[0] ?? 0
  const before = page.text.slice(Math.max(0, from - 200), from)
  const written = /(![^\s,[\]{}]*)(?:\s+&\S+)?\s*$/.exec(before)
  const shown = written?.[1] ?? `!${tag.replace(/^!|^tag:yaml\.org,2002:/, '')}`
  const { line, col } = page.lines.linePos(from - before.length + (written?.index ?? before.length))
  report(src.customTag, { file: page.file, line, column: col, length: shown.length }, { tag: shown })
}
