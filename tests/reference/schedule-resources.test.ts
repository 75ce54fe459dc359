/** Resource-limited schedules with published or re-solved optimum; sources stand beside each instance. */
import { describe, expect, it } from 'vitest'
import { criticalPath, scheduleProblem } from '../../src/planning/schedule/index.ts'
import type { Problem } from '../../src/planning/schedule/problem.ts'
import { whyBroken } from '../unit/planning/schedule/brute-check.ts'
import * as instances from '../unit/planning/schedule/instances.ts'

const effort = 200

function finishOf(instance: Problem): number {
  const outcome = scheduleProblem(instance, { effort, seed: 1 })
  if (outcome.kind !== 'found') throw new Error(outcome.kind)
  expect(whyBroken(instance, outcome.schedule)).toBeNull()
  return outcome.schedule.finish
}

describe('200 schedules reach the published optimum', () => {
  const cases: [string, Problem, number][] = [
    ['Patterson 8 (11)', instances.patterson8, 11],
    ['Patterson 1 (19)', instances.patterson1, 19],
    ['Patterson 12 (13)', instances.patterson12, 13],
    ['seven tasks on one resource of 13, Beldiceanu and Contejean (22)', instances.chip, 22],
    ['three paper jobs on three presses, Gueret, Prins and Sevaux (97)', instances.paperShop, 97],
    ['least and greatest lags, PSP1 of sm_j10, Schwindt (26)', instances.lags1, 26],
    ['house with 3 workers, re-solved (90)', instances.houseWithCrew(3), 90],
    ['house with 2 workers, re-solved (95)', instances.houseWithCrew(2), 95],
    ['house with 1 worker, re-solved (145)', instances.houseWithCrew(1), 145],
  ]
  it.each(cases)('%s', (_, instance, optimum) => {
    expect(finishOf(instance)).toBe(optimum)
  })
})

describe('200 schedules come close to the published optimum and never below it', () => {
  // The bounds are what was measured with this seed: room for a search that is not exact, none for a wrong one.
  const cases: [string, Problem, number, number][] = [
    ['j301_1, Kolisch and Sprecher 1997 (43)', instances.j301_1, 43, 46],
    ['6 x 6 job shop, Fisher and Thompson 1963 (55)', instances.sixShop, 55, 57],
  ]
  it.each(cases)('%s', (_, instance, optimum, measured) => {
    const finish = finishOf(instance)
    expect(finish).toBeGreaterThanOrEqual(optimum)
    expect(finish).toBeLessThanOrEqual(measured)
  })
})

it('an instance published as having no schedule (PSP2 of sm_j10, Schwindt) gets none, though lags alone allow 24', () => {
  expect(scheduleProblem(instances.lags2, { effort, seed: 1 }).kind).not.toBe('found')
  expect(criticalPath(instances.lags2)!.finish).toBe(24)
})

describe('without resource limits the finish is the published one', () => {
  const cases: [string, Problem, number][] = [
    ['Patterson 8', instances.patterson8, 8],
    ['Patterson 1', instances.patterson1, 18],
    ['Patterson 12', instances.patterson12, 10],
    ['j301_1', instances.j301_1, 38],
    ['PSP1 of sm_j10', instances.lags1, 26],
    ['house', instances.houseWithCrew(1), 90],
  ]
  it.each(cases)('%s', (_, instance, finish) => {
    expect(criticalPath(instance)!.finish).toBe(finish)
  })
})
