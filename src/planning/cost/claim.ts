import Fraction from 'fraction.js'
import type { Cause, ChargeKind, LeftOver, Source } from '../../model/money.ts'
import type { Fate } from './fates.ts'

/** Who takes how much of a source, in units of it. */
export interface Claim {
  readonly units: Fraction
  readonly process: ChargeKind
  readonly to: { readonly charged: Cause } | { readonly left: LeftOver['why']; readonly part: string | null }
}

/** A source of money and all who take of it, in the order of their shares. */
export interface Claimed {
  readonly source: Source
  readonly claims: readonly Claim[]
}

/** A part's take: what its devices used, then what stays with its spares. */
export function partClaims(
  part: string,
  process: ChargeKind,
  units: Fraction,
  kept: Fraction,
  why: Fate['why'],
): Claim[] {
  const stays = units.mul(kept)
  return [
    { units: units.sub(stays), process, to: { charged: { kind: 'part', id: part } } },
    { units: stays, process, to: { left: why, part } },
  ]
}

/** What was bought and nobody took. */
export function overClaim(process: ChargeKind, units: Fraction): Claim {
  return { units, process, to: { left: 'over', part: null } }
}

/** Sum of units. */
export function unitsOf(claims: readonly { readonly units: Fraction }[]): Fraction {
  return claims.reduce((sum, { units }) => sum.add(units), new Fraction(0))
}
