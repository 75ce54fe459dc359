import Fraction from 'fraction.js'
import { type Cents, majorUnits, minorDigits, shareOut } from '../base/money.ts'
import type { Cart, CartLine } from '../model/purchase.ts'
import { cartShares } from './line-names.ts'

/** What the cells of an order hold today beside what the purchase itself states. */
export interface CartFigures {
  /** Known goods in the vendor's currency, major units. */
  readonly value: Fraction
  /** Lines without known goods. */
  readonly missing: number
  /** Missing prices, or 1 where only an amount of the order itself is unknown. */
  readonly open: number
  /** Known goods, project currency. */
  readonly goods: Cents
  /** Running weight of each line. */
  readonly weights: readonly Fraction[]
  /** Parts of the known amounts, line by line. */
  readonly shares: Readonly<Record<(typeof cartShares)[number], readonly Cents[]>>
}

/** Figures of an order in whole minor units and exact fractions, as the purchase reckons them. */
export function cartFigures(cart: Cart, home: string): CartFigures {
  const { lines } = cart
  const missing = lines.filter(({ goods }) => goods === null).length
  const weights = lines.map((line) => weight(line, lines, minorDigits(home)))
  const shares = cartShares.map((what) => [what, shareOut(cart[what] ?? 0, weights)] as const)
  const someUnknown = cartShares.some((what) => cart[what] === null)
  return {
    value: lines.reduce((sum, line) => sum.add(worth(line, cart)), new Fraction(0)),
    missing,
    open: missing === 0 && someUnknown ? 1 : missing,
    goods: lines.reduce((sum, { goods }) => sum + (goods ?? 0), 0),
    weights: lines.map((_, at) => total(weights.slice(0, at + 1))),
    shares: Object.fromEntries(shares) as unknown as CartFigures['shares'],
  }
}

function total(all: readonly Fraction[]): Fraction {
  return all.reduce((sum, each) => sum.add(each), new Fraction(0))
}

function weight({ goods }: CartLine, lines: readonly CartLine[], digits: number): Fraction {
  if (lines.every((line) => line.goods === null)) return new Fraction(1)
  if (goods === null) return new Fraction(0)
  const allZero = lines.every((line) => line.goods === null || line.goods === 0)
  return allZero ? new Fraction(1) : majorUnits(goods, digits)
}

function worth({ goodsForeign, offer, rate }: CartLine, cart: Cart): Fraction {
  if (goodsForeign === null) return new Fraction(0)
  const value = majorUnits(goodsForeign, minorDigits(offer.currency))
  if (offer.currency === cart.currency) return value
  return rate && cart.rate ? value.mul(rate).div(cart.rate) : new Fraction(0)
}

/** What is not settled about a line today; empty: nothing. */
export function lineState(line: CartLine): '' | 'price unknown' | 'shares open' {
  if (line.goods === null) return 'price unknown'
  return line.landed === null ? 'shares open' : ''
}

/** What a total says of itself today. */
export function sayMark(open: number, one: string, many: string): string {
  if (open === 0) return 'complete'
  return `known part; ${open} ${open === 1 ? one : many} missing`
}
