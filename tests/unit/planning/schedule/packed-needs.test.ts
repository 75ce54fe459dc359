import fc from 'fast-check'
import { expect, it } from 'vitest'
import { networkOf } from '../../../../src/planning/schedule/index.ts'
import { packedNeeds } from '../../../../src/planning/schedule/packed-needs.ts'
import { plainProblem } from '../../../../src/planning/schedule/plain-problem.ts'
import { mode, problem, take, task } from './instances.ts'

const row = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 5, maxLength: 5 })

it('taking one amount after the other leaves every guard set exactly while every resource has enough', () => {
  const capacities = [7, 130, 300, 64, 255]
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), (drawn) => {
      const amounts = drawn.map((list) => list.map((amount, k) => amount % (capacities[k]! + 1)))
      const tasks = amounts.map((list, k) =>
        task(`t${k}`, mode(1, { needs: list.flatMap((amount, r) => (amount > 0 ? [take(r, amount)] : [])) })),
      )
      const resources = capacities.map((capacity, k) => ({ id: `r${k}`, capacity }))
      const { words, full, guard, need } = packedNeeds(
        plainProblem(networkOf(problem(tasks, { resources })))!,
      )
      const free = Array.from(full)
      const left = [...capacities]
      for (const [k, list] of amounts.entries()) {
        let guarded = true
        for (let word = 0; word < words; word++) {
          const rest = free[word]! - need[k * words + word]!
          guarded &&= (rest & guard[word]!) === guard[word]
        }
        expect(guarded).toBe(list.every((amount, r) => amount <= left[r]!))
        if (!guarded) continue
        for (let word = 0; word < words; word++) free[word] = (free[word]! - need[k * words + word]!) | 0
        for (const [r, amount] of list.entries()) left[r]! -= amount
      }
    }),
    { numRuns: 300, seed: 8 },
  )
})
