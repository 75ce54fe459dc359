import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type DrivingStep, drivingChain, scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import type { Problem } from '../../../../src/planning/schedule/problem.ts'
import { calendar, link, mode, problem, sixShop, take, task } from './instances.ts'
import { problems } from './random-problems.ts'

function chainOf(shop: Problem): DrivingStep[] {
  const outcome = scheduleProblem(shop, { effort: 20, seed: 1 })
  if (outcome.kind !== 'found') throw new Error(outcome.kind)
  return drivingChain(shop, outcome.schedule)
}

const causeOf = ({ because }: DrivingStep) => because[0]!.what
/** What a step waited for, each with the instant until which it did. */
const told = ({ because }: DrivingStep) => because.map(({ what: { kind }, until }) => [kind, until])
const day = 1440
const evenings = calendar(
  'evenings',
  ...Array.from({ length: 9 }, (_, d): [number, number] => [d * day + 1170, d * day + 1350]),
)

describe('the driving chain', () => {
  it('begins with a task held by nothing, ends with the finish, and each step names the one before', () => {
    let idle = 0
    let steps = 0
    fc.assert(
      fc.property(problems, (random) => {
        const outcome = scheduleProblem(random, { effort: 4, seed: 1 })
        fc.pre(outcome.kind === 'found')
        const chain = drivingChain(random, outcome.schedule)
        expect(chain.at(-1)!.finish).toBe(outcome.schedule.finish)
        for (const [k, step] of chain.entries()) {
          const cause = causeOf(step)
          if (k === 0) expect('from' in cause ? cause.from : null).toBe(null)
          else expect(cause).toMatchObject({ from: chain[k - 1]!.task })
          const ends = step.because.map(({ until }) => until)
          expect(ends).toEqual([...ends].sort((a, b) => a - b))
          expect(ends.at(-1)).toBe(step.start)
          steps++
          if (step.idle > 0) idle++
        }
      }),
      { numRuns: 250, seed: 6 },
    )
    // Measured: below 1 % of steps start later than their reasons ask for.
    expect(idle / steps).toBeLessThan(0.05)
  })

  it('follows links and machines through a job shop without a gap from 0 to the finish', () => {
    const chain = chainOf(sixShop)
    expect(chain[0]!.start).toBe(0)
    for (const [k, step] of chain.entries()) if (k > 0) expect(step.start).toBe(chain[k - 1]!.finish)
    expect(new Set(chain.map((step) => causeOf(step).kind))).toEqual(new Set(['release', 'link', 'resource']))
  })

  it('names the evening that a task waited for, and what came before it', () => {
    const hands = mode(30, { calendar: 0 })
    const shop = problem([task('glue', hands), task('cure', mode(600)), task('trim', hands)], {
      calendars: [evenings],
      horizon: 9 * day,
      links: [link(0, 1), link(1, 2)],
    })
    expect(chainOf(shop).map(told)).toEqual([
      [
        ['release', 0],
        ['closed', 1170],
      ],
      [['link', 1200]],
      [
        ['link', 1800],
        ['closed', day + 1170],
      ],
    ])
  })

  it('names who had the machine before, also when a finished part waited in it', () => {
    const hands = mode(10, { calendar: 0, needs: [take(0, 1, 'work')] })
    const other = mode(30, { calendar: 0, needs: [take(0, 1, 'work'), take(1)] })
    const shop = problem(
      [
        task('load', hands),
        task('run', mode(600)),
        task('unload', hands),
        task('other', other, { release: day }),
      ],
      {
        resources: [
          { id: 'ana', capacity: 1 },
          { id: 'mill', capacity: 1 },
        ],
        calendars: [evenings],
        horizon: 9 * day,
        links: [link(0, 1), link(1, 2)],
        holds: [{ resource: 1, amount: 1, from: 0, to: 2 }],
      },
    )
    const chain = chainOf(shop)
    expect(chain.map((step) => step.task)).toEqual([0, 1, 2, 3])
    expect(causeOf(chain[3]!)).toMatchObject({ kind: 'resource', from: 2 })
  })

  it('says which cutoff an order had to meet, and that the next task waited for the delivery', () => {
    const timetable = { leaveBefore: Int32Array.from([720, 2160]), arrives: Int32Array.from([5000, 6440]) }
    const shop = problem([task('order', mode(0, { timetable }), { release: 800 }), task('fit', mode(30))], {
      links: [link(0, 1)],
    })
    expect(chainOf(shop)).toMatchObject([
      { task: 0, because: [{ what: { kind: 'release' } }], start: 800, finish: 6440, leaveBefore: 2160 },
      { task: 1, because: [{ what: { kind: 'link', from: 0 } }], start: 6440, leaveBefore: null },
    ])
  })

  // By hand. The part is here at 1000; ana's evenings have 180 minutes, Sunday (the 7th day) 600 from 780 on.
  // Loading takes 10 and the run, 300 unbroken minutes beside ana, must begin at once: only Sunday has room for both.
  it('says that a run which must follow at once fits only a later window, with both instants', () => {
    const ana = calendar(
      'ana',
      ...Array.from({ length: 6 }, (_, d): [number, number] => [d * day + 1170, d * day + 1350]),
      [6 * day + 780, 6 * day + 1380],
    )
    const shop = problem(
      [
        task('part', mode(1000)),
        task('load', mode(10, { calendar: 0 })),
        task('run', mode(300, { calendar: 0 })),
      ],
      { calendars: [ana], horizon: 9 * day, links: [link(0, 1), link(1, 2, { longest: 0 })] },
    )
    const chain = chainOf(shop)
    expect(chain.map((step) => step.start)).toEqual([0, 6 * day + 780, 6 * day + 790])
    expect(chain[1]!.because).toEqual([
      { what: { kind: 'link', link: 0, from: 0 }, of: 1, at: 1000, until: 1000 },
      { what: { kind: 'closed', calendar: 0, since: 1000 }, of: 1, at: 1170, until: 1170 },
      { what: { kind: 'short', calendar: 0 }, of: 2, at: 6 * day + 780, until: 6 * day + 770 },
      {
        what: { kind: 'closed', calendar: 0, since: 6 * day + 770 },
        of: 1,
        at: 6 * day + 780,
        until: 6 * day + 780,
      },
    ])
  })

  // The mill is taken until 1300; then 50 of the evening's minutes are left for 60 that may not pause.
  it('says that what is left of an evening is too short for work that may not pause', () => {
    const hands = (duration: number) => mode(duration, { calendar: 0, needs: [take(0)] })
    const shop = problem([task('first', hands(130), { preference: 1 }), task('second', hands(60))], {
      resources: [{ id: 'mill', capacity: 1 }],
      calendars: [evenings],
      horizon: 9 * day,
      links: [link(0, 1)],
    })
    expect(chainOf(shop).map(told)).toEqual([
      [
        ['release', 0],
        ['closed', 1170],
      ],
      [
        ['link', 1300],
        ['short', day + 1170],
      ],
    ])
  })

  // "Short" fits before "long" either way, and with or without it "glue" has no room before the second evening.
  it('does not name a resource without which the task would begin no earlier', () => {
    const hands = (duration: number) => mode(duration, { calendar: 0, needs: [take(0, 1, 'work')] })
    const shop = problem([task('wait', mode(1300)), task('short', hands(20)), task('glue', hands(60))], {
      resources: [{ id: 'ana', capacity: 1 }],
      calendars: [evenings],
      horizon: 9 * day,
      links: [link(0, 1), link(0, 2)],
    })
    const chain = chainOf(shop)
    expect(chain.map((step) => step.task)).toEqual([0, 2])
    expect(told(chain[1]!)).toEqual([
      ['link', 1300],
      ['short', day + 1170],
    ])
  })
})
