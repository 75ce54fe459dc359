import type Fraction from 'fraction.js'
import type { Charge, Money } from '../model/money.ts'
import type { Cents, Purchase } from '../model/purchase.ts'
import { halfAway, minorUnits, signed } from './exact.ts'
import { first } from './why-misplaced.ts'

/**
 * Why a charge is not what it says it was computed from, or a line is charged over and over, or `null`.
 * A share is a difference of rounded running totals, so it may lie one minor unit from its own exact part.
 */
export function whyMischarged(purchase: Purchase, money: Money): string | null {
  const landed = landedByLine(purchase)
  return (
    first(money.charges, (charge) => whyChargeWrong(charge, landed, money.currency)) ?? whyOvercharged(money)
  )
}

function whyChargeWrong(
  charge: Charge,
  landed: ReadonlyMap<string, Cents | null>,
  currency: string,
): string | null {
  const says = `charge \`${charge.id}\``
  if (charge.from.kind === 'line' && !landed.has(lineKey(charge.from))) {
    return `${says} comes from line \`${charge.from.line}\` of cart \`${charge.from.cart}\`, which is in no cart`
  }
  const exact = exactly(charge, landed, currency)
  if (charge.amount === null && exact === null) return null
  if (charge.amount === null) return `${says} is said to be unknown, and is ${exact}`
  if (exact === null) return `${says} is said to be ${charge.amount}, and its price is unknown`
  return Math.abs(charge.amount - exact) <= 1
    ? null
    : `${says} is said to be ${charge.amount}, and is ${exact}`
}

function exactly(
  { from }: Charge,
  landed: ReadonlyMap<string, Cents | null>,
  currency: string,
): Cents | null {
  if (from.kind === 'hours') {
    return minorUnits(BigInt(from.minutes) * signed(from.rate), 60n * from.rate.d, currency)
  }
  if (from.kind === 'own stock') {
    return (
      from.worth && minorUnits(signed(from.worth) * signed(from.units), from.worth.d * from.units.d, currency)
    )
  }
  const whole = landed.get(lineKey(from))!
  return whole === null ? null : halfAway(signed(from.share) * BigInt(whole), from.share.d)
}

function whyOvercharged({ charges }: Money): string | null {
  const shares = new Map<string, Fraction>()
  for (const { id, from } of charges) {
    if (from.kind !== 'line') continue
    const sum = (shares.get(lineKey(from)) ?? from.share.mul(0)).add(from.share)
    shares.set(lineKey(from), sum)
    if (from.share.s < 0n || sum.gt(1))
      return `charge \`${id}\` takes line \`${from.line}\` beyond the whole of it`
  }
  return null
}

function landedByLine({ carts }: Purchase): Map<string, Cents | null> {
  const lines = carts.flatMap((cart) =>
    cart.lines.map((line) => ({ cart: cart.id, line: line.id, is: line.landed })),
  )
  return new Map(lines.map((line) => [lineKey(line), line.is]))
}

function lineKey({ cart, line }: { readonly cart: string; readonly line: string }): string {
  return JSON.stringify([cart, line])
}
