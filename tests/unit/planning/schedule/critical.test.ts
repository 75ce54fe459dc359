import { describe, expect, it } from 'vitest'
import { criticalPath } from '../../../../src/planning/schedule/index.ts'
import { calendar, link, mode, problem, take, task } from './instances.ts'

const day = 1440
const evenings = calendar(
  'evenings',
  ...Array.from({ length: 20 }, (_, d): [number, number] => [d * day + 1170, d * day + 1350]),
)
const on = { calendars: [evenings], horizon: 20 * day }
const hands = (minutes: number) => mode(minutes, { calendar: 0, pausable: true, least: 15 })

describe('the plain critical path', () => {
  it('drops capacities: two tasks for one person run side by side', () => {
    const one = mode(30, { needs: [take(0)] })
    const both = problem([task('a', one), task('b', one)], { resources: [{ id: 'ana', capacity: 1 }] })
    expect(criticalPath(both)).toMatchObject({ finish: 30, chains: [[0], [1]], chainCount: 2n })
  })

  it('a cure that ends in the night is critical though it has float, since the work after it waits for the evening', () => {
    const found = criticalPath(
      problem([task('glue', hands(30)), task('cure', mode(600)), task('trim', hands(30))], {
        ...on,
        links: [link(0, 1), link(1, 2)],
      }),
    )!
    expect(found.chains).toEqual([[0, 1, 2]])
    expect(found.rows.map((row) => row.float)).toEqual([150, 810, 0])
  })

  it('float is counted in open minutes of the task own calendar', () => {
    const found = criticalPath(problem([task('long', hands(400)), task('short', hands(20))], { ...on }))!
    // The long task ends at 20:10 of the third evening, so the short one may wait two evenings and 20 minutes.
    expect(found.rows[1]).toMatchObject({
      earlyStart: 1170,
      lateStart: 2 * day + 1190,
      float: 2 * 180 + 20,
      critical: false,
    })
  })

  it('a task takes its fastest mode, unless modes are given', () => {
    const two = problem([task('a', [mode(30), mode(20)])])
    expect(criticalPath(two)!.rows[0]).toMatchObject({ mode: 1, earlyFinish: 20 })
    expect(criticalPath(two, { modes: [0] })!.rows[0]).toMatchObject({ mode: 0, earlyFinish: 30 })
  })

  it('counts all chains exactly and lists no more than asked', () => {
    const rungs = 70
    const tasks = Array.from({ length: 2 * rungs }, (_, k) => task(`t${k}`, mode(5)))
    const links = Array.from({ length: rungs - 1 }, (_, k) =>
      [0, 1].flatMap((a) => [0, 1].map((b) => link(2 * k + a, 2 * k + 2 + b))),
    ).flat()
    const found = criticalPath(problem(tasks, { links }), { mostChains: 7 })!
    expect(found.chainCount).toBe(2n ** 70n)
    expect(found.chains).toHaveLength(7)
    expect(found.chains.every((chain) => chain.length === rungs)).toBe(true)
  })

  it('a longest wait keeps the task before it from starting early, without making it critical', () => {
    const tasks = [task('glue', mode(10)), task('print', mode(100)), task('clamp', mode(20))]
    const found = criticalPath(problem(tasks, { links: [link(0, 2, { longest: 5 }), link(1, 2)] }))!
    expect(found.rows[0]).toMatchObject({ earlyStart: 85, lateStart: 90 })
    expect(found.chains).toEqual([[1, 2]])
  })

  it('two tasks tied by an equal lag and longest wait give one chain, not a ring', () => {
    const tasks = [task('a', mode(10)), task('b', mode(10))]
    expect(criticalPath(problem(tasks, { links: [link(0, 1, { lag: 5, longest: 5 })] }))).toMatchObject({
      chains: [[0, 1]],
      chainCount: 1n,
    })
  })

  it('lags in working days keep the clock time and pass over the weekend', () => {
    const week = { id: 'week', days: Int32Array.from([4, 7, 8, 9]) }
    const tasks = [task('post', mode(0), { release: 4 * day + 900 }), task('arrives', mode(0))]
    const found = criticalPath(
      problem(tasks, { dayCalendars: [week], links: [link(0, 1, { lag: { days: 2, calendar: 0 } })] }),
    )!
    expect(found.rows[1]!.earlyStart).toBe(8 * day + 900)
    // Any time on Sunday (day 6) leads to the second day after, Tuesday, at that time; 15:00 is the latest that keeps 15:00.
    expect(found.rows[0]!.lateStart).toBe(6 * day + 900)
  })

  it('is null where the links leave no time before the horizon', () => {
    expect(criticalPath(problem([task('a', hands(9000))], on))).toBeNull()
  })
})
