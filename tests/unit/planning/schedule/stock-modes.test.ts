import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import type { Mode, Need } from '../../../../src/planning/schedule/problem.ts'
import { whyBroken } from './brute-check.ts'
import { calendar, link, mode, problem, take, task } from './instances.ts'

const uses = (amount: number): Need => ({ resource: 1, amount, during: 'ever' })
const evenings = [calendar('evenings', [0, 10], [20, 30], [40, 60], [70, 200], [210, 900])]

/** Quick with much of the stock, or slow with little. */
const ways = (calendar: number | null): Mode[] => [
  mode(4, { calendar, needs: [take(0), uses(3)] }),
  mode(9, { calendar, needs: [take(0), uses(1)] }),
]
const shop = (tasks: number, stock: number, hours: number | null) =>
  problem(
    Array.from({ length: tasks }, (_, k) => task(`t${k}`, ways(hours))),
    {
      calendars: evenings,
      resources: [
        { id: 'saw', capacity: 1 },
        { id: 'sheet', capacity: stock },
      ],
      links: [link(0, tasks - 1)],
    },
  )
const ask = (one: ReturnType<typeof shop>) => scheduleProblem(one, { effort: 300, seed: 1 })

describe('a stock that tasks use up', () => {
  it('is never overdrawn: as many tasks are quick as it allows, with and without calendars', () => {
    // Three tasks and 5 of the stock: one quick (3) and two slow (1 each), so 4 + 9 + 9 on one saw.
    expect(ask(shop(3, 5, null))).toMatchObject({ kind: 'found', schedule: { finish: 22 } })
    const hours = ask(shop(3, 5, 0))
    if (hours.kind !== 'found') throw new Error(hours.kind)
    expect(whyBroken(shop(3, 5, 0), hours.schedule)).toBeNull()
  })

  it('that not even the thriftiest modes leave enough of is a proof that there is no schedule', () => {
    expect(ask(shop(3, 2, null))).toEqual({ kind: 'impossible', tasks: [0, 1, 2], why: 'capacity' })
    expect(ask(shop(3, 2, 0))).toEqual({ kind: 'impossible', tasks: [0, 1, 2], why: 'capacity' })
  })

  it('is kept in every schedule of random problems on calendars', () => {
    const some = fc.record({
      tasks: fc.integer({ min: 2, max: 8 }),
      more: fc.nat(8),
      hours: fc.constantFrom(0, null),
    })
    fc.assert(
      fc.property(some, ({ tasks, more, hours }) => {
        const one = shop(tasks, tasks + more, hours)
        const outcome = ask(one)
        if (outcome.kind !== 'found') throw new Error(outcome.kind)
        expect(whyBroken(one, outcome.schedule)).toBeNull()
        expect(outcome.bound).toBeLessThanOrEqual(outcome.schedule.finish)
      }),
      { numRuns: 60, seed: 3 },
    )
  })
})
