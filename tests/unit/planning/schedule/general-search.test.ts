import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import type { Problem, Schedule } from '../../../../src/planning/schedule/problem.ts'
import { whyBroken } from './brute-check.ts'
import {
  calendar,
  j301_1,
  link,
  mode,
  patterson1,
  patterson8,
  problem,
  sixShop,
  take,
  task,
} from './instances.ts'
import { problems } from './random-problems.ts'

/** The same problem said so that only the general path takes it: every task on a calendar that is always open. */
function withHours(plain: Problem): Problem {
  const horizon = 1000
  return {
    ...plain,
    horizon,
    calendars: [calendar('always', [0, horizon])],
    tasks: plain.tasks.map((one) => ({ ...one, modes: one.modes.map((way) => ({ ...way, calendar: 0 })) })),
  }
}

const found = (asked: Problem, effort = 200): Schedule => {
  const outcome = scheduleProblem(asked, { effort, seed: 1 })
  if (outcome.kind !== 'found') throw new Error(outcome.kind)
  expect(whyBroken(asked, outcome.schedule)).toBeNull()
  return outcome.schedule
}

/** Four evenings of 100 minutes, a day of 1,000 apart. */
const evenings = calendar('evenings', [0, 100], [1000, 1100], [2000, 2100], [3000, 3100])
const person = { id: 'person', capacity: 1, sessions: evenings.spans }
const hands = (minutes: number, more = {}) =>
  mode(minutes, { calendar: 0, needs: [take(0, 1, 'work')], ...more })
const bench = (tasks: Problem['tasks'], more: Partial<Problem> = {}): Problem =>
  problem(tasks, { horizon: 10_000, calendars: [evenings], resources: [person], ...more })

describe('problems with hours', () => {
  it('published optima are found by the general path as by the fast one', () => {
    // Optima: instances.ts names the source of each.
    for (const [instance, optimum] of [
      [patterson1, 19],
      [patterson8, 11],
      [j301_1, 43],
      [sixShop, 55],
    ] as const) {
      expect(found(withHours(instance), 1000).finish).toBe(optimum)
    }
  })

  it('an order to begin with is never done worse than', () => {
    fc.assert(
      fc.property(problems, fc.array(fc.nat(1000), { minLength: 9, maxLength: 9 }), (random, ranks) => {
        const first = scheduleProblem(random, { effort: 1, seed: 1, first: ranks })
        const more = scheduleProblem(random, { effort: 9, seed: 1, first: ranks })
        if (first.kind !== 'found') return
        expect(more.kind === 'found' && more.schedule.finish <= first.schedule.finish).toBe(true)
      }),
      { numRuns: 100, seed: 4 },
    )
  })
})

describe('two people with different evenings', () => {
  it('are bounded by the hours that each has, not by twice the hours of both', () => {
    // By hand: 15 pieces of 10 that may not pause. Ana has 100 on the first evening, ben 100 on the second and no other:
    // 10 pieces on the first, 5 on the second. Too many for the small proof, so the bound alone must tell.
    const [ana, ben] = [calendar('ana', [0, 100]), calendar('ben', [1000, 1100])]
    const one = Array.from({ length: 15 }, (_, k) =>
      task(`piece ${k}`, [
        mode(10, { calendar: 0, needs: [take(0, 1, 'work')] }),
        mode(10, { calendar: 1, needs: [take(1, 1, 'work')] }),
      ]),
    )
    const both = problem(one, {
      horizon: 10_000,
      calendars: [ana, ben],
      resources: [
        { id: 'ana', capacity: 1, sessions: ana.spans },
        { id: 'ben', capacity: 1, sessions: ben.spans },
      ],
    })
    const outcome = scheduleProblem(both, { effort: 20, seed: 1, nodes: 0 })
    expect(outcome.kind === 'found' && [outcome.schedule.finish, outcome.bound]).toEqual([1050, 1050])
  })
})

describe('of the same finish', () => {
  it('work that nothing tells apart goes as listed, whatever number it has', () => {
    const listed = [3, 0, 2, 4, 1]
    const plan = found(bench(listed.map((place) => task(`place ${place}`, hands(10), { listed: place }))))
    const order = listed
      .map((_, at) => at)
      .sort((a, b) => plan.placements[a]!.start - plan.placements[b]!.start)
    expect(order.map((at) => listed[at]!)).toEqual([0, 1, 2, 3, 4])
  })

  // The last task lies on the third evening whatever happens; the two small ones have the evenings before it.
  const late = task('late', hands(50), { release: 2000 })

  it('two half-filled evenings become one', () => {
    const a = task('a', hands(40))
    const b = task('b', hands(40), { release: 500 })
    const plan = found(bench([a, b, late]))
    expect(plan.finish).toBe(2050)
    // Both on the second evening, or one of them beside the last task.
    const used = new Set(plan.placements.map(({ start }) => Math.floor(start / 1000)))
    expect(used.size).toBe(2)
  })

  it('an evening in which an order goes out is kept', () => {
    const order = task('order', hands(10), { uncertain: 3 })
    const plan = found(bench([order, late]))
    expect(plan.placements[0]!.start).toBe(0)
  })

  it('the cheaper hands do the work', () => {
    const two = [
      { id: 'dear', capacity: 1 },
      { id: 'cheap', capacity: 1 },
    ]
    const ways = [mode(30, { needs: [take(0)], cost: 9 }), mode(30, { needs: [take(1)], cost: 4 })]
    const plan = found(problem([task('a', ways), task('b', mode(60))], { resources: two }))
    expect(plan.finish).toBe(60)
    expect(plan.placements[0]!.mode).toBe(1)
  })

  it('half-done work waits less', () => {
    // One machine, two rows of two; turn about would finish at the same time with both rows waiting.
    const tasks = ['a1', 'a2', 'b1', 'b2'].map((id) => task(id, mode(10, { needs: [take(0)] })))
    const links = [link(0, 1, { halfDone: true }), link(2, 3, { halfDone: true })]
    const plan = found(problem(tasks, { links, resources: [{ id: 'mill', capacity: 1 }] }))
    const waits = links.map(({ from, to }) => plan.placements[to]!.start - plan.placements[from]!.finish)
    expect(plan.finish).toBe(40)
    expect(waits).toEqual([0, 0])
  })
})

describe('due dates', () => {
  it('what is due goes first though the whole is finished later', () => {
    // A long task first would let its waiting time run beside the other: 100 + 40. The due one first: 130 + 40.
    const tasks = [
      task('long', mode(100, { needs: [take(0)] })),
      task('due', mode(30, { needs: [take(0)] }), { due: 30 }),
      task('after long', mode(40)),
    ]
    const links = [link(0, 2)]
    const resources = [{ id: 'mill', capacity: 1 }]
    const free = problem(
      tasks.map(({ due: _, ...rest }) => rest),
      { links, resources },
    )
    expect(found(free).finish).toBe(140)
    const plan = found(problem(tasks, { links, resources }))
    expect(plan.placements[1]!.finish).toBe(30)
    expect(plan.finish).toBe(170)
  })
})

describe('bounds', () => {
  it('work for one person is held against the evenings there are', () => {
    // By links and hours alone all three could end on the first evening; 250 minutes need three.
    const tasks = ['a', 'b', 'c'].map((id) => task(id, hands(id === 'c' ? 50 : 100)))
    const outcome = scheduleProblem(bench(tasks), { effort: 20, seed: 1 })
    expect(outcome).toMatchObject({ kind: 'found', bound: 2050, proved: true, schedule: { finish: 2050 } })
  })

  it('two who may stand in for each other are counted together', () => {
    const resources = [person, { ...person, id: 'other' }]
    const ways = [hands(100), mode(100, { calendar: 0, needs: [take(1, 1, 'work')] })]
    const tasks = Array.from({ length: 40 }, (_, k) => task(`t${k}`, ways))
    const week = Array.from({ length: 40 }, (_, k) => [k * 1000, k * 1000 + 100] as const)
    const outcome = scheduleProblem(
      bench(tasks, { horizon: 50_000, resources, calendars: [calendar('evenings', ...week)] }),
      { effort: 20, seed: 1 },
    )
    // 4,000 minutes, 200 in each evening: twenty evenings.
    expect(outcome).toMatchObject({ kind: 'found', bound: 19_100, proved: true })
  })
})
