import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { isOurs } from '../emit/workbook/stamp.ts'
import { UsageError } from './terminal.ts'

/** What may be done with a file that is already there. */
export interface SaveOptions {
  readonly folder: string
  /** Write over a file that fettle did not write, or that someone changed since. */
  readonly force: boolean
}

/** Refuses, before any work is done, to write over what is not ours. */
export function refuseToOverwrite(file: string, { folder, force }: SaveOptions): void {
  const path = resolve(folder, file)
  if (!existsSync(dirname(path)) || !statSync(dirname(path)).isDirectory())
    throw new UsageError(`there is no folder ${dirname(file)} to write ${basename(file)} into`)
  if (!existsSync(path)) return
  if (!statSync(path).isFile()) throw new UsageError(`${file} is not a file that could be written`)
  if (force) return
  const state = isOurs(readFileSync(path))
  if (state === 'untouched') return
  const why = state === 'changed' ? 'was changed since fettle wrote it' : 'was not written by fettle'
  throw new UsageError(`${file} ${why}; give another name with --out, or --force to write over it`)
}

/** Writes a file whole or not at all: beside its place first, then moved there. */
export function saveWhole(file: string, bytes: Uint8Array, folder: string): void {
  const path = resolve(folder, file)
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  try {
    const handle = openSync(beside, 'wx')
    try {
      for (let done = 0; done < bytes.length; ) done += writeSync(handle, bytes, done)
      fsyncSync(handle)
    } finally {
      closeSync(handle)
    }
    renameSync(beside, path)
  } catch (cause) {
    rmSync(beside, { force: true })
    throw asUsage(cause, file)
  }
}

/** What a disk refuses is for the person to mend; anything else is a fault of ours. */
export function asUsage(cause: unknown, file: string): unknown {
  const code = (cause as NodeJS.ErrnoException).code
  if (code === 'ENOSPC') return new UsageError(`there is no room left to write ${file}`)
  return typeof code === 'string' && /^E[A-Z]+$/.test(code)
    ? new UsageError(`${file} cannot be written here (${code})`)
    : cause
}

/** Refuses to write over a file that the plan was read from, whatever was said. */
export function refuseToOverwriteSource(file: string, sources: Iterable<string>, folder: string): void {
  const path = realOf(resolve(folder, file))
  for (const source of sources)
    if (realOf(resolve(folder, source)) === path)
      throw new UsageError(`${file} is what the plan is read from; give another name with --out`)
}

function realOf(path: string): string {
  try {
    return realpathSync(path)
  } catch {
    return path
  }
}
