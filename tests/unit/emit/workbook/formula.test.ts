import { describe, expect, it } from 'vitest'
import type { Address } from '../../../../src/emit/workbook/addresses.ts'
import { formulaText } from '../../../../src/emit/workbook/formula.ts'
import type { Expression } from '../../../../src/report/cells.ts'
import { choose, ref } from '../../../workbook/sample-book.ts'

const at = (row: number, column: number, sheet = 'Money', order = 0): Address => ({
  sheet,
  order,
  row,
  column,
})
const book = new Map<string, Address>([
  ['a', at(5, 1)],
  ['b', at(5, 2)],
  ...Array.from({ length: 600 }, (_, n): [string, Address] => [`down/${n}`, at(10 + n, 4)]),
  ...Array.from({ length: 700 }, (_, n): [string, Address] => [`odd/${n}`, at(10 + 2 * n, 6)]),
  ['far', at(3, 28, 'To buy', 1)],
])
const written = (expression: Expression): string | null =>
  formulaText(expression, { sheet: 'Money', row: 5, book })
const n = (value: number): Expression => ({ op: 'number', value })
const two = (op: '+' | '-' | '*' | '/' | '<', left: Expression, right: Expression): Expression => ({
  op,
  left,
  right,
})

describe('a formula', () => {
  it('keeps cells of its own row relative and others fixed, with sheets quoted', () => {
    expect(written(two('*', ref('a'), ref('b')))).toBe('A5*B5')
    expect(written(ref('down/0'))).toBe('$D$10')
    expect(written(ref('far'))).toBe("'To buy'!$AB$3")
  })

  it('keeps the order of working with brackets only where needed', () => {
    expect(written(two('-', n(1), two('-', n(2), n(3))))).toBe('1-(2-3)')
    expect(written(two('-', two('-', n(1), n(2)), n(3)))).toBe('1-2-3')
    expect(written(two('*', two('+', n(1), n(2)), n(3)))).toBe('(1+2)*3')
    expect(written(two('/', n(1), two('*', n(2), n(3))))).toBe('1/(2*3)')
    expect(written(two('<', two('<', n(1), n(2)), two('+', n(1), n(2))))).toBe('1<2<1+2')
    expect(written(two('-', n(1), n(-2)))).toBe('1-(-2)')
  })

  it('adds neighbours down a column as a range and counts a cell named twice twice', () => {
    expect(written({ op: 'sum', names: ['down/2', 'down/0', 'down/1', 'a'] })).toBe('SUM(A5,$D$10:$D$12)')
    expect(written({ op: 'sum', names: ['down/0', 'down/0', 'down/1'] })).toBe('SUM($D$10,$D$10:$D$11)')
    expect(written({ op: 'sum', names: Array.from({ length: 600 }, (_, at) => `down/${at}`) })).toBe(
      'SUM($D$10:$D$609)',
    )
    expect(written({ op: 'sum', names: ['far', 'a'] })).toBe("SUM(A5,'To buy'!$AB$3)")
    expect(written({ op: 'sum', names: [] })).toBe('0')
  })

  it('nests a sum of more cells than one function takes', () => {
    const text = written({ op: 'sum', names: Array.from({ length: 300 }, (_, at) => `odd/${at}`) })!
    expect(text).toMatch(/^SUM\(SUM\(\$F\$10,/)
    expect(text.match(/\$F\$/g)).toHaveLength(300)
  })

  it('is left out where it would be longer than a cell can hold', () => {
    expect(
      written({
        op: 'join',
        of: Array.from({ length: 900 }, () => ({ op: 'text', value: 'ten lettrs' }) as const),
      }),
    ).toBeNull()
  })

  it('doubles quotes and writes long text in pieces of at most 255 letters', () => {
    expect(written({ op: 'text', value: 'a "b"' })).toBe('"a ""b"""')
    const long = written({ op: 'text', value: '"'.repeat(300) })!
    for (const piece of long.split('&')) expect(piece.length).toBeLessThanOrEqual(257)
  })

  it('decides, rounds, compares and joins with functions of every spreadsheet', () => {
    const rounded: Expression = { op: 'round', of: two('*', ref('a'), n(1.5e-7)), digits: 2 }
    const either: Expression = {
      op: 'or',
      of: [two('<', ref('a'), n(1)), { op: '<>', left: ref('b'), right: n(2) }],
    }
    expect(written(choose(either, rounded, { op: 'max', of: [n(1), n(2)] }))).toBe(
      'IF(OR(A5<1,B5<>2),ROUND(A5*1.5E-7,2),MAX(1,2))',
    )
    expect(written({ op: 'join', of: [ref('a'), two('+', n(1), n(2)), two('<', n(1), n(2))] })).toBe(
      'A5&1+2&(1<2)',
    )
  })

  it('refuses a name that no cell has and a number that is none', () => {
    expect(() => written(ref('nowhere'))).toThrow('no cell is named nowhere')
    expect(() => written(n(Number.NaN))).toThrow('NaN')
  })
})
