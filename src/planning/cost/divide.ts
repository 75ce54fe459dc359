import Fraction from 'fraction.js'
import { type Cents, majorUnits, roundMoney } from '../../base/money.ts'
import type { Cause, Charge, LeftOver, Slice } from '../../model/money.ts'
import { type Claim, type Claimed, unitsOf } from './claim.ts'

/** What one source was charged and left over. */
export interface Divided {
  readonly charges: readonly Charge[]
  readonly leftovers: readonly LeftOver[]
}

/**
 * A source divided over its claims: each gets the difference of two rounded running totals, so that the parts add up.
 * Claims of nothing are left out. Needs: claims of more than nothing in all, none below zero.
 */
export function divide({ source, claims }: Claimed, digits: number): Divided {
  const taken = claims.filter(({ units }) => !units.equals(0))
  const of = unitsOf(taken)
  if (of.lte(0) || taken.some(({ units }) => units.lt(0))) {
    throw new RangeError(`more is used of ${source.id} than there is`)
  }
  const charges: Charge[] = []
  const leftovers: LeftOver[] = []
  let running = new Fraction(0)
  for (const claim of taken) {
    const after = running.div(of)
    running = running.add(claim.units)
    const slice: Slice = { source: source.id, after, upTo: running.div(of), units: claim.units, of }
    const known = part(source.known, slice, digits)
    const common = { process: claim.process, slice, amount: source.amount === null ? null : known, known }
    if ('charged' in claim.to) {
      const cause = claim.to.charged
      charges.push({ id: `${source.id} -> ${causeId(cause)}`, cause, ...common })
    } else {
      const { part: kept, left: why } = claim.to
      leftovers.push({ id: `${source.id} -> ${leftName(claim.to)}`, part: kept, why, ...common })
    }
  }
  return { charges, leftovers }
}

/** Name of a cause in ids and tables. */
export function causeId(cause: Cause): string {
  return cause.kind === 'device' ? 'device' : cause.id
}

function leftName(to: Extract<Claim['to'], { part: string | null }>): string {
  return to.part === null ? 'left over' : `${to.left} ${to.part}`
}

function part(amount: Cents, { after, upTo }: Slice, digits: number): Cents {
  const whole = majorUnits(amount, digits)
  return roundMoney(whole.mul(upTo), digits) - roundMoney(whole.mul(after), digits)
}
