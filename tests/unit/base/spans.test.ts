import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  containing,
  firstClosingAfter,
  intersect,
  listSpans,
  minutesBetween,
  type Spans,
  spansOf,
  subtract,
  unite,
} from '../../../src/base/spans.ts'

const end = 40
const loose = fc.array(
  fc.record({ open: fc.integer({ min: 0, max: end }), close: fc.integer({ min: 0, max: end }) }),
  { maxLength: 8 },
)
const anySpans = loose.map(spansOf)

function minutesOpen(spans: Spans): boolean[] {
  return Array.from({ length: end }, (_, t) =>
    listSpans(spans).some(({ open, close }) => open <= t && t < close),
  )
}

function isTidy(spans: Spans): boolean {
  return spans.every((edge, i) => i === 0 || spans[i - 1]! < edge)
}

describe('spans', () => {
  it('are joined where they touch or overlap', () => {
    const spans = spansOf([
      { open: 10, close: 20 },
      { open: 0, close: 5 },
      { open: 20, close: 25 },
      { open: 3, close: 4 },
      { open: 30, close: 30 },
    ])
    expect([...spans]).toEqual([0, 5, 10, 25])
  })

  it('agree with a minute by minute count', () => {
    fc.assert(
      fc.property(loose, (list) => {
        const open = Array.from({ length: end }, (_, t) =>
          list.some((span) => span.open <= t && t < span.close),
        )
        expect(minutesOpen(spansOf(list))).toEqual(open)
        expect(isTidy(spansOf(list))).toBe(true)
      }),
    )
  })

  it('unite, intersect and subtract minute by minute, and stay tidy', () => {
    fc.assert(
      fc.property(anySpans, anySpans, (a, b) => {
        const [inA, inB] = [minutesOpen(a), minutesOpen(b)]
        expect(minutesOpen(unite(a, b))).toEqual(inA.map((open, t) => open || inB[t]!))
        expect(minutesOpen(intersect(a, b))).toEqual(inA.map((open, t) => open && inB[t]!))
        expect(minutesOpen(subtract(a, b))).toEqual(inA.map((open, t) => open && !inB[t]!))
        expect([unite(a, b), intersect(a, b), subtract(a, b)].every(isTidy)).toBe(true)
      }),
    )
  })

  it('tell which span holds an instant, its opening included and its close not', () => {
    const spans = Int32Array.of(0, 5, 10, 25)
    expect(containing(spans, 0)).toEqual({ open: 0, close: 5 })
    expect(containing(spans, 5)).toBeNull()
    expect(containing(spans, 24)).toEqual({ open: 10, close: 25 })
    expect(containing(spans, 25)).toBeNull()
    expect([4, 5, 9, 25].map((t) => firstClosingAfter(spans, t))).toEqual([0, 1, 1, 2])
  })

  it('count the open minutes between two instants', () => {
    const instant = fc.integer({ min: -3, max: end + 3 })
    fc.assert(
      fc.property(anySpans, instant, instant, (spans, from, to) => {
        const counted = minutesOpen(spans).filter((open, t) => open && from <= t && t < to).length
        expect(minutesBetween(spans, from, to)).toBe(counted)
      }),
    )
  })
})
