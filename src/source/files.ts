import { createHash } from 'node:crypto'
import { basename, dirname, posix, resolve } from 'node:path'
import { nearNames } from '../base/near-names.ts'
import type { Place, Placed } from '../base/place.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import { decode, topOf } from './decode.ts'
import type { Disk } from './disk.ts'
import type { ProjectSource, ShopSource } from './generated/project-types.ts'
import { parse } from './parse.ts'
import { isAbsolutePath, isInside } from './root.ts'
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

/** What reading a project and all it uses needs to know. */
export interface Reading {
  readonly disk: Disk
  readonly report: Report
  /** The folder that file names on the command line count from. */
  readonly folder: string
  readonly root: string
  /** What is piped in, where the project is `-`. */
  readonly stdin: Uint8Array | null
}

/** A file on the way down: its shown name, where it really is, and the entry that uses it. */
interface Use {
  readonly shown: string
  readonly path: string
  readonly at: Place | null
}

interface State extends Reading {
  readonly texts: Map<string, string>
  /** Texts by their way from the root, for the fingerprint. */
  readonly canonical: Map<string, string>
  readonly done: Set<string>
  readonly shops: Spot<ShopSource>[]
  bytes: number
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
    full: false,
  }
  const top: Use = { shown, path, at: null }
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
    state.report(src.useAbsolute, entry.at, { file: written })
    return null
  }
  const path = realPath(state.disk, resolve(dirname(from.path), written))
  const use: Use = { shown: shownName(from.shown, written), path, at: entry.at }
  const start = way.findIndex((above) => above.path === path)
  if (start < 0) return use
  reportLoop(state, [...way.slice(start), use])
  return null
}

/** The path with links followed, those of its folder where the file itself is not there. */
function realPath(disk: Disk, path: string): string {
  const real = disk.real(path)
  if (real !== null) return real
  const folder = disk.real(dirname(path))
  return folder === null ? path : resolve(folder, basename(path))
}

/** A ring of files, from the one that is met again; each is placed at the entry that uses the next. */
function reportLoop(state: State, ring: readonly Use[]): void {
  const placed: Placed[] = ring
    .slice(0, -1)
    .map(({ shown }, index) => ({ id: shown, at: ring[index + 1]!.at! }))
  state.report(src.useLoop, ring.at(-1)!.at!, { ring: placed })
}

/** The name of a used file as seen from where the person stands. */
function shownName(from: string, written: string): string {
  const folder = from === '<stdin>' ? '.' : dirname(from)
  return posix.normalize(posix.join(folder.replaceAll('\\', '/'), written.replaceAll('\\', '/')))
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

/** The bytes of a file, when it is there, an ordinary one, inside the root and of a sensible size. */
function bytesOf(state: State, use: Use): Uint8Array | null {
  const at = use.at ?? topOf(use.shown)
  const file = use.shown
  if (use.shown === '<stdin>') return state.stdin && fits(state, use, state.stdin.length) ? state.stdin : null
  if (!isInside(use.path, state.root))
    return refuse(() => state.report(src.useOutside, at, { file, root: shownRoot(state) }))
  const standing = state.disk.standing(use.path)
  if (standing.what === 'missing')
    return refuse(() => state.report(src.fileMissing, at, { file, near: nearFiles(state, use) }))
  if (standing.what === 'folder') return refuse(() => state.report(src.fileIsFolder, at, { file }))
  if (standing.what === 'special') return refuse(() => state.report(src.fileSpecial, at, { file }))
  if (standing.what === 'file' && !fits(state, use, standing.size)) return null
  const bytes = standing.what === 'file' ? state.disk.bytes(use.path) : null
  if (!bytes) return refuse(() => state.report(src.fileUnreadable, at, { file }))
  if (!fits(state, use, bytes.length)) return null
  state.bytes += bytes.length
  return bytes
}

function refuse(tell: () => void): null {
  tell()
  return null
}

function fits(state: State, use: Use, size: number): boolean {
  const together = size <= bounds.fileBytes
  if (together && state.bytes + size <= bounds.allBytes) return true
  const shownSize = megabytes(together ? state.bytes + size : size)
  const limit = megabytes(together ? bounds.allBytes : bounds.fileBytes)
  state.report(src.fileTooLarge, use.at ?? topOf(use.shown), {
    file: use.shown,
    size: shownSize,
    limit,
    together,
  })
  return false
}

const megabytes = (bytes: number): string => `${(Math.ceil(bytes / 10_000) / 100).toString()} MB`

/** Files of nearly the same name in the folder where one is missing, as they would be shown. */
function nearFiles({ disk }: State, use: Use): readonly string[] {
  const folder = dirname(use.shown)
  const near = nearNames(basename(use.path), disk.names(dirname(use.path)))
  return near.map((name) => (folder === '.' ? name : posix.join(folder, name)))
}

/** The root as the person would name it. */
function shownRoot({ root, folder }: State): string {
  return posix.relative(folder, root) || '.'
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
