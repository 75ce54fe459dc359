import { describe, expect, it } from 'vitest'
import { type Day, formatDay, parseDay, weekday } from '../../src/base/clock.ts'

// Source: NumPy reference documentation, examples of busday_offset, busday_count and is_busday (seen and run again).

const isWorkday = (day: Day) => weekday(day) < 5

function daysOf(from: string, before: string): Day[] {
  const [first, end] = [parseDay(from)!, parseDay(before)!]
  return Array.from({ length: end - first }, (_, i) => first + i)
}

describe('business days', () => {
  it('the first one of October 2011 is Monday the 3rd', () => {
    expect(formatDay(daysOf('2011-10-01', '2011-11-01').find(isWorkday)!)).toBe('2011-10-03')
  })

  it('the last one of February 2012 is the 29th', () => {
    expect(formatDay(daysOf('2012-02-01', '2012-03-01').filter(isWorkday).at(-1)!)).toBe('2012-02-29')
  })

  it('the third Wednesday of January 2011 is the 19th', () => {
    const wednesdays = daysOf('2011-01-01', '2011-02-01').filter((day) => weekday(day) === 2)
    expect(formatDay(wednesdays[2]!)).toBe('2011-01-19')
  })

  it('on or after Sunday 2011-03-20 comes Monday, strictly after Tuesday the 22nd Wednesday', () => {
    expect(weekday(parseDay('2011-03-20')!)).toBe(6)
    expect(formatDay(daysOf('2011-03-20', '2011-04-01').find(isWorkday)!)).toBe('2011-03-21')
    expect(formatDay(daysOf('2011-03-23', '2011-04-01').find(isWorkday)!)).toBe('2011-03-23')
  })

  it('January 2011 has 21 weekdays and the year 2011 has 53 Saturdays', () => {
    expect(daysOf('2011-01-01', '2011-02-01').filter(isWorkday)).toHaveLength(21)
    expect(daysOf('2011-01-01', '2012-01-01').filter((day) => weekday(day) === 5)).toHaveLength(53)
  })

  it('with holidays on 2011-07-01, 04 and 17, the 1st and 2nd are none and the 18th is one', () => {
    const holidays = ['2011-07-01', '2011-07-04', '2011-07-17'].map((text) => parseDay(text)!)
    const works = (text: string) => isWorkday(parseDay(text)!) && !holidays.includes(parseDay(text)!)
    expect(['2011-07-01', '2011-07-02', '2011-07-18'].map(works)).toEqual([false, false, true])
  })
})
