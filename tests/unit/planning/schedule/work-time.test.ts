import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Calendar, Mode } from '../../../../src/planning/schedule/problem.ts'
import {
  clockOf,
  emptyRun,
  finishFrom,
  runAfter,
  startFor,
} from '../../../../src/planning/schedule/work-time.ts'
import { calendar, mode } from './instances.ts'
import { calendars, modes } from './random-problems.ts'

fc.configureGlobal({ seed: 20260202, numRuns: 300 })

const last = 400

/** The pieces when started exactly at `start`, found minute by minute; `null` where that start is not possible. */
function stepThrough({ spans }: Calendar, way: Mode, start: number): number[][] | null {
  const isOpen = (t: number) => {
    if (way.calendar === null) return true
    for (let k = 0; k < spans.length; k += 2) if (spans[k]! <= t && t < spans[k + 1]!) return true
    return false
  }
  if (!isOpen(start)) return null
  if (way.duration === 0) return [[start, start]]
  const pieces: number[][] = []
  let left = way.duration
  for (let t = start; left > 0 && t < 2 * last; t++) {
    if (!isOpen(t)) continue
    let room = 0
    while (room < left && isOpen(t + room)) room++
    const tooShort = room < left && (!way.pausable || room < way.least)
    if (tooShort && pieces.length === 0) return null
    if (!tooShort) {
      pieces.push([t, t + room])
      left -= room
    }
    t += room - 1
  }
  return left === 0 ? pieces : null
}

const shape = (placed: ReturnType<typeof finishFrom>) =>
  placed?.pieces.map(({ open, close }) => [open, close]) ?? null
const ways = modes(1, 1).map((way) => ({ ...way, timetable: null }))

describe('forwards', () => {
  it('a task starts at the first minute from which, stepping minute by minute, it can run', () => {
    fc.assert(
      fc.property(calendars, ways, fc.integer({ min: 0, max: 150 }), (hours, way, from) => {
        let expected: number[][] | null = null
        for (let start = from; start < last && expected === null; start++)
          expected = stepThrough(hours, way, start)
        fc.pre(expected !== null)
        const placed = finishFrom(way, [hours], from)
        expect(shape(placed)).toEqual(expected)
        expect([placed!.start, placed!.finish]).toEqual([expected![0]![0], expected!.at(-1)![1]])
      }),
    )
  })

  it('a later start never finishes earlier', () => {
    fc.assert(
      fc.property(calendars, modes(1, 1), fc.nat(200), fc.nat(60), (hours, way, from, wait) => {
        const [early, late] = [finishFrom(way, [hours], from), finishFrom(way, [hours], from + wait)]
        if (late) expect(early!.finish).toBeLessThanOrEqual(late.finish)
      }),
    )
  })

  it('a task that must also finish at or after an instant starts at the first minute that does both', () => {
    fc.assert(
      fc.property(calendars, ways, fc.nat(100), fc.nat(200), (hours, way, from, finish) => {
        let expected: number | null = null
        for (let start = from; start < last && expected === null; start++) {
          const pieces = stepThrough(hours, way, start)
          if (pieces && pieces.at(-1)![1]! >= finish) expected = start
        }
        fc.pre(expected !== null)
        const run = emptyRun()
        expect(runAfter(clockOf(way, [hours]), from, finish, run)).toBe(true)
        expect(run.start).toBe(expected)
      }),
    )
  })
})

describe('backwards', () => {
  it('a task that must finish by an instant starts at the last minute from which, stepping, it does', () => {
    fc.assert(
      fc.property(calendars, ways, fc.integer({ min: 100, max: 250 }), (hours, way, finish) => {
        let expected: number[][] | null = null
        for (let start = finish; start >= 0 && expected === null; start--) {
          const pieces = stepThrough(hours, way, start)
          if (pieces && pieces.at(-1)![1]! <= finish) expected = pieces
        }
        fc.pre(expected !== null)
        expect(shape(startFor(way, [hours], finish))).toEqual(expected)
      }),
    )
  })
})

describe('cases by hand', () => {
  const evenings = [calendar('evenings', [1170, 1350], [2610, 2790], [4050, 4230])]
  const pausable = mode(200, { calendar: 0, pausable: true, least: 15 })

  it('a pausable task goes on in the next window', () => {
    expect(shape(finishFrom(pausable, evenings, 0))).toEqual([
      [1170, 1350],
      [2610, 2630],
    ])
  })

  it('a piece shorter than the least is not begun', () => {
    expect(finishFrom(pausable, evenings, 1340)!.start).toBe(2610)
    expect(finishFrom(pausable, evenings, 1335)!.start).toBe(1335)
  })

  it('a piece shorter than the least may end the task', () => {
    expect(finishFrom({ ...pausable, duration: 5 }, evenings, 1345)!.start).toBe(1345)
    expect(shape(finishFrom({ ...pausable, duration: 183 }, evenings, 0))!.at(-1)).toEqual([2610, 2613])
  })

  it('a window shorter than the least is passed over in the middle of a task', () => {
    const gap = [calendar('hours', [0, 100], [110, 120], [130, 300])]
    expect(shape(finishFrom(mode(150, { calendar: 0, pausable: true, least: 15 }), gap, 0))).toEqual([
      [0, 100],
      [130, 180],
    ])
  })

  it('a task that may not pause waits for a window that holds it whole', () => {
    expect(finishFrom(mode(60, { calendar: 0 }), evenings, 1291)!.start).toBe(2610)
    expect(finishFrom(mode(181, { calendar: 0 }), evenings, 0)).toBeNull()
  })

  it('a zero-minute task lies at an open instant, and a closing instant is not open', () => {
    expect(finishFrom(mode(0, { calendar: 0 }), evenings, 1350)!.start).toBe(2610)
    expect(startFor(mode(0, { calendar: 0 }), evenings, 1350)!.start).toBe(1349)
    expect(finishFrom(mode(0), evenings, 7)!.start).toBe(7)
  })

  it('a timetable is left strictly before its instant, and missed at it', () => {
    const timetable = { leaveBefore: Int32Array.from([720, 2160]), arrives: Int32Array.from([5000, 6440]) }
    const order = mode(0, { timetable })
    expect(finishFrom(order, [], 719)!.finish).toBe(5000)
    expect(finishFrom(order, [], 720)!.finish).toBe(6440)
    expect(finishFrom(order, [], 2160)).toBeNull()
    expect(startFor(order, [], 6439)!.start).toBe(719)
    expect(startFor(order, [], 6440)!.start).toBe(2159)
  })
})
