import { describe, expect, test } from 'vitest'
import { countOrders, orderAssembly, type Rule } from '../../../../src/planning/assembly/index.ts'
import { interchangeable } from '../../../../src/planning/assembly/interchangeable.ts'
import { noProject, plan, step, toStep, waiting } from './bench-steps.ts'

const waits = (first: number, then: number): Rule => ({
  step: then,
  any: [{ kind: 'some done', of: [first] }],
})
const always = () => true

describe('steps that can change places', () => {
  test('are those of which the rules say the same', () => {
    // 0 before 1 and 2, both before 3; 4 is free, 5 and 6 wait for each its own.
    const rules = [waits(0, 1), waits(0, 2), waits(1, 3), waits(2, 3), waits(4, 5), waits(7, 6)]
    expect(interchangeable(8, rules, always)).toEqual([[1, 2]])
  })

  test('are kept apart where they are not the same work', () => {
    expect(interchangeable(4, [], (a, b) => a % 2 === b % 2)).toEqual([
      [0, 2],
      [1, 3],
    ])
  })

  test('are told from pairs that only change places together', () => {
    expect(interchangeable(4, [waits(0, 1), waits(2, 3)], always)).toEqual([])
  })

  test('of grouped rules are the members of the list', () => {
    const last: Rule = { step: 3, any: [{ kind: 'not all done', of: [0, 1, 2] }] }
    expect(interchangeable(4, [last], always)).toEqual([[0, 1, 2]])
    expect(countOrders(4, [last])).toBe(18n)
  })
})

describe('thirty free steps of the same few kinds of work', () => {
  const sides = ['top up', 'bottom up', 'side up']
  const tools = ['hex', 'press', 'hand', 'iron']
  const steps = Array.from({ length: 30 }, (_, k) =>
    step(`s${k}`, {
      turn: sides[(k * 7) % 3]!,
      tool: { text: tools[(k * 5) % 4]!, resource: null },
      after: k === 29 ? [waiting(toStep('s0'))] : [],
    }),
  )
  const found = orderAssembly(plan(steps), noProject)

  test('are ordered best within a few thousand states', () => {
    // Three sides, on each of them all four tools: 12 kinds of visit, 11 changes of one or both; two of them turnings,
    // at which the tool in hand may stay.
    expect(found).toMatchObject({ turns: 2, toolChanges: 9, proved: true, nearest: true })
    expect(found.states).toBeLessThan(5000)
  })

  test('have 30!/2 orders', () => {
    const all = Array.from({ length: 30 }, (_, k) => BigInt(k + 1)).reduce((a, b) => a * b)
    expect(found.feasibleOrders).toBe(all / 2n)
  })
})
