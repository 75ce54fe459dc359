import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { moneySheet } from '../../../src/report/money-sheet.ts'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { projects } from '../planning/random-project.ts'
import { liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

describe('every live cell of orders and money', () => {
  it('gives today what purchase and money reckoned, prices known or not', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        const told = toldOf(project, tasks)
        expect(liveDifferences([ordersSheet(told), moneySheet(told)])).toEqual([])
      }),
      { numRuns: 150 },
    )
  })
})
