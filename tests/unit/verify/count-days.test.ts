import { describe, expect, test } from 'vitest'
import { parseDay, sayInstant } from '../../../src/base/clock.ts'
import type { Vendor } from '../../../src/model/project.ts'
import { usableFrom, workingDaysLater } from '../../../src/verify/count-days.ts'
import { at, pattern, vendor } from './world.ts'

/** Counted by hand on the calendar of February 2026, whose 2nd is a Monday. */
function comes(
  order: string,
  [outDays, leadDays, transitDays]: number[],
  facts: Partial<Vendor> = {},
): string {
  const days = { outDays: outDays!, leadDays: leadDays!, transitDays: transitDays! }
  const usable = usableFrom(at(order), { cart: 'x', vendor: 'x', ...days }, vendor('x', facts))
  return usable === null ? 'never' : sayInstant(usable)
}

const holiday = (day: string) => ({ first: parseDay(day)!, last: parseDay(day)! })

describe('an order', () => {
  test.each([
    ['2026-02-02 11:59', [0, 0, 0], 'Mon 2026-02-02 18:00'],
    ['2026-02-02 12:00', [0, 0, 0], 'Tue 2026-02-03 18:00'],
    ['2026-02-06 12:00', [0, 0, 0], 'Mon 2026-02-09 18:00'],
    ['2026-02-07 09:00', [0, 0, 0], 'Mon 2026-02-09 18:00'],
    ['2026-02-02 11:00', [0, 3, 2], 'Mon 2026-02-09 18:00'],
    ['2026-02-02 19:50', [0, 3, 2], 'Tue 2026-02-10 18:00'],
    ['2026-02-02 11:00', [0, 5, 0], 'Mon 2026-02-09 18:00'],
  ])('at %s with days %j comes %s', (order, days, usable) => {
    expect(comes(order, days)).toBe(usable)
  })

  test('skips the holidays of the vendor while it leads and of the carrier while it travels', () => {
    const days = { ...pattern('MTWTF--'), off: [holiday('2026-02-04')] }
    expect(comes('2026-02-02 11:00', [0, 3, 0], { days })).toBe('Fri 2026-02-06 18:00')
    expect(comes('2026-02-02 11:00', [0, 0, 3], { carrier: days })).toBe('Fri 2026-02-06 18:00')
    expect(comes('2026-02-04 11:00', [0, 0, 0], { days })).toBe('Thu 2026-02-05 18:00')
  })

  test('that is ready on a Saturday waits there for the carrier, unless there is nothing to carry', () => {
    const days = pattern('MTWTFS-')
    expect(comes('2026-02-06 11:00', [0, 1, 1], { days })).toBe('Mon 2026-02-09 18:00')
    expect(comes('2026-02-06 11:00', [0, 1, 0], { days })).toBe('Sat 2026-02-07 18:00')
    expect(comes('2026-02-06 11:00', [0, 0, 1], { carrier: days })).toBe('Sat 2026-02-07 18:00')
  })

  test('comes with the post of the next carrier day where the post of the day was before it', () => {
    expect(comes('2026-02-02 10:00', [0, 0, 0], { post: 480 })).toBe('Tue 2026-02-03 08:00')
  })

  test('to a vendor without days never comes', () => {
    expect(comes('2026-02-02 10:00', [0, 1, 0], { days: pattern('-------') })).toBe('never')
  })
})

describe('parts sent out', () => {
  test.each([
    // There on Wednesday, three days of work to Monday, back on Wednesday.
    ['2026-02-02 11:00', [2, 3, 2], {}, 'Wed 2026-02-11 18:00'],
    // Posted on Tuesday, there on Thursday.
    ['2026-02-02 12:00', [2, 3, 2], {}, 'Thu 2026-02-12 18:00'],
    // Posted on the vendor's Tuesday, there on Thursday, taken up on the next Tuesday, back on Wednesday.
    ['2026-02-02 11:00', [2, 0, 1], { days: pattern('-T-----') }, 'Wed 2026-02-11 18:00'],
    // Posted on Saturday, there on Monday: Saturday is a day of the vendor but not of the carrier.
    ['2026-02-06 12:00', [1, 0, 1], { days: pattern('MTWTFS-') }, 'Tue 2026-02-10 18:00'],
    // Posted on Friday, there on Saturday with a carrier that travels then, taken up on Monday.
    ['2026-02-06 11:00', [1, 0, 1], { carrier: pattern('MTWTFS-') }, 'Tue 2026-02-10 18:00'],
  ])('at %s with days %j come back %#', (order, days, facts, usable) => {
    expect(comes(order, days, facts)).toBe(usable)
  })
})

test('working days later is Monday to Friday at the same clock time', () => {
  const later = (from: string, days: number) => sayInstant(workingDaysLater(at(from), days))
  expect(later('2026-02-05 20:35', 3)).toBe('Tue 2026-02-10 20:35')
  expect(later('2026-02-07 10:00', 1)).toBe('Mon 2026-02-09 10:00')
  expect(later('2026-02-07 10:00', 0)).toBe('Sat 2026-02-07 10:00')
})
