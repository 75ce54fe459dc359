import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { planPlates } from '../../src/planning/buying/cut-plates.ts'

/** Whole millimetres and whole money. */
interface Case {
  readonly pieces: readonly (readonly [length: number, width: number])[]
  readonly stocks: readonly { readonly length: number; readonly width: number; readonly price: number }[]
  /** Length of an own remnant of the first stock; 0: none. */
  readonly remnant: number
  readonly kerf: number
  readonly turn: boolean
}

/** Numbers from 0 up to 1 that look random and are the same each time. Source: Lehmer, 48271 modulo 2^31 - 1. */
function lehmer(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48_271) % 2_147_483_647
    return state / 2_147_483_647
  }
}

function randomCase(seed: number): Case {
  const next = lehmer(500 + seed * 7919)
  const from = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1))
  const stocks = Array.from({ length: from(1, 2) }, () => {
    const [length, width] = [from(7, 12), from(6, 10)]
    return { length, width, price: length * width + from(0, 30) }
  })
  const { length, width } = stocks[0]!
  const pieces = Array.from({ length: from(2, 6) }, () => [from(2, length - 1), from(1, width - 1)] as const)
  const remnant = from(0, 2) === 0 ? from(2, length - 1) : 0
  return { pieces, stocks, remnant, kerf: from(0, 1), turn: from(0, 3) > 0 }
}

/**
 * Whether a rectangle yields the pieces (bits of `set`): the first cut is tried at every millimetre, in both
 * directions, with every sharing of the pieces between its two sides.
 */
function yields(one: Case, length: number, width: number, set: number, seen: Map<string, boolean>): boolean {
  if (set === 0) return true
  if (length <= 0 || width <= 0) return false
  const key = `${length} ${width} ${set}`
  const known = seen.get(key)
  if (known !== undefined) return known
  const answer = single(one, length, width, set) || splits(one, length, width, set, seen)
  seen.set(key, answer)
  return answer
}

function single({ pieces, turn }: Case, length: number, width: number, set: number): boolean {
  if ((set & (set - 1)) !== 0) return false
  const [a, b] = pieces[Math.log2(set)]!
  return (a <= length && b <= width) || (turn && b <= length && a <= width)
}

function splits(one: Case, length: number, width: number, set: number, seen: Map<string, boolean>): boolean {
  for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
    const rest = set & ~part
    for (let cut = 1; cut < length; cut += 1)
      if (yields(one, cut, width, part, seen) && yields(one, length - cut - one.kerf, width, rest, seen))
        return true
    for (let cut = 1; cut < width; cut += 1)
      if (yields(one, length, cut, part, seen) && yields(one, length, width - cut - one.kerf, rest, seen))
        return true
  }
  return false
}

/** Least money over every way to deal the pieces out to plates; the remnant costs nothing and is there once. */
function leastMoney(one: Case): number {
  const seen = new Map<string, boolean>()
  const all = 2 ** one.pieces.length - 1
  const priceOf = (set: number): number =>
    Math.min(
      ...one.stocks.map(({ length, width, price }) =>
        yields(one, length, width, set, seen) ? price : Number.POSITIVE_INFINITY,
      ),
    )
  const least: number[] = [0]
  for (let set = 1; set <= all; set += 1) {
    least[set] = Number.POSITIVE_INFINITY
    for (let part = set; part > 0; part = (part - 1) & set)
      if ((part & -set & set) !== 0) least[set] = Math.min(least[set]!, priceOf(part) + least[set & ~part]!)
  }
  let best = least[all]!
  for (let part = all; part > 0 && one.remnant > 0; part -= 1)
    if (yields(one, one.remnant, one.stocks[0]!.width, part, seen)) best = Math.min(best, least[all & ~part]!)
  return best
}

function planned(one: Case, effort: number) {
  const pieces = one.pieces.map(([length, width], k) => ({
    part: `p${k}`,
    length: new Fraction(length),
    width: new Fraction(width),
    kerf: new Fraction(one.kerf),
  }))
  const stocks = one.stocks.map(({ length, width, price }, s) => ({
    id: `s${s}`,
    length: new Fraction(length),
    width: new Fraction(width),
    have: new Fraction(s === 0 ? one.remnant : 0, length),
    price: (plates: number) => ({ unpriced: 0, money: plates * price }),
  }))
  return planPlates(pieces, stocks, { turn: one.turn, effort })
}

const cases = Array.from({ length: 80 }, (_, seed) => randomCase(seed))
const least = cases.map(leastMoney)

describe('plates bought for 80 random needs, against every straight cut tried at every millimetre', () => {
  it('cost the least money that cuts straight through allow, and every plan says so', () => {
    const plans = cases.map((one) => planned(one, 100_000))
    const fits = least.map((money) => Number.isFinite(money))
    expect(fits.filter((each) => each).length).toBeGreaterThan(60)
    expect(plans.filter((_, k) => fits[k]).map(({ price }) => price.money)).toEqual(
      least.filter((_, k) => fits[k]),
    )
    expect(plans.map(({ tooLarge }) => tooLarge.length === 0)).toEqual(fits)
    expect(plans.filter(({ proved }) => !proved)).toHaveLength(0)
    expect(new Set(least).size).toBeGreaterThan(20)
  })

  it('with no effort cost no less, and what they say of the least holds', () => {
    const plans = cases.map((one) => planned(one, 0))
    expect(plans.some(({ proved }) => !proved)).toBe(true)
    for (const [k, { price, least: bound, proved, tooLarge }] of plans.entries()) {
      if (tooLarge.length > 0) continue
      expect(price.money).toBeGreaterThanOrEqual(least[k]!)
      expect(bound.money).toBeLessThanOrEqual(least[k]!)
      if (proved) expect(price.money).toBe(least[k])
    }
  })
})
