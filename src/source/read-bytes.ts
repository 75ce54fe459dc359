import { basename, dirname, posix, resolve } from 'node:path'
import { nearNames } from '../base/near-names.ts'
import type { Place } from '../base/place.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'
import { topOf } from './decode.ts'
import type { Disk } from './disk.ts'
import { isInside } from './root.ts'

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
export interface Use {
  readonly shown: string
  readonly path: string
  readonly at: Place | null
  readonly namedFor: NamedFor
}

/** What a file is named for: a plan that is used, the mesh of a part, the assembled device, or a table. */
export type NamedFor = 'plan' | 'mesh' | 'device' | 'table'

/** How much may be read, and how much was. */
export interface Budget extends Reading {
  readonly bounds: { readonly fileBytes: number; readonly allBytes: number }
  bytes: number
}

/** The path with links followed, those of its folder where the file itself is not there. */
export function realPath(disk: Disk, path: string): string {
  const real = disk.real(path)
  if (real !== null) return real
  const folder = disk.real(dirname(path))
  return folder === null ? path : resolve(folder, basename(path))
}

/** The name of a used file as seen from where the person stands. */
export function shownName(from: string, written: string): string {
  const folder = from === '<stdin>' ? '.' : dirname(from)
  return posix.normalize(posix.join(folder.replaceAll('\\', '/'), written.replaceAll('\\', '/')))
}

/** The bytes of a file, when it is there, an ordinary one, inside the root and of a sensible size. */
export function bytesOf(state: Budget, use: Use): Uint8Array | null {
  const at = use.at ?? topOf(use.shown)
  const { shown: file, namedFor } = use
  if (use.shown === '<stdin>') return state.stdin && fits(state, use, state.stdin.length) ? state.stdin : null
  if (!isInside(use.path, state.root))
    return refuse(() => state.report(src.useOutside, at, { file, root: shownRoot(state) }))
  const standing = state.disk.standing(use.path)
  if (standing.what === 'missing')
    return refuse(() => state.report(src.fileMissing, at, { file, near: nearFiles(state, use) }))
  if (standing.what === 'folder') return refuse(() => state.report(src.fileIsFolder, at, { file, namedFor }))
  if (standing.what === 'special') return refuse(() => state.report(src.fileSpecial, at, { file, namedFor }))
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

function fits(state: Budget, use: Use, size: number): boolean {
  const together = size <= state.bounds.fileBytes
  if (together && state.bytes + size <= state.bounds.allBytes) return true
  const shownSize = megabytes(together ? state.bytes + size : size)
  const limit = megabytes(together ? state.bounds.allBytes : state.bounds.fileBytes)
  state.report(src.fileTooLarge, use.at ?? topOf(use.shown), {
    file: use.shown,
    size: shownSize,
    limit,
    together,
    namedFor: use.namedFor,
  })
  return false
}

const megabytes = (bytes: number): string => `${(Math.ceil(bytes / 10_000) / 100).toString()} MB`

/** Files of nearly the same name in the folder where one is missing, as they would be shown. */
function nearFiles({ disk }: Budget, use: Use): readonly string[] {
  const [folder, own] = [dirname(use.shown), dirname(use.path)]
  const near = nearNames(basename(use.path), disk.names(own)).filter(
    (name) => disk.standing(resolve(own, name)).what !== 'missing',
  )
  return near.map((name) => (folder === '.' ? name : posix.join(folder, name)))
}

/** The root as the person would name it. */
function shownRoot({ root, folder }: Budget): string {
  return posix.relative(folder, root) || '.'
}
