import Fraction from 'fraction.js'
import { groupBy } from '../base/group-by.ts'
import { type Cents, majorUnits, shareOut } from '../base/money.ts'
import { toDecimals } from '../base/rounding.ts'
import type { Money } from '../model/money.ts'
import { knownMoney } from './cart-table.ts'
import type { Cell, CellName, Expression } from './cells.ts'
import { choose, knownOr, portion, sumOf, unknownWord, words } from './expressions.ts'
import { blank, constant, less, money, rounded } from './make-cells.ts'
import { causeCell, causeKey, flagCell } from './money-names.ts'
import type { PartPlace } from './parts-tree.ts'

/** Cells of the cost of one place of a part. */
export interface PlaceCost {
  readonly unit: Cell
  readonly extended: Cell
  readonly name: CellName | null
}

/** Digits of a unit cost beyond the currency's own. */
const finer = 2

/**
 * Cost of every place of every part. Extended is what was charged to the part, divided over its places by their pieces
 * as differences of rounded running totals, so that all places add up to it. Unit is charged per piece in the devices.
 */
export function placeCosts(places: readonly PartPlace[], all: Money): ReadonlyMap<PartPlace, PlaceCost> {
  const costs = new Map<PartPlace, PlaceCost>()
  const shares = new Map(all.byPart.map((share) => [causeKey(share.cause), share]))
  const charges = groupBy(all.charges.entries(), ([, { cause }]) => causeKey(cause))
  for (const [id, mine] of groupBy(places, ({ part }) => part.id)) {
    const key = causeKey({ kind: 'part', id })
    const share = shares.get(key)
    const flags = (charges.get(key) ?? []).map(([at]) => flagCell('charge', at))
    const spent = share
      ? spentOn(mine, { id, known: share.known, open: share.unknown.length > 0, flags }, all)
      : mine.map(() => free(all))
    for (const [at, place] of mine.entries()) costs.set(place, spent[at]!)
  }
  return costs
}

function free({ currency }: Money): PlaceCost {
  return { unit: blank(), extended: money(0, currency), name: null }
}

/** What was charged to a part, and the cells that tell whether some of it is unknown. */
interface Spent {
  readonly id: string
  readonly known: Cents
  readonly open: boolean
  readonly flags: readonly CellName[]
}

function spentOn(places: readonly PartPlace[], spent: Spent, all: Money): PlaceCost[] {
  const { id, known, open } = spent
  const pieces = places.map((place) => new Fraction(place.pieces))
  const sum = pieces.reduce((a, b) => a.add(b), new Fraction(0))
  const weights = sum.equals(0) ? places.map((_, at) => new Fraction(at === 0 ? 1 : 0)) : pieces
  const shares = shareOut(known, weights)
  const unit = unitCost(spent, sum, all)
  return places.map((_, at): PlaceCost => {
    const name = `part cost/${id}/${at + 1}`
    const live = knownOr(
      openOf(spent),
      shareOf(sumOf(causeCell({ kind: 'part', id })), weights, at, all.digits),
    )
    return { unit, name, extended: knownMoney(shares[at]!, open, all.currency, { name, live }) }
  })
}

function shareOf(whole: Expression, weights: readonly Fraction[], at: number, digits: number): Expression {
  if (weights.length === 1) return whole
  const total = weights.reduce((a, b) => a.add(b), new Fraction(0))
  const upTo = (k: number): Expression => {
    const running = weights.slice(0, k).reduce((a, b) => a.add(b), new Fraction(0))
    return rounded(portion(whole, running.div(total)), digits)
  }
  return at === 0 ? upTo(1) : less(upTo(at + 1), upTo(at))
}

/** Whether some amount charged to a part is unknown. */
function openOf({ flags }: Spent): Expression {
  return { op: '>', left: sumOf(...flags), right: constant(0) }
}

function unitCost(spent: Spent, pieces: Fraction, all: Money): Cell {
  if (pieces.equals(0)) return blank()
  const { currency, digits } = all
  const { id, known, open } = spent
  const cause = { kind: 'part', id } as const
  const each = rounded(portion(sumOf(causeCell(cause)), new Fraction(1).div(pieces)), digits + finer)
  const live = choose(openOf(spent), words(unknownWord), each)
  if (open) return { value: { type: 'unknown', text: unknownWord }, align: 'right', live }
  const value = Number(toDecimals(majorUnits(known, digits).div(pieces), digits + finer))
  return {
    value: {
      type: 'number',
      value,
      format: { as: 'price', currency, digits: digits + finer, least: digits },
    },
    align: 'right',
    live,
  }
}
