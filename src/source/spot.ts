import {
  type Alias,
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type LineCounter,
  type Node as YamlNode,
} from 'yaml'
import type { Place } from '../base/place.ts'

/** One file that was read: its text, and what finds places in it. */
export interface Page {
  readonly file: string
  readonly text: string
  readonly lines: LineCounter
  /** What each `*name` stands for. */
  readonly aliases: ReadonlyMap<Alias, YamlNode>
}

/**
 * A value of the source together with where it stands. `value` is plain data typed by the schema; `text` is a scalar
 * exactly as typed (so that `1.10` and `0.0043` are read without floating point), empty for maps and lists.
 */
export interface Spot<T> {
  readonly value: T
  readonly at: Place
  /** The key that introduces it; the value itself for list entries and the document. */
  readonly keyAt: Place
  readonly text: string
  readonly node: YamlNode | null
  readonly file: string
  /** The file it stands in; absent for a value made without a file, which has no places of its own. */
  readonly page?: Page
}

/** Keys of a map, of any of the maps where there are several kinds. */
export type KeyOf<T> = T extends unknown ? keyof T & string : never
/** What stands behind a key, in whichever of the maps have it. */
export type ValueAt<T, K extends string> = T extends unknown
  ? K extends keyof T
    ? NonNullable<T[K]>
    : never
  : never
/** An entry of a list; the value itself where one entry may stand without a list. */
export type ItemOf<V> = V extends readonly (infer Item)[] ? Item : V

/** Where a node stands, from 1; the top of the file for what has no place. */
export function placeOf(page: Page, node: unknown): Place {
  const range = isNode(node) ? node.range : null
  if (!range) return { file: page.file, line: 1, column: 1, length: 0 }
  const { line, col } = page.lines.linePos(range[0])
  const text = page.text.slice(range[0], range[1])
  const firstLine = /^[^\r\n]*/.exec(text)?.[0] ?? ''
  return {
    file: page.file,
    line: Math.max(1, line),
    column: Math.max(1, col),
    length: firstLine.trimEnd().length,
  }
}

/**
 * A scalar exactly as typed: the source text of plain scalars, the words of quoted ones; empty for maps and lists.
 */
export function textOf(node: unknown): string {
  if (!isScalar(node)) return ''
  return typeof node.value === 'string' ? node.value : (node.source ?? String(node.value ?? ''))
}

/**
 * What is behind `key` in a map, with its place; `null` when the key is absent or has nothing behind it.
 * Gives: only what the file itself says: a key such as `__proto__` is a key like any other.
 */
export function field<T extends object, K extends KeyOf<T>>(
  spot: Spot<T>,
  key: K,
): Spot<ValueAt<T, K>> | null {
  const found = own(spot.value, key)
  if (found === undefined || found === null) return null
  const pair = pairOf(spot, key)
  return child(spot, found as ValueAt<T, K>, pair?.value, pair?.key)
}

/** The entries of a list in order; a value that may stand without a list is its own one entry. */
export function items<V>(spot: Spot<V>): readonly Spot<ItemOf<V>>[] {
  if (!Array.isArray(spot.value)) return [spot as Spot<unknown> as Spot<ItemOf<V>>]
  const node = behind(spot.page, spot.node)
  const nodes = isSeq(node) ? node.items : []
  return spot.value.map((value: ItemOf<V>, at) => child(spot, value, nodes[at], null))
}

/**
 * Names and values of a map in the order written, names as typed; a name with nothing behind it is left out.
 */
export function entries<T extends object>(
  spot: Spot<T>,
): readonly (readonly [string, Spot<ValueAt<T, KeyOf<T>>>])[] {
  const node = behind(spot.page, spot.node)
  const pairs = isMap(node) ? node.items : Object.keys(spot.value).map((key) => ({ key, value: null }))
  const found = new Map<string, Spot<ValueAt<T, KeyOf<T>>>>()
  for (const pair of pairs) {
    const name = typeof pair.key === 'string' ? pair.key : textOf(pair.key)
    const value = own(spot.value, name)
    if (value === undefined || value === null || found.has(name)) continue
    found.set(name, child(spot, value as ValueAt<T, KeyOf<T>>, pair.value, pair.key))
  }
  return [...found]
}

/** Whether a value is a map (and so can be asked for its fields). */
export function isMapSpot<V>(
  spot: Spot<V>,
): spot is Spot<V> & Spot<Exclude<Extract<V, object>, readonly unknown[]>> {
  return typeof spot.value === 'object' && spot.value !== null && !Array.isArray(spot.value)
}

/** The same place with another value: for what is read from a part of a text, or defaults that need a place. */
export function withValue<T>(spot: Spot<unknown>, value: T): Spot<T> {
  return { ...spot, value }
}

/** The place of one key of a map: the key itself, or the map where the key is absent. */
export function keyPlace(spot: Spot<object>, key: string): Place {
  const pair = pairOf(spot, key)
  return pair && spot.page ? placeOf(spot.page, pair.key) : spot.at
}

function own(value: object, key: string): unknown {
  return Object.hasOwn(value, key) ? (value as Record<string, unknown>)[key] : undefined
}

function pairOf(spot: Spot<object>, key: string) {
  const node = behind(spot.page, spot.node)
  return isMap(node) ? node.items.find((pair) => textOf(pair.key) === key) : undefined
}

/** The node itself, or what a `*name` stands for. */
export function behind(page: Page | undefined, node: unknown): unknown {
  return isAlias(node) ? page?.aliases.get(node) : node
}

function child<T>(parent: Spot<unknown>, value: T, valueNode: unknown, keyNode: unknown): Spot<T> {
  const { page, file } = parent
  if (!page || !isNode(valueNode)) {
    return { value, at: parent.at, keyAt: parent.keyAt, text: plainText(value), node: null, file }
  }
  const at = placeOf(page, valueNode)
  const keyAt = isNode(keyNode) ? placeOf(page, keyNode) : at
  return { value, at, keyAt, text: textOf(behind(page, valueNode)), node: valueNode, file, page }
}

const plainText = (value: unknown): string =>
  value === null || value === undefined || typeof value === 'object' ? '' : String(value)
