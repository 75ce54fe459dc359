import { describe, expect, test } from 'vitest'
import { countOrders, type Rule } from '../../src/planning/assembly/index.ts'

const waits = (first: number, then: number): Rule => ({
  step: then,
  any: [{ kind: 'some done', of: [first] }],
})
const beforeLastOf = (step: number, of: readonly number[]): Rule => ({
  step,
  any: [{ kind: 'not all done', of }],
})
const chain = (...steps: number[]): Rule[] => steps.slice(1).map((step, k) => waits(steps[k]!, step))

/** Pairs `a>b` counted from 1. */
const graph = (text: string): Rule[] =>
  text.split('; ').map((pair) => {
    const [first, then] = pair.split('>').map(Number)
    return waits(first! - 1, then! - 1)
  })

/** Elements as divisors or bit sets, `a` before `b` where `below(a, b)`. */
const order = (elements: readonly number[], below: (a: number, b: number) => boolean): Rule[] =>
  elements.flatMap((a, i) => elements.flatMap((b, j) => (a !== b && below(a, b) ? [waits(i, j)] : [])))
const subset = (a: number, b: number) => (a & ~b) === 0
const numbers = (count: number) => Array.from({ length: count }, (_, k) => k)

describe('linear extensions of partial orders: the count is exact', () => {
  // Source: SageMath reference manual, linear extensions of posets (seen).
  test.each<[string, number, Rule[], bigint]>([
    ['1<3, 1<4, 2<3', 4, graph('1>3; 1>4; 2>3'), 5n],
    ['the N', 4, graph('1>3; 1>4; 2>4'), 5n],
    ['divisors of 12', 6, order([1, 2, 3, 4, 6, 12], (a, b) => b % a === 0), 5n],
    ['subsets of four things', 16, order(numbers(16), subset), 1_680_384n],
  ])('%s', (_name, size, rules, count) => {
    expect(countOrders(size, rules)).toBe(count)
  })

  test('subsets of three things: 48 (OEIS A046873, from memory)', () => {
    expect(countOrders(8, order(numbers(8), subset))).toBe(48n)
  })

  test('a grid of 2 x 3 has 5 and one of 3 x 3 has 42 (hook length formula)', () => {
    const grid = (rows: number, columns: number) =>
      numbers(rows * columns).flatMap((at) => [
        ...(at % columns < columns - 1 ? [waits(at, at + 1)] : []),
        ...(at + columns < rows * columns ? [waits(at, at + columns)] : []),
      ])
    expect(countOrders(6, grid(2, 3))).toBe(5n)
    expect(countOrders(9, grid(3, 3))).toBe(42n)
  })

  test('zigzags of one to six have the Euler zigzag numbers', () => {
    const zigzag = (size: number) =>
      numbers(size - 1).map((k) => (k % 2 === 0 ? waits(k, k + 1) : waits(k + 1, k)))
    expect(numbers(6).map((k) => countOrders(k + 1, zigzag(k + 1)))).toEqual([1n, 1n, 2n, 5n, 16n, 61n])
  })

  test('chains have one order, two chains C(7,3), free steps n!, and a tree 7!/(7 x 3 x 3)', () => {
    expect(countOrders(9, chain(...numbers(9)))).toBe(1n)
    expect(countOrders(7, [...chain(0, 1, 2), ...chain(3, 4, 5, 6)])).toBe(35n)
    expect(countOrders(10, [])).toBe(3_628_800n)
    // Source: hook formula for trees, Knuth, The Art of Computer Programming 3, section 5.1.4; from memory.
    expect(countOrders(7, graph('2>1; 3>1; 4>2; 5>2; 6>3; 7>3'))).toBe(80n)
  })

  test('forty steps in five chains of eight: 40! / 8!^5, past one word of a set', () => {
    const factorial = (n: number): bigint => numbers(n).reduce((product, k) => product * BigInt(k + 1), 1n)
    const five = numbers(5).flatMap((k) => chain(...numbers(8).map((step) => step + 8 * k)))
    expect(countOrders(40, five)).toBe(factorial(40) / factorial(8) ** 5n)
  })
})

// Graphs seen: data of assembly line balancing problems, TH Darmstadt (the set of Scholl, 1993). Counts: own
// enumeration by another program.
describe('orders of published line balancing graphs', () => {
  test.each([
    ['Mertens (1967)', 7, '1>2; 1>4; 2>3; 2>5; 4>7; 5>6', 45n],
    ['Bowman (1960)', 8, '1>2; 2>3; 2>4; 3>5; 3>6; 4>6; 5>7; 6>8', 16n],
    ['Jackson (1956)', 11, '1>2; 1>3; 1>4; 1>5; 2>6; 3>7; 4>7; 5>7; 6>8; 7>9; 8>10; 9>11; 10>11', 756n],
    [
      'Mitchell (1957)',
      21,
      '1>2; 1>3; 2>21; 3>4; 4>5; 4>21; 5>6; 5>7; 6>8; 7>8; 7>14; 8>9; 9>10; 9>11; 9>12; 9>13; 10>15; 11>15; 12>15; 13>17; 13>18; 14>19; 15>16; 15>18; 16>17; 17>20; 18>19',
      1_449_624n,
    ],
  ])('%s', (_name, size, arcs, count) => {
    expect(countOrders(size, graph(arcs))).toBe(count)
  })
})

// Liaisons: 1 cap-body, 2 head-body, 3 head-tube, 4 ink-tube, 5 button-body. Source: A. Bourjault, thesis,
// Universite de Franche-Comte (1984); the count of 12 from memory, rules reconstructed.
describe('the ball-point pen', () => {
  const plain = graph('3>4; 2>1')

  test('has twelve orders when tube and ink come before the last of head and button', () => {
    expect(countOrders(5, [...plain, beforeLastOf(2, [1, 4]), beforeLastOf(3, [1, 4])])).toBe(12n)
  })

  test('keeps three when they must come before each', () => {
    expect(countOrders(5, [...plain, ...graph('3>2; 3>5; 4>2; 4>5')])).toBe(3n)
  })
})

// Source: counts of the kind that L. S. Homem de Mello and A. C. Sanderson give for chains and complete graphs of
// contacts (IEEE Trans. Robotics and Automation, 1990), formulas from memory and by another enumeration: each new part
// touches what is built, and the first one counts.
describe('products built part by part, by the graph of their contacts', () => {
  const products = (size: number, touch: (a: number, b: number) => boolean): bigint =>
    numbers(size).reduce((sum, first) => {
      const rules = numbers(size).flatMap((step): Rule[] => {
        if (step === first) return []
        const of = numbers(size).filter((other) => other !== step && touch(step, other))
        return [waits(first, step), { step, any: [{ kind: 'some done', of }] }]
      })
      return sum + countOrders(size, rules)!
    }, 0n)

  test('a chain of n parts goes together in 2^(n-1) ways', () => {
    const counts = [3, 4, 5, 8, 12].map((size) => products(size, (a, b) => Math.abs(a - b) === 1))
    expect(counts).toEqual([4n, 8n, 16n, 128n, 2048n])
  })

  test('n parts that all touch go together in n! ways', () => {
    expect([3, 4, 5].map((size) => products(size, () => true))).toEqual([6n, 24n, 120n])
  })

  test('a base with n - 1 parts goes together in 2(n-1)! ways', () => {
    const counts = [3, 4, 5, 9].map((size) => products(size, (a, b) => a === 0 || b === 0))
    expect(counts).toEqual([4n, 12n, 48n, 80_640n])
  })
})

describe('grouped rules: before the last of a list', () => {
  // One of n! orders in so many has the step last of all: (n - 1)/n of them keep the rule.
  test.each([
    [2, 3],
    [3, 4],
    [7, 8],
  ])(
    'of %i steps in any order, one more before the last of them keeps all but the orders that end in it',
    (many, size) => {
      const all = numbers(size).reduce((product, k) => product * BigInt(k + 1), 1n)
      expect(countOrders(size, [beforeLastOf(many, numbers(many))])).toBe((all * BigInt(many)) / BigInt(size))
    },
  )

  // Source: L. S. Homem de Mello and A. C. Sanderson, AAAI-86 (product from memory): of its ten sequences the four that
  // put cap (0), stick (1) and handle (2) on the receptacle one by one.
  test('the stick goes in before the last of cap and handle: 4', () => {
    expect(countOrders(3, [beforeLastOf(1, [0, 2])])).toBe(4n)
  })
})

test('a count that would go into more sets than allowed is not given', () => {
  expect(countOrders(16, order(numbers(16), subset), 100)).toBeNull()
})
