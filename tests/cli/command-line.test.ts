import { spawnSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Built, buildFettle, chopper, type Run, root, traceSigns } from './run-fettle.ts'

let built: Built
beforeAll(async () => {
  built = await buildFettle('cli')
})
afterAll(() => built.done())

/** Saving is the same for any plan; this one is soon made. */
const small = join(root, 'projects/worked-numbers/worked-numbers.yaml')

const run = (...args: string[]): Run => built.run(args)
const scratch = (name: string): string => join(built.scratch, name)
const parts = (): string[] => readdirSync(built.scratch).filter((name) => name.endsWith('.part'))

describe('exit codes', () => {
  it('are 0 for a project without an error', () => {
    expect(run('check', chopper).exit).toBe(0)
  })

  it('are 1 for a project with an error, and nothing is written', () => {
    const given = built.run(['plan', '-', '--out', 'bad.xlsx'], { stdin: 'device: {name: x}\n' })
    expect(given.exit).toBe(1)
    expect(given.out).toBe('')
    expect(given.err).toMatch(/nothing was written/)
    expect(existsSync(scratch('bad.xlsx'))).toBe(false)
  })

  it.each([
    [['no-such-command']],
    [['check']],
    [['check', chopper, '--no-such-option']],
    [['plan', chopper, '--date', 'soon']],
    [['plan', chopper, '--date', '2026-02-30']],
    [['plan', chopper, '--effort', '0']],
    [['plan', chopper, '--effort', '1.5']],
    [['plan', chopper, '--seed', '-1']],
    [['explain', 'XYZ99']],
    [['new', 'a-folder', '--template', 'no-such-template']],
    [['plan', small, '--out', 'no-such-folder/plan.xlsx']],
    [['plan', small, '--out', '.']],
  ])('are 2 for wrong use: %j', (args) => {
    const given = built.run(args)
    expect(given.exit).toBe(2)
    expect(given.out).toBe('')
    expect(given.err).not.toBe('')
    expect(given.err).not.toMatch(traceSigns)
  })

  it('are 3 for a fault of its own, said in words: an installation without its templates', () => {
    cpSync(built.bundle, scratch('torn'), { recursive: true })
    const torn = spawnSync(process.execPath, [scratch('torn/fettle.js'), 'new', 'x'], {
      cwd: built.scratch,
      encoding: 'utf8',
    })
    expect(torn.status).toBe(3)
    expect(torn.stderr).toMatch(/a fault in fettle, not in your project/)
    expect(torn.stderr).not.toMatch(traceSigns)
  })

  it('are 0 for help and version', () => {
    expect(run('--help')).toMatchObject({ exit: 0, err: '' })
    const version = (JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string })
      .version
    expect(run('--version')).toEqual({ exit: 0, out: `${version}\n`, err: '' })
  })
})

describe('output', () => {
  it('of check goes to the side channel, so that results can be piped', () => {
    expect(run('check', chopper).out).toBe('')
  })

  it('is the same with a project on standard input', () => {
    const text = readFileSync(join(root, 'templates/minimal/project.yaml'))
    const given = built.run(['check', '-'], { stdin: text })
    expect(given).toEqual({ exit: 0, out: '', err: '<stdin>: no errors, no warnings\n' })
  })

  it('has no colour off a terminal, with NO_COLOR or without', () => {
    const stdin = 'device: {name: x}\n'
    const plain = built.run(['check', '-'], { stdin })
    const asked = built.run(['check', '-'], { stdin, env: { NO_COLOR: '1', TERM: 'xterm-256color' } })
    expect(plain.err).not.toContain('\u001b')
    expect(asked).toEqual(plain)
  })

  it('of check --json is JSON alone and says the same errors', () => {
    const given = built.run(['check', '-', '--json'], { stdin: 'device: {name: x}\n' })
    const { diagnostics } = JSON.parse(given.out) as { diagnostics: { code: string; at: { line: number } }[] }
    expect(given.exit).toBe(1)
    expect(diagnostics.length).toBeGreaterThan(0)
    expect(diagnostics.every(({ code, at }) => /^[A-Z]{3}\d\d$/.test(code) && at.line >= 1)).toBe(true)
  })

  it('of explain gives the reason for every code that a case shows', () => {
    const given = run('explain', 'src11')
    expect(given.exit).toBe(0)
    expect(given.out).toContain('SRC11')
    expect(given.err).toBe('')
  })

  it('of apart shows the way to a part and back, and offers near names for a slip', () => {
    const known = run('apart', chopper, 'motor')
    expect(known.exit).toBe(0)
    expect(known.out).toMatch(/^motor\n.*\n {2}\d+ steps to undo, nothing destroyed, /)
    expect(known.out).toMatch(/\d\. Unscrew motor from bearing block: take out screw M4x20 \[torque driver\]/)
    expect(known.out).toMatch(/do again: Screw motor into bearing block through rear/)
    const slip = run('apart', chopper, 'motr')
    expect(slip.exit).toBe(2)
    expect(slip.out).toBe('')
    expect(slip.err).toMatch(/no part called `motr`; did you mean `motor`\?/)
    expect(run('apart', chopper, 'cradle').err).toMatch(/no assembly step puts `cradle`/)
  })

  it('of apart --json are the same facts', () => {
    const told = JSON.parse(run('apart', chopper, 'motor', '--json').out) as {
      part: string
      ways: { legs: { steps: { step: string }[] }[]; back: { what: string }[] }[]
    }
    expect(told.part).toBe('motor')
    expect(told.ways[0]!.legs[0]!.steps.at(-1)!.step).toBe('fit motor')
    expect(told.ways[0]!.back.map(({ what }) => what)).toContain('repeat')
  })

  it('of why names a part, and offers near names for a slip', () => {
    const known = run('why', chopper, 'hub')
    expect(known.exit).toBe(0)
    expect(known.out).toMatch(/^hub\n/)
    const slip = run('why', chopper, 'hubb')
    expect(slip.exit).toBe(2)
    expect(slip.err).toMatch(/did you mean .*hub/)
  })
})

describe('the workbook file', () => {
  it('is written whole, twice the same bytes, and over its own untouched file', () => {
    const first = run('plan', small, '--out', 'plan.xlsx')
    expect(first.exit).toBe(0)
    const bytes = readFileSync(scratch('plan.xlsx'))
    expect(bytes.subarray(0, 2).toString('latin1')).toBe('PK')
    expect(run('plan', small, '--out', 'plan.xlsx').exit).toBe(0)
    expect(readFileSync(scratch('plan.xlsx')).equals(bytes)).toBe(true)
    expect(parts()).toEqual([])
  })

  it('is not written over a file of someone else unless forced', () => {
    writeFileSync(scratch('mine.xlsx'), 'my notes')
    const refused = run('plan', small, '--out', 'mine.xlsx')
    expect(refused.exit).toBe(2)
    expect(refused.err).toMatch(/was not written by fettle/)
    expect(readFileSync(scratch('mine.xlsx'), 'utf8')).toBe('my notes')
    expect(run('plan', small, '--out', 'mine.xlsx', '--force').exit).toBe(0)
  })

  it('is not written over one that was changed since', () => {
    expect(run('plan', small, '--out', 'changed.xlsx').exit).toBe(0)
    const bytes = readFileSync(scratch('changed.xlsx'))
    bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 0xff
    writeFileSync(scratch('changed.xlsx'), bytes)
    expect(run('plan', small, '--out', 'changed.xlsx').exit).toBe(2)
    expect(readFileSync(scratch('changed.xlsx')).equals(bytes)).toBe(true)
  })

  it('is never written over what the plan is read from, even forced', () => {
    const text = readFileSync(join(root, 'templates/minimal/project.yaml'))
    writeFileSync(scratch('own.yaml'), text)
    const refused = run('plan', 'own.yaml', '--out', 'own.yaml', '--force')
    expect(refused.exit).toBe(2)
    expect(refused.err).toMatch(/what the plan is read from/)
    expect(readFileSync(scratch('own.yaml')).equals(text)).toBe(true)
  })

  it.each([
    [['plan', small, '--out', '/proc/plan.xlsx']],
    [['plan', small, '--out', 'own.yaml/plan.xlsx']],
    [['new', 'own.yaml']],
    [['new', '']],
    [['new', '/proc/device']],
  ])('is refused in words where it cannot be: %j', (args) => {
    writeFileSync(scratch('own.yaml'), 'device: {}\n')
    const refused = run(...args)
    expect(refused.exit).toBe(2)
    expect(refused.err).toMatch(/^fettle: /)
  })

  it('leaves no half-written file where the target is a folder, missing, or a full device', () => {
    mkdirSync(scratch('folder.xlsx'))
    expect(run('plan', small, '--out', 'folder.xlsx').exit).toBe(2)
    expect(run('plan', small, '--out', 'absent/plan.xlsx').exit).toBe(2)
    if (existsSync('/dev/full')) expect(run('plan', small, '--out', '/dev/full').exit).toBe(2)
    expect(parts()).toEqual([])
  })

  it('goes to standard output with `--out -`, alone', () => {
    const piped = spawnSync(
      process.execPath,
      [join(built.bundle, 'fettle.js'), 'plan', small, '--out', '-'],
      {
        cwd: built.scratch,
        maxBuffer: 64 * 1024 * 1024,
      },
    )
    expect(piped.status).toBe(0)
    expect(piped.stdout.subarray(0, 2).toString('latin1')).toBe('PK')
    expect(run('plan', small, '--out', 'beside.xlsx').exit).toBe(0)
    expect(readFileSync(scratch('beside.xlsx')).equals(piped.stdout)).toBe(true)
  })
})

describe('new', () => {
  it.each(readdirSync(join(root, 'templates')))(
    'makes a project from %s that plans without a warning',
    (name) => {
      const made = run('new', `from-${name}`, '--template', name)
      expect(made.exit).toBe(0)
      const checked = built.run(['check', 'project.yaml'], { folder: scratch(`from-${name}`) })
      expect(checked).toEqual({ exit: 0, out: '', err: 'project.yaml: no errors, no warnings\n' })
      const planned = built.run(['plan', 'project.yaml'], { folder: scratch(`from-${name}`) })
      expect(planned).toMatchObject({ exit: 0, err: '' })
      expect(existsSync(scratch(`from-${name}/project.xlsx`))).toBe(true)
      expect(existsSync(scratch(`from-${name}/.fettle/project.schema.json`))).toBe(true)
    },
  )

  it('writes nothing into a folder that holds something', () => {
    mkdirSync(scratch('taken'))
    writeFileSync(scratch('taken/notes.txt'), 'mine')
    expect(run('new', 'taken').exit).toBe(2)
    expect(readdirSync(scratch('taken'))).toEqual(['notes.txt'])
  })
})

describe('check', () => {
  it('does not load the workbook library, plan does', () => {
    expect(runsWorkbookLibrary('check')).toBe(false)
    expect(runsWorkbookLibrary('plan')).toBe(true)
  })
})

interface Covered {
  readonly functions: readonly {
    readonly ranges: readonly { startOffset: number; endOffset: number; count: number }[]
  }[]
  readonly url: string
}

/** Whether a command ran the part of the bundle around a text that only the workbook library holds. */
function runsWorkbookLibrary(command: string): boolean {
  const program = join(built.bundle, 'program.cjs')
  const folder = scratch(`coverage-${command}`)
  const out = command === 'plan' ? ['--out', `${command}.covered.xlsx`] : []
  spawnSync(process.execPath, [program, command, chopper, ...out], {
    cwd: built.scratch,
    env: { PATH: process.env.PATH ?? '', NODE_V8_COVERAGE: folder },
  })
  const offset = readFileSync(program, 'utf8').indexOf('xl/worksheets/_rels')
  expect(offset).toBeGreaterThan(0)
  const reports = readdirSync(folder).map(
    (file) => JSON.parse(readFileSync(join(folder, file), 'utf8')) as { result: Covered[] },
  )
  const covered = reports.flatMap(({ result }) => result).find(({ url }) => url.endsWith('/program.cjs'))
  // The functions around the library's text, each wrapped in the one that loads its module: one never run, none loaded.
  const around = (covered?.functions ?? [])
    .map(({ ranges }) => ranges[0]!)
    .filter(({ startOffset, endOffset }) => startOffset < offset && offset < endOffset)
    .sort((a, b) => b.endOffset - b.startOffset - (a.endOffset - a.startOffset))
  expect(around.length).toBeGreaterThan(0)
  return around.slice(0, 2).every(({ count }) => count > 0) && around.length > 1
}

const odd: readonly (readonly [string, string])[] = [
  ['nothing', ''],
  ['a blank', ' \n'],
  ['a lone dash', '-'],
  ['a number', '7'],
  ['a list', '- a\n- b\n'],
  ['an open bracket', 'device: {name: x'],
  ['an open quote', 'device: "x'],
  ['a tab', 'device:\n\tname: x\n'],
  ['null everywhere', 'device:\nparts:\nassembly:\n'],
  ['keys with the names of built-in things', '__proto__: {a: 1}\nconstructor: x\ntoString: y\n'],
  [
    'a part called __proto__',
    'device: {name: x, qty: 1, currency: EUR, start: 2026-03-02}\nparts: {__proto__: {kind: bought}}\n',
  ],
  [
    'a part called constructor',
    'device: {name: x, qty: 1, currency: EUR, start: 2026-03-02}\nparts: {constructor: {kind: bought, have: 1, qty: 1}}\n',
  ],
  ['a huge number', 'device: {name: x, qty: 999999999999999999999, currency: EUR, start: 2026-03-02}\n'],
  ['a negative count', 'device: {name: x, qty: -1, currency: EUR, start: 2026-03-02}\n'],
  ['a day that does not exist', 'device: {name: x, qty: 1, currency: EUR, start: 2026-02-30}\n'],
  ['a far day', 'device: {name: x, qty: 1, currency: EUR, start: 9999-12-31}\n'],
  ['a self-repeating anchor', 'device: &a {name: *a}\n'],
  ['an anchor of nothing', 'device: *b\n'],
  ['a special type', 'device: !!js/function "x"\n'],
  ['a merge key', 'device: {<<: {name: x}}\n'],
  ['two documents', 'device: {name: x}\n---\ndevice: {name: y}\n'],
  ['a control sign', 'device: {name: "x\u0001"}\n'],
  ['a byte-order mark', '\ufeffdevice: {name: x}\n'],
  ['a path upwards', 'device: {name: x}\nuse: [../../../../etc/passwd]\n'],
  ['an absolute path', 'device: {name: x}\nuse: [/etc/passwd]\n'],
  ['a network path', 'device: {name: x}\nuse: ["https://example.org/a.yaml"]\n'],
  ['a device as a file', 'device: {name: x}\nuse: [/dev/zero]\n'],
  ['a folder as a file', 'device: {name: x}\nuse: [.]\n'],
  ['itself', 'device: {name: x}\nuse: [project.yaml]\n'],
  ['deep nesting', `a: ${'['.repeat(3000)}${']'.repeat(3000)}\n`],
  ['a very long name', `device: {name: ${'x'.repeat(50_000)}}\n`],
  ['a formula as a name', 'device: {name: "=1+1", qty: 1, currency: EUR, start: 2026-03-02}\n'],
  ['signs from right to left', 'device: {name: "\u202eabc", qty: 1, currency: EUR, start: 2026-03-02}\n'],
  ['an unknown currency', 'device: {name: x, qty: 1, currency: ZZZ, start: 2026-03-02}\n'],
]

describe('odd input', () => {
  it.each(odd)('%s ends with 0 or 1 and plain words', (_, text) => {
    const given = built.run(['check', '-'], { stdin: text })
    expect([0, 1]).toContain(given.exit)
    expect(given.err).not.toBe('')
    expect(given.err).not.toMatch(traceSigns)
    expect(given.out).toBe('')
  })

  it.each([
    '/etc/passwd',
    '/dev/null',
    '/proc/self/mem',
    '..',
    'no/such.yaml',
    `${'a/'.repeat(2000)}b`,
    'x'.repeat(400),
    'a\nb.yaml',
    '',
  ])('the path %j ends with 1 or 2 and plain words', (path) => {
    const given = built.run(['check', path])
    expect([1, 2]).toContain(given.exit)
    expect(given.err).not.toMatch(traceSigns)
  })

  it('bytes that are no text end with 1', () => {
    const given = built.run(['check', '-'], { stdin: Buffer.from([0xff, 0xfe, 0x00, 0xd8, 0x80]) })
    expect(given.exit).toBe(1)
    expect(given.err).not.toMatch(traceSigns)
  })
})
