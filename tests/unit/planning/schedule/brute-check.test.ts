import { expect, it } from 'vitest'
import { scheduleProblem } from '../../../../src/planning/schedule/index.ts'
import type { Placement } from '../../../../src/planning/schedule/problem.ts'
import { whyBroken } from './brute-check.ts'
import { calendar, link, mode, problem, take, task } from './instances.ts'

const shop = problem(
  [
    task('load', mode(10, { calendar: 0, pausable: true, least: 5, needs: [take(0, 1, 'work')] }), {
      release: 3,
    }),
    task('run', mode(50)),
    task('unload', mode(10, { calendar: 0, needs: [take(0, 1, 'work')] })),
    task('other', mode(20, { needs: [take(1)] })),
  ],
  {
    resources: [
      { id: 'ana', capacity: 1 },
      { id: 'mill', capacity: 1 },
    ],
    calendars: [calendar('hours', [0, 8], [20, 40], [90, 120])],
    links: [link(0, 1), link(1, 2, { longest: 20 })],
    holds: [{ resource: 1, amount: 1, from: 0, to: 2 }],
    horizon: 300,
  },
)

const outcome = scheduleProblem(shop, { effort: 20, seed: 1 })
const good = outcome.kind === 'found' ? outcome.schedule : null

/** The schedule with one placement changed, and its finish counted again. */
function spoiled(index: number, change: Partial<Placement>) {
  const placements = good!.placements.map((placement, k) =>
    k === index ? { ...placement, ...change } : placement,
  )
  return { placements, finish: Math.max(...placements.map(({ finish }) => finish)) }
}

const at = (start: number, finish: number) => ({ start, finish, pieces: [{ open: start, close: finish }] })

it('the checker passes the schedule it is tried on', () => {
  expect(whyBroken(shop, good!)).toBeNull()
})

it.each([
  ['a start before the release', 0, at(0, 10), 'too early'],
  ['a start at a closed hour', 0, at(10, 20), 'cannot start'],
  ['pieces over a closed hour', 2, at(115, 125), 'cannot start'],
  ['pieces that do not add up', 1, at(30, 79), 'pieces'],
  ['a broken link', 1, at(0, 50), 'link'],
  ['a longest wait missed', 1, at(22, 72), 'link'],
  ['a held machine taken', 3, at(60, 80), 'mill overfull'],
])('the checker catches %s', (_, index, change, why) => {
  const spoilt = spoiled(index, change)
  const said = whyBroken(shop, spoilt)
  expect(said).not.toBeNull()
  if (why !== 'link') expect(said).toContain(why)
})

it('the checker catches a wrong finish', () => {
  expect(whyBroken(shop, { ...good!, finish: good!.finish + 1 })).toBe('wrong finish')
})
