/** Laws of the search on random plain problems: no expected value, only what must hold whatever comes out. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { scheduleProblem } from '../../src/planning/schedule/index.ts'
import type { Link, Need, Problem } from '../../src/planning/schedule/problem.ts'
import { whyBroken } from '../unit/planning/schedule/brute-check.ts'
import { link, mode, problem, task } from '../unit/planning/schedule/instances.ts'

/** Needs of three resources, the third used up. Capacities near 200 need more bits than one packed word has. */
const needs = (scale: number): fc.Arbitrary<Need[]> =>
  fc.uniqueArray(
    fc.record({
      resource: fc.nat(5),
      amount: fc.integer({ min: 1, max: 3 }).map((amount) => amount * scale),
      during: fc.constantFrom('span' as const, 'work' as const),
    }),
    { maxLength: 4, selector: ({ resource }) => resource },
  )

const plainProblems = (modes: number): fc.Arbitrary<Problem> =>
  fc.tuple(fc.integer({ min: 2, max: 14 }), fc.constantFrom(1, 70)).chain(([size, scale]) =>
    fc
      .record({
        modes: fc.array(
          fc.array(fc.record({ duration: fc.nat(12), needs: needs(scale), stock: fc.nat(3) }), {
            minLength: 1,
            maxLength: modes,
          }),
          { minLength: size, maxLength: size },
        ),
        releases: fc.array(fc.constantFrom(0, 0, 0, 7, 20), { minLength: size, maxLength: size }),
        ends: fc.array(
          fc.tuple(fc.nat(size - 1), fc.nat(size - 1), fc.constantFrom('FS', 'SS', 'FF', 'SF')),
          {
            maxLength: 2 * size,
          },
        ),
        lags: fc.array(fc.integer({ min: -5, max: 6 }), { minLength: 2 * size, maxLength: 2 * size }),
        unit: fc.constantFrom(1, 5),
      })
      .map((drawn) => {
        const tasks = drawn.modes.map((ways, k) =>
          task(
            `t${k}`,
            ways.map((way) => {
              const stock: Need[] =
                modes > 1 && way.stock > 0 ? [{ resource: 6, amount: way.stock, during: 'ever' }] : []
              return mode(way.duration * drawn.unit, { needs: [...way.needs, ...stock] })
            }),
            { release: drawn.releases[k]! * drawn.unit },
          ),
        )
        const links = drawn.ends.flatMap(([a, b, type], k): Link[] =>
          a < b
            ? [
                link(a, b, {
                  type: modes > 1 ? 'FS' : (type as Link['type']),
                  lag: drawn.lags[k]! * drawn.unit,
                }),
              ]
            : [],
        )
        const capacity = (k: number) => (k === 6 ? 2 * size : 4 * scale)
        const resources = Array.from({ length: 7 }, (_, k) => ({ id: `r${k}`, capacity: capacity(k) }))
        return problem(tasks, { links, resources })
      }),
  )

describe.each([
  ['one mode per task', plainProblems(1)],
  ['several modes and a stock', plainProblems(3)],
])('on random problems with %s', (_, some) => {
  it('every schedule keeps all rules, and its bound is no later than its finish', () => {
    const kinds = new Set<string>()
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 150 }), fc.constantFrom(0, 40), (one, effort, nodes) => {
        const outcome = scheduleProblem(one, { effort, nodes, seed: 1 })
        kinds.add(outcome.kind)
        if (outcome.kind !== 'found') return
        expect(whyBroken(one, outcome.schedule)).toBeNull()
        expect(outcome.bound).toBeLessThanOrEqual(outcome.schedule.finish)
        expect(outcome.proved).toBe(outcome.bound === outcome.schedule.finish)
        expect(outcome.stats.schedulesTried).toBeLessThanOrEqual(effort)
        expect(outcome.stats.nodes).toBeLessThanOrEqual(nodes)
      }),
      { numRuns: 300, seed: 21 },
    )
    expect(kinds.has('found')).toBe(true)
  })

  it('more effort never gives a later finish, and the same effort the same schedule', () => {
    const small = fc.integer({ min: 1, max: 130 })
    fc.assert(
      fc.property(some, small, small, (one, effort, more) => {
        const little = scheduleProblem(one, { effort, seed: 4 })
        expect(scheduleProblem(one, { effort, seed: 4 })).toEqual(little)
        const much = scheduleProblem(one, { effort: effort + more, seed: 4 })
        if (little.kind !== 'found') return
        expect(much.kind === 'found' && much.schedule.finish <= little.schedule.finish).toBe(true)
      }),
      { numRuns: 150, seed: 22 },
    )
  })

  it('no schedule of another seed beats a bound', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 2, max: 99 }), (one, seed) => {
        const bounded = scheduleProblem(one, { effort: 4, nodes: 200, seed: 1 })
        const other = scheduleProblem(one, { effort: 200, seed })
        if (bounded.kind === 'found' && other.kind === 'found')
          expect(other.schedule.finish).toBeGreaterThanOrEqual(bounded.bound)
      }),
      { numRuns: 150, seed: 23 },
    )
  })
})

it('more nodes never give a later finish nor an earlier bound', () => {
  const nodes = fc.integer({ min: 1, max: 120 })
  fc.assert(
    fc.property(plainProblems(1), nodes, nodes, (one, few, more) => {
      const little = scheduleProblem(one, { effort: 1, nodes: few, seed: 1 })
      const much = scheduleProblem(one, { effort: 1, nodes: few + more, seed: 1 })
      if (little.kind !== 'found' || much.kind !== 'found') return
      expect(much.schedule.finish).toBeLessThanOrEqual(little.schedule.finish)
      expect(much.bound).toBeGreaterThanOrEqual(little.bound)
    }),
    { numRuns: 200, seed: 24 },
  )
})
