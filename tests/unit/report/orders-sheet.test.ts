import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ordersSheet } from '../../../src/report/orders-sheet.ts'
import { projects } from '../planning/random-project.ts'
import { liveDifferences } from './evaluate.ts'
import { toldOf } from './told.ts'

describe('every live cell of the orders', () => {
  it('gives today what the purchase reckoned, prices known or not', () => {
    fc.assert(
      fc.property(fc.boolean().chain(projects), ({ project, tasks }) => {
        expect(liveDifferences([ordersSheet(toldOf(project, tasks))])).toEqual([])
      }),
      { numRuns: 150 },
    )
  })
})
