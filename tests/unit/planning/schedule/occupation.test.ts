import fc from 'fast-check'
import { expect, it } from 'vitest'
import { Occupation } from '../../../../src/planning/schedule/occupation.ts'
import { never } from '../../../../src/planning/schedule/work-time.ts'

fc.configureGlobal({ seed: 20260202, numRuns: 300 })

const piece = fc.record({
  open: fc.nat(60),
  length: fc.nat(20),
  amount: fc.integer({ min: 1, max: 3 }),
  back: fc.boolean(),
})

it('use and free stretches agree with a count minute by minute, also after giving back', () => {
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 25 }),
      fc.nat(60),
      fc.nat(30),
      fc.integer({ min: 1, max: 5 }),
      (pieces, open, length, amount) => {
        const occupation = new Occupation(5)
        const minutes = new Array<number>(100).fill(0)
        for (const take of pieces) {
          occupation.take(take.open, take.open + take.length, take.amount)
          if (take.back) occupation.take(take.open, take.open + take.length, -take.amount)
          else for (let t = take.open; t < take.open + take.length; t++) minutes[t]! += take.amount
        }
        const full = minutes.flatMap((used, t) => (used + amount > 5 ? [t] : []))
        const within = full.filter((t) => t >= open && t < open + length)
        let until = within.length > 0 ? within.at(-1)! + 1 : -never
        let from = within[0] ?? never
        const steps = (t: number) => minutes[t] !== minutes[t - 1]
        // A stretch is a step of equal use: it ends, and begins, where the use changes.
        while (until > 0 && !steps(until)) until++
        while (from < never && from > 0 && !steps(from)) from--
        expect(occupation.blockedUntil(open, open + length, amount)).toBe(until)
        expect(Math.min(occupation.blockedFrom(open, open + length, amount), never)).toBe(from)
      },
    ),
  )
})

it('a window is full where no minutes in a row as long as asked are free in it', () => {
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 25 }),
      fc.nat(60),
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: 1, max: 12 }),
      (pieces, open, length, least) => {
        const occupation = new Occupation(2)
        const minutes = new Array<number>(100).fill(0)
        for (const take of pieces) {
          occupation.take(take.open, take.open + take.length, 1)
          for (let t = take.open; t < take.open + take.length; t++) minutes[t]! += 1
        }
        const free = minutes.map((used) => (used < 2 ? 'o' : '.')).join('')
        const longest = Math.max(
          ...free
            .slice(open, open + length)
            .split('.')
            .map((run) => run.length),
        )
        expect(occupation.isFull(open, open + length, least)).toBe(longest < least)
      },
    ),
  )
})

it('the first gap within a window is the first minutes in a row in which as much as asked is free', () => {
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 25 }),
      fc.nat(60),
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: 1, max: 3 }),
      fc.integer({ min: 1, max: 12 }),
      (pieces, open, length, amount, least) => {
        const occupation = new Occupation(3)
        const minutes = new Array<number>(100).fill(0)
        for (const take of pieces) {
          occupation.take(take.open, take.open + take.length, 1)
          for (let t = take.open; t < take.open + take.length; t++) minutes[t]! += 1
        }
        const isFree = (from: number) =>
          minutes.slice(from, from + least).every((used) => used + amount <= 3) &&
          from + least <= open + length
        const starts = Array.from({ length }, (_, k) => open + k)
        expect(occupation.gapWithin(open, open + length, amount, least)).toBe(starts.find(isFree) ?? never)
      },
    ),
  )
})
