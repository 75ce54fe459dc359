import { createHash } from 'node:crypto'
import { accessSync, constants, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs'
import { resolve } from 'node:path'
import { collect } from '../diagnostics/collector.ts'
import type { Diagnostic } from '../diagnostics/message.ts'
import { type Attached, readAttachments, textsOf } from './attachments.ts'
import type { Disk, Standing } from './disk.ts'
import { type Files, readFiles } from './files.ts'
import type { DeviceSource, ProjectSource } from './generated/project-types.ts'
import { mergeSections, type Sections } from './merge.ts'
import type { Reading } from './read-bytes.ts'
import { rootOf } from './root.ts'
import { type Aside, soundPart } from './sound-part.ts'
import { field, type Spot } from './spot.ts'

/** A project and all it uses, read and of the right shape; names are not looked up yet. */
export interface Source {
  /** The project file as the person named it. */
  readonly file: string
  readonly project: Spot<ProjectSource>
  readonly sections: Sections
  /** Every text read, by file name as shown. */
  readonly texts: ReadonlyMap<string, string>
  /** Meshes and lists that parts name, by the name as written. */
  readonly attached: ReadonlyMap<string, Attached>
  /** SHA-256 over all texts, in hexadecimal. */
  readonly fingerprint: string
  /** Entries left out because their shape is at fault; their names are known. */
  readonly aside: readonly Aside[]
  /** Whether a whole section was left out, so that unknown names mean nothing. */
  readonly broken: boolean
}

/** How a project is read. */
export interface LoadOptions {
  /** The folder no file may lie outside of; found by itself when not given. */
  readonly root?: string
  /** The folder that names count from; the current one when not given. */
  readonly folder?: string
  /** Where files are read; the computer's own disk when not given. */
  readonly read?: Disk
  /** What is piped in, for the file name `-`. */
  readonly stdin?: Uint8Array | string
}

/** What loading gives: a source when nothing was at fault, and what was said; texts also where there is no source. */
export interface Loaded {
  readonly source: Source | null
  /** What can still be looked at where only the shape of some entries of the project file is at fault. */
  readonly sound: Source | null
  readonly diagnostics: readonly Diagnostic[]
  readonly texts: ReadonlyMap<string, string>
}

/**
 * Reads a project file and every file it uses. Faults are reported, never thrown.
 * Gives: a source only when there was no error.
 */
export function loadSource(file: string, options: LoadOptions = {}): Loaded {
  const { report, diagnostics } = collect()
  const disk = options.read ?? ownDisk
  const folder = resolve(options.folder ?? '.')
  const piped = file === '-'
  const path = resolve(folder, piped ? '<stdin>' : file)
  const real = disk.real(path) ?? path
  const askedRoot = rootOf(piped ? path : real, options.root ?? null, folder, disk)
  const root = disk.real(askedRoot) ?? askedRoot
  const stdin =
    typeof options.stdin === 'string'
      ? new TextEncoder().encode(options.stdin)
      : (options.stdin ?? new Uint8Array())
  const shown = piped ? '<stdin>' : file
  const reading = { disk, report, folder, root, stdin }
  const at = { shown, path: piped ? path : real }
  const files = readFiles(at.shown, at.path, reading)
  const sections = files.project ? mergeSections(files.project, files.shops, report) : null
  const attached = sections
    ? readAttachments(sections.parts, deviceOf(files.project), at, reading)
    : new Map()
  const found = diagnostics()
  const sound = found.every(({ level }) => level !== 'error')
  const { project, texts } = files
  const fingerprint = withAttached(files.fingerprint, attached)
  const source =
    sound && project && sections
      ? { file: shown, project, sections, texts, attached, fingerprint, aside: [], broken: false }
      : null
  const besides = source ? null : soundSource(at, files, found, reading)
  return { source, sound: besides, diagnostics: found, texts: new Map([...textsOf(attached), ...texts]) }
}

function deviceOf(project: Spot<ProjectSource> | null): Spot<DeviceSource> | null {
  return project ? field(project, 'device') : null
}

/** The fingerprint of the texts alone where no file is attached, else of both. */
function withAttached(texts: string, attached: ReadonlyMap<string, Attached>): string {
  if (attached.size === 0) return texts
  const hash = createHash('sha256').update(texts)
  for (const [name, { bytes }] of [...attached].sort(([a], [b]) => (a < b ? -1 : 1)))
    hash.update(JSON.stringify([name, createHash('sha256').update(bytes).digest('hex')]))
  return hash.digest('hex')
}

/** The sound entries of a project whose only faults are of shape, in its own file. */
function soundSource(
  { shown: file, path }: { readonly shown: string; readonly path: string },
  files: Files,
  found: readonly Diagnostic[],
  reading: Reading,
): Source | null {
  const errors = found.filter(({ level }) => level === 'error')
  const own = errors.every(({ code, at }) => code.startsWith('SHP') && at.file === file)
  const part =
    files.root && own
      ? soundPart(
          files.root,
          errors.map(({ at }) => at),
        )
      : null
  if (!part) return null
  const { texts, fingerprint, shops } = files
  const sections = mergeSections(part.project, shops, () => {})
  const quiet = { ...reading, report: () => {} }
  const attached = readAttachments(sections.parts, deviceOf(part.project), { shown: file, path }, quiet)
  return {
    file,
    project: part.project,
    sections,
    texts,
    attached,
    fingerprint,
    aside: part.aside,
    broken: part.broken,
  }
}

/** The computer's own disk; whatever goes wrong is an answer, not an exception. */
const ownDisk: Disk = {
  standing: (path) => attempt(() => standingOf(path), whyNot),
  bytes: (path) =>
    attempt(
      () => readFileSync(path),
      () => null,
    ),
  real: (path) =>
    attempt(
      () => realpathSync(path),
      () => null,
    ),
  names: (folder) =>
    attempt(
      () => readdirSync(folder),
      () => [],
    ),
}

function standingOf(path: string): Standing {
  const found = statSync(path)
  if (found.isDirectory()) return { what: 'folder' }
  if (!found.isFile()) return { what: 'special' }
  accessSync(path, constants.R_OK)
  return { what: 'file', size: found.size }
}

/** Codes of the system for a path at whose end there is nothing, a link to itself among them. */
const nowhere = new Set(['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP'])

function whyNot(fault: unknown): Standing {
  const code = fault instanceof Error && 'code' in fault ? fault.code : ''
  return { what: nowhere.has(String(code)) ? 'missing' : 'denied' }
}

function attempt<T>(action: () => T, otherwise: (fault: unknown) => T): T {
  try {
    return action()
  } catch (fault) {
    return otherwise(fault)
  }
}
