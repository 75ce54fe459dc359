import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
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
  if (!existsSync(dirname(path)))
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
    const code = (cause as NodeJS.ErrnoException).code
    if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
      throw new UsageError(`${file} cannot be written here (${code})`)
    if (code === 'ENOSPC') throw new UsageError(`there is no room left to write ${file}`)
    throw cause
  }
}
