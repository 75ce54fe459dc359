import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build, type Plugin } from 'esbuild'
import { describe, expect, it } from 'vitest'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { sampleBook } from './sample-book.ts'

const root = join(import.meta.dirname, '..', '..')

interface Stubs {
  readonly exceljsStubs: Plugin
  readonly requireBanner: string
}

describe('the writer bundled with stubs for what it never reaches', () => {
  it('gives the same bytes as the writer unbundled', async () => {
    const { exceljsStubs, requireBanner } = (await import(
      pathToFileURL(join(root, '.dev', 'exceljs-stubs.mjs')).href
    )) as Stubs
    const outdir = mkdtempSync(join(tmpdir(), 'bundle-'))
    try {
      await build({
        stdin: { contents: entry(join(outdir, 'out.xlsx')), resolveDir: import.meta.dirname, loader: 'ts' },
        bundle: true,
        platform: 'node',
        format: 'esm',
        splitting: true,
        minify: true,
        outdir,
        outExtension: { '.js': '.mjs' },
        banner: { js: requireBanner },
        plugins: [exceljsStubs],
        logLevel: 'error',
      })
      const run = spawnSync(process.execPath, [join(outdir, 'stdin.mjs')], { encoding: 'utf8' })
      expect(run.stderr.slice(-400)).toBe('')
      expect(Buffer.compare(readFileSync(join(outdir, 'out.xlsx')), await writeWorkbook(sampleBook))).toBe(0)
    } finally {
      rmSync(outdir, { recursive: true, force: true })
    }
  })
})

function entry(file: string): string {
  return `import { writeFileSync } from 'node:fs'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { sampleBook } from './sample-book.ts'
writeFileSync(${JSON.stringify(file)}, await writeWorkbook(sampleBook))`
}
