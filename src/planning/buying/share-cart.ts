import Fraction from 'fraction.js'
import { type Cents, shareOut } from '../../base/money.ts'
import type { CartLine } from '../../model/purchase.ts'
import { addKnown, type CartAmounts, type Goods } from './cart-amounts.ts'

/** What a line bears of its cart, and what is known of that. */
export type Landed = Pick<
  CartLine,
  'freight' | 'surcharge' | 'duty' | 'tax' | 'clearance' | 'landed' | 'known'
>

const names = ['freight', 'surcharge', 'duty', 'tax', 'clearance'] as const

/**
 * The cart's amounts divided over its lines by value, as differences of rounded running totals; alike where all values
 * are zero. With an unknown price among the lines no share of an amount above zero is final: it is `null`, and the amount
 * counts in `known` of the lines with known goods (of all alike where none is known).
 */
export function shareCart(amounts: CartAmounts, lines: readonly Goods[]): Landed[] {
  const weights = knownWeights(lines)
  const final = lines.every(({ goods }) => goods !== null)
  const shares = names.map((name) => shareOut(amounts[name] ?? 0, weights))
  return lines.map(({ goods }, k) => {
    const each = names.map((name, n) => finalShare(amounts[name], shares[n]![k]!, final))
    const [freight, surcharge, duty, tax, clearance] = each as [Cents, Cents, Cents, Cents, Cents]
    const known = shares.reduce((sum, share) => sum + share[k]!, goods ?? 0)
    return { freight, surcharge, duty, tax, clearance, landed: addKnown([goods, ...each]), known }
  })
}

function finalShare(amount: Cents | null, share: Cents, final: boolean): Cents | null {
  if (amount === 0) return 0
  return amount !== null && final ? share : null
}

function knownWeights(lines: readonly Goods[]): Fraction[] {
  const noneKnown = lines.every(({ goods }) => goods === null)
  const allZero = lines.every(({ goods }) => goods === null || goods === 0)
  return lines.map(({ goods }) => {
    if (noneKnown) return new Fraction(1)
    if (goods === null) return new Fraction(0)
    return new Fraction(allZero ? 1 : goods)
  })
}
