import { expect, it } from 'vitest'
import { effortFor } from '../../../../src/planning/timing/effort-for.ts'

it('is as usual for a device of a bench, less where each schedule takes longer, and never less than the rules take', () => {
  expect([0, 30, 300, 1000, 3000, 10_000, 100_000].map(effortFor)).toEqual([400, 400, 400, 120, 13, 12, 12])
})
