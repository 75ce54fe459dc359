import { describe, expect, it } from 'vitest'
import { effortFor } from '../../../../src/planning/timing/effort-for.ts'

describe('schedules tried where nobody says', () => {
  it('are sixty up to five hundred tasks, fewer of more, and never fewer than twelve', () => {
    expect([0, 1, 500, 501, 1000, 3000, 100_000].map(effortFor)).toEqual([60, 60, 60, 59, 30, 12, 12])
  })
})
