import { execFileSync } from 'node:child_process'
import { chmodSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { loadSource } from '../../../src/source/load.ts'
import { field } from '../../../src/source/spot.ts'
import { type Content, memoryDisk } from './memory-disk.ts'

const device = 'device: {name: Lamp, currency: EUR, start: 2026-02-02}\n'
const person = (hours: string): string => `people:\n  ana: {hours: {sat: "${hours}"}}\n`

function load(files: Readonly<Record<string, Content>>, file = 'lamp.yaml', more: { root?: string } = {}) {
  const read = memoryDisk(files)
  const loaded = loadSource(file, { folder: '/home/plans', read, ...more })
  return {
    ...loaded,
    read,
    codes: loaded.diagnostics.map(({ at, code }) => `${at.file}:${at.line}:${at.column} ${code}`),
  }
}

describe('what a project uses', () => {
  it('is read once however often it is used, each shop after those it uses', () => {
    const { source, read } = load({
      '/home/plans/lamp.yaml': `${device}use: [bench.yaml, mill.yaml]\n`,
      '/home/plans/bench.yaml': `use: [mill.yaml]\n${person('10:00-16:00')}`,
      '/home/plans/mill.yaml': 'machines:\n  mill: {rate: 6 EUR/h}\n',
    })
    expect(read.reads).toEqual(['/home/plans/lamp.yaml', '/home/plans/bench.yaml', '/home/plans/mill.yaml'])
    expect([...source!.sections.machines.keys()]).toEqual(['mill'])
    expect([...source!.texts.keys()]).toEqual(['lamp.yaml', 'bench.yaml', 'mill.yaml'])
  })

  it('is named as seen from where the person stands, and its values know their file', () => {
    const { source } = load(
      {
        '/home/.fettle-root': '',
        '/home/plans/lamp/lamp.yaml': `${device}use: [../../shop/bench.yaml]\n`,
        '/home/shop/bench.yaml': person('10:00-16:00'),
      },
      'lamp/lamp.yaml',
    )
    const ana = source!.sections.people.get('ana')!
    expect(ana.file).toBe('../shop/bench.yaml')
    expect(ana.keyAt).toEqual({ file: '../shop/bench.yaml', line: 2, column: 3, length: 3 })
  })

  it('gives way whole to what the project says under the same name', () => {
    const { source } = load({
      '/home/plans/lamp.yaml': `${device}use: [bench.yaml]\npeople:\n  ana: {rate: 20 EUR/h}\n`,
      '/home/plans/bench.yaml': person('10:00-16:00'),
    })
    const ana = source!.sections.people.get('ana')!
    expect(field(ana, 'hours')).toBeNull()
    expect(field(ana, 'rate')?.text).toBe('20 EUR/h')
  })

  it('may not name one thing in two shops, unless the project replaces it', () => {
    const shops = {
      '/home/plans/a.yaml': person('10:00-16:00'),
      '/home/plans/b.yaml': person('18:00-22:00'),
    }
    const alone = load({ '/home/plans/lamp.yaml': `${device}use: [a.yaml, b.yaml]\n`, ...shops })
    expect(alone.codes).toEqual(['b.yaml:2:3 SRC31'])
    expect(alone.source).toBeNull()
    expect(alone.diagnostics[0]?.notes[0]?.at.file).toBe('a.yaml')
    const replaced = load({
      '/home/plans/lamp.yaml': `${device}use: [a.yaml, b.yaml]\n${person('09:00-10:00')}`,
      ...shops,
    })
    expect(replaced.codes).toEqual([])
  })

  it('may not lead in a ring: the ring is said once, with each edge', () => {
    const { diagnostics } = load({
      '/home/plans/lamp.yaml': `${device}use: [a.yaml]\n`,
      '/home/plans/a.yaml': 'use: [b.yaml]\n',
      '/home/plans/b.yaml': 'use: [c.yaml]\n',
      '/home/plans/c.yaml': 'use: [a.yaml]\n',
    })
    expect(diagnostics.map(({ code, says }) => `${code} ${says}`)).toEqual([
      'SRC27 these files use each other: a.yaml -> b.yaml -> c.yaml -> a.yaml',
    ])
    expect(diagnostics[0]?.notes.map(({ at, says }) => `${at.file}: ${says}`)).toEqual([
      'a.yaml: `a.yaml` uses `b.yaml` here',
      'b.yaml: `b.yaml` uses `c.yaml` here',
      'c.yaml: `c.yaml` uses `a.yaml` here',
    ])
  })

  it('may not use itself', () => {
    expect(load({ '/home/plans/lamp.yaml': `${device}use: [lamp.yaml]\n` }).codes).toEqual([
      'lamp.yaml:2:7 SRC27',
    ])
  })

  it('is bounded in depth and in count', () => {
    const chain = Object.fromEntries(
      Array.from({ length: 12 }, (_, at) => [`/home/plans/s${at}.yaml`, `use: [s${at + 1}.yaml]\n`]),
    )
    const deep = load({ '/home/plans/lamp.yaml': `${device}use: [s0.yaml]\n`, ...chain })
    expect(deep.diagnostics.map(({ code }) => code)).toEqual(['SRC30'])
    const names = Array.from({ length: 30 }, (_, at) => `w${at}.yaml`)
    const wide = (prefix: string) => names.map((name) => prefix + name).join(', ')
    const leaves = Object.fromEntries(
      ['a', 'b', 'c'].flatMap((prefix) =>
        names.map((name) => [`/home/plans/${prefix}${name}`, 'people: {}\n']),
      ),
    )
    const many = load({
      '/home/plans/lamp.yaml': `${device}use: [a.yaml, b.yaml, c.yaml]\n`,
      '/home/plans/a.yaml': `use: [${wide('a')}]\n`,
      '/home/plans/b.yaml': `use: [${wide('b')}]\n`,
      '/home/plans/c.yaml': `use: [${wide('c')}]\n`,
      ...leaves,
    })
    expect(many.diagnostics.map(({ code }) => code)).toEqual(['SRC30'])
  })

  it('stays under the root: the one asked for, else the nearest mark above, else the own folder', () => {
    const files = {
      '/home/plans/lamp.yaml': `${device}use: [../shop/bench.yaml]\n`,
      '/home/shop/bench.yaml': person('10:00-16:00'),
    }
    expect(load(files).codes).toEqual(['lamp.yaml:2:7 SRC28'])
    expect(load(files, 'lamp.yaml', { root: '..' }).codes).toEqual([])
    expect(load({ ...files, '/home/.fettle-root': '' }).codes).toEqual([])
    expect(load({ ...files, '/home/.fettle-root': '', '/home/plans/.fettle-root': '' }).codes).toEqual([
      'lamp.yaml:2:7 SRC28',
    ])
    expect(load(files, 'lamp.yaml', { root: '/elsewhere' }).codes).toEqual(['lamp.yaml:1:1 SRC28'])
  })

  it('is not read through a link that leaves the root, nor is a name beside it betrayed', () => {
    const away = load({
      '/home/plans/lamp.yaml': `${device}use: [bench.yaml, shelf/nothing.yaml]\n`,
      '/home/plans/bench.yaml': { link: '/etc/secret.yaml' },
      '/home/plans/shelf': { link: '/etc' },
      '/etc/secret.yaml': person('10:00-16:00'),
      '/etc/nothings.yaml': '',
    })
    expect(away.codes).toEqual(['lamp.yaml:2:7 SRC28', 'lamp.yaml:2:19 SRC28'])
    expect(away.read.reads).toEqual(['/home/plans/lamp.yaml'])
    expect(JSON.stringify(away.diagnostics)).not.toMatch(/nothings|etc/)
    const inside = load({
      '/home/plans/lamp.yaml': `${device}use: [bench.yaml]\n`,
      '/home/plans/bench.yaml': { link: 'real.yaml' },
      '/home/plans/real.yaml': person('10:00-16:00'),
    })
    expect(inside.codes).toEqual([])
  })

  it.each([
    '/abs.yaml',
    'C:\\abs.yaml',
    'c:abs.yaml',
    '\\\\host\\abs.yaml',
    'https://example.org/a.yaml',
    'file:///a',
  ])('may not be named by a path such as %s', (path) => {
    expect(load({ '/home/plans/lamp.yaml': `${device}use: ['${path}']\n` }).codes).toEqual([
      'lamp.yaml:2:7 SRC29',
    ])
  })

  it('is missing, a folder, unreadable or special: each is said at the entry that names it', () => {
    const { codes, diagnostics } = load({
      '/home/plans/lamp.yaml': `${device}use:\n  - benhc.yaml\n  - shelf\n  - locked.yaml\n  - pipe.yaml\n`,
      '/home/plans/bench.yaml': '',
      '/home/plans/shelf/x.yaml': '',
      '/home/plans/locked.yaml': 'denied!',
      '/home/plans/pipe.yaml': 'special!',
    })
    expect(codes).toEqual([
      'lamp.yaml:3:5 SRC01',
      'lamp.yaml:4:5 SRC02',
      'lamp.yaml:5:5 SRC03',
      'lamp.yaml:6:5 SRC05',
    ])
    expect(diagnostics[0]?.mend).toBe('did you mean `bench.yaml`?')
  })

  it('has a bounded size, each and together', () => {
    const large = new Uint8Array(2_000_001).fill(0x23)
    expect(load({ '/home/plans/lamp.yaml': large }).codes).toEqual(['lamp.yaml:1:1 SRC04'])
    const comment = `people: {}\n#${'x'.repeat(1_900_000)}\n`
    const shops = ['a', 'b', 'c', 'd', 'e']
    const together = load({
      '/home/plans/lamp.yaml': `${device}use: [${shops.map((each) => `${each}.yaml`).join(', ')}]\n`,
      ...Object.fromEntries(shops.map((each) => [`/home/plans/${each}.yaml`, comment])),
    })
    expect(together.codes).toEqual(['lamp.yaml:2:39 SRC04'])
  })
})

describe('the project file itself', () => {
  it('gets a near name when it is missing', () => {
    const { diagnostics } = load({ '/home/plans/lamp.yaml': device }, 'lmap.yaml')
    expect(diagnostics.map(({ code, mend }) => `${code} ${mend}`)).toEqual([
      'SRC01 did you mean `lamp.yaml`?',
    ])
  })

  it('may be piped in, and uses files from where the person stands', () => {
    const read = memoryDisk({ '/home/plans/bench.yaml': person('10:00-16:00') })
    const stdin = `${device}use: [bench.yaml]\n`
    const { source, diagnostics } = loadSource('-', { folder: '/home/plans', read, stdin })
    expect(diagnostics).toEqual([])
    expect(source?.file).toBe('<stdin>')
    expect(source?.sections.people.get('ana')?.file).toBe('bench.yaml')
  })

  it('reads the same with a byte order mark and with line ends of another system', () => {
    const plain = load({ '/home/plans/lamp.yaml': `${device}people:\n  ana: {rate: 0 EUR/h}\n` })
    const other = load({
      '/home/plans/lamp.yaml': `\ufeff${device}people:\n  ana: {rate: 0 EUR/h}\n`.replace(/\n/g, '\r\n'),
    })
    expect(other.codes).toEqual([])
    expect(other.source?.sections.people.get('ana')?.at).toEqual(plain.source?.sections.people.get('ana')?.at)
  })
})

describe('the fingerprint', () => {
  const files = (folder: string, hours: string) => ({
    [`${folder}/lamp.yaml`]: `${device}use: [bench.yaml]\n`,
    [`${folder}/bench.yaml`]: person(hours),
  })
  const of = (folder: string, hours: string): string | undefined =>
    loadSource('lamp.yaml', { folder, read: memoryDisk(files(folder, hours)) }).source?.fingerprint

  it('is the same wherever the tree lies, and another when any text changes', () => {
    expect(of('/home/plans', '10:00-16:00')).toMatch(/^[0-9a-f]{64}$/)
    expect(of('/srv/x', '10:00-16:00')).toBe(of('/home/plans', '10:00-16:00'))
    expect(of('/home/plans', '10:00-16:01')).not.toBe(of('/home/plans', '10:00-16:00'))
  })
})

describe('the disk of this computer', () => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'load-')))
  afterAll(() => rmSync(folder, { recursive: true }))
  const write = (name: string, text: string): void => writeFileSync(join(folder, name), text)

  it('gives the same answers: links that leave, pipes, devices, folders, missing files', () => {
    mkdirSync(join(folder, 'plan'))
    write('outside.yaml', person('10:00-16:00'))
    symlinkSync(join(folder, 'outside.yaml'), join(folder, 'plan/leaves.yaml'))
    symlinkSync('/dev/zero', join(folder, 'plan/zero.yaml'))
    symlinkSync('loop.yaml', join(folder, 'plan/loop.yaml'))
    execFileSync('mkfifo', [join(folder, 'plan/pipe.yaml')])
    write(
      'plan/lamp.yaml',
      `${device}use:\n  - leaves.yaml\n  - zero.yaml\n  - loop.yaml\n  - pipe.yaml\n  - lamp.yaml/x\n`,
    )
    const { diagnostics } = loadSource('lamp.yaml', { folder: join(folder, 'plan') })
    expect(diagnostics.map(({ at, code }) => `${at.line} ${code}`)).toEqual([
      '3 SRC28',
      '4 SRC28',
      '5 SRC01',
      '6 SRC05',
      '7 SRC01',
    ])
  })

  it.skipIf(process.getuid?.() === 0)('says that a file may not be read', () => {
    write('locked.yaml', device)
    chmodSync(join(folder, 'locked.yaml'), 0o000)
    expect(loadSource('locked.yaml', { folder }).diagnostics.map(({ code }) => code)).toEqual(['SRC03'])
  })
})
