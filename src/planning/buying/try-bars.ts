import type { BarShop } from './bar-shop.ts'
import { barProblem } from './bar-shop.ts'
import { cheaperFirst, type Tried, type UnitChoice } from './choose-units.ts'
import { type BarProblem, barLeft, type Effort, type FilledBar, fillBarByBar, fitBars } from './fit-bars.ts'
import { type Picking, ruleOfThumb } from './rule-of-thumb.ts'

const pickings: readonly Picking[] = ['first', 'fullest']

/**
 * Whether the bars could hold the pieces: by length, and for each length of piece, by how many so long go into a bar.
 * Gives: false only where they cannot.
 */
export function isEnough({ kinds, counts, bars, grip }: BarProblem): boolean {
  const widest = grip === 0 ? Math.max(0, ...kinds.map(({ kerf }) => kerf)) : 0
  const weights = kinds.map(({ length, kerf }) => length + kerf)
  const room = (size: number): number => Math.max(0, size - grip + widest)
  const sum = weights.reduce((all, weight, k) => all + weight * counts[k]!, 0)
  if (sum > bars.reduce((all, { size, count }) => all + room(size) * count, 0)) return false
  return weights.every((least) => {
    const asLarge = weights.reduce((all, weight, k) => (weight >= least ? all + counts[k]! : all), 0)
    return (
      least === 0 || asLarge <= bars.reduce((all, b) => all + b.count * Math.floor(room(b.size) / least), 0)
    )
  })
}

/** The pieces into these bars: by rule of thumb, else by search with half of the effort that is left. */
export function tryBars(problem: BarProblem, effort: Effort): Tried<readonly FilledBar[]> {
  effort.left -= stepsOfThumb(problem)
  if (effort.left <= 0) return 'undecided'
  for (const picking of pickings) {
    const packing = ruleOfThumb(problem, picking, (kind, opened) => shortestFree(problem, kind, opened))
    if (packing) return { packing }
  }
  const filled = fillBarByBar(problem)
  if (filled) return { packing: filled }
  const given = Math.ceil(effort.left / 2)
  const spent = { left: given }
  const found = fitBars(problem, spent)
  effort.left -= given - Math.max(0, spent.left)
  return typeof found === 'string' ? found : { packing: found }
}

/** About as long as rules of thumb take, in steps of the search. */
function stepsOfThumb({ counts, bars }: BarProblem): number {
  const pieces = counts.reduce((sum, count) => sum + count, 0)
  return Math.ceil((pieces * bars.reduce((sum, { count }) => sum + count, 0)) / 10)
}

function shortestFree(problem: BarProblem, kind: number, opened: readonly number[]): number | null {
  const found = problem.bars.findIndex(
    ({ size, count }, b) => opened[b]! < count && fitsAlone(problem, kind, size),
  )
  return found < 0 ? null : found
}

function fitsAlone({ kinds, grip }: Pick<BarProblem, 'kinds' | 'grip'>, kind: number, size: number): boolean {
  return barLeft({ kinds: [kinds[kind]!], grip }, size, [1]) >= 0
}

/** The cheapest choice of new bars by rule of thumb: one stock for all it can hold, then for each bar a cheaper one. */
export function knownBars(shop: BarShop): UnitChoice<readonly FilledBar[]> {
  const choices = shop.stocks.flatMap((_, stock) =>
    pickings.flatMap((picking) => {
      const packing = boughtAsNeeded(shop, stock, picking)
      return [shopped(shop, packing, stock), shopped(shop, packing, null)]
    }),
  )
  const order = cheaperFirst(shop.forms)
  return choices.reduce((best, each) => (order(each.counts, best.counts) < 0 ? each : best))
}

function boughtAsNeeded(shop: BarShop, stock: number, picking: Picking): FilledBar[] {
  const own = barProblem(
    shop,
    shop.forms.map(() => 0),
  )
  const sizeOf = (k: number): number => shop.sizes.indexOf(shop.forms[k]!.holds)
  return ruleOfThumb(own, picking, (kind, opened) => {
    const free = shortestFree(own, kind, opened)
    if (free !== null) return free
    if (fitsAlone(own, kind, shop.forms[stock]!.holds)) return sizeOf(stock)
    return sizeOf(cheapestFor(shop, (size) => fitsAlone(own, kind, size)))
  })!
}

/** Index of the stock that costs least by the single bar among those long enough. */
function cheapestFor({ forms }: BarShop, fits: (size: number) => boolean): number {
  const one = (k: number): number[] => forms.map((_, each) => (each === k ? 1 : 0))
  const order = cheaperFirst(forms)
  return [...forms.keys()]
    .filter((k) => fits(forms[k]!.holds))
    .reduce((best, k) => (order(one(k), one(best)) < 0 ? k : best))
}

/** Filled bars with what is here taken off: new bars as opened (`stock` where the size is its), or the cheapest. */
function shopped(
  shop: BarShop,
  packing: readonly FilledBar[],
  stock: number | null,
): UnitChoice<readonly FilledBar[]> {
  const here = shop.sizes.map((_, size) => shop.own.filter((bar) => bar.size === size).length)
  const counts = shop.forms.map(() => 0)
  const filled = packing.map(({ bar, take }) => {
    here[bar] = here[bar]! - 1
    if (here[bar]! >= 0) return { bar, take }
    const holds = (size: number): boolean => barLeft(shop, size, take) >= 0
    const same = (size: number): boolean => size === shop.sizes[bar]
    const opened = stock !== null && same(shop.forms[stock]!.holds) ? stock : null
    const chosen = stock === null ? cheapestFor(shop, holds) : (opened ?? cheapestFor(shop, same))
    counts[chosen] = counts[chosen]! + 1
    return { bar: shop.sizes.indexOf(shop.forms[chosen]!.holds), take }
  })
  return { counts, packing: filled }
}
