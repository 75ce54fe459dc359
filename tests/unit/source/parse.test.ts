import { describe, expect, it } from 'vitest'
import { collect } from '../../../src/diagnostics/collector.ts'
import { parse } from '../../../src/source/parse.ts'

function read(text: string) {
  const { report, diagnostics } = collect()
  const { root } = parse('a.yaml', text, report)
  return { value: root?.value, codes: diagnostics().map(({ at, code }) => `${at.line}:${at.column} ${code}`) }
}
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

describe('reading a text', () => {
  it('follows the core schema of YAML 1.2.2, section 10.3: words and times stay texts', () => {
    const { value } = read(
      'a: no\nb: 12:30\nc: 2026-03-02\nd: 0x10\ne: 1e3\nf: true\ng: ~\nh: 0o17\ni: 010\n',
    )
    expect(plain(value)).toEqual({
      a: 'no',
      b: '12:30',
      c: '2026-03-02',
      d: 16,
      e: 1000,
      f: true,
      g: null,
      h: 15,
      i: 10,
    })
  })

  it('takes harmful names as names like any other', () => {
    const { value, codes } = read(
      '__proto__: {polluted: yes}\nconstructor: 1\ntoString: 2\nhasOwnProperty: 3\n',
    )
    expect(codes).toEqual([])
    expect(Object.keys(value as object)).toEqual(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])
    expect(({} as Record<string, unknown>).polluted).toBeUndefined()
  })

  it('finds doubled names in time that grows with their number, not its square', () => {
    const names = Array.from({ length: 20_000 }, (_, at) => `n${at}: 1`).join('\n')
    expect(read(`${names}\nn7: 2\n`).codes).toEqual(['20001:1 SRC11'])
  })

  it('takes a name once bare and once in quotes for the same', () => {
    expect(read('parts:\n  1a: x\n  "1a": y\n').codes).toEqual(['3:3 SRC11'])
  })

  it('allows bare counts as names in price breaks only', () => {
    expect(read('price: {1: 0.62, 25: 0.41}\n').codes).toEqual([])
    expect(read('price: {1.5: 0.62}\n').codes).toEqual(['1:9 SRC24'])
    expect(read('other: {1: 0.62}\n').codes).toEqual(['1:9 SRC24'])
  })

  it('says each number that is none or too long', () => {
    expect(read('a: .nan\nb: -.inf\nc: 1e999\nd: 1234567890123456\ne: 999999999999999\n').codes).toEqual([
      '1:4 SRC22',
      '2:4 SRC22',
      '3:4 SRC23',
      '4:4 SRC23',
    ])
  })

  it('says where a character stands that cannot be seen, a carriage return alone among them', () => {
    expect(read('a: 1\nb: x\u0007\n').codes).toEqual(['2:5 SRC07'])
    expect(read('a: 1\rb: 2\r').codes).toEqual(['1:5 SRC07'])
    expect(read('a: 1\r\nb: "tab\there"\r\n').codes).toEqual([])
  })

  it('keeps repeated values the same and bounds what they spell out', () => {
    const { value, codes } = read('a: &x {b: 1}\nc: *x\n')
    expect(codes).toEqual([])
    expect(plain(value)).toEqual({ a: { b: 1 }, c: { b: 1 } })
    const levels = Array.from({ length: 30 }, (_, at) => `a${at + 1}: &a${at + 1} [*a${at}, *a${at}]`)
    const bomb = read(`a0: &a0 [x]\n${levels.join('\n')}\n`)
    expect(bomb.codes).toHaveLength(1)
    expect(bomb.codes[0]).toMatch(/SRC19$/)
  })

  it('takes the nearest mark above a repeat', () => {
    expect(plain(read('a: &x 1\nb: *x\nc: &x 2\nd: *x\n').value)).toEqual({ a: 1, b: 1, c: 2, d: 2 })
  })

  it('bounds nesting, by brackets, by columns and through repeats, at whatever depth the computer would fail', () => {
    expect(read(`a: ${'['.repeat(100_000)}\n`).codes).toEqual(['1:68 SRC18'])
    expect(read(`a: ${'{a: '.repeat(5_000)}\n`).codes[0]).toMatch(/SRC18$/)
    expect(read(`${'- '.repeat(5_000)}x\n`).codes).toEqual(['1:1 SRC18'])
    for (const sign of ['? ', ': ', '- ', '? - '])
      expect(read(sign.repeat(50_000)).codes).toEqual(['1:1 SRC18'])
    const steps = Array.from({ length: 1_000 }, (_, at) => `${' '.repeat(at)}a:`).join('\n')
    expect(read(`${steps} 1\n`).codes[0]).toMatch(/SRC18$/)
    const chain = Array.from({ length: 80 }, (_, at) => `a${at + 1}: &a${at + 1} [*a${at}]`)
    expect(read(`a0: &a0 [x]\n${chain.join('\n')}\n`).codes[0]).toMatch(/SRC18$/)
    expect(
      read(`a: ${'['.repeat(60)}${']'.repeat(60)}\nb: "${'['.repeat(200)}"\n# ${'['.repeat(200)}\n`).codes,
    ).toEqual([])
  })

  it('gives one message for one fault of syntax', () => {
    for (const text of [
      'a: [1, 2\nb: 3\nc: 4\n',
      'a: "x\nb: 2\n',
      'a: 1\n  b: 2\nc: 3\n',
      'a: b: c: d\n',
      'a: {b\n',
    ])
      expect(read(text).codes).toHaveLength(1)
  })

  it('lists a hundred faults of a file at most', () => {
    const codes = read('a: 1\n'.repeat(5_000)).codes
    expect(codes).toHaveLength(101)
    expect(codes.at(-1)).toBe('102:1 SRC35')
  })

  it('gives up on a text that is nothing but faults, after the first', () => {
    expect(read(`a: ${']'.repeat(1_000_000)}\n`).codes).toEqual(['1:4 SRC17'])
  })

  it('never uses the words of programs for a fault of syntax', () => {
    const texts = [
      'a: ]',
      'a: }',
      '- a\nb: 1',
      'a: |x\n b',
      '? a\n? b\n: - c',
      'a: &',
      'a: *',
      '&a *b: 1',
      'a: !!',
      '@',
      '%',
      '"',
      "'",
      '{',
      'a: [b}',
      'a: "\\x1"',
      ',',
      '--- a\n--- b',
      'a:\n\t- b',
      '!<x> y',
      'a: >9\n x',
    ]
    for (const text of texts) {
      const { report, diagnostics } = collect()
      parse('a.yaml', text, report)
      for (const { says, mend } of diagnostics()) {
        expect(`${says} ${mend}`).not.toMatch(
          /\bnodes?\b|schema|undefined|illegal|unexpected|token|NaN|null\b/i,
        )
      }
    }
  })
})
