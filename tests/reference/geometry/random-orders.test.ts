import { describe, expect, it } from 'vitest'
import { check } from '../../../src/compile.ts'
import { directions } from '../../../src/geometry/relations/directions.ts'
import { stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import type { Project } from '../../../src/model/project.ts'
import { benchPlan } from '../../../src/planning/assembly/bench-plan.ts'
import { orderOfTheRest } from '../../../src/planning/assembly/find-order.ts'
import { mayTake, ruleBook } from '../../../src/planning/assembly/rules.ts'
import { ruleCompiler } from '../../../src/planning/assembly/rules-of.ts'
import { setOf, withStep } from '../../../src/planning/assembly/step-set.ts'
import { compileMoves } from '../../../src/planning/from-meshes/compile-moves.ts'
import { studyMeshes } from '../../../src/planning/from-meshes/study-meshes.ts'
import { chopperText, withChopper } from './chopper-files.ts'

const orders = 10_000

/** A stream of whole numbers below a bound. Source: Park and Miller's minimal standard (1988), from memory. */
function below(seed: number): (bound: number) => number {
  let state = seed
  return (bound) => {
    state = (state * 48271) % 2147483647
    return state % bound
  }
}

describe('what the meshes ask of the order of the chopper', () => {
  const { project } = withChopper(check, chopperText) as { project: Project }
  const { relations, laid } = studyMeshes(project)!
  const device = laid.find(({ plan }) => plan.of === null)!
  const steps = device.plan.steps
  const { moves } = studyMeshes(project)!.plans.get('')!
  // Without contacts the rules of fasteners and of touching say nothing: what stops what is left.
  const constraints = compileMoves(device, moves, { ...relations, pairs: new Map() }, null)
  const book = ruleBook(steps.length, constraints.flatMap(ruleCompiler(benchPlan(device.plan))))

  /** By the geometry: every move has a direction in which nothing present stops it, nor what it goes on or into. */
  function fits(order: readonly number[]): boolean {
    const present = [...device.there]
    for (const number of order) {
      const own = moves.filter(({ step }) => step === steps[number]!.id)
      for (const role of ['put', 'fastener'] as const) {
        const coming = own.filter((move) => move.role === role)
        const free = coming.every(({ bodies, seat }) =>
          directions.some((way) =>
            bodies.every((one) =>
              [...present, ...seat].every((other) => stopWidth(relations, one, other, way) === 0),
            ),
          ),
        )
        if (!free) return false
        present.push(...coming.flatMap(({ bodies }) => bodies))
      }
    }
    return true
  }

  /** By the rules that were compiled. */
  function allowed(order: readonly number[]): boolean {
    let done = setOf([], book.words)
    for (const step of order) {
      if (!mayTake(book, done, step)) return false
      done = withStep(done, step)
    }
    return true
  }

  function feasible(pick: (bound: number) => number): number[] {
    const order: number[] = []
    let done = setOf([], book.words)
    while (order.length < steps.length) {
      const next = steps
        .map((_, k) => k)
        .filter((step) => mayTake(book, done, step) && orderOfTheRest(book, withStep(done, step)) !== null)
      const step = next[pick(next.length)]!
      order.push(step)
      done = withStep(done, step)
    }
    return order
  }

  it(`agrees with the geometry on ${orders} orders, feasible and disturbed`, () => {
    const pick = below(20_261)
    let [yes, no] = [0, 0]
    const apart: string[] = []
    for (let k = 0; k < orders; k++) {
      const order = feasible(pick)
      for (let swaps = k % 4; swaps > 0; swaps--) {
        const [a, b] = [pick(order.length), pick(order.length)]
        ;[order[a], order[b]] = [order[b]!, order[a]!]
      }
      const says = fits(order)
      if (says) yes++
      else no++
      if (says !== allowed(order)) apart.push(order.map((step) => steps[step]!.id).join(' > '))
    }
    expect(apart).toEqual([])
    expect(Math.min(yes, no)).toBeGreaterThan(orders / 10)
  })
})
