/**
 * Work, runs and pauses placed by hand from the rules of this project: sessions, attention, least pieces, holds.
 * 2026-03-02 is a Monday (ISO 8601 week 10).
 */
import { describe, expect, it } from 'vitest'
import { formatInstant } from '../../src/base/clock.ts'
import { errorsOf, pieces, planned, times } from './calendar-bench.ts'

const evenings = 'people: {ana: {hours: {mon-fri: "19:30-22:30"}}}'
const head = 'device: {name: Try, qty: 1, currency: EUR, start: 2026-03-02}'
const stock = `materials: {al: {density: 2.7 g/cm3, forms: [{plate: 300 x 200 x 5 mm, have: 1, worth: 9}]}}`

/** One made part, its stock on the shelf. */
const made = (route: string, more = '', people = evenings): string => `
${head}
${people}
${stock}
parts:
  base:
    kind: machined
    qty: 1
    material: al
    stock: {plate: 30 x 20 x 5 mm}
    route:
${route}
${more}
`
const work = (entries: string, people = evenings, more = ''): string =>
  `${head}\n${people}\n${more}\nwork: {${entries}}\n`

describe('hands work', () => {
  it('pauses at the end of a session and goes on in the next', () => {
    // 4 h from Mon 19:30: 3 h on Monday, 1 h on Tuesday.
    expect(pieces(planned(work('draw: {time: 4 h}')), 'work draw')).toEqual([
      '2026-03-02T19:30 2026-03-02T22:30',
      '2026-03-03T19:30 2026-03-03T20:30',
    ])
  })
  it('does not begin a piece shorter than 15 min unless that ends it', () => {
    // One after the other: 170 min to 22:20. Of 20 min only 10 would fit: next evening. Of 10 min all fit.
    const long = planned(work('a: {time: 170 min}, b: {time: 20 min, after: [a]}'))
    expect(times(long, 'work b')).toBe('2026-03-03T19:30 2026-03-03T19:50')
    const short = planned(work('a: {time: 170 min}, b: {time: 10 min, after: [a]}'))
    expect(times(short, 'work b')).toBe('2026-03-02T22:20 2026-03-02T22:30')
  })
  it('moves to the next evening whole where it may not pause', () => {
    const results = planned(work('a: {time: 2 h}, glue: {time: 90 min, pause: no, after: [a]}'))
    expect(times(results, 'work glue')).toBe('2026-03-03T19:30 2026-03-03T21:00')
  })
  it('is an error where it may not pause and no session is long enough', () => {
    expect(errorsOf(work('glue: {time: 181 min, pause: no}'))).toHaveLength(1)
    expect(errorsOf(work('glue: {time: 180 min, pause: no}'))).toEqual([])
  })
  it('loses the set-up and clean-up minutes of every session', () => {
    // 19:30-22:30 less 10 and 20 min: 19:40 to 22:10 is 150 min; 160 min need 10 more next day.
    const people = 'people: {ana: {hours: {mon-fri: "19:30-22:30"}, setup: 10 min, clean-up: 20 min}}'
    expect(pieces(planned(work('draw: {time: 160 min}', people)), 'work draw')).toEqual([
      '2026-03-02T19:40 2026-03-02T22:10',
      '2026-03-03T19:40 2026-03-03T19:50',
    ])
  })
  it('of two people waits until both are there', () => {
    // Common: 20:00-21:00. 90 min: one hour, then half an hour the next day.
    const people = 'people: {ana: {hours: {daily: "19:00-21:00"}}, ben: {hours: {daily: "20:00-23:00"}}}'
    expect(pieces(planned(work('lift: {time: 90 min, people: 2}', people)), 'work lift')).toEqual([
      '2026-03-02T20:00 2026-03-02T21:00',
      '2026-03-03T20:00 2026-03-03T20:30',
    ])
  })
  it('with a tool waits until it is here and ends before it is gone', () => {
    const tool = 'tools: {scope: {from: 2026-03-04, until: 2026-03-05}}'
    const results = planned(work('measure: {time: 1 h, tool: scope}', evenings, tool))
    expect(times(results, 'work measure')).toBe('2026-03-04T19:30 2026-03-04T20:30')
  })
})

describe('links', () => {
  it('count a lag of working days without the weekend, and an elapsed one with it', () => {
    // Start Fri 6: done 20:30. 1 wd: Mon 9 at 20:30. 1 d: Sat 7 at 20:30, but the next session is Mon 9 19:30.
    const friday = (lag: string): string =>
      work(`a: {time: 1 h}, b: {time: 30 min, after: [{step: a, lag: ${lag}}]}`).replace(
        '2026-03-02',
        '2026-03-06',
      )
    expect(times(planned(friday('1 wd')), 'work b')).toBe('2026-03-09T20:30 2026-03-09T21:00')
    expect(times(planned(friday('1 d')), 'work b')).toBe('2026-03-09T19:30 2026-03-09T20:00')
  })
  it('move the first task so that the second follows within its longest wait', () => {
    // 170 min end at 22:20 and 30 min more do not fit: mixing itself moves to where pouring follows within 5 min.
    const results = planned(
      work(
        'a: {time: 100 min}, mix: {time: 60 min, pause: no, after: [a]}, pour: {time: 30 min, pause: no, after: [{step: mix, within: 5 min}]}',
      ),
    )
    // Monday: 100 + 60 = 160 min to 22:10; pouring would need until 22:40. Both go to Tuesday.
    expect(times(results, 'work mix')).toBe('2026-03-03T19:30 2026-03-03T20:30')
    expect(times(results, 'work pour')).toBe('2026-03-03T20:30 2026-03-03T21:00')
  })
})

describe('machine runs', () => {
  const mill = 'machines: {mill: {hours: {daily: "09:00-23:00"}}}'
  const run = (attention: string, time: string): string =>
    made(
      `      - setup: {machine: mill, hold: vice, time: 30 min, load: 10 min, unload: 10 min}
        ops: [{rough: {time: ${time}, attention: ${attention}}}]`,
      mill,
    )
  it('nearby pause at the end of the hours of whoever is near', () => {
    // Set up to 20:00, load to 20:10, run 200 min: 140 to 22:30, 60 on Tuesday; unload Tuesday 20:30.
    const results = planned(run('nearby', '200 min'))
    expect(pieces(results, 'base / 1 run')).toEqual([
      '2026-03-02T20:10 2026-03-02T22:30',
      '2026-03-03T19:30 2026-03-03T20:30',
    ])
    expect(times(results, 'base / 1 unload')).toBe('2026-03-03T20:30 2026-03-03T20:40')
  })
  it('unattended fit one window of the machine and go on after the person has left', () => {
    // Loaded at 20:10, 170 min end 23:00 exactly, when the mill shuts; unloaded the next evening.
    const fits = planned(run('none', '170 min'))
    expect(pieces(fits, 'base / 1 run')).toEqual(['2026-03-02T20:10 2026-03-02T23:00'])
    expect(times(fits, 'base / 1 unload')).toBe('2026-03-03T19:30 2026-03-03T19:40')
  })
  it('unattended wait for the next window where this one is too short, and are an error where all are', () => {
    // 171 min from 20:10 would end 23:01: it runs from 09:00 on Tuesday, in one piece.
    expect(pieces(planned(run('none', '171 min')), 'base / 1 run')).toEqual([
      '2026-03-03T09:00 2026-03-03T11:51',
    ])
    expect(errorsOf(run('none', '14 h 1 min'))).toHaveLength(1)
  })
  const lid = (after: string): string => `
  lid:
    kind: machined
    qty: 1
    material: al
    stock: {plate: 30 x 20 x 5 mm}
    after: [${after}]
    route:
      - setup: {machine: mill, hold: vice, time: 30 min}
        ops: [{rough: {time: 10 min, attention: hands}}]
machines`
  it('hold the machine until somebody unloads', () => {
    // The lid must wait for 110 min of thought. 110 + 40 (lid) + 40 (set up and load the base) = 190 min are more than
    // Monday's 180, so the base is set up before the lid: whenever on Monday it runs, it is unloaded Tuesday 19:30 to
    // 19:40, and only then the mill is free: lid 19:40 to 20:20.
    const text = run('none', '170 min').replace(/\nmachines/, lid('think'))
    const { schedule } = planned(`${text}\nwork: {think: {time: 110 min}}\n`)
    expect(formatInstant(schedule.tasks.get('lid / 1 setup')!.start)).toBe('2026-03-03T19:40')
    expect(formatInstant(schedule.finish)).toBe('2026-03-03T20:20')
  })
  it('cure by the clock, night and weekend included', () => {
    // Glued Friday 19:30-20:00, cured 12 h later, Saturday 08:00; next session Monday.
    const friday = made(
      '      - do: {what: glue, time: 30 min}\n      - cure: {time: 12 h}\n      - deburr: {time: 10 min}',
    ).replace('start: 2026-03-02', 'start: 2026-03-06')
    const results = planned(friday)
    expect(times(results, 'base / 2 cure')).toBe('2026-03-06T20:00 2026-03-07T08:00')
    expect(times(results, 'base / 3 deburr')).toBe('2026-03-09T19:30 2026-03-09T19:40')
  })
})

describe('printing', () => {
  const printed = (printer: string, more: string): string => `
${head}
${evenings}
machines: {printer: {prints: ${printer}}}
materials: {resin: {density: 1.1 g/cm3, forms: [{volume: 500 mL, have: 1, worth: 30}]}}
parts: {cap: {kind: printed, qty: 1, machine: printer, material: resin, volume: 5 cm3, time: 5 h, load: 10 min, unload: 5 min${more}}}
`
  it('in a vat runs through the night and is taken off the next evening', () => {
    const results = planned(printed('vat', ''))
    expect(times(results, 'cap / print / run')).toBe('2026-03-02T19:40 2026-03-03T00:40')
    expect(times(results, 'cap / print / unload')).toBe('2026-03-03T19:30 2026-03-03T19:35')
  })
  it('of filament needs somebody near for its whole length unless attention says otherwise', () => {
    expect(errorsOf(printed('filament', ''))).toHaveLength(1)
    const trusted = planned(printed('filament', ', attention: none'))
    expect(times(trusted, 'cap / print / run')).toBe('2026-03-02T19:40 2026-03-03T00:40')
    expect(errorsOf(printed('vat', ', attention: nearby'))).toHaveLength(1)
  })
})
