import { describe, expect, it } from 'vitest'
import { instantOf, parseDay } from '../../../../src/base/clock.ts'
import { changesOf } from '../../../../src/planning/risk/changes.ts'
import { leversOf } from '../../../../src/planning/risk/levers-of.ts'
import { planned } from '../../../reference/calendar-bench.ts'
import { drying, parcel } from './small-plans.ts'

describe('what would bring the date nearer', () => {
  it('is a cart ordered a working day earlier where the parcel sets the date', () => {
    const [lever] = leversOf(parcel('5 wd')).levers
    expect(lever).toMatchObject({ kind: 'order earlier', of: 'shop', days: 1 })
  })

  // Two runs of 30 h one after the other, or beside each other.
  it('is a second machine where two runs wait for one', () => {
    const results = planned(
      `device: {name: ovens, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
machines: {oven: {}}
work: {a: {time: 30 h, attention: none, machine: oven}, b: {time: 30 h, attention: none, machine: oven}}
`,
      { samples: 0 },
    )
    expect(leversOf(results).levers).toEqual([
      {
        kind: 'second machine',
        of: 'oven',
        person: null,
        weekday: null,
        finish: results.schedule.finish - 30 * 60,
        days: 1.25,
      },
    ])
  })

  // Twelve hours on Mon, Tue, Wed of 3 h each end on the next Monday; with a Thursday they end on that.
  it('is one more evening where hands are short', () => {
    const results = planned(
      `device: {name: hands, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-wed: "19:00-22:00"}}}
work: {a: {time: 12 h}}
`,
      { samples: 0 },
    )
    expect(leversOf(results).levers).toMatchObject([
      { kind: 'one more evening', of: 'ana', weekday: 3, days: 4 },
    ])
  })

  it('is nothing where a wait that nobody can shorten sets the date', () => {
    const text =
      'device: {name: w, qty: 1, currency: EUR, start: 2026-03-02}\nwork: {w: {time: 5 d, attention: none}}\n'
    expect(leversOf(planned(text, { samples: 0 })).levers).toEqual([])
  })

  // An hour on Mon, Tue, Wed while the mill may run; all three on Monday where it always may: 46 h earlier.
  it('is a machine at any hour where its own hours are short', () => {
    const results = planned(
      `device: {name: mill, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
machines: {mill: {hours: {daily: "19:00-20:00"}}}
work: {a: {time: 3 h, machine: mill}}
`,
      { samples: 0 },
    )
    expect(leversOf(results).levers).toMatchObject([{ kind: 'any hours', of: 'mill', days: 46 / 24 }])
  })

  // Five hours are done on two Mondays by ana; by ben, or with a Tuesday of hers, on Tuesday, six days earlier.
  it('is one more person who may use a machine, told apart from one more evening of who may already', () => {
    const results = planned(
      `device: {name: laser, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon: "19:00-22:00"}}, ben: {hours: {mon-fri: "19:00-22:00"}}}
machines: {laser: {users: [ana]}}
work: {a: {time: 5 h, machine: laser}}
`,
      { samples: 0 },
    )
    expect(leversOf(results).levers).toMatchObject([
      { kind: 'one more evening', of: 'ana', person: null, weekday: 1, days: 6 },
      { kind: 'one more user', of: 'laser', person: 'ben', weekday: null, days: 6 },
    ])
  })

  // Ordered before noon of the first day, where no earlier vendor day is left in the plan.
  it('is a cart ordered a day earlier on the first day too', () => {
    const results = planned(
      `device: {name: early, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "09:00-22:00"}}}
vendors: {shop: {transit: 2 wd}}
parts: {screw: {kind: bought, qty: 1, offers: [{vendor: shop, price: 1, lead: 1 wd}]}}
work: {fit: {time: 1 h, needs: [screw]}}
`,
      { samples: 0 },
    )
    expect(leversOf(results).levers).toMatchObject([{ kind: 'order earlier', of: 'shop', days: 1 }])
  })

  // A plan made when b took six days to dry has b on Monday; now a does, and is done a day later than need be. With one
  // more evening the search begins with a, and so it does without.
  it('gives no lever credit for what searching alone brings', () => {
    const then = drying('1 d', '6 d')
    const now = drying('6 d', '1 d')
    const finish = instantOf(parseDay('2026-03-09')!, 22 * 60)
    const stale = { ...now, schedule: { ...then.schedule, finish, schedulesTried: 8 } }
    expect(leversOf(now)).toEqual({ levers: [], searchAlone: 0 })
    expect(leversOf(stale)).toEqual({ levers: [], searchAlone: 1 })
  })
})

describe('what is tried', () => {
  it.each([
    [0, ['fast']],
    [0.4, ['fast', 'slow']],
  ])('is a cart that sets the date, and one that does in some samples: a share of %d', (share, carts) => {
    const results = planned(
      `device: {name: two, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
vendors: {fast: {transit: 2 wd}, slow: {transit: 2 wd}}
parts:
  screw: {kind: bought, qty: 1, offers: [{vendor: fast, price: 1, lead: 8 wd}]}
  nut: {kind: bought, qty: 1, offers: [{vendor: slow, price: 1, lead: 1..2..14 wd}]}
work: {fit: {time: 1 h, needs: [screw, nut]}}
`,
      { samples: 0 },
    )
    const { list } = changesOf(results, (task) =>
      results.network.tasks[task]!.id.startsWith('cart slow') ? share : 0,
    )
    expect(list.filter(({ kind }) => kind === 'order earlier').map(({ of }) => of)).toEqual(carts)
  })
})
