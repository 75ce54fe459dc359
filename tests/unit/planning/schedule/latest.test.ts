import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { finishFrom, latestStarts, scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import type { Problem } from '../../../../src/planning/schedule/problem.ts'
import { whyBroken } from './brute-check.ts'
import { calendar, link, mode, problem, sixShop, take, task } from './instances.ts'
import { problems } from './random-problems.ts'

function found(shop: Problem) {
  const outcome = scheduleProblem(shop, { effort: 20, seed: 1 })
  if (outcome.kind !== 'found') throw new Error(outcome.kind)
  return outcome.schedule
}

describe('latest starts', () => {
  it('all latest starts together are a schedule that keeps every rule and the finish', () => {
    let moved = 0
    fc.assert(
      fc.property(problems, (random) => {
        const outcome = scheduleProblem(random, { effort: 4, seed: 1 })
        fc.pre(outcome.kind === 'found')
        const { placements, finish } = outcome.schedule
        const late = latestStarts(random, outcome.schedule)
        const pushed = placements.map(({ mode: way }, k) => {
          const again = finishFrom(random.tasks[k]!.modes[way]!, random.calendars, late.start[k]!)!
          return { mode: way, ...again }
        })
        const end = Math.max(0, ...pushed.map((placement) => placement.finish))
        expect(end).toBeLessThanOrEqual(finish)
        expect(whyBroken(random, { placements: pushed, finish: end })).toBeNull()
        for (const [k, placement] of placements.entries()) {
          expect(late.start[k]).toBeGreaterThanOrEqual(placement.start)
          if (late.start[k]! > placement.start) moved++
        }
      }),
      { numRuns: 250, seed: 4 },
    )
    expect(moved).toBeGreaterThan(100)
  })

  it('go backwards over the machine order, not only over the links', () => {
    const resources = [{ id: 'mill', capacity: 1 }]
    const shop = problem(
      ['a', 'b', 'c'].map((id) => task(id, mode(10, { needs: [take(0)] }))),
      { resources },
    )
    expect([...latestStarts(shop, found(shop)).start].sort((a, b) => a - b)).toEqual([0, 10, 20])
  })

  it('a machine held over night holds back the task before it as well', () => {
    const day = 1440
    const evenings = calendar(
      'evenings',
      ...Array.from({ length: 9 }, (_, d): [number, number] => [d * day + 1170, d * day + 1350]),
    )
    const hands = mode(10, { calendar: 0, needs: [take(0, 1, 'work')] })
    const before = mode(30, { calendar: 0, needs: [take(0, 1, 'work'), take(1)] })
    const shop = problem(
      [
        task('before', before, { preference: 1 }),
        task('load', hands),
        task('run', mode(600)),
        task('unload', hands),
      ],
      {
        resources: [
          { id: 'ana', capacity: 1 },
          { id: 'mill', capacity: 1 },
        ],
        calendars: [evenings],
        horizon: 9 * day,
        links: [link(0, 1), link(1, 2), link(2, 3)],
        holds: [{ resource: 1, amount: 1, from: 1, to: 3 }],
      },
    )
    // The load may wait until 22:20, its run still ends before the next evening; the task before it then until 21:50.
    expect([...latestStarts(shop, found(shop)).start]).toEqual([1310, 1340, day + 570, day + 1170])
  })

  it('an order may wait until a minute before the cutoff', () => {
    const timetable = { leaveBefore: Int32Array.from([720, 2160]), arrives: Int32Array.from([5000, 6440]) }
    const shop = problem(
      [task('draw', mode(60)), task('order', mode(0, { timetable })), task('fit', mode(30))],
      { links: [link(0, 1), link(1, 2)] },
    )
    expect([...latestStarts(shop, found(shop)).start]).toEqual([659, 719, 5000])
  })

  it('in a job shop at least one task of each finishing chain has no time to spare', () => {
    const schedule = found(sixShop)
    const late = latestStarts(sixShop, schedule)
    expect(schedule.placements.some((placement, k) => placement.start === 0 && late.start[k] === 0)).toBe(
      true,
    )
  })
})
