/** Makers of live expressions, so that formulas read as the sentences they stand for. */
import type Fraction from 'fraction.js'
import type { CellName, Expression } from './cells.ts'
import { constant, ref } from './make-cells.ts'

/** Words in an expression. */
export function words(value: string): Expression {
  return { op: 'text', value }
}

/** All of these cells together; a cell that holds words counts as nothing. */
export function sumOf(...names: readonly CellName[]): Expression {
  return { op: 'sum', names }
}

/** Left and right added. */
export function plus(left: Expression, right: Expression): Expression {
  return { op: '+', left, right }
}

/** If, then and else. */
export function choose(when: Expression, yes: Expression, no: Expression): Expression {
  return { op: 'choose', when, yes, no }
}

/** Whether both sides are the same. */
export function same(left: Expression, right: Expression): Expression {
  return { op: '=', left, right }
}

/** Whether left is at most right. */
export function atMost(left: Expression, right: Expression): Expression {
  return { op: '<=', left, right }
}

/** Whether one of these holds. */
export function anyOf(...of: readonly Expression[]): Expression {
  return { op: 'or', of }
}

/** Whether all of these hold. */
export function allOf(...of: readonly Expression[]): Expression {
  return { op: 'and', of }
}

/** Pieces of text after one another. */
export function joined(...of: readonly Expression[]): Expression {
  return { op: 'join', of }
}

/** The word that stands where a price is missing. */
export const unknownWord = 'unknown'

/** Whether nothing was typed in a cell. */
export function isEmpty(name: CellName): Expression {
  return same(ref(name), words(''))
}

/** Whether a cell says `unknown`. */
export function isUnknown(name: CellName): Expression {
  return same(ref(name), words(unknownWord))
}

/** What is known of an amount; `unknown` while it is open and nothing of it is known, so that it never reads as zero. */
export function knownOr(open: Expression, amount: Expression): Expression {
  return choose(allOf(open, same(amount, constant(0))), words(unknownWord), amount)
}

/** Whether a condition holds, as 1 or 0. */
export function asOne(when: Expression): Expression {
  return choose(when, constant(1), constant(0))
}

/** These added, however many; 0 for none. */
export function added(all: readonly Expression[]): Expression {
  if (all.length === 0) return constant(0)
  return all.reduce((sum, each) => plus(sum, each))
}

/**
 * A value times a fraction, multiplied before it is divided: a spreadsheet keeps about 15 digits, so a product that ends
 * in half a cent still ends there. A fraction too long for that is taken as a decimal.
 */
export function portion(of: Expression, { n, d, s }: Fraction): Expression {
  const [above, below] = [Number(s * n), Number(d)]
  if (!Number.isSafeInteger(above) || !Number.isSafeInteger(below)) {
    return { op: '*', left: of, right: constant(decimalOf(n, d) * Number(s)) }
  }
  const product: Expression = above === 1 ? of : { op: '*', left: of, right: constant(above) }
  return below === 1 ? product : { op: '/', left: product, right: constant(below) }
}

/** Long division, because a long numerator may be no finite binary number. */
function decimalOf(n: bigint, d: bigint): number {
  const scale = 10n ** 20n
  return Number((n * scale) / d) / 1e20
}
