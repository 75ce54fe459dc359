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

const heldOf = ({ because }: DrivingStep) => (because.kind === 'calendar' ? because.after : because)
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
          const held = heldOf(step)
          if (k === 0) expect(held.kind).toBe('release')
          else expect(held).toMatchObject({ from: chain[k - 1]!.task })
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
    expect(new Set(chain.map((step) => step.because.kind))).toEqual(new Set(['release', 'link', 'resource']))
  })

  it('names the evening that a task waited for, and what came before it', () => {
    const hands = mode(30, { calendar: 0 })
    const shop = problem([task('glue', hands), task('cure', mode(600)), task('trim', hands)], {
      calendars: [evenings],
      horizon: 9 * day,
      links: [link(0, 1), link(1, 2)],
    })
    expect(chainOf(shop).map(({ because }) => because)).toEqual([
      { kind: 'calendar', calendar: 0, opened: 1170, after: { kind: 'release' } },
      { kind: 'link', link: 0, from: 0, longest: false },
      {
        kind: 'calendar',
        calendar: 0,
        opened: day + 1170,
        after: { kind: 'link', link: 1, from: 1, longest: false },
      },
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
    expect(chain[3]!.because).toMatchObject({ kind: 'resource', from: 2 })
  })

  it('says which cutoff an order had to meet, and that the next task waited for the delivery', () => {
    const timetable = { leaveBefore: Int32Array.from([720, 2160]), arrives: Int32Array.from([5000, 6440]) }
    const shop = problem([task('order', mode(0, { timetable }), { release: 800 }), task('fit', mode(30))], {
      links: [link(0, 1)],
    })
    expect(chainOf(shop)).toMatchObject([
      { task: 0, because: { kind: 'release' }, start: 800, finish: 6440, leaveBefore: 2160 },
      { task: 1, because: { kind: 'link', from: 0 }, start: 6440, leaveBefore: null },
    ])
  })
})
