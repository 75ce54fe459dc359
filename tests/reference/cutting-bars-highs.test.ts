import Fraction from 'fraction.js'
import highs from 'highs'
import { describe, expect, it } from 'vitest'
import type { BarPiece } from '../../src/planning/buying/bar-stock.ts'
import { planBars } from '../../src/planning/buying/cut-bars.ts'

/** Whole millimetres and whole money. */
interface Case {
  readonly kinds: readonly { readonly length: number; readonly kerf: number; readonly count: number }[]
  readonly stocks: readonly {
    readonly length: number
    readonly whole: number
    readonly remnant: number
    readonly price: readonly number[]
  }[]
  readonly grip: number
}

/** Numbers from 0 up to 1 that look random and are the same each time. Source: Lehmer, 48271 modulo 2^31 - 1. */
function lehmer(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}

function randomCase(seed: number, fewest = 1, most = 4): Case {
  const next = lehmer(1000 + seed * 7919)
  const from = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1))
  const stocks = Array.from({ length: from(1, 3) }, () => {
    const length = from(60, 120)
    const each = Math.round(length / 4) + from(0, 25)
    const breakAt = from(2, 5)
    // A lower price from some number on, never so low that more bars cost less.
    const price = Array.from({ length: 100 }, (_, n) =>
      n >= breakAt ? n * each - Math.floor(each / 2) : n * each,
    )
    return {
      length,
      whole: from(0, 5) === 0 ? 1 : 0,
      remnant: from(0, 2) === 0 ? from(1, length - 1) : 0,
      price,
    }
  })
  const longest = Math.max(...stocks.map(({ length }) => length))
  const grip = from(0, 3) === 0 ? from(1, 12) : 0
  const mixed = from(0, 2) === 0
  const saw = from(0, 3)
  const kinds = Array.from({ length: from(2, 6) }, () => {
    const kerf = mixed ? from(0, 4) : saw
    return { length: from(8, Math.floor((longest - grip - kerf) * 0.7)), kerf, count: from(fewest, most) }
  })
  return { kinds, stocks, grip }
}

/**
 * Least money by an integer program of flows: nodes are positions along a bar, arcs are pieces, a flow of 1 is a bar.
 * A piece with its cut leads on to a further piece; the last piece of a bar needs no cut where nothing is gripped.
 * Source: arc-flow, Valério de Carvalho 1999, from memory; solved by the general solver HiGHS.
 */
function flowProgram({ kinds, stocks, grip }: Case): string {
  const bars = stocks.flatMap(({ length, whole, remnant }, s) => [
    { name: `new${s}`, length, most: null },
    { name: `whole${s}`, length, most: whole },
    { name: `rest${s}`, length: remnant, most: remnant > 0 ? 1 : 0 },
  ])
  const end = Math.max(...bars.map(({ length }) => length)) - grip
  const inflow = Array.from({ length: end + 1 }, (): string[] => [])
  const outflow = Array.from({ length: end + 1 }, (): string[] => [])
  const cut = kinds.map((): string[] => [])
  const ends = Array.from({ length: end + 1 }, (): string[] => [])
  for (let at = 0; at <= end; at += 1) {
    for (const [k, { length, kerf }] of kinds.entries()) {
      if (at + length + kerf <= end) {
        outflow[at]!.push(`x${k}_${at}`)
        inflow[at + length + kerf]!.push(`x${k}_${at}`)
        cut[k]!.push(`x${k}_${at}`)
      }
      if (grip === 0 && at + length <= end) {
        outflow[at]!.push(`l${k}_${at}`)
        ends[at + length]!.push(`l${k}_${at}`)
        cut[k]!.push(`l${k}_${at}`)
      }
    }
    outflow[at]!.push(`e${at}`)
    ends[at]!.push(`e${at}`)
  }
  const all = outflow.flat()
  const rows: string[] = []
  for (let at = 1; at <= end; at += 1) rows.push(`${sum(outflow[at]!)}${minus(inflow[at]!)} = 0`)
  for (const [k, { count }] of kinds.entries()) rows.push(`${sum(cut[k]!)} = ${count}`)
  // Of the bars that end beyond a position, no more than there are bars so long.
  for (let at = 0; at <= end; at += 1) {
    const beyond = ends.slice(at).flat()
    const longEnough = bars.filter(({ length }) => length - grip >= at).map(({ name }) => name)
    if (beyond.length > 0) rows.push(`${sum(beyond)}${minus(longEnough)} <= 0`)
  }
  const money: string[] = []
  const chosen: string[] = []
  for (const [s, { price }] of stocks.entries()) {
    const steps = price.map((_, n) => `y${s}_${n}`)
    chosen.push(...steps)
    money.push(...steps.map((y, n) => `${price[n]} ${y}`))
    rows.push(`${sum(steps)} = 1`, `${sum(steps.map((y, n) => `${n} ${y}`))} - new${s} = 0`)
  }
  const bounds = bars.flatMap(({ name, most }) => (most === null ? [] : [`${name} <= ${most}`]))
  return [
    `Minimize\n ${sum(money)}`,
    `Subject To\n${rows.map((row, k) => ` r${k}: ${row}`).join('\n')}`,
    `Bounds\n${bounds.map((bound) => ` ${bound}`).join('\n')}`,
    `General\n ${[...all, ...bars.map(({ name }) => name)].join('\n ')}`,
    `Binary\n ${chosen.join('\n ')}`,
    'End',
  ].join('\n')
}

const sum = (names: readonly string[]): string => names.join(' + ')
const minus = (names: readonly string[]): string => names.map((name) => ` - ${name}`).join('')

function planned({ kinds, stocks, grip }: Case, effort: number) {
  const pieces = kinds.flatMap(({ length, kerf, count }, k) =>
    Array.from(
      { length: count },
      (): BarPiece => ({ part: `p${k}`, length: new Fraction(length), kerf: new Fraction(kerf) }),
    ),
  )
  const bars = stocks.map(({ length, whole, remnant, price }, s) => ({
    id: `s${s}`,
    length: new Fraction(length),
    have: new Fraction(remnant, length).add(whole),
    price: (units: number) => ({ unpriced: 0, money: price[units] ?? price.at(-1)! + 1000 * units }),
  }))
  return planBars(pieces, bars, { grip: new Fraction(grip), effort })
}

const cases = Array.from({ length: 80 }, (_, seed) => randomCase(seed))
// The package states its types as a CommonJS module, and is loaded as an ES module.
const solver = await (highs as unknown as typeof highs.default)()
const least = cases.map(leastMoney)
/** Dozens of pieces of a few lengths, where not every plan can be proved. */
const large = Array.from({ length: 20 }, (_, seed) => randomCase(seed + 3000, 8, 20))

function leastMoney(one: Case): number | null {
  const solved = solver.solve(flowProgram(one), { mip_rel_gap: 0, mip_abs_gap: 0.5 })
  return solved.Status === 'Optimal' ? Math.round(solved.ObjectiveValue) : null
}

describe('bars bought for 80 random needs, against an integer program solved by HiGHS', () => {
  it('every program is solved, and most of them buy something', () => {
    expect(least.filter((money) => money === null)).toEqual([])
    expect(least.filter((money) => money! > 0).length).toBeGreaterThan(60)
  })

  it('cost the least money, and every plan says so', () => {
    const plans = cases.map((one) => planned(one, 100_000))
    expect(plans.map(({ price }) => price.money)).toEqual(least)
    expect(plans.filter(({ proved }) => !proved)).toHaveLength(0)
    expect(plans.flatMap(({ tooLarge }) => tooLarge)).toEqual([])
  })

  it('with next to no effort cost no less, and what they say of the least holds', () => {
    const plans = cases.map((one) => planned(one, 30))
    expect(plans.some(({ proved }) => !proved)).toBe(true)
    for (const [k, { price, least: bound, proved }] of plans.entries()) {
      expect(price.money).toBeGreaterThanOrEqual(least[k]!)
      expect(bound.money).toBeLessThanOrEqual(least[k]!)
      if (proved) expect(price.money).toBe(least[k])
    }
  })

  it('for dozens of pieces cost no less, at most a tenth more, and what they say of the least holds', () => {
    const plans = large.map((one) => planned(one, 100_000))
    const bounds = large.map(leastMoney)
    expect(plans.filter(({ proved }) => proved).length).toBeGreaterThan(12)
    for (const [k, { price, least: bound, proved }] of plans.entries()) {
      expect(price.money).toBeGreaterThanOrEqual(bounds[k]!)
      expect(price.money).toBeLessThanOrEqual(bounds[k]! * 1.1)
      expect(bound.money).toBeLessThanOrEqual(bounds[k]!)
      if (proved) expect(price.money).toBe(bounds[k])
    }
  })
})
