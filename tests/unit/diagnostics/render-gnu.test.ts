import { describe, expect, it } from 'vitest'
import type { Diagnostic } from '../../../src/diagnostics/message.ts'
import { renderGnu } from '../../../src/diagnostics/render-gnu.ts'
import { renderJson } from '../../../src/diagnostics/render-json.ts'
import { widthOfText } from '../../../src/diagnostics/width.ts'

const place = (line: number, column: number, length: number) => ({ file: 'a.yaml', line, column, length })
const found = (at: Diagnostic['at'], more: Partial<Diagnostic> = {}): Diagnostic => ({
  code: 'DEP01',
  level: 'error',
  at,
  says: 'these steps wait for each other: a -> b -> a',
  mend: 'remove one `after` entry among `b` and `a`',
  notes: [],
  ...more,
})
const print = (text: string, ...all: readonly Diagnostic[]): string =>
  renderGnu(all, { colour: false, texts: new Map([['a.yaml', text]]) })

describe('the printed form of a finding', () => {
  it('is place, level, fact and code, the line with its part underlined, further places, the mend', () => {
    const notes = [{ at: place(2, 3, 1), says: '`b` is part of the ring' }]
    expect(print('steps:\n  - id: a\n', found(place(2, 5, 2), { notes }))).toBe(
      [
        'a.yaml:2:5: error: these steps wait for each other: a -> b -> a [DEP01]',
        '    - id: a',
        '      ^^',
        'a.yaml:2:3: note: `b` is part of the ring',
        '  mend: remove one `after` entry among `b` and `a`',
        '',
      ].join('\n'),
    )
  })

  it('puts the caret right behind tabs, wide characters and marks that take no room', () => {
    const under = (line: string, part: string): string => {
      const [, shown = '', signs = ''] = print(
        line,
        found(place(1, line.indexOf(part) + 1, part.length)),
      ).split('\n')
      const column = signs.indexOf('^')
      let width = 0
      let at = 0
      for (const character of shown) {
        if (width >= column) break
        width += widthOfText(character)
        at += character.length
      }
      return `${shown
        .slice(at)
        .replace(/^\p{Mn}+/u, '')
        .slice(0, part.length)} ${signs.trim().length}`
    }
    expect(under('name:\t\tlamp', 'lamp')).toBe('lamp 4')
    expect(under('名前: ランプ x', 'x')).toBe('x 1')
    expect(under('名前: ランプ x', 'ランプ')).toBe('ランプ 6')
    expect(under('cafe\u0301: lamp', 'lamp')).toBe('lamp 4')
    expect(under('🙂🙂: lamp', 'lamp')).toBe('lamp 4')
  })

  it('cuts long lines around the part meant', () => {
    const line = `a: ${'x'.repeat(500)} here ${'y'.repeat(500)}`
    const [, shown = '', signs = ''] = print(line, found(place(1, line.indexOf('here') + 1, 4))).split('\n')
    expect(shown.length).toBeLessThan(110)
    expect(shown.slice(signs.indexOf('^'), signs.lastIndexOf('^') + 1)).toBe('here')
    expect(shown).toMatch(/^ {4}….*…$/)
  })

  it('lets nothing through that a terminal would obey, in words, file names and lines', () => {
    const at = { file: 'a\u001b[2Jb.yaml', line: 1, column: 1, length: 1 }
    const bad = found(at, {
      says: 'has `\u001b]0;x\u0007`\nand \u202e',
      mend: '\u009b31m',
      notes: [{ at, says: '\u0000' }],
    })
    const printed = renderGnu([bad], {
      colour: false,
      texts: new Map([[at.file, 'a: \u001b[31m\u202e\r\nb']]),
    })
    expect(printed).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e]/u)
    expect(printed).toMatch(
      /^a<U\+001B>\[2Jb\.yaml:1:1: error: has `<U\+001B>\]0;x<U\+0007>`<U\+000A>and <U\+202E> \[DEP01\]\n/,
    )
  })

  it('has colours when asked, around the same words', () => {
    const options = { colour: true, texts: new Map([['a.yaml', 'x: 1']]) }
    const painted = renderGnu([found(place(1, 1, 1))], options)
    expect(painted).toContain('\u001b[1;31merror:\u001b[0m')
    const stripped = painted.replaceAll(/\p{Cc}\[[\d;]*m/gu, '')
    expect(stripped).toBe(renderGnu([found(place(1, 1, 1))], { ...options, colour: false }))
  })

  it('does without the line where the text or the line is not there', () => {
    expect(print('', found(place(7, 1, 1))).split('\n')).toHaveLength(3)
    expect(renderGnu([found(place(1, 1, 1))], { colour: false, texts: new Map() }).split('\n')).toHaveLength(
      3,
    )
    expect(renderGnu([], { colour: false, texts: new Map() })).toBe('')
  })
})

describe('the JSON form of findings', () => {
  it('holds what was found, field by field', () => {
    const one = found(place(2, 5, 2))
    expect(JSON.parse(renderJson([one]))).toEqual({ diagnostics: [one] })
  })
})
