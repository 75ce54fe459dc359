import { createHash } from 'node:crypto'
import { dirname, posix, resolve } from 'node:path'
import type { Placed } from '../base/place.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import { decode } from './decode.ts'
import type { ProjectSource, ShopSource } from './generated/project-types.ts'
import { parse } from './parse.ts'
import { type Budget, bytesOf, type Reading, realPath, shownName, type Use } from './read-bytes.ts'
import { isAbsolutePath } from './root.ts'
import { projectShape, shopShape } from './shape.ts'
import { field, items, type Spot } from './spot.ts'

/** Bounds on what is read. */
export const bounds = { fileBytes: 2_000_000, allBytes: 8_000_000, files: 64, depth: 8 } as const

/** A project and the shop files it uses, those used by others first; all texts by the name shown. */
export interface Files {
  readonly project: Spot<ProjectSource> | null
  /** The project file as read, of whatever shape; `null` where it is no YAML map. */
  readonly root: Spot<unknown> | null
  readonly shops: readonly Spot<ShopSource>[]
  readonly texts: ReadonlyMap<string, string>
  readonly fingerprint: string
}

interface State extends Budget {
  readonly texts: Map<string, string>
  /** Texts by their way from the root, for the fingerprint. */
  readonly canonical: Map<string, string>
  readonly done: Set<string>
  readonly shops: Spot<ShopSource>[]
  full: boolean
}

/**
 * Reads a project file and every file it uses, each once, and checks their shape; whatever is wrong is reported.
 * Gives: shops in an order in which each comes after those it uses.
 */
export function readFiles(shown: string, path: string, reading: Reading): Files {
  const state: State = {
    ...reading,
    texts: new Map(),
    canonical: new Map(),
    done: new Set(),
    shops: [],
    bytes: 0,
    bounds,
    full: false,
  }
  const top: Use = { shown, path, at: null, namedFor: 'plan' }
  const root = readOne(state, top)
  const project = root ? projectShape(root, state.report) : null
  if (root) followUses(state, root as Spot<ShopSource>, [top])
  return { project, root, shops: state.shops, texts: state.texts, fingerprint: fingerprint(state.canonical) }
}

function followUses(state: State, from: Spot<ShopSource>, way: readonly Use[]): void {
  const use = field(from, 'use')
  if (!use || !Array.isArray(use.value)) return
  for (const entry of items(use)) if (typeof entry.value === 'string') followOne(state, entry, way)
}

function followOne(state: State, entry: Spot<string>, way: readonly Use[]): void {
  const use = useOf(state, entry, way)
  if (!use || state.full || state.done.has(use.path)) return
  state.done.add(use.path)
  const tooLong = way.length > bounds.depth
  if (tooLong || state.done.size > bounds.files) {
    state.full = true
    const facts = tooLong
      ? { limit: bounds.depth, what: 'files use one another in a row' }
      : { limit: bounds.files, what: 'files are used' }
    state.report(src.useTooMany, entry.at, facts)
    return
  }
  const root = readOne(state, use)
  if (!root) return
  const shop = shopShape(root, state.report)
  followUses(state, root as Spot<ShopSource>, [...way, use])
  if (shop) state.shops.push(shop)
}

/** The file that an entry names; `null` when it cannot be followed, with the reason reported. */
function useOf(state: State, entry: Spot<string>, way: readonly Use[]): Use | null {
  const from = way.at(-1)!
  const written = entry.value
  if (isAbsolutePath(written)) {
    state.report(src.useAbsolute, entry.at, { file: written, namedFor: 'plan' })
    return null
  }
  const path = realPath(state.disk, resolve(dirname(from.path), written))
  const use: Use = { shown: shownName(from.shown, written), path, at: entry.at, namedFor: 'plan' }
  const start = way.findIndex((above) => above.path === path)
  if (start < 0) return use
  reportLoop(state, [...way.slice(start), use])
  return null
}

/** A ring of files, from the one that is met again; each is placed at the entry that uses the next. */
function reportLoop(state: State, ring: readonly Use[]): void {
  const placed: Placed[] = ring
    .slice(0, -1)
    .map(({ shown }, index) => ({ id: shown, at: ring[index + 1]!.at! }))
  state.report(src.useLoop, ring.at(-1)!.at!, { ring: placed })
}

function readOne(state: State, use: Use): Spot<unknown> | null {
  const bytes = bytesOf(state, use)
  if (!bytes) return null
  const text = decode(use.shown, bytes, state.report)
  if (text === null) return null
  state.texts.set(use.shown, text)
  state.canonical.set(use.shown === '<stdin>' ? '-' : posix.relative(state.root, use.path), text)
  return parse(use.shown, text, state.report).root
}

/**
 * One number for all that was read: SHA-256 over the texts, ordered by their way from the root.
 * Gives: the same for the same texts wherever the tree lies.
 */
function fingerprint(canonical: ReadonlyMap<string, string>): string {
  const hash = createHash('sha256')
  const ordered = [...canonical].sort(([a], [b]) => (a < b ? -1 : 1))
  for (const [name, text] of ordered) hash.update(JSON.stringify([name, text]))
  return hash.digest('hex')
}
