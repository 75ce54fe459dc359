/** Work put on working days: published dates, and a published network on a constructed calendar. */
import { describe, expect, it } from 'vitest'
import { dayOf, formatDay, instantOf, parseDay } from '../../src/base/clock.ts'
import { criticalPath, finishFrom, scheduleProblem } from '../../src/planning/schedule/index.ts'
import { whyBroken } from '../unit/planning/schedule/brute-check.ts'
import { dayWindows, fromRows, glpkHouse, mode } from '../unit/planning/schedule/instances.ts'

const hours = 60
const [open, close] = [9 * hours, 17 * hours]

it('233 hours of work from 1 May 2024, eight a day, Monday to Friday, end on 11 June 2024 (MSDS 460 course report)', () => {
  const start = parseDay('2024-05-01')!
  const calendars = [dayWindows('office', start, 60, open, close)]
  const placed = finishFrom(
    mode(233 * hours, { calendar: 0, pausable: true }),
    calendars,
    instantOf(start, 0),
  )!
  expect(formatDay(dayOf(placed.finish - 1))).toBe('2024-06-11')
  expect(placed.pieces).toHaveLength(30)
  const memorialDay = [dayWindows('office', start, 60, open, close, [parseDay('2024-05-27')!])]
  const later = finishFrom(
    mode(233 * hours, { calendar: 0, pausable: true }),
    memorialDay,
    instantOf(start, 0),
  )!
  expect(formatDay(dayOf(later.finish - 1))).toBe('2024-06-12')
})

describe('the GLPK house on working days from 2 March 2026, off on 3 and 6 April (constructed, not published)', () => {
  const start = parseDay('2026-03-02')!
  const off = ['2026-04-03', '2026-04-06'].map((date) => parseDay(date)!)
  const calendars = [dayWindows('builders', start, 120, open, close, off)]
  const more = { start: instantOf(start, 0), horizon: instantOf(start + 120, 0), calendars }
  const house = fromRows(glpkHouse, more, (days) =>
    mode(days * 8 * hours, { calendar: 0, pausable: true, least: 15 }),
  )

  // First and last day worked, early and late, and float in working days.
  const expected: Record<string, [string, string, string, string, number]> = {
    A: ['03-02', '03-04', '03-02', '03-04', 0],
    B: ['03-05', '03-10', '03-05', '03-10', 0],
    C: ['03-11', '03-13', '04-01', '04-07', 15],
    D: ['03-11', '03-24', '03-11', '03-24', 0],
    E: ['03-25', '04-07', '03-25', '04-07', 0],
    F: ['03-25', '03-30', '03-31', '04-07', 4],
    G: ['03-25', '04-01', '03-27', '04-07', 2],
    H: ['04-08', '04-17', '04-08', '04-17', 0],
    I: ['04-20', '04-24', '04-20', '04-24', 0],
    J: ['04-20', '04-24', '04-22', '04-28', 2],
    K: ['04-27', '04-30', '04-27', '04-30', 0],
    L: ['04-27', '04-28', '04-29', '04-30', 2],
    M: ['05-01', '05-06', '05-01', '05-06', 0],
  }

  it('every task has its early and late days and its float', () => {
    const found = criticalPath(house)!
    const date = (at: number) => formatDay(dayOf(at)).slice(5)
    const got = found.rows.map(({ earlyStart, earlyFinish, lateStart, lateFinish, float }, k) => [
      glpkHouse[k]![0],
      [date(earlyStart), date(earlyFinish - 1), date(lateStart), date(lateFinish - 1), float / (8 * hours)],
    ])
    expect(Object.fromEntries(got)).toEqual(expected)
    expect(found.chains.map((chain) => chain.map((k) => glpkHouse[k]![0]).join(''))).toEqual(['ABDEHIKM'])
  })

  it('the schedule finishes on Wednesday 6 May 2026 in one try, which is proved best', () => {
    const outcome = scheduleProblem(house, { effort: 50, seed: 1 })
    if (outcome.kind !== 'found') throw new Error(outcome.kind)
    expect(whyBroken(house, outcome.schedule)).toBeNull()
    expect(formatDay(dayOf(outcome.schedule.finish - 1))).toBe('2026-05-06')
    expect(outcome.stats.schedulesTried).toBe(1)
  })
})
