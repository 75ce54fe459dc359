import Fraction from 'fraction.js'
import {
  type ChoicePrice,
  cheaperFirst,
  chooseUnits,
  priceOf,
  type Tried,
  type UnitChoice,
  type UnitPrice,
} from './choose-units.ts'
import { fitPlates } from './fit-plates.ts'
import { sawable } from './guillotine.ts'
import type { Packing, Piece } from './packing.ts'
import { type FilledPlate, hasArea, type PlateProblem } from './plate-problem.ts'
import { manners, plateRows } from './plate-rows.ts'
import { fitsOnto, type Plate, type PlateShop, plateProblem, plateShop } from './plate-shop.ts'
import type { PlateRules, PlateSize, PlateStock } from './plate-stock.ts'
import { type CutPlate, sawnPlates } from './sawn-plates.ts'

/** Which piece is sawn from which plate. */
export interface PlatePlan {
  /** Own plates first, remnants before whole ones; only those from which something is sawn. */
  readonly units: readonly CutPlate[]
  /** Parts that no plate is large enough for. */
  readonly tooLarge: readonly string[]
  /** No plan with cuts straight through costs less than the plates bought here. */
  readonly proved: boolean
  /** What the plates bought cost, and what no such plan can go below. */
  readonly price: ChoicePrice
  readonly least: ChoicePrice
}

/** Sheet without grain; effort well below what a person notices. */
export const usualPlateRules: PlateRules = { turn: true, effort: 80_000 }

/**
 * The plates that cost the least for all these pieces, and where each piece lies. Cuts go straight through, as a saw or
 * shear makes them; one saw cut between two pieces, none where it would fall beyond the edge. One blade saws them
 * all: the widest cut that any piece asks for. A piece takes its length and cut times its width and cut. What is here
 * is used first. A remnant is taken to have the full width and its share of the length.
 * Gives: the same plan whatever the order of pieces and stocks; `proved` where there are few enough sets of pieces to
 * try them all, or where the area allows no less; else the best of rows in four manners.
 */
export function planPlates(
  pieces: readonly Piece[],
  stocks: readonly PlateStock[],
  rules: PlateRules = usualPlateRules,
): PlatePlan {
  const shop = plateShop(pieces, stocks, rules)
  const { counts, packing, proved, least } = chooseUnits({
    forms: shop.forms,
    known: knownPlates(shop),
    enough: (many) => hasArea(plateProblem(shop, many)),
    most: pieces.length,
    attempt: attempts(shop),
  })
  const units = sawnPlates(shop, packing, [...shop.own, ...newPlates(shop, counts)])
  const bought = shop.stocks.map(({ id }) => units.filter(({ form, own }) => form === id && !own).length)
  const nothing = { unpriced: 0, money: 0, bought: 0 }
  const { exact } = shop.grid
  const buys = bought.some((count) => count > 0)
  return {
    units,
    tooLarge: shop.tooLarge,
    proved: proved && (exact || !buys),
    price: priceOf(shop.forms, bought),
    least: exact ? least : nothing,
  }
}

/**
 * Which piece is sawn from which plate where there is one size of plate: the fewest new plates.
 * Gives: as `planPlates`, with one unit of money for each plate.
 */
export function cutPlates(
  pieces: readonly Piece[],
  plate: PlateSize,
  have: Fraction,
  rules: PlateRules = usualPlateRules,
): PlatePlan & Packing {
  const price = (plates: number): UnitPrice => ({ unpriced: 0, money: plates })
  return planPlates(pieces, [{ id: '', ...plate, have, price }], rules)
}

function newPlates({ stocks, sizeOf }: PlateShop, counts: readonly number[]): Plate[] {
  const share = new Fraction(1)
  return stocks.flatMap((stock, k) =>
    Array.from({ length: counts[k]! }, () => ({ stock, own: false, share, size: sizeOf(stock, share) })),
  )
}

/** All rows by rule of thumb: own plates, then new ones of one stock; the cheapest, then with the fewest own ones. */
function knownPlates(shop: PlateShop): UnitChoice<readonly FilledPlate[]> {
  const none = shop.forms.map(() => 0)
  const here = plateProblem(shop, none)
  const order = cheaperFirst(shop.forms)
  const choices = shop.stocks.flatMap((_, first) =>
    manners.flatMap((manner) => {
      const counts = [...none]
      const packing = plateRows(here, manner, (kind, opened) => {
        const own = here.plates.findIndex(
          (plate, p) => opened[p]! < plate.count && fitsOnto(here, kind, plate),
        )
        if (own >= 0) return own
        const stock = [first, ...shop.stocks.keys()].find((k) =>
          fitsOnto(here, kind, here.plates[shop.sizeOfForm[k]!]!),
        )!
        counts[stock] = counts[stock]! + 1
        return shop.sizeOfForm[stock]!
      })
      return packing ? [{ counts, packing }] : []
    }),
  )
  return choices.reduce((best, each) => {
    const better = order(each.counts, best.counts) || each.packing.length - best.packing.length
    return better < 0 ? each : best
  })
}

/** Whether so many plates hold the pieces: rows in each manner, else every set of pieces where they are few. */
function attempts(shop: PlateShop): (counts: readonly number[]) => Tried<readonly FilledPlate[]> {
  let known: ReturnType<typeof sawable> | undefined
  return (counts) => {
    const problem = plateProblem(shop, counts)
    const rows = inRows(problem)
    if (rows) return { packing: rows }
    known ??= sawable(problem, { left: shop.effort.left })
    if (!known) return 'undecided'
    const found = fitPlates(problem, known, shop.effort)
    return typeof found === 'string' ? found : { packing: found }
  }
}

function inRows(problem: PlateProblem): FilledPlate[] | null {
  for (const manner of manners) {
    const rows = plateRows(problem, manner, (kind, opened) => {
      const free = problem.plates.findIndex(
        (plate, p) => opened[p]! < plate.count && fitsOnto(problem, kind, plate),
      )
      return free < 0 ? null : free
    })
    if (rows) return rows
  }
  return null
}
