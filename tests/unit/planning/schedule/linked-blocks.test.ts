import { describe, expect, it } from 'vitest'
import { networkOf, scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import { linkedBlocks } from '../../../../src/planning/schedule/linked-blocks.ts'
import type { Problem, Schedule } from '../../../../src/planning/schedule/problem.ts'
import { whyBroken } from './brute-check.ts'
import { calendar, link, mode, problem, take, task } from './instances.ts'

const day = 1440
const evenings = calendar(
  'evenings',
  ...Array.from({ length: 20 }, (_, d): [number, number] => [d * day + 1170, d * day + 1350]),
)
const resources = [
  { id: 'ana', capacity: 1 },
  { id: 'mill', capacity: 1 },
  { id: 'fixture', capacity: 1 },
]
const hands = (minutes: number) => mode(minutes, { calendar: 0, needs: [take(0, 1, 'work')] })
const alone = (minutes: number) => mode(minutes)

function found(shop: Problem, effort = 50): Schedule {
  const outcome = scheduleProblem(shop, { effort, seed: 1 })
  if (outcome.kind !== 'found') throw new Error(`${outcome.kind}: ${outcome.why}`)
  expect(whyBroken(shop, outcome.schedule)).toBeNull()
  return outcome.schedule
}

const starts = (schedule: Schedule) => schedule.placements.map(({ start }) => start)

describe('load, run, unload', () => {
  const rows = [task('load', hands(10)), task('run', alone(600)), task('unload', hands(10))]
  const links = [link(0, 1), link(1, 2)]
  const held = { resource: 1, amount: 1, from: 0, to: 2 }
  const more = { resources, calendars: [evenings], horizon: 20 * day }

  it('the machine waits loaded over night until the person is back', () => {
    expect(starts(found(problem(rows, { ...more, links, holds: [held] })))).toEqual([1170, 1180, day + 1170])
  })

  it('nobody else gets the machine while a finished part waits in it', () => {
    const other = task('other', mode(30, { calendar: 0, needs: [take(0, 1, 'work'), take(1)] }), {
      release: day,
    })
    const shop = problem([...rows, other], { ...more, links, holds: [held] })
    expect(starts(found(shop))).toEqual([1170, 1180, day + 1170, day + 1180])
  })

  it('without the hold the other task would go first the next evening', () => {
    const other = task('other', mode(30, { calendar: 0, needs: [take(0, 1, 'work'), take(1)] }), {
      release: day,
      preference: 1,
    })
    const shop = problem([...rows, other], { ...more, links: [...links, link(3, 2)] })
    expect(starts(found(shop))[3]).toBe(day + 1170)
  })

  it('two parts through one machine do not lock each other out', () => {
    const shop = problem([...rows, ...rows.map((row) => ({ ...row, id: `${row.id} 2` }))], {
      ...more,
      links: [...links, link(3, 4), link(4, 5)],
      holds: [held, { ...held, from: 3, to: 5 }],
    })
    // First evening load, second evening unload and load, third evening unload.
    expect(found(shop).finish).toBe(2 * day + 1180)
  })

  it('pieces loaded one after the other keep one hold from the first load to the last unload', () => {
    const twice = [...rows, ...rows]
    const shop = problem(twice, {
      ...more,
      links: [0, 1, 2, 3, 4].map((k) => link(k, k + 1)),
      holds: [{ ...held, to: 5 }],
    })
    expect(found(shop).finish).toBe(2 * day + 1180)
  })

  it('a fixture hold that also covers a cure keeps the fixture but lets the machine go', () => {
    const cure = task('cure', alone(2 * day))
    const second = rows.map((row) => ({ ...row, id: `${row.id} 2` }))
    const shop = problem([...rows, cure, ...second], {
      ...more,
      links: [...links, link(2, 3), link(4, 5), link(5, 6)],
      holds: [
        held,
        { ...held, from: 4, to: 6 },
        { resource: 2, amount: 1, from: 0, to: 3 },
        { resource: 2, amount: 1, from: 4, to: 6 },
      ],
    })
    const schedule = found(shop)
    const [fixtureOne, fixtureTwo] = [schedule.placements[3]!.finish, schedule.placements[4]!.start]
    expect(fixtureTwo >= fixtureOne || schedule.placements[6]!.finish <= schedule.placements[0]!.start).toBe(
      true,
    )
    // Second part first (one night), then the first part and its cure: 2 days after the third evening's unloading.
    expect(schedule.finish).toBe(2 * day + 1180 + 2 * day)
  })

  it('a hold may begin and end with the same task', () => {
    const shop = problem([task('a', alone(50)), task('b', alone(50))], {
      resources,
      holds: [
        { resource: 1, amount: 1, from: 0, to: 0 },
        { resource: 1, amount: 1, from: 1, to: 1 },
      ],
    })
    expect(found(shop).finish).toBe(100)
  })
})

describe('longest waits', () => {
  it('glue is not spread late in the evening when the clamp could only follow the next day', () => {
    const shop = problem([task('glue', hands(20), { release: 1315 }), task('clamp', hands(30))], {
      resources,
      calendars: [evenings],
      horizon: 20 * day,
      links: [link(0, 1, { longest: 10 })],
    })
    expect(starts(found(shop))).toEqual([day + 1170, day + 1190])
  })

  it('a block moves behind a task that would come between its members', () => {
    const busy = task('busy', mode(60, { needs: [take(0)] }), { release: 30 })
    const shop = problem(
      [
        task('a', mode(20, { needs: [take(0)] }), { release: 15 }),
        task('b', mode(20, { needs: [take(0)] })),
        busy,
      ],
      {
        resources,
        links: [link(0, 1, { lag: 5, longest: 5 })],
      },
    )
    const schedule = found(shop)
    expect(schedule.placements[1]!.start - schedule.placements[0]!.finish).toBe(5)
    expect(schedule.finish).toBe(120)
  })

  it('a wait that no calendar can keep is answered with the waiting tasks, not with a schedule', () => {
    const shop = problem([task('a', hands(180)), task('b', hands(30))], {
      resources,
      calendars: [evenings],
      horizon: 20 * day,
      links: [link(0, 1, { longest: 60 })],
    })
    expect(scheduleProblem(shop, { effort: 20, seed: 1 })).toMatchObject({
      kind: 'none found',
      why: 'longest wait missed',
    })
  })
})

describe('reasons', () => {
  it('tied tasks for which only the calendars end too soon do not miss a longest wait', () => {
    const more = { resources, calendars: [evenings], horizon: 20 * day, links: [link(0, 1, { longest: 10 })] }
    const clamp = task('clamp', hands(30))
    const late = problem([task('glue', hands(20), { release: 19 * day + 1320 }), clamp], more)
    const stuck = { kind: 'none found', stuck: [0, 1], why: 'beyond horizon' }
    expect(scheduleProblem(late, { effort: 5, seed: 1 })).toEqual(stuck)
    const behind = problem([task('glue', hands(20)), clamp, task('first', mode(19 * day + 1320))], {
      ...more,
      links: [...more.links, link(2, 0)],
    })
    expect(scheduleProblem(behind, { effort: 5, seed: 1 })).toEqual(stuck)
  })
})

describe('blocks', () => {
  it('holds, longest waits and rings of lags tie tasks; what lies between two tied tasks belongs to them', () => {
    const tasks = Array.from({ length: 8 }, (_, k) => task(`t${k}`, alone(1)))
    const links = [
      link(0, 1),
      link(1, 2),
      link(2, 3),
      link(3, 4, { longest: 9 }),
      link(4, 5),
      link(5, 6),
      link(6, 5, { lag: -9 }),
      link(6, 7),
    ]
    const blocks = linkedBlocks(
      networkOf(problem(tasks, { resources, links, holds: [{ resource: 1, amount: 1, from: 0, to: 2 }] })),
    )
    expect([...blocks.members].sort((a, b) => a[0]! - b[0]!)).toEqual([[0, 1, 2], [3, 4], [5, 6], [7]])
  })
})
