import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { collect } from '../../../src/diagnostics/collector.ts'
import { message } from '../../../src/diagnostics/message.ts'

const entry = (code: string) =>
  message<{ n: number }>({ code, level: 'error', says: (p) => `fact ${p.n}`, mend: () => 'mend', why: 'why' })
const place = (file: string, line: number, column: number) => ({ file, line, column, length: 0 })

describe('the collector', () => {
  it('sorts by file, line, column and code and says nothing twice', () => {
    const { report, diagnostics } = collect()
    report(entry('QTY02'), place('b', 1, 1), { n: 1 })
    report(entry('QTY02'), place('a', 10, 1), { n: 1 })
    report(entry('QTY02'), place('a', 9, 2), { n: 1 })
    report(entry('QTY01'), place('a', 9, 2), { n: 1 })
    report(entry('QTY01'), place('a', 9, 2), { n: 1 })
    report(entry('QTY01'), place('a', 9, 1), { n: 2 })
    expect(diagnostics().map(({ at, code }) => `${at.file}${at.line}.${at.column} ${code}`)).toEqual([
      'a9.1 QTY01',
      'a9.2 QTY01',
      'a9.2 QTY02',
      'a10.1 QTY02',
      'b1.1 QTY02',
    ])
  })

  it('gives the same whatever the order in which things were found', () => {
    const finding = fc.tuple(
      fc.constantFrom('A', 'B'),
      fc.nat(3),
      fc.nat(3),
      fc.constantFrom('REF01', 'REF02'),
      fc.nat(2),
    )
    const shuffled = fc
      .array(finding)
      .chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })))
    fc.assert(
      fc.property(shuffled, (orders) => {
        const [one, other] = orders.map((all) => {
          const { report, diagnostics } = collect()
          for (const [file, line, column, code, n] of all)
            report(entry(code), place(file, line, column), { n })
          return diagnostics()
        })
        expect(one).toEqual(other)
      }),
      { seed: 7 },
    )
  })
})
