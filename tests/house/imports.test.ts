import { describe, expect, it } from 'vitest'
import { findRing } from './find-ring.ts'
import { mayImport } from './may-import.ts'
import { onlyCode, placesOf, sourceFiles } from './source-files.ts'

const files = sourceFiles()
const own = files.flatMap((file) =>
  file.imports.flatMap(({ from, to }) =>
    to === null ? [] : [{ from: file.path, folder: file.folder, to, text: from }],
  ),
)
// A project holds its assembly plan, and a plan names parts of the project: types alone, nothing runs.
const agreed = (from: string, to: string): boolean =>
  from === 'model/assembly.ts' && to === 'model/project.ts'
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
    expect(findRing(new Map(Object.entries(mayImport)))).toBe(null)
  })

  it('make no ring between files', () => {
    const known = new Set(files.map(({ path }) => path))
    const arcs = new Map(
      files.map(({ path, imports }) => [
        path,
        [
          ...new Set(
            imports.flatMap(({ to }) => (to !== null && known.has(to) && !agreed(path, to) ? [to] : [])),
          ),
        ].sort(),
      ]),
    )
    expect(findRing(arcs)).toBe(null)
  })

  it('are of types alone where one ring is agreed', () => {
    const there = files.flatMap(({ path, imports }) =>
      imports.filter(({ to }) => to !== null && agreed(path, to)),
    )
    expect(there.every(({ typeOnly }) => typeOnly)).toBe(true)
  })

  it('end in .ts, so that every tool reads them alike', () => {
    expect(
      own.filter(({ to }) => !/\.(?:ts|js)$/.test(to)).map(({ from, to }) => `${from} -> ${to}`),
    ).toEqual([])
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
    const wrong = files.filter(
      ({ path, imports }) => !mayTouchDisk(path) && imports.some(({ from }) => disk.test(from)),
    )
    expect(wrong.map(({ path }) => path)).toEqual([])
  })

  it.each([
    // Only what the running program has: a process of the trade may be a variable of that name.
    [
      'the running program',
      /\bprocess\.(?:env|argv|exit|exitCode|cwd|stdout|stderr|stdin|hrtime|memoryUsage|on|once|pid|platform|nextTick)\b|\bglobalThis\b/,
    ],
    ['the console', /\bconsole\./],
    [
      'the clock',
      /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b|\bset(?:Timeout|Interval|Immediate)\(/,
    ],
  ])('knows %s only in cli/', (_, pattern) => {
    const wrong = files.filter(({ folder }) => folder !== 'cli').flatMap((file) => placesOf(file, pattern))
    expect(wrong).toEqual([])
  })

  it('uses no network, no child process and no thread anywhere', () => {
    const barred =
      /^(?:node:)?(?:http|https|http2|net|tls|dgram|dns|child_process|worker_threads|cluster|vm|inspector)$/
    const wrong = files.filter(({ imports }) => imports.some(({ from }) => barred.test(from)))
    expect(wrong.map(({ path }) => path)).toEqual([])
    expect(files.flatMap((file) => placesOf(file, /\bfetch\(|\beval\(|\bnew Function\(/))).toEqual([])
  })

  it.each([
    ['Math.random', /\bMath\.random\b/],
    ['today', /\bnew Date\(\s*\)/],
    ['the sorting of a language', /\blocaleCompare\b|\bIntl\./],
    ['the number signs of a language', /\.toLocale\w*/],
    ['a random id', /\brandomUUID\b|\brandomBytes\b/],
  ])('never asks for %s', (_, pattern) => {
    expect(files.flatMap((file) => placesOf(file, pattern))).toEqual([])
  })
})

describe('the clock', () => {
  it('is asked in the command line alone, and there only for the progress line', () => {
    const asking = files.filter((file) => placesOf(file, /\bDate\.now\b/).length > 0)
    expect(asking.map(({ path }) => path)).toEqual(['cli/progress-line.ts'])
  })
})

describe('the reading of a source text', () => {
  it('blanks comments and quoted text and leaves code and lines alone', () => {
    const text = "const a = 'Math.random()' // Date.now\n/* x\ny */ const b = Math.max(1, 2)\n"
    const code = onlyCode(text)
    expect(code).not.toMatch(/random|now|x\n/)
    expect(code).toMatch(/Math\.max\(1, 2\)/)
    expect(code.split('\n').length).toBe(text.split('\n').length)
  })

  it('finds a ring where there is one and none where there is none', () => {
    expect(
      findRing(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['b']],
        ]),
      ),
    ).toEqual(['b', 'c', 'b'])
    expect(
      findRing(
        new Map([
          ['a', ['b', 'c']],
          ['b', ['c']],
          ['c', []],
        ]),
      ),
    ).toBe(null)
  })
})
