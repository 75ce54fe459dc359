import { describe, expect, it } from 'vitest'
import { findRings } from '../../src/graph/find-rings.ts'
import { onlyCode, placesOf, sourceFiles } from './source-files.ts'

/** Who may import whom, besides itself: the table of DEVELOPERS.md. A folder points only at folders above it. */
export const mayImport: Readonly<Record<string, readonly string[]>> = {
  base: [],
  graph: ['base'],
  geometry: ['base'],
  trade: ['base'],
  diagnostics: ['base'],
  source: ['base', 'diagnostics'],
  model: ['base'],
  processes: ['base', 'trade', 'diagnostics', 'model'],
  resolve: ['base', 'geometry', 'trade', 'diagnostics', 'source', 'model', 'processes'],
  checks: ['base', 'graph', 'trade', 'diagnostics', 'model', 'processes'],
  planning: ['base', 'graph', 'trade', 'model', 'processes'],
  verify: ['base', 'model'],
  report: ['base', 'diagnostics', 'model'],
  emit: ['base', 'report'],
  'version.ts': [],
  'compile.ts': [
    'base',
    'graph',
    'geometry',
    'trade',
    'diagnostics',
    'source',
    'model',
    'processes',
    'resolve',
    'checks',
    'planning',
    'verify',
    'report',
    'version.ts',
  ],
  // The library's front door only hands on what others export.
  'index.ts': ['compile.ts', 'diagnostics', 'model', 'report', 'emit', 'version.ts'],
  cli: ['base', 'diagnostics', 'compile.ts', 'emit', 'version.ts'],
}

const files = sourceFiles()
const own = files.flatMap((file) =>
  file.imports.flatMap(({ from, to }) =>
    to === null ? [] : [{ from: file.path, folder: file.folder, to, text: from }],
  ),
)
const folderOf = (path: string): string => path.split('/')[0] ?? path

describe('imports inside src', () => {
  it('are found at all, so that these tests look at something', () => {
    expect(files.length).toBeGreaterThan(100)
    expect(own.length).toBeGreaterThan(300)
  })

  it('stand in a folder that the table knows', () => {
    expect([...new Set(files.map(({ folder }) => folder))].filter((folder) => !mayImport[folder])).toEqual([])
  })

  it('go only where the table lets them', () => {
    const wrong = own.filter(({ folder, to }) => {
      const target = folderOf(to)
      return target !== folder && !mayImport[folder]?.includes(target)
    })
    expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([])
  })

  it('are allowed by a table in which no two folders import each other, by any way round', () => {
    const rings = findRings(new Map(Object.entries(mayImport)))
    expect(rings).toEqual([])
  })

  it('make no ring between files', () => {
    const known = new Set(files.map(({ path }) => path))
    const arcs = new Map(
      files.map(({ path, imports }) => [
        path,
        [...new Set(imports.flatMap(({ to }) => (to !== null && known.has(to) ? [to] : [])))].sort(),
      ]),
    )
    expect(findRings(arcs)).toEqual([])
  })

  it('end in .ts, so that every tool reads them alike', () => {
    expect(own.filter(({ to }) => !/\.(?:ts|js)$/.test(to)).map(({ from, to }) => `${from} -> ${to}`)).toEqual([])
  })

  it('lead to files that are there', () => {
    const known = new Set(files.map(({ path }) => path))
    const lost = own.filter(({ to }) => !known.has(to) && !to.includes('/generated/'))
    expect(lost.map(({ from, to }) => `${from} -> ${to}`)).toEqual([])
  })
})

describe('what touches the outside', () => {
  const disk = /^(?:node:)?(?:fs|fs\/promises)$/
  // disk.ts is the one file of source/ that names the disk; load.ts hands it on.
  const mayTouchDisk = (path: string): boolean =>
    path === 'source/load.ts' || path === 'source/disk.ts' || path.startsWith('cli/')

  it('reads and writes files only in source/load.ts, source/disk.ts and cli/', () => {
    const wrong = files.filter(({ path, imports }) => !mayTouchDisk(path) && imports.some(({ from }) => disk.test(from)))
    expect(wrong.map(({ path }) => path)).toEqual([])
  })

  it.each([
    ['the process', /\bprocess\.(?:\w+)/],
    ['the console', /\bconsole\./],
    ['the clock', /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b|\bset(?:Timeout|Interval|Immediate)\(/],
  ])('knows %s only in cli/', (_, pattern) => {
    const wrong = files.filter(({ folder }) => folder !== 'cli').flatMap((file) => placesOf(file, pattern))
    expect(wrong.filter((place) => !isTradeProcess(place))).toEqual([])
  })

  it('uses no network, no child process and no thread anywhere', () => {
    const barred = /^(?:node:)?(?:http|https|http2|net|tls|dgram|dns|child_process|worker_threads|cluster|vm|inspector)$/
    const wrong = files.filter(({ imports }) => imports.some(({ from }) => barred.test(from)))
    expect(wrong.map(({ path }) => path)).toEqual([])
    expect(files.flatMap((file) => placesOf(file, /\bfetch\(|\beval\(|\bnew Function\(/))).toEqual([])
  })

  it.each([
    ['Math.random', /\bMath\.random\b/],
    ['Date.now', /\bDate\.now\b/],
    ['today', /\bnew Date\(\s*\)/],
    ['the sorting of a language', /\blocaleCompare\b|\bIntl\./],
    ['the number signs of a language', /\.toLocale\w*/],
    ['a random id', /\brandomUUID\b|\brandomBytes\b/],
  ])('never asks for %s', (_, pattern) => {
    expect(files.flatMap((file) => placesOf(file, pattern))).toEqual([])
  })
})

/** A local variable of the trade called `process`: a process kind, not the running program. */
function isTradeProcess(place: string): boolean {
  const [path, line] = place.split(':')
  const file = files.find((each) => each.path === path)
  if (!file || !/import (?:type )?\{[^}]*\bProcess\b|\bprocessOf\b|\bprocesses\b/.test(file.text)) return false
  const text = file.code.split('\n')[Number(line) - 1] ?? ''
  return !/\bprocess\.(?:env|argv|exit|exitCode|cwd|stdout|stderr|stdin|hrtime|memoryUsage|on|pid|platform)\b/.test(text)
}

describe('the reading of a source text', () => {
  it('blanks comments and quoted text and leaves code and lines alone', () => {
    const text = "const a = 'Math.random()' // Date.now\n/* x\ny */ const b = Math.max(1, 2)\n"
    const code = onlyCode(text)
    expect(code).not.toMatch(/random|now|x\n/)
    expect(code).toMatch(/Math\.max\(1, 2\)/)
    expect(code.split('\n').length).toBe(text.split('\n').length)
  })
})
