/** Names of the cells that hold the live money, so that sheets point at each other without knowing places. */
import type { CellName } from './cells.ts'

/** Cells of one line of an order. */
export interface LineNames {
  readonly price: CellName
  readonly bought: CellName
  readonly goodsForeign: CellName
  readonly goods: CellName
  readonly weight: CellName
  readonly freight: CellName
  readonly surcharge: CellName
  readonly duty: CellName
  readonly tax: CellName
  readonly clearance: CellName
  readonly landed: CellName
  /** What is not settled about the line, in words; empty: nothing. */
  readonly state: CellName
}

/** Cells of a line by its id. */
export function lineNames(line: string): LineNames {
  const of = (what: string): CellName => `${what}/${line}`
  return {
    price: of('price'),
    bought: of('bought'),
    goodsForeign: of('goods in offer currency'),
    goods: of('goods'),
    weight: of('weight'),
    freight: of('line freight'),
    surcharge: of('line surcharge'),
    duty: of('line duty'),
    tax: of('line tax'),
    clearance: of('line clearance'),
    landed: of('landed'),
    state: of('state'),
  }
}

/** The amounts of an order that its lines share. */
export const cartShares = ['freight', 'surcharge', 'duty', 'tax', 'clearance'] as const

/** A cell of an order: what a person typed, or what follows from it. */
export function cartCell(
  cart: string,
  what:
    | 'freight rate'
    | 'free over'
    | 'minimum order'
    | 'clearance rate'
    | 'duty rate'
    | 'tax rate'
    | 'value'
    | 'missing'
    | 'open'
    | 'mark'
    | 'goods'
    | 'total'
    | `${(typeof cartShares)[number]} in vendor currency`
    | (typeof cartShares)[number],
): CellName {
  return `order ${what}/${cart}`
}

/** The exchange rate of a currency: project currency for one unit. */
export function exchangeCell(currency: string): CellName {
  return `exchange/${currency}`
}
