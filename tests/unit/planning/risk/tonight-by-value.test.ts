import { describe, expect, it } from 'vitest'
import { instantOf, parseDay } from '../../../../src/base/clock.ts'
import type { Results } from '../../../../src/model/results.ts'
import { layOutSamples } from '../../../../src/planning/risk/lay-out-samples.ts'
import { tonightByValue } from '../../../../src/planning/risk/tonight-by-value.ts'
import { planned } from '../../../reference/calendar-bench.ts'
import { drying, parcel } from './small-plans.ts'

const at = (day: string, hour: number) => instantOf(parseDay(day)!, 60 * hour)
const actionsOf = (results: Results) =>
  tonightByValue(results, layOutSamples(results, { samples: 20, seed: 1 }))

describe('what could be begun in the next session though it is planned later', () => {
  // The plan was made when b took six days to dry: b on Monday, a on Tuesday. Now a takes six and b one, so a on
  // Monday, done Sunday 22:00, is done one day before a on Tuesday. Waiting with b frees Monday for a and costs nothing.
  it('is worth what the date comes earlier by where it goes first', () => {
    const then = drying('1 d', '6 d')
    const now = drying('6 d', '1 d')
    expect(then.schedule.tasks.get('work a')!.start).toBe(at('2026-03-03', 19))
    const stale = { ...now, schedule: then.schedule, sessions: then.sessions }
    expect(actionsOf(stale)).toEqual([
      {
        task: 'work a',
        person: 'ana',
        open: at('2026-03-02', 19),
        close: at('2026-03-02', 22),
        planned: false,
        until: at('2026-03-03', 19),
        days: 1,
        share: 1,
        why: [
          { kind: 'starts running', machine: null, minutes: 6 * 1440 },
          { kind: 'on chains', share: 1 },
        ],
      },
    ])
  })

  it('is nothing where the plan is in the best order already', () => {
    expect(actionsOf(drying('6 d', '1 d')).map(({ task, planned }) => [task, planned])).toEqual([
      ['work a', true],
    ])
  })

  // What dries between a and b is not hard before Wednesday.
  it('is not what waits for something that is not done by then', () => {
    const results = planned(
      `device: {name: two, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
work: {a: {time: 30 min}, wait: {time: 2 d, attention: none, after: [a]}, b: {time: 3 h, after: [wait]}}
`,
      { samples: 0 },
    )
    expect(actionsOf(results).map(({ task }) => task)).toEqual(['work a'])
  })
})

describe('the next session of each person', () => {
  // Ben's week begins on Wednesday. His hour and then ana's on Thursday set the date: an evening lost to him is a week.
  const results = planned(
    `device: {name: two, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}, ben: {hours: {wed: "19:00-22:00"}}}
work: {draw: {time: 1 h, who: ana}, check: {time: 1 h, who: ben, after: [draw]}}
`,
    { samples: 0 },
  )

  it('has its own actions, ranked by what waiting for their own next session costs', () => {
    expect(
      actionsOf(results).map(({ person, task, open, until, days }) => [person, task, open, until, days]),
    ).toEqual([
      // Drawn on Tuesday it is still there for ben on Wednesday: ana may wait, and her work is not told.
      ['ben', 'work check', at('2026-03-04', 19), at('2026-03-11', 19), 7],
    ])
  })
})

describe('the reasons of an action', () => {
  // Ordered Mon 2, usable Thu 12: ten days. Delivery, unpacking and fitting come after it.
  it('are the waiting that an order starts, its share of chains, and what comes after it', () => {
    const results = parcel()
    expect(actionsOf(results).map(({ task, why }) => [task, why])).toEqual([
      [
        'cart shop / order',
        [
          { kind: 'starts waiting', days: 10 },
          { kind: 'on chains', share: 1 },
          { kind: 'opens', tasks: 3 },
        ],
      ],
    ])
  })
})
