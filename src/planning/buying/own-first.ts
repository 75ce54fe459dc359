import { type BarShop, barProblem } from './bar-shop.ts'
import { chooseUnits } from './choose-units.ts'
import { type BarProblem, barLeft, type FilledBar, fitBars, fullestSets } from './fit-bars.ts'
import { isEnough, tryBars } from './try-bars.ts'

/** Own bars that are tried to be filled further, sets tried for each, and steps for each set. */
const most = { bars: 4, sets: 6, steps: 400 } as const

/**
 * The same bars with own ones as full as can be found, in their order, so that new ones keep the longer rests.
 * Method: the fullest sets for an own bar, kept where the other bars still hold all else; a rule of thumb, not proved.
 */
export function fillOwnFirst(
  shop: BarShop,
  problem: BarProblem,
  packing: readonly FilledBar[],
): readonly FilledBar[] {
  const filled: FilledBar[] = []
  let rest = problem
  let others = packing
  for (const { size } of shop.own.slice(0, most.bars)) {
    const now = fullestOf(rest, others, size)
    const better = fuller(rest, size, now)
    const taken = better?.taken ?? now
    if (better) others = better.others
    else others = others.filter((each) => each !== now)
    if (taken) filled.push(taken)
    rest = without(rest, size, taken?.take ?? null)
  }
  return [...filled, ...others]
}

function fullestOf(problem: BarProblem, packing: readonly FilledBar[], bar: number): FilledBar | null {
  const left = ({ take }: FilledBar): number => barLeft(problem, problem.bars[bar]!.size, take)
  return packing
    .filter((each) => each.bar === bar)
    .reduce<FilledBar | null>((best, each) => (best && left(best) <= left(each) ? best : each), null)
}

function fuller(
  problem: BarProblem,
  bar: number,
  now: FilledBar | null,
): { taken: FilledBar; others: readonly FilledBar[] } | null {
  const { size } = problem.bars[bar]!
  const left = (take: readonly number[]): number => barLeft(problem, size, take)
  for (const take of fullestSets(problem, bar, most.sets, { left: most.steps * most.sets })) {
    if (take.every((count) => count === 0) || (now && left(take) >= left(now.take))) continue
    const others = fitBars(without(problem, bar, take), { left: most.steps })
    if (typeof others !== 'string') return { taken: { bar, take }, others }
  }
  return null
}

function without(problem: BarProblem, bar: number, take: readonly number[] | null): BarProblem {
  const bars = problem.bars.map((each, b) => (b === bar ? { ...each, count: each.count - 1 } : each))
  return { ...problem, bars, counts: problem.counts.map((count, k) => count - (take?.[k] ?? 0)) }
}

/** The pieces in remnants and as few own whole bars as hold them. Needs: `packing` holds them without new bars. */
export function fewestOwn(shop: BarShop, packing: readonly FilledBar[]): readonly FilledBar[] {
  const none = shop.forms.map(() => 0)
  const here = shop.stocks.map(
    (stock) => shop.own.filter((bar) => bar.stock === stock && bar.share.equals(1)).length,
  )
  const problem = (counts: readonly number[]): BarProblem => barProblem(shop, none, counts)
  return chooseUnits({
    forms: shop.forms.map(({ holds }) => ({ holds, price: () => ({ unpriced: 0, money: 0 }) })),
    known: { counts: here, packing },
    most: Math.max(0, ...here),
    enough: (counts) => counts.every((count, k) => count <= here[k]!) && isEnough(problem(counts)),
    attempt: (counts) => tryBars(problem(counts), shop.effort),
  }).packing
}
