import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { arcLeast, latestShifted, shiftDays } from '../../../../src/planning/schedule/lag.ts'
import { never } from '../../../../src/planning/schedule/work-time.ts'

fc.configureGlobal({ seed: 20260202, numRuns: 300 })

const days = fc
  .uniqueArray(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 9 })
  .map((list) => Int32Array.from(list.sort((a, b) => a - b)))

/** Day by day, counting the days that count. */
function walk(counted: Int32Array, at: number, n: number): number {
  let day = Math.floor(at / 1440)
  for (let left = Math.abs(n); left > 0; ) {
    day += Math.sign(n)
    if (day < -20) return -never
    if (day > 40) return never
    if (counted.includes(day)) left--
  }
  return n === 0 ? at : day * 1440 + (at - Math.floor(at / 1440) * 1440)
}

describe('lags in counted days', () => {
  it('a shift is the same clock time so many counted days on', () => {
    fc.assert(
      fc.property(days, fc.nat(12 * 1440), fc.integer({ min: -5, max: 5 }), (counted, at, n) => {
        expect(shiftDays(counted, at, n)).toBe(walk(counted, at, n))
      }),
    )
  })

  it('the latest instant that shifts to no later than a bound is found', () => {
    fc.assert(
      fc.property(days, fc.nat(12 * 24), fc.integer({ min: -4, max: 4 }), (counted, hour, n) => {
        const bound = hour * 60
        const found = latestShifted(counted, bound, n)
        fc.pre(Math.abs(found) < never)
        expect(walk(counted, found, n)).toBeLessThanOrEqual(bound)
        for (let at = found + 1; at < 14 * 1440; at += 59) expect(walk(counted, at, n)).toBeGreaterThan(bound)
      }),
    )
  })

  it('no later first event leads to an earlier second one than the least', () => {
    const arc = { from: 0, to: 1, fromFinish: true, toFinish: false, link: 0, turned: false }
    fc.assert(
      fc.property(days, fc.nat(11 * 24), fc.integer({ min: -3, max: 3 }), (counted, hour, n) => {
        const least = arcLeast({ ...arc, lag: n, days: counted }, hour * 60)
        let found: number = never
        for (let at = hour * 60; at < 20 * 1440; at += 60) found = Math.min(found, walk(counted, at, n))
        if (Math.abs(found) < never) expect(least).toBe(found)
      }),
    )
  })

  it('from a Saturday one working day leads to Monday at the same time, as from Friday', () => {
    const week = Int32Array.from([4, 7, 8])
    expect(shiftDays(week, 5 * 1440 + 600, 1)).toBe(7 * 1440 + 600)
    expect(shiftDays(week, 4 * 1440 + 600, 1)).toBe(7 * 1440 + 600)
    expect(shiftDays(week, 8 * 1440, 1)).toBe(never)
  })
})
