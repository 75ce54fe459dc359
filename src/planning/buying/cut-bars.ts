import Fraction from 'fraction.js'
import { type Bar, type BarShop, barProblem, barShop } from './bar-shop.ts'
import type { BarPiece, BarRules, BarStock } from './bar-stock.ts'
import { type ChoicePrice, chooseUnits, priceOf, type Tried, type UnitPrice } from './choose-units.ts'
import { barLeft, type FilledBar } from './fit-bars.ts'
import { manyBars } from './many-bars.ts'
import { fewestOwn, fillOwnFirst } from './own-first.ts'
import { type PackedUnit, type Packing, smaller } from './packing.ts'
import { isEnough, knownBars, tryBars } from './try-bars.ts'

/** One bar, the pieces cut from it in order, and the rest of it. */
export interface CutBar extends PackedUnit {
  /** The stock it is of. */
  readonly form: string
  /** Millimetres left over, the gripped end included. */
  readonly rest: Fraction
}

/** Which piece is cut from which bar. */
export interface BarPlan {
  /** Own bars first, remnants before whole ones; only those from which something is cut. */
  readonly units: readonly CutBar[]
  /** Parts that no bar is long enough for. */
  readonly tooLarge: readonly string[]
  /** No plan costs less than the bars bought here. */
  readonly proved: boolean
  /** What the bars bought cost, and what no plan can go below. */
  readonly price: ChoicePrice
  readonly least: ChoicePrice
}

/** Saws and lathes that can use a bar up to its end; effort well below what a person notices. */
export const usualRules: BarRules = { grip: new Fraction(0), effort: 100_000 }

/**
 * The bars that cost the least for all these pieces, and which piece is cut from which. Each piece takes its length,
 * its facing and one saw cut; of every bar begun the gripped end is left. Where nothing is gripped, the last piece of a
 * bar may take the end as it is, so a cut that would fall beyond the end is not needed. What is here is used first: new
 * bars are bought only for what own ones cannot hold. No piece straddles two bars.
 * Gives: the same plan whatever the order of pieces and stocks; `proved` unless the effort ran out.
 * Source: gripping and facing are common practice, no source; the search see `fitBars` and `chooseUnits`.
 * Cost: exponential in the kinds of pieces at worst; at most `effort` steps.
 */
export function planBars(
  pieces: readonly BarPiece[],
  stocks: readonly BarStock[],
  rules: BarRules = usualRules,
): BarPlan {
  const shop = barShop(pieces, stocks, rules)
  const { counts, packing, proved, least } = chooseUnits({
    forms: shop.forms,
    known: knownBars(shop),
    enough: (many) => isEnough(barProblem(shop, many)),
    most: pieces.length,
    attempt: attempts(shop),
  })
  const buys = counts.some((count) => count > 0)
  const filled = buys ? fillOwnFirst(shop, barProblem(shop, counts), packing) : fewestOwn(shop, packing)
  const units = sawn(shop, filled, [...shop.own, ...newBars(shop, counts)])
  const price = priceOf(shop.forms, boughtOf(shop, units))
  const nothing = { unpriced: 0, money: 0, bought: 0 }
  const { exact } = shop.grid
  return {
    units,
    tooLarge: shop.tooLarge,
    proved: proved && (exact || !buys),
    price,
    least: exact ? least : nothing,
  }
}

/**
 * Which piece is cut from which bar where there is one length of bar: the fewest new bars.
 * Gives: as `planBars`, with one unit of money for each bar.
 */
export function cutBars(
  pieces: readonly BarPiece[],
  length: Fraction,
  have: Fraction,
  rules: BarRules = usualRules,
): BarPlan & Packing {
  const price = (bars: number): UnitPrice => ({ unpriced: 0, money: bars })
  return planBars(pieces, [{ id: '', length, have, price }], rules)
}

/** Pieces from which patterns are set up at once; fewer are searched first. */
const many = 40

/** Whether so many bars hold the pieces: by search, and by patterns where the pieces are many or the search gave up. */
function attempts(shop: BarShop): (counts: readonly number[]) => Tried<readonly FilledBar[]> {
  const pieces = shop.parts.reduce((sum, { length }) => sum + length, 0)
  const effort = { left: shop.effort.left / 2 }
  let patterns = pieces >= many ? manyBars(shop, effort) : null
  return (counts) => {
    const problem = barProblem(shop, counts)
    const searched = patterns ? null : tryBars(problem, shop.effort)
    if (searched && searched !== 'undecided') return searched
    patterns ??= manyBars(shop, effort)
    if (!patterns.allows(problem)) return 'impossible'
    const tried = patterns.attempt(problem, shop.effort)
    return tried === 'undecided' && !searched ? tryBars(problem, shop.effort) : tried
  }
}

function boughtOf({ stocks }: BarShop, units: readonly CutBar[]): number[] {
  return stocks.map(({ id }) => units.filter(({ form, own }) => form === id && !own).length)
}

function newBars({ stocks, forms, sizes }: BarShop, counts: readonly number[]): Bar[] {
  return stocks.flatMap((stock, k) =>
    Array.from({ length: counts[k]! }, () => ({
      stock,
      own: false,
      share: new Fraction(1),
      size: sizes.indexOf(forms[k]!.holds),
    })),
  )
}

/** The pieces by name in their bars; of bars of one length, own ones get the fullest sets. */
function sawn(shop: BarShop, packing: readonly FilledBar[], bars: readonly Bar[]): CutBar[] {
  const left = [...packing].filter(({ take }) => take.some((count) => count > 0)).sort(fullestFirst(shop))
  const names = shop.parts.map((parts) => [...parts])
  return bars.flatMap((bar) => {
    const found = left.findIndex((filled) => filled.bar === bar.size)
    if (found < 0) return []
    const [{ take }] = left.splice(found, 1) as [FilledBar]
    return [sawnBar(shop, bar, take, names)]
  })
}

function fullestFirst(shop: BarShop): (a: FilledBar, b: FilledBar) => number {
  const rest = ({ bar, take }: FilledBar): number => barLeft(shop, shop.sizes[bar]!, take)
  return (a, b) => {
    const differs = a.take.findIndex((count, k) => count !== b.take[k])
    return rest(a) - rest(b) || (differs < 0 ? 0 : b.take[differs]! - a.take[differs]!)
  }
}

function sawnBar(shop: BarShop, bar: Bar, take: readonly number[], names: string[][]): CutBar {
  const { length, id } = bar.stock
  let rest = length.mul(bar.share)
  const pieces = sawingOrder(shop, take).map((kind) => {
    const piece = shop.cuts[kind]!
    const taken = smaller(piece.length.add(piece.kerf), rest)
    rest = rest.sub(taken)
    return { part: names[kind]!.shift()!, share: taken.div(length) }
  })
  return { own: bar.own, size: bar.share, pieces, form: id, rest }
}

/** Kinds of the pieces of a bar, longest first; one with the widest cut comes last, where the cut may fall away. */
function sawingOrder({ kinds }: BarShop, take: readonly number[]): number[] {
  const order = take.flatMap((count, kind) => Array.from({ length: count }, () => kind))
  const widest = Math.max(...order.map((kind) => kinds[kind]!.kerf))
  const last = order.findLastIndex((kind) => kinds[kind]!.kerf === widest)
  return [...order.filter((_, k) => k !== last), order[last]!]
}
