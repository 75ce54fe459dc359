import type Fraction from 'fraction.js'

/** The nearest whole number; a half goes away from zero, so that 2.5 gives 3 and -2.5 gives -3. */
export function roundHalfAway(value: Fraction): bigint {
  return value.s * ((2n * value.n + value.d) / (2n * value.d))
}

/** `value` to `digits` decimals as text, a half away from zero, padded with zeros: 1.005 to two digits is `1.01`. */
export function toDecimals(value: Fraction, digits: number): string {
  return placePoint(roundHalfAway(value.mul(10n ** BigInt(digits))), digits)
}

/** A whole number of the last decimal place as decimal text: 1250 with 2 digits is `12.50`. */
export function placePoint(whole: bigint, digits: number): string {
  const sign = whole < 0n ? '-' : ''
  const text = (whole < 0n ? -whole : whole).toString().padStart(digits + 1, '0')
  if (digits === 0) return sign + text
  return `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`
}

/** The exact value as text: a decimal where one ends within 30 places, else a fraction such as `1/3`. */
export function exactText(value: Fraction): string {
  for (let digits = 0; digits <= 30; digits++) {
    const scale = 10n ** BigInt(digits)
    if (scale % value.d === 0n) return placePoint(value.s * value.n * (scale / value.d), digits)
  }
  return `${value.s * value.n}/${value.d}`
}
