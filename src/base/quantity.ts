import type Fraction from 'fraction.js'
import { currencies } from './currencies.ts'
import { type DimensionName, likelyUnit, measures, nameDims } from './dimension-names.ts'
import type { Dims } from './dims.ts'
import { nearNames } from './near-names.ts'
import { mostDigits, mostExponent, type Numeral, readNumeral } from './numeral.ts'
import { isFault, type QuantityFault } from './quantity-fault.ts'
import { exactText } from './rounding.ts'
import { nearUnits } from './unit-slips.ts'
import { findUnit, foldSigns, unitSymbols } from './units.ts'

/** A number with its unit, exact. */
export interface Quantity {
  /** In base units: mm, s, working days, g, A, K, turns, major units of a currency, and what they make up. */
  readonly value: Fraction
  readonly dims: Dims
  /** As the person wrote it; of a sum the first; empty for a bare ratio. */
  readonly unit: string
  /** As typed, trimmed. */
  readonly text: string
}

const mostCharacters = 200

/**
 * The quantity a text means: `25 mm`, `1 1/8 in`, `8 in/min`, `1 h 30 min`, `12.50 EUR`, `EUR 4.20`, `40 %`.
 * A negative one is read; whether it makes sense is the caller's to say.
 */
export function readQuantity(text: string): Quantity | QuantityFault {
  const typed = text.trim()
  if (typed === '') return { fault: 'empty' }
  if (typed.length > mostCharacters)
    return { fault: 'too long', text: typed.slice(0, 40), most: mostCharacters }
  if (/\d,\d/.test(typed)) return { fault: 'comma', text: typed, perhaps: withoutComma(typed) }
  const terms = readTerms(currencyBehind(typed.replace(/−/g, '-').replace(/\s+/g, ' ')), typed)
  if (isFault(terms)) return terms
  const quantity = terms.length === 1 ? single(terms[0]!, typed) : timeSum(terms, typed)
  return isFault(quantity) ? (runTogether(typed) ?? quantity) : quantity
}

/**
 * The quantity a text means where a named dimension, or one of several, is wanted. A bare number is read as a ratio
 * where one is wanted, or in `bareUnit` where that is given (money in the project's currency); otherwise it is at
 * fault, with the unit most likely meant.
 */
export function readAs(
  text: string,
  wanted: DimensionName | readonly DimensionName[],
  bareUnit: string | null = null,
): Quantity | QuantityFault {
  const names = typeof wanted === 'string' ? [wanted] : wanted
  const first = readQuantity(text)
  const read = isFault(first) && first.fault === 'bare' ? readBare(first.text, names, bareUnit) : first
  if (isFault(read))
    return read.fault === 'unknown unit' ? { ...read, near: fittingFirst(read.unit, read.near, names) } : read
  if (names.some((name) => measures(name, read.dims))) return read
  const perhaps = meantUnits(read.unit, names).map((unit) =>
    formatQuantity(inUnit(read.value, read.unit)!, unit),
  )
  return { fault: 'wrong dimension', text: read.text, wanted: names, got: nameDims(read.dims), perhaps }
}

/** Units spelled nearly so that measure what is wanted; where there are none, those found before. */
function fittingFirst(
  unit: string,
  near: readonly string[],
  names: readonly DimensionName[],
): readonly string[] {
  const fitting = unitSymbols.filter((symbol) =>
    names.some((name) => measures(name, findUnit(symbol)?.dims ?? '')),
  )
  const alike = nearNames(unit, fitting)
  // One letter is too short to be near anything, yet `hh` and `hrs` begin with it.
  const begun = fitting.filter((symbol) => unit.toLowerCase().startsWith(symbol.toLowerCase()))
  const all = [...new Set([...alike, ...begun])].slice(0, 3)
  return all.length > 0 && !near.some((one) => fitting.includes(one)) ? all : near
}

/** What a value in base units is in a unit, or `null` where the unit is not known. Needs: the unit fits the value. */
export function inUnit(value: Fraction, unit: string): Fraction | null {
  const found = findUnit(unit)
  return found ? value.sub(found.offset).div(found.factor) : null
}

/** A number and its unit as text that reads back as the same quantity: `12.7 mm`, `1/3 h`. */
export function formatQuantity(amount: Fraction, unit: string): string {
  return unit === '' ? exactText(amount) : `${exactText(amount)} ${unit}`
}

interface Term extends Numeral {
  readonly unit: string
}

function readTerms(text: string, typed: string): Term[] | QuantityFault {
  const terms: Term[] = []
  for (let left = text; left !== ''; ) {
    const numeral = readNumeral(left)
    if (typeof numeral === 'string') return numberFault(numeral, typed)
    const rest = numeral.rest.trimStart()
    if (/^[.\d]/.test(rest)) return { fault: 'not a number', text: typed }
    const gap = rest.search(/ [-+]?\.?\d/)
    terms.push({ ...numeral, unit: gap < 0 ? rest : rest.slice(0, gap) })
    left = gap < 0 ? '' : rest.slice(gap + 1)
  }
  return terms
}

function numberFault(why: 'none' | 'not finite' | 'out of range', text: string): QuantityFault {
  if (why === 'none') return { fault: 'not a number', text }
  if (why === 'not finite') return { fault: 'not finite', text }
  return { fault: 'out of range', text, digits: mostDigits, exponent: mostExponent }
}

function single(term: Term, text: string, bareAllowed = false): Quantity | QuantityFault {
  if (term.unit === '' && !bareAllowed) return { fault: 'bare', text, perhaps: [] }
  const unit = findUnit(term.unit)
  if (!unit) return unitFault(term.unit, text)
  return { value: term.value.mul(unit.factor).add(unit.offset), dims: unit.dims, unit: term.unit, text }
}

function unitFault(unit: string, text: string): QuantityFault {
  if (unit.split('/').length > 2) return { fault: 'two quotients', text, unit }
  return { fault: 'unknown unit', text, unit, near: nearUnits(unit) }
}

function timeSum(terms: readonly Term[], text: string): Quantity | QuantityFault {
  const units = terms.map(({ unit }) => findUnit(unit))
  const unknown = units.indexOf(null)
  if (unknown >= 0) return unitFault(terms[unknown]!.unit, text)
  const sizes = terms.map((term, i) => term.value.abs().mul(units[i]!.factor))
  if (units.some((unit) => unit!.dims !== 'time')) return { fault: 'not a time sum', text }
  if (terms.slice(1).some(({ signed }) => signed)) return { fault: 'not a time sum', text }
  const sum = sizes.reduce((a, b) => a.add(b))
  // The sign stands before the whole sum, as a person says "minus one hour thirty".
  return { value: terms[0]!.value.s < 0n ? sum.neg() : sum, dims: 'time', unit: terms[0]!.unit, text }
}

function runTogether(text: string): QuantityFault | null {
  if (!/^-?(?:\d+(?:\.\d+)?\s*(?:min|[dhms])\s*){2,}$/.test(text)) return null
  const terms = text.match(/\d+(?:\.\d+)?\s*(?:min|[dhms])/g) ?? []
  const spaced = terms.map((term) => term.replace(/\s*m$/, ' min').replace(/(\d)([a-z])/, '$1 $2'))
  return { fault: 'run together', text, perhaps: [(text.startsWith('-') ? '-' : '') + spaced.join(' ')] }
}

function withoutComma(text: string): string[] {
  const dropped = text.replace(/,(?=\d)/g, '')
  if (text.includes('.') || text.split(',').length > 2) return [dropped]
  const pointed = text.replace(',', '.')
  return /\d,\d{3}(?!\d)/.test(text) ? [pointed, dropped] : [pointed]
}

function currencyBehind(text: string): string {
  const parts = /^([A-Z]{3}) ?([-+\d.][^ /]*)(.*)$/.exec(text)
  return parts && currencies.has(parts[1]!) ? `${parts[2]} ${parts[1]}${parts[3]!.trim()}` : text
}

function readBare(
  text: string,
  names: readonly DimensionName[],
  bareUnit: string | null,
): Quantity | QuantityFault {
  const unit = bareUnit ?? (names.includes('ratio') ? '' : null)
  if (unit === null)
    return { fault: 'bare', text, perhaps: names.map((name) => `${text} ${likelyUnit(name)}`) }
  const numeral = readNumeral(foldSigns(text))
  return typeof numeral === 'string' ? numberFault(numeral, text) : single({ ...numeral, unit }, text, true)
}

/** Units that are taken for one another, where the one meant fits what is wanted. */
function meantUnits(unit: string, names: readonly DimensionName[]): string[] {
  const pairs = [
    ['m', 'min'],
    ['d', 'wd'],
    ['wd', 'd'],
    ['oz', 'oz in'],
    ['lb', 'in lb'],
  ] as const
  return pairs
    .filter(([typed, meant]) => typed === unit && names.some((name) => measures(name, findUnit(meant)!.dims)))
    .map(([, meant]) => meant)
}
