import { expect, test } from 'vitest'
import type { Span } from '../../../src/base/clock.ts'
import { seededRandom } from '../../../src/base/random.ts'
import { common, holds, joined, meeting } from '../../../src/verify/open-hours.ts'

const random = seededRandom(7)
const next = (below: number): number => Math.floor(random.next() * below)
const spans = (): Span[] =>
  Array.from({ length: 6 }, () => {
    const open = next(60)
    return { open, close: open + next(9) }
  })

/** The whole minutes that lie in some span. */
const minutes = (all: readonly Span[]) =>
  Array.from({ length: 80 }, (_, t) => t).filter((t) => all.some(({ open, close }) => open <= t && t < close))

const cases = Array.from({ length: 200 }, () => ({ a: spans(), b: spans(), span: spans()[0]! }))

test('joined and common intervals hold the same minutes as counting them one by one', () => {
  for (const { a, b } of cases) {
    expect(minutes(joined(a))).toEqual(minutes(a))
    expect(minutes(common(joined(a), joined(b)))).toEqual(minutes(a).filter((t) => minutes(b).includes(t)))
  }
})

test('joined intervals are in order and leave time between them', () => {
  for (const { a } of cases) {
    const all = joined(a)
    for (const [i, { open, close }] of all.entries()) {
      expect(open).toBeLessThan(close)
      if (i > 0) expect(open).toBeGreaterThan(all[i - 1]!.close)
    }
  }
})

test('a span is held exactly where each of its minutes is open, and meets what it shares a minute with', () => {
  for (const { a, span } of cases) {
    const open = joined(a)
    const inside = minutes([span])
    expect(holds(open, span)).toBe(inside.every((t) => minutes(open).includes(t)))
    if (inside.length === 0) continue
    expect(meeting(open, span)).toEqual(open.filter((one) => minutes([one]).some((t) => inside.includes(t))))
  }
})
