import Fraction from 'fraction.js'

/** A piece to cut from a bar or plate; `width` is zero for a bar. Millimetres. */
export interface Piece {
  readonly part: string
  readonly length: Fraction
  readonly width: Fraction
  readonly kerf: Fraction
}

/** A bar or plate begun, with what was cut from it as shares of a whole one. */
export interface PackedUnit {
  readonly own: boolean
  readonly size: Fraction
  readonly pieces: readonly { readonly part: string; readonly share: Fraction }[]
}

/** Where every piece went. */
export interface Packing {
  /** Only units from which something is cut, own ones first. */
  readonly units: readonly PackedUnit[]
  readonly tooLarge: readonly string[]
}

/** What is here as single units, the remnant before whole ones; no more of them than there are pieces. */
export function ownUnits(have: Fraction, pieces: number): Fraction[] {
  const whole = have.floor()
  const remnant = have.sub(whole)
  const wholes = Array.from({ length: Math.min(Number(whole.n), pieces) }, () => new Fraction(1))
  return remnant.gt(0) ? [remnant, ...wholes] : wholes
}

/** Whether one packing is better than another. */
export function smaller(a: Fraction, b: Fraction): Fraction {
  return a.lt(b) ? a : b
}
