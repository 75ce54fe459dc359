import { isMap, isSeq } from 'yaml'
import type { Place } from '../base/place.ts'
import { type ShapeFact, shapeFacts } from './generated/shape-facts.ts'
import { behind, type Page, placeOf, type Spot, textOf } from './spot.ts'

/** What stands at one path of a file: its place and key, the value, and what the schema knows about it. */
export interface ShapePlace {
  /** The nearest key on the way there; empty at the top. */
  readonly key: string
  readonly inList: boolean
  readonly value: unknown
  readonly text: string
  readonly at: Place
  readonly keyAt: Place
  readonly fact: ShapeFact
  readonly def: string
  /** What stands one key or position further down; the key need not be there. */
  readonly into: (step: string) => ShapePlace
}

/** What the schemas say about one place in them. */
export const factOf = (def: string): ShapeFact => shapeFacts[def] ?? {}

/** The steps of a JSON pointer. */
export function pathOf(pointer: string): readonly string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((step) => step.replace(/~1/g, '/').replace(/~0/g, '~'))
}

/**
 * Follows a path through data, source and schema at once, from the top of a file.
 * Needs: a path that exists in the data.
 */
export function walkTo(root: Spot<unknown>, def: string, path: readonly string[]): ShapePlace {
  const behindTop = factBehind(def, root.value)
  const top = {
    key: '',
    inList: false,
    value: root.value,
    text: '',
    at: root.at,
    keyAt: root.at,
    ...behindTop,
  }
  const start: ShapePlace = { ...top, into: (step) => stepInto(root.page, start, root.node, step) }
  return path.reduce((here, step) => here.into(step), start)
}

function stepInto(page: Page | undefined, from: ShapePlace, fromNode: unknown, step: string): ShapePlace {
  const inside = from.value as Record<string, unknown>
  const value =
    inside !== null && typeof inside === 'object' && Object.hasOwn(inside, step) ? inside[step] : undefined
  const content = behind(page, fromNode)
  const inList = isSeq(content)
  const pair = isMap(content) ? content.items.find((each) => textOf(each.key) === step) : undefined
  const node = inList ? content.items[Number(step)] : pair?.value
  const keyAt = page && pair ? placeOf(page, pair.key) : from.keyAt
  const at = page && hasPlace(node) ? placeOf(page, node) : keyAt
  const words = { key: inList ? from.key : step, inList, value, text: textOf(behind(page, node)) }
  const places = { at, keyAt: inList ? at : keyAt }
  const { fact, def } = factBehind(factPath(from.def, step, inList), value)
  const example = fact.example ?? (inList ? from.fact.example : undefined)
  const here: ShapePlace = {
    ...words,
    ...places,
    fact: example === undefined ? fact : { ...fact, example },
    def,
    into: (next) => stepInto(page, here, node, next),
  }
  return here
}

const hasPlace = (node: unknown): boolean =>
  node !== null && typeof node === 'object' && 'range' in node && Array.isArray(node.range)

/** The place in the schemas of what stands at a key or position below one place. */
function factPath(def: string, step: string, inList: boolean): string {
  const key = step.replace(/~/g, '~0').replace(/\//g, '~1')
  if (inList) return `${def}/items`
  const known = `${def}/properties/${key}`
  return shapeFacts[known] ? known : `${def}/additionalProperties`
}

/** Follows references and picks the alternative that the data shows. */
function factBehind(start: string, value: unknown): { fact: ShapeFact; def: string } {
  let def = start
  for (let hops = 0; hops < 8; hops += 1) {
    const next = nextDef(def, value)
    if (next === null) break
    def = next
  }
  return { fact: shapeFacts[def] ?? {}, def }
}

function nextDef(def: string, value: unknown): string | null {
  const fact = shapeFacts[def]
  if (fact?.ref) return fact.ref
  const map = value !== null && typeof value === 'object' && !Array.isArray(value)
  if (!map) return null
  if (fact?.withChoices && Object.hasOwn(value, 'choices')) return fact.withChoices
  if (fact?.kinds) {
    const kind = (value as Record<string, unknown>).kind
    return typeof kind === 'string' && Object.hasOwn(fact.kinds, kind) ? (fact.kinds[kind] ?? null) : null
  }
  return [0, 1].map((at) => `${def}/anyOf/${at}`).find((path) => shapeFacts[path]?.ref) ?? null
}
