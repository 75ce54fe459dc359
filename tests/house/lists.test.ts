import { execFileSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { allMessages } from '../../src/diagnostics/catalogue.ts'
import { processes } from '../../src/processes/index.ts'
import { version } from '../../src/version.ts'
import { mayImport } from './may-import.ts'
import { filesUnder, root } from './source-files.ts'

const read = (path: string): string => readFileSync(join(root, path), 'utf8')

describe('the lists of the project', () => {
  it('give every code of the catalogue once, with a fact, a mend and a reason', () => {
    const codes = allMessages().map(({ code }) => code)
    expect(codes.length).toBeGreaterThan(80)
    expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([])
    expect(codes.filter((code) => !/^[A-Z]{3}\d\d$/.test(code))).toEqual([])
    expect(
      allMessages()
        .filter(({ why }) => !/^[A-Z`].*[.]$/s.test(why))
        .map(({ code }) => code),
    ).toEqual([])
  })

  it('show every code in a case or in a unit test that names it', () => {
    const cases = readdirSync(join(root, 'tests/diagnostics')).map((name) => name.slice(0, 5).toUpperCase())
    const tests = filesUnder(join(root, 'tests'), '.test.ts').filter((path) => !path.startsWith('house/'))
    const named = new Set(tests.flatMap((path) => read(`tests/${path}`).match(/\b[A-Z]{3}\d\d\b/g) ?? []))
    const bare = allMessages()
      .map(({ code }) => code)
      .filter((code) => !cases.includes(code) && !named.has(code))
    expect(bare).toEqual([])
  })

  it('have a schema for every process kind and a process kind for every schema', () => {
    const kinds = processes.map(({ key }) => key.replaceAll(' ', '-'))
    // A setup holds operations and an outside step is an order: neither is a process of its own.
    const schemas = readdirSync(join(root, 'schemas/operations')).map((file) => file.replace(/\.json$/, ''))
    expect(schemas.filter((name) => !['setup', 'outside'].includes(name)).sort()).toEqual([...kinds].sort())
  })

  it('have one version', () => {
    expect((JSON.parse(read('package.json')) as { version: string }).version).toBe(version)
    expect(read('DEVELOPERS.md')).toContain(`### ${version}`)
  })

  it('name every folder of src in the map of DEVELOPERS.md, with what it may import', () => {
    const map = read('DEVELOPERS.md')
    const folders = readdirSync(join(root, 'src'), { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    )
    for (const { name } of folders) {
      const row = map.split('\n').find((line) => line.startsWith(`| \`${name}/\``))
      expect(row, `no row for ${name}/ in DEVELOPERS.md`).toBeDefined()
      const last = (row ?? '').split('|').at(-2)?.trim() ?? ''
      const wanted = (mayImport[name] ?? []).map((each) => each.replace(/\.ts$/, '')).join(', ')
      expect(`${name}: ${last}`).toBe(`${name}: ${wanted === '' ? 'nothing' : wanted}`)
    }
  })
})

/** Files that belong to the repository: those git knows, with new ones not ignored. */
function ownFiles(): readonly string[] {
  const listed = execFileSync('git', ['ls-files', '-co', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  })
  return listed.split('\0').filter((path) => path !== '' && existsSync(join(root, path)))
}

describe.skipIf(!existsSync(join(root, '.git')))('the repository', () => {
  it('has a fixed top level', () => {
    const known = [
      '.biome.json',
      '.ci',
      '.dev',
      '.gitattributes',
      '.gitignore',
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'package-lock.json',
      'package.json',
      'projects',
      'schemas',
      'src',
      'templates',
      'tests',
      'tsconfig.json',
    ]
    const top = [...new Set(ownFiles().map((path) => path.split('/')[0] ?? ''))].sort()
    expect(top.filter((name) => !known.includes(name))).toEqual([])
  })

  it('names no path of a machine and leaves no mark of unfinished work', () => {
    // Put together here, so that this file does not find itself.
    const barred = new RegExp(
      [
        `${'/wo'}rk/(?:main|shared|brief|scratch)`,
        `/ro${'ot'}/`,
        `/Us${'ers'}/`,
        `\\bTO${'DO'}\\b`,
        `\\bFIX${'ME'}\\b`,
        `\\bXX${'X'}\\b`,
        `not impl${'emented'}`,
        `Stand-${'in'}`,
      ].join('|'),
    )
    const texts = ownFiles().filter(
      (path) => /\.(?:ts|mjs|mts|json|yaml|md|txt)$|^\.ci\//.test(path) && path !== 'package-lock.json',
    )
    const found = texts.filter((path) => barred.test(read(path)))
    expect(found).toEqual([])
  })
})
