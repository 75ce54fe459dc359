import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { majorUnits, roundMoney } from '../../../src/base/money.ts'
import { writeWorkbook } from '../../../src/emit/workbook/write-workbook.ts'
import type { Sheet } from '../../../src/report/cells.ts'
import { portion } from '../../../src/report/expressions.ts'
import { money, ref, rounded } from '../../../src/report/make-cells.ts'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { partsSheet } from '../../../src/report/parts-sheet.ts'
import { expectLiveCellsAgree, expectOfficeAgrees, officePresent } from '../../workbook/harness.ts'
import { projects } from '../planning/random-project.ts'
import { liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

const bookOf = (sheets: readonly Sheet[]) => ({
  title: '',
  subject: '',
  day: 20_486,
  fingerprint: '',
  sheets,
})

/** Amounts in cents and shares of them; half of them shares that end in half a cent. */
const cases = fc.oneof(
  fc.record({
    cents: fc.integer({ min: 1, max: 2_000_000 }),
    share: fc
      .tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }))
      .map(([a, b]) => new Fraction(Math.min(a, b), Math.max(a, b))),
  }),
  fc.record({
    cents: fc.integer({ min: 1, max: 999_999 }).map((odd) => 2 * odd + 1),
    share: fc
      .constantFrom('1/2', '3/2', '1/10', '3/10', '7/10', '9/10', '13/50', '1/6', '5/14')
      .map((f) => new Fraction(f)),
  }),
)

function sheetOf(all: readonly { cents: number; share: Fraction }[]): Sheet {
  const rows = all.map(({ cents, share }, at) => {
    const exact = roundMoney(majorUnits(cents, 2).mul(share), 2)
    const live = rounded(portion(ref(`whole/${at}`), share), 2)
    return { cells: [money(cents, 'EUR', { name: `whole/${at}` }), money(exact, 'EUR', { live })] }
  })
  return {
    name: 'Shares',
    widths: [14, 14],
    blocks: [{ kind: 'rows', id: 'shares', rows }],
    orientation: 'portrait',
    freeze: null,
    guarded: false,
    group: 'money',
    foot: '',
  }
}

describe('a share of an amount, rounded by a spreadsheet', () => {
  it('equals the exact share rounded half away from zero, for many amounts', () => {
    fc.assert(
      fc.property(fc.array(cases, { minLength: 50, maxLength: 50 }), (all) => {
        expect(liveDifferences([sheetOf(all)])).toEqual([])
      }),
      { numRuns: 200 },
    )
  })

  it('equals it in an independent formula engine', async () => {
    const sheet = sheetOf(fc.sample(cases, { numRuns: 800, seed: 11 }))
    expect(await expectLiveCellsAgree(await writeWorkbook(bookOf([sheet])))).toBe(800)
  })

  it.skipIf(!officePresent())('equals it in an office program', async () => {
    const sheet = sheetOf(fc.sample(cases, { numRuns: 800, seed: 12 }))
    expect(await expectOfficeAgrees(await writeWorkbook(bookOf([sheet])))).toBe(800)
  })
})

describe('orders, money and parts as written to a file', () => {
  it('are recomputed alike by an independent formula engine, prices known or not', async () => {
    const planned = [
      ...fc.sample(projects(true), { numRuns: 3, seed: 5 }),
      ...fc.sample(projects(false), { numRuns: 3, seed: 6 }),
    ]
    for (const { project, tasks } of planned) {
      const told = toldOf(project, tasks)
      const bytes = await writeWorkbook(bookOf([ordersSheet(told), moneySheet(told), partsSheet(told)]))
      expect(await expectLiveCellsAgree(bytes)).toBeGreaterThan(0)
    }
  })

  it.skipIf(!officePresent())(
    'are recomputed alike by an office program where prices are unknown',
    async () => {
      const [planned] = fc.sample(projects(true), { numRuns: 1, seed: 8 })
      const told = toldOf(planned!.project, planned!.tasks)
      const bytes = await writeWorkbook(bookOf([ordersSheet(told), moneySheet(told), partsSheet(told)]))
      expect(await expectOfficeAgrees(bytes)).toBeGreaterThan(0)
    },
  )
})
