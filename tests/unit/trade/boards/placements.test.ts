import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { byDesignator, readDesignators } from '../../../../src/trade/boards/designators.ts'
import { groupPlacements } from '../../../../src/trade/boards/group-placements.ts'
import { type Placement, readPlacements } from '../../../../src/trade/boards/placements.ts'
import { type CsvSeparator, readCsv } from '../../../../src/trade/boards/read-csv.ts'

const texts = (text: string, separator: CsvSeparator = ',') => {
  const rows = readCsv(text, separator)
  return 'fault' in rows ? rows : rows.map((row) => row.map((cell) => cell.text))
}

describe('tables as text', () => {
  // RFC 4180 section 2, rules 1 to 7 (from memory).
  it('rows end with CR LF, the last with or without', () => {
    expect(texts('a,b\r\nc,d\r\n')).toEqual(texts('a,b\r\nc,d'))
    expect(texts('a,b\nc,d\re,f')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
      ['e', 'f'],
    ])
  })

  it('quoted cells hold separators, line ends and doubled quotes', () => {
    expect(texts('"a,b","c ""d""","e\r\nf"\r\ng,"",')).toEqual([
      ['a,b', 'c "d"', 'e\r\nf'],
      ['g', '', ''],
    ])
  })

  it('blanks belong to a cell, and semicolon or tab part cells where they are asked for', () => {
    expect(texts(' a ;b,c', ';')).toEqual([[' a ', 'b,c']])
    expect(texts('a\tb\n', '\t')).toEqual([['a', 'b']])
  })

  it('a mark before the text and empty lines are passed', () => {
    expect(texts('\uFEFFa,b\n\n\nc,d\n\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ])
    expect(texts('')).toEqual([])
  })

  it('every cell knows its line and column, also behind line ends inside quotes', () => {
    const rows = readCsv('a,"b\nc",d\r\ne,f', ',')
    if ('fault' in rows) throw new Error(rows.fault)
    expect(rows.flat().map(({ text, line, column }) => [text, line, column])).toEqual([
      ['a', 1, 1],
      ['b\nc', 1, 3],
      ['d', 2, 4],
      ['e', 3, 1],
      ['f', 3, 3],
    ])
  })

  it.each([
    ['a,b\n c,"d', { fault: 'quote left open', line: 2, column: 4 }],
    ['a,"b"c', { fault: 'text after a quote', line: 1, column: 6 }],
    ['a\nb,5" x', { fault: 'quote inside a cell', line: 2, column: 4 }],
  ])('%j is a fault at its place', (text, fault) => {
    expect(readCsv(text, ',')).toEqual(fault)
  })

  it('any table written by the rules is read back', () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', '"', ',', ';', '\t', '\n', '\r', ' ', '\u00e9'),
      maxLength: 6,
    })
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 5 })
    fc.assert(
      fc.property(table, fc.constantFrom<CsvSeparator>(',', ';', '\t'), (rows, separator) => {
        const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`
        const text = rows.map((row) => `${row.map(quoted).join(separator)}\r\n`).join('')
        expect(texts(text, separator)).toEqual(rows)
      }),
    )
  })

  it('any text gives rows or a fault inside the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r') }), (text) => {
        const rows = readCsv(text, ',')
        if ('fault' in rows) expect(rows.line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length)
      }),
    )
  })
})

describe('designators', () => {
  it('lists and ranges are written out', () => {
    expect(readDesignators('R1, R2;R5-R7  C10\u2013C11')).toEqual([
      'R1',
      'R2',
      'R5',
      'R6',
      'R7',
      'C10',
      'C11',
    ])
    expect(readDesignators('R5 - R7')).toEqual(['R5', 'R6', 'R7'])
    expect(readDesignators('TP_RESET')).toEqual(['TP_RESET'])
  })

  it.each([
    ['', { fault: 'no designator' }],
    [' , ', { fault: 'no designator' }],
    ['R?', { fault: 'not a designator', word: 'R?' }],
    ['R1-C3', { fault: 'not a designator', word: 'R1-C3' }],
    ['C1-4', { fault: 'unclear range', word: 'C1-4', perhaps: 'C1-C4' }],
    ['R7-R5', { fault: 'range falls', word: 'R7-R5' }],
    ['R1-R999999', { fault: 'range too long', word: 'R1-R999999', most: 1000 }],
  ])('%j is told apart as a fault', (text, fault) => {
    expect(readDesignators(text)).toEqual(fault)
  })

  it('numbers count by size, letters by the alphabet', () => {
    expect(['R10', 'C2', 'R2', 'R1A', 'C11', 'R1', 'U1'].sort(byDesignator)).toEqual([
      'C2',
      'C11',
      'R1',
      'R1A',
      'R2',
      'R10',
      'U1',
    ])
  })

  it('the order is total: turning a pair turns the answer, and only equal texts tie', () => {
    const name = fc.string({
      unit: fc.constantFrom('R', 'r', 'C', '0', '1', '9', '_'),
      minLength: 1,
      maxLength: 5,
    })
    fc.assert(
      fc.property(name, name, name, (a, b, c) => {
        expect(Math.sign(byDesignator(a, b))).toBe(-Math.sign(byDesignator(b, a)) + 0)
        expect(byDesignator(a, b) === 0).toBe(a === b)
        const [x, y, z] = [a, b, c].sort(byDesignator) as [string, string, string]
        expect(byDesignator(x, y) <= 0 && byDesignator(y, z) <= 0 && byDesignator(x, z) <= 0).toBe(true)
      }),
      { numRuns: 500 },
    )
  })
})

const columns = { designator: 'Ref', value: 'Value', package: 'Case', side: null }
const good = 'Ref;Value;Case\n"R1, R10";4k7;0603\nC1;100n;0402\nR2;4.7k;0603\n'

describe('placements', () => {
  it('one row per designator, with its line', () => {
    expect(readPlacements(good, ';', columns)).toEqual([
      { designator: 'R1', value: '4k7', package: '0603', side: null, line: 2 },
      { designator: 'R10', value: '4k7', package: '0603', side: null, line: 2 },
      { designator: 'C1', value: '100n', package: '0402', side: null, line: 3 },
      { designator: 'R2', value: '4.7k', package: '0603', side: null, line: 4 },
    ])
  })

  it('columns may stand in any order, among others, and the side is read where it is named', () => {
    const text = 'X,Case , Side,Ref,Value\n1,0603,top,R1,1k\n'
    expect(readPlacements(text, ',', { ...columns, side: 'Side' })).toEqual([
      { designator: 'R1', value: '1k', package: '0603', side: 'top', line: 2 },
    ])
  })

  it('every fault of a table is told at its line and column', () => {
    const text = 'Ref,Value,Case\nR1,1k,0603\nR?,1k,0603\nR2,1k\nC1,1n,0402\n  "x"\n'.replace(
      '  "x"\n',
      'R1,2k,0603\n',
    )
    expect(readPlacements(text, ',', columns)).toEqual({
      fault: 'placements not read',
      faults: [
        { fault: 'not a designator', word: 'R?', line: 3, column: 1 },
        { fault: 'row of another length', cells: 2, wanted: 3, line: 4, column: 1 },
        { fault: 'designator twice', designator: 'R1', firstLine: 2, line: 6, column: 1 },
      ],
    })
  })

  it('a missing column is told with the heads that are there, and a doubled one at the second', () => {
    expect(readPlacements('Ref,Val,Case\n', ',', columns)).toMatchObject({
      faults: [{ fault: 'no such column', wanted: 'Value', heads: ['Ref', 'Val', 'Case'] }],
    })
    expect(readPlacements('Ref,Value,Value,Case\n', ',', columns)).toMatchObject({
      faults: [{ fault: 'column twice', wanted: 'Value', line: 1, column: 11 }],
    })
    expect(readPlacements('', ',', columns)).toMatchObject({ faults: [{ fault: 'no header row' }] })
    expect(readPlacements('Ref,Value,Case\nR1,"1k', ',', columns)).toMatchObject({
      faults: [{ fault: 'quote left open', line: 2, column: 4 }],
    })
  })

  it('equal values in one package are one group, however they are written, in natural order', () => {
    const read = readPlacements(good, ';', columns)
    if ('fault' in read) throw new Error(read.fault)
    expect(groupPlacements(read)).toEqual([
      { value: '100n', package: '0402', designators: ['C1'], count: 1, alsoWritten: [] },
      { value: '4k7', package: '0603', designators: ['R1', 'R2', 'R10'], count: 3, alsoWritten: ['4.7k'] },
    ])
  })

  it('a resistor and a capacitor with the same text stay apart, as do two ratings of one value', () => {
    const at = (designator: string, value: string): Placement => ({
      ...{ designator, value, package: '0603', side: null, line: 1 },
    })
    const groups = groupPlacements([
      at('R1', '100'),
      at('C1', '100'),
      at('C2', '100n 16V'),
      at('C3', '100n 50V'),
    ])
    expect(groups.map(({ designators }) => designators.join())).toEqual(['C1', 'C2', 'C3', 'R1'])
    expect(groupPlacements([at('F1', '2'), at('J1', '2')])).toHaveLength(2)
    expect(groupPlacements([at('R1', '100'), at('R2', '100R'), at('R3', '0.1k')])).toHaveLength(1)
  })

  it('grouping loses and doubles nothing, whatever the order of rows', () => {
    const placement = fc.record({
      designator: fc.constantFrom('R1', 'R2', 'R3', 'R10', 'C1', 'C2'),
      value: fc.constantFrom('1k', '1000', '100n', 'x'),
      package: fc.constantFrom('0402', '0603'),
    })
    const list = fc.uniqueArray(placement, { selector: ({ designator }) => designator })
    fc.assert(
      fc.property(list, (some) => {
        const all = some.map((one): Placement => ({ ...one, side: null, line: 1 }))
        const groups = groupPlacements(all)
        expect(groups.flatMap(({ designators }) => designators).sort()).toEqual(
          all.map(({ designator }) => designator).sort(),
        )
        expect(groupPlacements([...all].reverse())).toEqual(groups)
      }),
    )
  })
})
