import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../src/base/random.ts'
import { type BenchStep, fresh, priceOf, pricer } from '../../src/planning/assembly/bench-cost.ts'
import { bestOrder } from '../../src/planning/assembly/best-order.ts'
import { countOrders } from '../../src/planning/assembly/count-orders.ts'
import { findConflict } from '../../src/planning/assembly/find-conflict.ts'
import { findOrder } from '../../src/planning/assembly/find-order.ts'
import { leastAhead } from '../../src/planning/assembly/least-ahead.ts'
import { type Condition, type Rule, ruleBook } from '../../src/planning/assembly/rules.ts'
import { settledLinks } from '../../src/planning/assembly/settled-links.ts'

function permutations(size: number): number[][] {
  if (size === 0) return [[]]
  return permutations(size - 1).flatMap((rest) =>
    Array.from({ length: size }, (_, k) => [...rest.slice(0, k), size - 1, ...rest.slice(k)]),
  )
}
const compare = (a: readonly number[], b: readonly number[]): number => {
  const k = a.findIndex((step, at) => step !== b[at])
  return k < 0 ? 0 : a[k]! - b[k]!
}
/** All sets of just so many numbers below `of`. */
function subsetsOf(of: number, many: number, from = 0): number[][] {
  if (many <= 0) return [[]]
  return Array.from({ length: Math.max(0, of - from) }, (_, k) => from + k).flatMap((first) =>
    subsetsOf(of, many - 1, first + 1).map((rest) => [first, ...rest]),
  )
}
const all = new Map([0, 1, 2, 3, 4, 5, 6].map((size) => [size, permutations(size).sort(compare)]))

/** Restated on the sequence itself: what stands before the step. */
function holds(condition: Condition, earlier: readonly number[]): boolean {
  if (condition.kind === 'some done') return condition.of.some((step) => earlier.includes(step))
  if (condition.kind === 'not all done') return condition.of.some((step) => !earlier.includes(step))
  let shut = 0
  for (const step of earlier)
    shut += Number(condition.shuts.includes(step)) - Number(condition.opens.includes(step))
  return shut > 0 === condition.is
}
const keeps = (rules: readonly Rule[], order: readonly number[]): boolean =>
  rules.every(({ step, any }) => any.some((one) => holds(one, order.slice(0, order.indexOf(step)))))

/** Turnings, tool changes and test places, told from the sequence. */
function counted(steps: readonly BenchStep[], order: readonly number[]): number[] {
  let [turns, tools, places] = [0, 0, 0]
  let lies: { from: string | null; turn: string | null } = { from: null, turn: null }
  let hand: string | null = null
  for (const [k, number] of order.entries()) {
    const { from, turn, tool, test } = steps[number]!
    if (turn !== null && turn !== lies.turn) {
      if (k > 0) turns++
      lies = { from: null, turn }
    }
    if (from !== null && lies.from !== null && from !== lies.from) {
      if (k > 0) turns++
      lies = { from, turn: null }
    } else if (from !== null) lies = { ...lies, from }
    if (tool !== null && hand !== null && tool !== hand) tools++
    hand = tool ?? hand
    if (test) places += k + 1
  }
  return [turns, tools, places]
}

// Constructed example; its counts by another enumeration.
describe('eight operations with directions and tools', () => {
  const letters = 'abcdefgh'
  const rows: [string, string, string][] = [
    ['+Z', 'hand', ''],
    ['+Z', 'driver', 'a'],
    ['-Z', 'hand', 'a'],
    ['-Z', 'driver', 'c'],
    ['+X', 'hand', 'a'],
    ['+Z', 'hand', 'b'],
    ['-Z', 'press', 'd'],
    ['+Z', 'press', 'f'],
  ]
  const steps = rows.map(([from, tool]): BenchStep => ({ from, tool, turn: null, test: false }))
  const rules = rows.flatMap(([, , after], step): Rule[] =>
    after === '' ? [] : [{ step, any: [{ kind: 'some done', of: [letters.indexOf(after)] }] }],
  )

  test('have 140 orders', () => {
    expect(countOrders(8, rules)).toBe(140n)
  })

  test('go best with 2 turnings over and then 6 tool changes, by one order', () => {
    const price = pricer(steps)
    const best = bestOrder(ruleBook(8, rules), price)
    expect(best?.order.map((step) => letters[step]).join(' ')).toBe('a b f h e c d g')
    expect(best?.proved).toBe(true)
    expect(price.apart(best!.cost)).toEqual({ turns: 2, toolChanges: 6, testPlaces: 0 })
  })

  test('go best with 3 tool changes where directions are left out', () => {
    const best = bestOrder(ruleBook(8, rules), pricer(steps.map((step) => ({ ...step, from: null }))))
    expect(best!.proved).toBe(true)
    expect(pricer(steps.map((step) => ({ ...step, from: null }))).apart(best!.cost).toolChanges).toBe(3)
  })
})

describe('small cases at random agree with all their permutations', () => {
  const random = seededRandom(20260202)
  const below = (count: number) => Math.floor(random.next() * count)
  const some = (size: number, most: number) => [
    ...new Set(Array.from({ length: 1 + below(most) }, () => below(size))),
  ]
  const condition = (size: number, mixed: boolean): Condition => {
    const kind = below(mixed ? 6 : 4)
    if (kind < 2) return { kind: 'some done', of: mixed ? some(size, 2) : [below(size)] }
    if (kind < 4) return { kind: 'not all done', of: some(size, 3) }
    const [first = 0, ...rest] = some(size, 4)
    return { kind: 'shut', is: kind === 4, shuts: [first], opens: rest.slice(0, 1) }
  }
  const rule = (size: number, mixed: boolean): Rule => ({
    step: below(size),
    any: Array.from({ length: mixed ? 1 + below(2) : 1 }, () => condition(size, mixed)),
  })
  const pick = (texts: readonly (string | null)[]) => texts[below(texts.length)]!
  const bench = (): BenchStep => ({
    from: pick(['top', 'bottom', 'side', null]),
    turn: pick([null, null, null, 'over', 'upright']),
    tool: pick(['hex', 'hand', 'press', null]),
    test: below(4) === 0,
  })
  const cases = Array.from({ length: 700 }, (_, k) => {
    const size = 2 + below(5)
    const rules = Array.from({ length: below(2 * size) }, () => rule(size, k % 2 === 1))
    const steps = Array.from({ length: size }, bench).map((step) =>
      // Where only sides up or only directions are named, steps may be taken at once without trying others.
      k % 3 === 0 ? step : k % 3 === 1 ? { ...step, turn: null } : { ...step, from: null, turn: step.from },
    )
    const kept = all.get(size)!.filter((order) => keeps(rules, order))
    return { size, rules, steps, kept, book: ruleBook(size, rules) }
  })

  test('the sample has enough of both kinds', () => {
    expect(cases.filter(({ kept }) => kept.length > 0).length).toBeGreaterThan(200)
    expect(cases.filter(({ kept }) => kept.length === 0).length).toBeGreaterThan(100)
  })

  test('an order is found where one exists, and only there', () => {
    for (const { book, rules, kept } of cases) {
      const found = findOrder(book, 10_000)
      if (found.order === null) expect([found.certain, kept.length]).toEqual([true, 0])
      else expect(keeps(rules, found.order)).toBe(true)
    }
  })

  test('as many orders are counted', () => {
    for (const { size, rules, kept } of cases) expect(countOrders(size, rules)).toBe(BigInt(kept.length))
  })

  test('the best order is the least by turnings, tool changes, tests and then as written', () => {
    for (const { book, steps, kept } of cases) {
      const price = pricer(steps)
      const best = bestOrder(book, price)
      const ranked = kept
        .map((order) => ({ order, key: [...counted(steps, order), ...order] }))
        .sort((a, b) => compare(a.key, b.key))
      expect(best?.order ?? null).toEqual(ranked[0]?.order ?? null)
      if (best) {
        const { turns, toolChanges, testPlaces } = price.apart(best.cost)
        expect([turns, toolChanges, testPlaces]).toEqual(counted(steps, best.order))
      }
    }
  })

  test('a search cut short gives an order that keeps the rules and claims no more than is so', () => {
    let [cut, short] = [0, 0]
    for (const { book, steps, rules, kept } of cases) {
      const best = bestOrder(book, pricer(steps), { states: 3, width: 1, counted: 0 })
      if (best === null) expect(kept).toEqual([])
      if (!best) continue
      expect(keeps(rules, best.order)).toBe(true)
      const ranked = kept.map((order) => [...counted(steps, order), ...order]).sort(compare)
      if (best.proved) expect(counted(steps, best.order).slice(0, 2)).toEqual(ranked[0]!.slice(0, 2))
      if (best.nearest) expect(best.order).toEqual(ranked[0]!.slice(3))
      if (!best.proved) cut++
      if (best.proved && !best.nearest) short++
    }
    expect(cut).toBeGreaterThan(30)
    expect(short).toBeGreaterThan(10)
  })

  test('what is still to come is never overrated', () => {
    for (const { book, steps, kept } of cases) {
      const price = pricer(steps)
      const least = leastAhead(book, price)
      for (const order of kept.slice(0, 20)) {
        const done = new Uint32Array(1)
        const whole = priceOf(price, order)
        let [standing, sofar] = [fresh, 0]
        for (const [place, step] of order.entries()) {
          expect(sofar + least(done, standing, place, Number.POSITIVE_INFINITY)).toBeLessThanOrEqual(whole)
          sofar += price.costOf(standing, step, place)
          standing = price.standingAfter(standing, step)
          done[0]! |= 1 << step
        }
      }
    }
  })

  test('every conflict is one, and nothing in it can be spared', () => {
    for (const { size, rules, kept } of cases.filter((one) => one.kept.length === 0)) {
      const conflict = findConflict(
        size,
        rules.map((one) => [one]),
        10_000,
      )
      const of = conflict.statements.map((number) => rules[number]!)
      expect(kept).toEqual([])
      expect(all.get(size)!.some((order) => keeps(of, order))).toBe(false)
      expect([conflict.minimal, conflict.smallest]).toEqual([true, true])
      for (const spared of of) {
        const others = of.filter((one) => one !== spared)
        expect(all.get(size)!.some((order) => keeps(others, order))).toBe(true)
      }
    }
  })

  test('no conflict of fewer statements exists', () => {
    for (const { size, rules } of cases.filter((one) => one.kept.length === 0)) {
      const conflict = findConflict(
        size,
        rules.map((one) => [one]),
        10_000,
      )
      // By order the statements it breaks: what cannot hold together meets each of these.
      const broken = all
        .get(size)!
        .map((order) => rules.flatMap((one, k) => (keeps([one], order) ? [] : [k])))
      const fewer = subsetsOf(rules.length, conflict.statements.length - 1)
      expect(fewer.some((some) => broken.every((list) => list.some((k) => some.includes(k))))).toBe(false)
    }
  })

  test('every order that keeps the settled links of single and grouped waits keeps the rules', () => {
    for (const { size, rules, kept } of cases) {
      const plain = rules.filter(({ any }) => any.every(({ kind }) => kind !== 'shut'))
      const order = kept[0]
      if (!order || plain.length < rules.length) continue
      const place = order.map((_, step) => order.indexOf(step))
      const links = rules.flatMap((one) => settledLinks(one, place))
      for (const other of all.get(size)!) {
        const inOrder = links.every(({ before, after }) => other.indexOf(before) < other.indexOf(after))
        if (inOrder) expect(keeps(rules, other)).toBe(true)
      }
    }
  })
})
