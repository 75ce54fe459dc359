// Bundles the command and the library into dist/, so that whoever installs fettle installs nothing else.
import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, copyFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { exceljsStubs, requireBanner } from './exceljs-stubs.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))

const shared = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  minify: true,
  legalComments: 'linked',
  plugins: [exceljsStubs],
  logLevel: 'warning',
}

/** The library: ES modules that share chunks, the workbook writer loaded when it is first used. */
function library(outdir) {
  return build({
    ...shared,
    entryPoints: { index: 'src/index.ts', schedule: 'src/planning/schedule/index.ts' },
    outdir,
    format: 'esm',
    splitting: true,
    chunkNames: 'chunks/[name]-[hash]',
    banner: { js: requireBanner },
  })
}

/** The command: one script, so that its compiled form can be kept beside it (see .dev/launcher.mjs). */
function command(outdir) {
  return build({
    ...shared,
    entryPoints: { program: 'src/cli/fettle.ts' },
    outdir,
    format: 'cjs',
    outExtension: { '.js': '.cjs' },
    define: { 'import.meta.url': '__here' },
    banner: { js: "const __here = require('node:url').pathToFileURL(__filename).href;" },
  })
}

/** Bundles everything into `outdir`. */
export async function bundle(outdir = join(root, 'dist')) {
  await Promise.all([library(outdir), command(outdir)])
  const launcher = join(outdir, 'fettle.js')
  copyFileSync(join(root, '.dev/launcher.mjs'), launcher)
  chmodSync(launcher, 0o755)
  // Run once through the whole job, so that what is kept is what a plan needs.
  const demo = join(root, 'projects/optical-chopper/optical-chopper.yaml')
  execFileSync(process.execPath, [launcher, 'plan', demo, '--out', '-', '--effort', '2'], {
    env: { ...process.env, FETTLE_KEEP_COMPILED: '1' },
    stdio: ['ignore', 'ignore', 'inherit'],
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  rmSync(new URL('../dist', import.meta.url), { recursive: true, force: true })
  await bundle()
  if (!process.argv.includes('--no-types')) {
    const arguments_ = ['node_modules/typescript/bin/tsc', '-p', '.dev/tsconfig.types.json']
    const tsc = spawnSync(process.execPath, arguments_, { cwd: root, stdio: 'inherit' })
    process.exitCode = tsc.status ?? 1
  }
}
