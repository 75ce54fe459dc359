import Fraction from 'fraction.js'

/** Longest number read, in digits, and largest power of ten either way: keeps exact arithmetic quick. */
export const mostDigits = 40
/** Largest power of ten, up or down, that a number may be written with. */
export const mostExponent = 30

/** A number at the head of a text and what follows it. */
export interface Numeral {
  readonly value: Fraction
  readonly signed: boolean
  readonly rest: string
}

const mixed = /^([-+]?)(\d+) +(\d+) ?\/ ?(\d+)/
const fraction = /^([-+]?)(\d+) ?\/ ?(\d+)/
const decimal = /^([-+]?)(\d+(?:\.\d+)?|\.\d+)(?:[eE]([-+]?\d+))?/

/**
 * The number a text begins with, read exactly: decimal with a point (`1.5`, `.5`, `2e-3`), fraction (`1/8`) or
 * mixed (`1 1/8`); otherwise why there is none.
 */
export function readNumeral(text: string): Numeral | 'none' | 'not finite' | 'out of range' {
  const parts = mixed.exec(text) ?? fraction.exec(text) ?? decimal.exec(text)
  if (!parts) return /^[-+]?\.?(?:nan|inf)/i.test(text) ? 'not finite' : 'none'
  if (parts[0].replace(/\D/g, '').length > mostDigits) return 'out of range'
  const size =
    parts.length === 5 ? mixedSize(parts) : fraction.test(text) ? fractionSize(parts) : decimalSize(parts)
  if (typeof size === 'string') return size
  const value = parts[1] === '-' ? size.neg() : size
  return { value, signed: parts[1] !== '', rest: text.slice(parts[0].length) }
}

function mixedSize(parts: RegExpExecArray): Fraction | 'not finite' {
  if (BigInt(parts[4]!) === 0n) return 'not finite'
  return new Fraction(BigInt(parts[3]!), BigInt(parts[4]!)).add(BigInt(parts[2]!))
}

function fractionSize(parts: RegExpExecArray): Fraction | 'not finite' {
  if (BigInt(parts[3]!) === 0n) return 'not finite'
  return new Fraction(BigInt(parts[2]!), BigInt(parts[3]!))
}

function decimalSize(parts: RegExpExecArray): Fraction | 'out of range' {
  const [whole = '', decimals = ''] = parts[2]!.split('.')
  const exponent = Number(parts[3] ?? 0)
  if (Math.abs(exponent) > mostExponent) return 'out of range'
  const shift = exponent - decimals.length
  const digits = BigInt(whole + decimals)
  return shift < 0 ? new Fraction(digits, 10n ** BigInt(-shift)) : new Fraction(digits * 10n ** BigInt(shift))
}
