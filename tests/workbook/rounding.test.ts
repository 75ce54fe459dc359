import { describe, expect, it } from 'vitest'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import type { Row } from '../../src/report/cells.ts'
import { expectOfficeAgrees, liveCellDifferences, officePresent, readBack } from './harness.ts'
import { bookOf, number, ref } from './sample-book.ts'

/** A count times a price in thousandths, whose exact product ends in half a cent. */
interface Tie {
  readonly qty: number
  readonly thousandths: number
}

/** Every such pair of small numbers, with those that binary arithmetic puts below the tie. */
const ties: readonly Tie[] = Array.from({ length: 60 }, (_, at) => at + 1)
  .flatMap((qty) =>
    [5, 35, 115, 145, 285, 335, 1005, 1115, 2675, 8345].map((thousandths) => ({ qty, thousandths })),
  )
  .filter(({ qty, thousandths }) => (qty * thousandths) % 10 === 5)

/** Half away from zero in whole thousandths, which is exact. */
function cents({ qty, thousandths }: Tie): number {
  return (qty * thousandths + 5) / 10
}

function line(tie: Tie, at: number, sign: 1 | -1): Row {
  const money = { as: 'money', currency: 'EUR', digits: 2 } as const
  const product = { op: '*', left: ref(`qty/${at}`), right: ref(`price/${at}`) } as const
  return {
    cells: [
      number(sign * tie.qty, { as: 'count' }, { name: `qty/${at}` }),
      number(tie.thousandths / 1000, { as: 'price', currency: 'EUR', digits: 3 }, { name: `price/${at}` }),
      number((sign * cents(tie)) / 100, money, { live: { op: 'round', of: product, digits: 2 } }),
    ],
  }
}

const rows = ties.flatMap((tie, at) => [line(tie, at, 1), line(tie, at + ties.length, -1)])

describe('a live line that ends in half a cent', () => {
  it('is a case that plain binary rounding gets wrong', () => {
    const wrong = ties.filter((tie) => Math.round(tie.qty * (tie.thousandths / 1000) * 100) !== cents(tie))
    expect(wrong.length).toBeGreaterThan(0)
  })

  it('rounds away from zero in an independent formula engine, above and below zero', async () => {
    expect(liveCellDifferences(await readBack(await writeWorkbook(bookOf(rows))))).toEqual([])
  })

  it.skipIf(!officePresent())(
    'rounds away from zero in an office program, above and below zero',
    async () => {
      expect(await expectOfficeAgrees(await writeWorkbook(bookOf(rows)))).toBe(rows.length)
    },
  )
})
