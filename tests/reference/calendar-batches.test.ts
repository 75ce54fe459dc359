/**
 * Lots, batches, fixtures, plates and spares counted and placed by hand from the rules of this project.
 * 2026-03-02 is a Monday (ISO 8601 week 10).
 */
import { describe, expect, it } from 'vitest'
import { pieces, planned, times } from './calendar-bench.ts'

const head = (qty: number): string => `
device: {name: Try, qty: ${qty}, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {daily: "08:00-20:00"}}}
materials: {al: {density: 2.7 g/cm3, forms: [{plate: 300 x 200 x 5 mm, have: 1, worth: 9}]}}`

const blank = `kind: machined
    material: al
    stock: {plate: 30 x 20 x 5 mm}`

const minutesOf = (results: ReturnType<typeof planned>, task: string): number =>
  results.network.tasks.find(({ id }) => id === task)!.minutes

describe('a batch of a made part', () => {
  const base = (more: string, load = ''): string => `${head(3)}
machines: {mill: {}}
parts:
  base:
    ${blank}
    qty: 1
    ${more}
    route: [{setup: {machine: mill, hold: vice, time: 20 min${load}}, ops: [{rough: {time: 10 min, attention: nearby}}]}]
`
  it('is one lot: set up once, run as often as there are pieces', () => {
    const results = planned(base('spares: 1'))
    // 3 devices and 1 spare: 20 min, then 4 x 10 min.
    expect(minutesOf(results, 'base / 1 setup')).toBe(20)
    expect(minutesOf(results, 'base / 1 run')).toBe(40)
  })
  it('is set up again for each lot it is split into', () => {
    const results = planned(base('lot: 2'))
    // Lots of 2 and 1.
    expect([1, 2].map((lot) => minutesOf(results, `base lot ${lot} / 1 setup`))).toEqual([20, 20])
    expect([1, 2].map((lot) => minutesOf(results, `base lot ${lot} / 1 run`))).toEqual([20, 10])
  })
  it('is changed piece by piece where loading takes time', () => {
    const results = planned(base('spares: 0', ', load: 2 min, unload: 1 min'))
    // Set up 20 and load 2 in one go, run 10; change 1 + 2, run 10; change 3, run 10; unload 1: 20+12+13+13+1 = 59 min.
    expect(minutesOf(results, 'base / 1 load 2')).toBe(3)
    expect(results.schedule.finish - results.schedule.tasks.get('base / 1 setup')!.start).toBe(59)
  })
  it('is started as often as tries ask, and never oftener for a poor yield', () => {
    expect(minutesOf(planned(base('tries: 2')), 'base / 1 run')).toBe(60)
    expect(minutesOf(planned(base('yield: 50 %')), 'base / 1 run')).toBe(30)
  })
})

describe('assembly of a batch', () => {
  const device = (together: string): string =>
    `${head(2)}
parts:
  shell: {kind: bought, have: 2, worth: 1, offers: []}
  lid: {kind: bought, have: 2, worth: 1, offers: []}
assembly:
  ground: shell
  steps:
    - {name: close, put: lid, on: shell, by: snap, time: 10 min}
    - {name: warm, test: runs, after: [close], time: 30 min${together}}
`.replaceAll(', offers: []', '')
  it('repeats every step for each device', () => {
    const results = planned(device(''))
    // 2 x 10 + 2 x 30 = 80 min from 08:00.
    expect(results.network.tasks.map(({ id }) => id)).toEqual([
      'assembly / close 1',
      'assembly / close 2',
      'assembly / warm 1',
      'assembly / warm 2',
    ])
    expect(results.schedule.finish - results.schedule.tasks.get('assembly / close 1')!.start).toBe(80)
  })
  it('does once what is done together, after both devices are closed', () => {
    const results = planned(device(', together: yes'))
    expect(times(results, 'assembly / warm')).toBe('2026-03-02T08:20 2026-03-02T08:50')
  })
})

describe('fixtures', () => {
  const glued = (count: number): string => `${head(1)}
parts:
  jig: {${'kind: bought'}, role: fixture, qty: ${count}, have: ${count}, worth: 1}
  left:
    ${blank}
    qty: 1
    route: [{do: {what: glue, time: 10 min}}, {cure: {time: 2 h, fixture: jig}}]
  right:
    ${blank}
    qty: 1
    route: [{do: {what: glue, time: 10 min}}, {cure: {time: 2 h, fixture: jig}}]
`
  it('are taken by a cure, so that one serves one part at a time', () => {
    // Glued from 08:00 and 08:10; the first cures until 10:10, the second from then to 12:10.
    const { schedule } = planned(glued(1))
    expect(schedule.finish).toBe(Math.min(...[...schedule.tasks.values()].map(({ start }) => start)) + 250)
  })
  it('of which there are two serve two parts at once', () => {
    // The second is glued from 08:10 to 08:20 and cured until 10:20.
    const { schedule } = planned(glued(2))
    expect(schedule.finish).toBe(Math.min(...[...schedule.tasks.values()].map(({ start }) => start)) + 140)
  })
})

describe('a plate with two parts', () => {
  it('is one job: loaded, printed and taken off once, then each part goes its own way', () => {
    const results = planned(
      `${head(1)}
machines: {printer: {prints: vat}}
plates: {p1: {machine: printer, time: 2 h, load: 10 min, unload: 5 min, wash: 10 min}}
parts:
  cap: {kind: printed, qty: 1, machine: printer, plate: p1, volume: 5 cm3, route: [{deburr: {time: 7 min}}]}
  foot: {kind: printed, qty: 1, machine: printer, plate: p1, volume: 5 cm3}
`.replace(/material: al/, ''),
    )
    expect(times(results, 'plate p1 / run')).toBe('2026-03-02T08:10 2026-03-02T10:10')
    expect(times(results, 'plate p1 / wash')).toBe('2026-03-02T10:15 2026-03-02T10:25')
    expect(pieces(results, 'cap / 1 deburr')).toEqual(['2026-03-02T10:25 2026-03-02T10:32'])
    expect(results.network.tasks.filter(({ kind }) => kind === 'run')).toHaveLength(1)
  })
})

describe('a cutter that is not here', () => {
  it('is ordered, and the setup that needs it waits for its receiving check', () => {
    // Ordered Mon 08:00-08:15, day 0 Mon, shipped Tue, carried Wed 18:00, unpacked to 18:10, set up from then.
    const results = planned(`${head(1)}
machines: {mill: {}}
vendors: {shop: {order: 15 min, receive: 10 min, transit: 1 wd}}
cutters: {ball: {have: 0, offers: [{vendor: shop, price: 20, lead: 1 wd}]}}
parts:
  base:
    ${blank}
    qty: 1
    route: [{setup: {machine: mill, hold: vice, time: 20 min}, ops: [{finish: {cutter: ball, time: 10 min, attention: hands}}]}]
`)
    expect(times(results, 'base / 1 setup')).toBe('2026-03-04T18:10 2026-03-04T18:30')
  })
})
