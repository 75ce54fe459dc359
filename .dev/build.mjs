// Bundles the command and the library into dist/, so that whoever installs fettle installs nothing else.

import { spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { exceljsStubs, requireBanner } from './exceljs-stubs.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Bundles into `outdir`; gives what esbuild says of the result. */
export function bundle(outdir = 'dist') {
  return build({
    absWorkingDir: root,
    entryPoints: {
      fettle: 'src/cli/fettle.ts',
      index: 'src/index.ts',
      schedule: 'src/planning/schedule/index.ts',
    },
    outdir,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    splitting: true,
    minify: true,
    keepNames: false,
    legalComments: 'linked',
    chunkNames: 'chunks/[name]-[hash]',
    plugins: [exceljsStubs],
    banner: { js: requireBanner },
    metafile: true,
    logLevel: 'warning',
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  rmSync(new URL('../dist', import.meta.url), { recursive: true, force: true })
  await bundle()
  if (!process.argv.includes('--no-types')) {
    const tsc = spawnSync(
      process.execPath,
      ['node_modules/typescript/bin/tsc', '-p', '.dev/tsconfig.types.json'],
      { cwd: root, stdio: 'inherit' },
    )
    process.exitCode = tsc.status ?? 1
  }
}
