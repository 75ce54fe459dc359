import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Top of the repository. */
export const root = join(import.meta.dirname, '../..')

/** The demonstration project. */
export const chopper = join(root, 'projects/optical-chopper/optical-chopper.yaml')

/** What one run of the program gave. */
export interface Run {
  readonly exit: number | null
  readonly out: string
  readonly err: string
}

/** What a run is given besides its arguments. */
export interface RunSettings {
  readonly folder?: string
  readonly stdin?: string | Buffer
  readonly env?: Readonly<Record<string, string>>
}

/** The built program in a folder of its own, and a scratch folder beside it; both go away with `done`. */
export interface Built {
  readonly scratch: string
  readonly bundle: string
  readonly run: (args: readonly string[], settings?: RunSettings) => Run
  readonly done: () => void
}

/** Bundles the program once, inside the repository's reach so that templates and schemas are found. */
export async function buildFettle(name: string): Promise<Built> {
  const kept = join(root, 'node_modules/.fettle-tests')
  mkdirSync(kept, { recursive: true })
  const bundle = mkdtempSync(join(kept, `${name}-`))
  const scratch = mkdtempSync(join(tmpdir(), `fettle-${name}-`))
  const builder = join(root, '.dev/build.mjs')
  const { bundle: write } = (await import(builder)) as { bundle: (folder: string) => Promise<unknown> }
  await write(bundle)
  const run = (args: readonly string[], { folder, stdin, env }: RunSettings = {}): Run => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(bundle, 'fettle.js'), ...args], {
      cwd: folder ?? scratch,
      encoding: 'utf8',
      input: stdin ?? '',
      timeout: 60_000,
      maxBuffer: 64 * 1024 * 1024,
      env: { PATH: process.env.PATH ?? '', HOME: scratch, ...env },
    })
    return { exit: status, out: stdout, err: stderr }
  }
  const done = () => {
    rmSync(bundle, { recursive: true, force: true })
    rmSync(scratch, { recursive: true, force: true })
  }
  return { scratch, bundle, run, done }
}

/** Signs of a stack trace or of the language the program is written in. */
export const traceSigns =
  /\n\s+at .+:\d+:\d+|node:internal|\bTypeError\b|\bRangeError\b|\bundefined\b|\[object |\bNaN\b/
