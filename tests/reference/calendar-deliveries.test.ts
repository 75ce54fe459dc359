/**
 * Deliveries worked out by hand from the rules of this project (order before the cut-off counts that day as day 0, lead
 * in vendor days, transit in carrier days, usable from the post). 2026-03-02 is a Monday (ISO 8601 week 10).
 */
import { describe, expect, it } from 'vitest'
import { pieces, planned, times } from './calendar-bench.ts'

interface Said {
  readonly start?: string
  readonly hours?: string
  readonly vendor?: string
  readonly lead?: string
  readonly order?: string
}

/** One spring from one shop; the order takes `order`, the check ten minutes. */
const shop = ({ start, hours, vendor, lead, order }: Said): string => `
device: {name: Spring, qty: 1, currency: EUR, start: ${start ?? '2026-03-02'}}
people: {ana: {hours: {${hours ?? 'daily: "08:00-22:00"'}}}}
vendors: {shop: {order: ${order ?? '30 min'}, receive: 10 min, ${vendor ?? 'transit: 1 wd'}}}
parts: {spring: {kind: bought, qty: 1, offers: [{vendor: shop, price: 1, lead: ${lead ?? '1 wd'}}]}}
`
const arrival = (said: Said): string => times(planned(shop(said)), 'cart shop / delivery')

describe('the day an order counts from', () => {
  it('is the same day for an order placed before the cut-off', () => {
    // Ordered Mon 08:30. Day 0 Mon, shipped Tue, carried Wed, post 18:00.
    expect(arrival({})).toBe('2026-03-02T08:30 2026-03-04T18:00')
  })
  it('is the next day for an order placed at the very minute of the cut-off', () => {
    // 11:30 + 30 min = 12:00, which is not before 12:00. Day 0 Tue, shipped Wed, carried Thu.
    expect(arrival({ hours: 'daily: "11:30-22:00"' })).toBe('2026-03-02T12:00 2026-03-05T18:00')
  })
  it('is the same day one minute before the cut-off', () => {
    expect(arrival({ hours: 'daily: "11:30-22:00"', order: '29 min' })).toBe(
      '2026-03-02T11:59 2026-03-04T18:00',
    )
  })
  it('is the next day for an order placed after it', () => {
    expect(arrival({ hours: 'daily: "19:30-22:00"' })).toBe('2026-03-02T20:00 2026-03-05T18:00')
  })
  it('is Monday for an order placed on Friday evening', () => {
    // Fri 6 March 20:00. Day 0 Mon 9, shipped Tue 10, carried Wed 11.
    expect(arrival({ start: '2026-03-06', hours: 'daily: "19:30-22:00"' })).toBe(
      '2026-03-06T20:00 2026-03-11T18:00',
    )
  })
  it('is Monday for an order placed on Saturday morning', () => {
    expect(arrival({ start: '2026-03-07' })).toBe('2026-03-07T08:30 2026-03-11T18:00')
  })
  it('passes over a day the vendor has off', () => {
    // Mon 2 is off: day 0 Tue 3, shipped Wed 4, carried Thu 5.
    expect(arrival({ vendor: 'transit: 1 wd, off: [2026-03-02]' })).toBe('2026-03-02T08:30 2026-03-05T18:00')
  })
})

describe('lead and transit', () => {
  it('count the vendor’s days off in the lead and not in the transit', () => {
    // Day 0 Mon 2; Tue 3 off; shipped Wed 4; the carrier works Tue to Fri alike: Thu 5.
    expect(arrival({ vendor: 'transit: 1 wd, off: [2026-03-03]' })).toBe('2026-03-02T08:30 2026-03-05T18:00')
    // Shipped Tue 3; the vendor is off on Wed 4 but the carrier is not.
    expect(arrival({ vendor: 'transit: 1 wd, off: [2026-03-04]' })).toBe('2026-03-02T08:30 2026-03-04T18:00')
  })
  it('carry over Saturday where the carrier does', () => {
    // Day 0 Thu 5, shipped Fri 6: Saturday 7 with a carrier of Monday to Saturday, else Monday 9.
    const thursday = { start: '2026-03-05' }
    expect(arrival({ ...thursday, vendor: 'transit: 1 wd, carrier: {days: mon-sat}' })).toBe(
      '2026-03-05T08:30 2026-03-07T18:00',
    )
    expect(arrival(thursday)).toBe('2026-03-05T08:30 2026-03-09T18:00')
  })
  it('bring goods on the shipping day where there is no transit', () => {
    expect(arrival({ vendor: 'transit: 0 wd' })).toBe('2026-03-02T08:30 2026-03-03T18:00')
  })
  it('are each rounded up from their mean to whole days', () => {
    // Lead (1 + 4x2 + 6)/6 = 2.5 -> 3 days: Thu 5. Transit (1 + 4x1 + 3)/6 = 1.33 -> 2 days: Fri 6, Mon 9.
    expect(arrival({ lead: '1..2..6 wd', vendor: 'transit: 1..1..3 wd' })).toBe(
      '2026-03-02T08:30 2026-03-09T18:00',
    )
  })
  it('make goods usable at the post of the vendor', () => {
    expect(arrival({ vendor: 'transit: 1 wd, post: "09:30"' })).toBe('2026-03-02T08:30 2026-03-04T09:30')
  })
})

describe('no lead and no transit', () => {
  const none = (post: string, hours = '08:00-22:00'): string =>
    arrival({
      lead: '0 wd',
      vendor: `transit: 0 wd, cutoff: "17:00", post: "${post}"`,
      hours: `daily: "${hours}"`,
    })
  it('give goods at the post of the same day where the order is before it', () => {
    expect(none('10:00')).toBe('2026-03-02T08:30 2026-03-02T10:00')
  })
  it('give goods at once where the order is placed at the minute of the post', () => {
    expect(none('08:30')).toBe('2026-03-02T08:30 2026-03-02T08:30')
  })
  it('give goods at the post of the next carrier day where the post is over', () => {
    expect(none('08:29')).toBe('2026-03-02T08:30 2026-03-03T08:29')
  })
  it('give goods on Monday where the post of Friday is over', () => {
    expect(
      arrival({
        start: '2026-03-06',
        lead: '0 wd',
        vendor: 'transit: 0 wd, cutoff: "17:00", post: "08:00"',
      }),
    ).toBe('2026-03-06T08:30 2026-03-09T08:00')
  })
})

describe('the receiving check', () => {
  it('waits for a session after the post', () => {
    // There Wed 4 at 18:00; nobody works before Thursday 19:30.
    const results = planned(shop({ hours: 'mon-tue: "08:00-09:00", thu: "19:30-22:00"' }))
    expect(pieces(results, 'cart shop / receive')).toEqual(['2026-03-05T19:30 2026-03-05T19:40'])
    expect(results.schedule.finish).toBe(results.schedule.tasks.get('cart shop / receive')!.finish)
  })
})

describe('outside work', () => {
  it('travels out, is done in vendor days, and travels back', () => {
    // Deburred Mon 08:00-08:30, sent 09:00 before noon: posted Mon, there Tue (1 wd), two vendor days: Thu, back Fri.
    const results = planned(`
device: {name: Plate, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "08:00-22:00"}}}
vendors: {bath: {order: 30 min, receive: 10 min, transit: 1 wd}}
parts:
  blank:
    kind: bought
    have: 1
    qty: 1
    worth: 1
    offers: [{vendor: bath, price: 1, lead: 1 wd}]
  plate:
    kind: machined
    qty: 1
    material: al
    stock: {plate: 30 x 20 x 5 mm}
    route:
      - deburr: {time: 30 min}
      - outside: {offer: {vendor: bath, price: 4, lead: 2 wd}}
materials: {al: {density: 2.7 g/cm3, forms: [{plate: 300 x 200 x 5 mm, have: 1, worth: 9}]}}
`)
    const away = [...results.schedule.tasks.keys()].find((id) => id.endsWith('/ delivery'))!
    expect(times(results, away)).toBe('2026-03-02T09:00 2026-03-06T18:00')
  })
  it('happens to a soldered board too, after the soldering', () => {
    // Bare board ordered Mon 08:00-08:10, lead 1 and transit 1: Wed 18:00, checked by 18:10, soldered by 18:40, sent 18:50.
    const results = planned(`
device: {name: Board, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "08:00-22:00"}}}
vendors: {shop: {order: 10 min, receive: 10 min, transit: 1 wd}, coater: {order: 10 min, receive: 10 min, transit: 1 wd}}
parts:
  board:
    kind: board
    qty: 1
    offers: [{vendor: shop, price: 4, lead: 1 wd}]
    solder: {time: 30 min}
    route: [{outside: {offer: {vendor: coater, price: 4, lead: 1 wd}}}]
`)
    const away = [...results.schedule.tasks.keys()].find(
      (id) => id.startsWith('board') && id.endsWith('/ delivery'),
    )!
    // Sent after the cut-off on Wed: counts Thu, there Fri, one vendor day: Mon, back Tue.
    expect(times(results, away)).toBe('2026-03-04T18:50 2026-03-10T18:00')
  })
})
