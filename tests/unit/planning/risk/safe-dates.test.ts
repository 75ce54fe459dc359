import { describe, expect, it } from 'vitest'
import { formatInstant, instantOf, parseDay } from '../../../../src/base/clock.ts'
import type { Results } from '../../../../src/model/results.ts'
import { layOutSamples } from '../../../../src/planning/risk/lay-out-samples.ts'
import { sampleProject, wantedBy } from '../../../../src/planning/risk/sample-project.ts'
import { shareBy } from '../../../../src/planning/risk/statistics.ts'
import { planned } from '../../../reference/calendar-bench.ts'

/** One parcel and an hour of work with what is in it. */
function parcel(lead: string, wanted: string | null): Results {
  return planned(
    `device: {name: parcel, qty: 1, currency: EUR, start: 2026-03-02${wanted ? `, wanted: ${wanted}` : ''}}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
vendors: {shop: {transit: 2 wd}}
parts: {screw: {kind: bought, qty: 1, offers: [{vendor: shop, price: 1, lead: ${lead}}]}}
work: {fit: {time: 1 h, needs: [screw]}}
`,
    { samples: 0 },
  )
}

const riskOf = (results: Results, samples = 15) => sampleProject(results, { samples, seed: 1 })
const safeOf = (results: Results): string | null => {
  const { order } = riskOf(results).safe.get('shop')!
  return order === null ? null : formatInstant(order)
}

describe('the safe date of a cart', () => {
  // By hand: wanted Fri 20. Usable Fri 20 18:00, so sent Wed 18; five vendor days before is Wed 11, counted from an
  // order before Wed noon: Tuesday evening.
  it('is the last evening that keeps the wanted day where nothing is uncertain', () => {
    expect(safeOf(parcel('5 wd', '2026-03-20'))).toBe('2026-03-10T19:00')
  })

  it('is none where the wanted day is kept in fewer than 80 % already', () => {
    expect(safeOf(parcel('5 wd', '2026-03-05'))).toBe(null)
  })

  // Usable Thu 12 18:00, looked through for 10 min at 19:00, then fitted for an hour.
  it('is the evening of the plan itself where the next one is too late', () => {
    const results = parcel('5 wd', '2026-03-12')
    expect(formatInstant(results.schedule.finish)).toBe('2026-03-12T20:10')
    expect(safeOf(results)).toBe(formatInstant(results.schedule.tasks.get('cart shop / order')!.start))
  })

  it.each(['2026-03-25', '2026-04-10', null])('is what trying every evening gives, wanted %s', (wanted) => {
    const results = parcel('2..4..14 wd', wanted)
    const samples = 15
    const sampled = layOutSamples(results, { samples, seed: 1 })
    const sorted = [...sampled.finishes].sort((a, b) => a - b)
    const target = wantedBy(results.project) ?? sorted[11]!
    const order = results.network.tasks.findIndex(({ kind }) => kind === 'order')
    const evenings = Array.from({ length: 30 }, (_, day) =>
      instantOf(results.project.device.start + 1 + day, 19 * 60),
    )
    const kept = evenings.filter((until) => {
      const ends = Float64Array.from({ length: samples }, (_, k) => {
        const laid = sampled.policy.layOut(k, { task: order, until })
        return laid ? laid.found.end : Number.POSITIVE_INFINITY
      })
      return shareBy(ends, target) >= 0.8
    })
    const weekday = kept.filter((at) => new Date(at * 60_000).getUTCDay() % 6 !== 0).at(-1)
    const planned = results.schedule.tasks.get('cart shop / order')!.start
    expect(safeOf(results)).toBe(formatInstant(weekday ?? planned))
  })
})

describe('what is worth doing tonight', () => {
  // Ordered Monday it counts from Tuesday and is fitted Thu 12; ordered Tuesday all of it is a day later.
  it('is an order that left to the next evening moves the date by a day', () => {
    expect(riskOf(parcel('5 wd', null)).tonight).toMatchObject([
      {
        task: 'cart shop / order',
        person: 'ana',
        planned: true,
        until: instantOf(parseDay('2026-03-03')!, 19 * 60),
        days: 1,
        share: 1,
      },
    ])
  })

  it('is nothing where the date does not hang on it', () => {
    const results = planned(
      `device: {name: two, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
work: {wait: {time: 20 d, attention: none}, tidy: {time: 10 min}}
`,
      { samples: 0 },
    )
    expect(riskOf(results).tonight).toEqual([])
  })
})
