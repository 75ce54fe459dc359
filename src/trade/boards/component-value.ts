/** What a component value is measured in. */
export type ComponentUnit = 'ohm' | 'farad' | 'henry'

/** A component value as the trade writes it, in ohm, farad or henry. */
export interface ComponentValue {
  readonly value: number
  /** `null` where the text does not say: `100n`, `4.7k`. */
  readonly unit: ComponentUnit | null
  /** What follows the value: tolerance, voltage, dielectric. */
  readonly rest: string
}

/** Why a text is no component value. */
export interface ComponentValueFault {
  readonly fault:
    | 'not a component value'
    /** `4,700`: thousands to some, decimals to others. */
    | 'comma in thousands'
    /** `4E7`: a power of ten to some, 4.7 ohm to others. */
    | 'two readings of E'
    | 'out of range'
  readonly text: string
}

/**
 * Powers of ten by letter: `M` is mega and `m` milli; `K` is taken for kilo. Source: SI prefixes; `K`, `meg`:
 * practice.
 */
const powers: ReadonlyMap<string, number> = new Map(
  ['f -15', 'p -12', 'n -9', 'u -6', '\u00b5 -6', '\u03bc -6', 'm -3', 'k 3', 'K 3', 'M 6', 'meg 6', 'G 9']
    .map((row) => row.split(' '))
    .map(([letter, exponent]) => [letter!, Number(exponent)]),
)
const units: ReadonlyMap<string, ComponentUnit> = new Map([
  ...['R', '\u03a9', '\u2126', 'ohm', 'ohms'].map((word) => [word, 'ohm'] as const),
  ['F', 'farad'],
  ['H', 'henry'],
])

const power = '[Mm]eg|MEG|[fpnu\u00b5\u03bcmkKMG]'
const unit = '[Oo]hms?|OHM|[R\u03a9\u2126FH]'
const end = '(?![\\w.]|,\\d)'
/** `4k7`, `0R1`, `2M2`: the letter stands for the point; with nothing before it (`R47`) only the letter of ohm. */
const lettered = new RegExp(`^(?:(\\d+)(${power}|[R\u03a9\u2126])|([R\u03a9\u2126]))(\\d+)(${unit})?${end}`)
/** `4.7k`, `100n`, `10uF`, `4.7 kohm`, `47`. */
const plain = new RegExp(`^(\\d+(?:[.,]\\d+)?|[.,]\\d+) ?(${power})? ?(${unit})?${end}`)

/**
 * The value of a resistor, capacitor or inductor from the text of a parts list.
 * Source: the letter in place of the point, IEC 60062 (from memory); the other forms common practice, no source.
 * Gives: a value of 0 or more, rounded once.
 */
export function readComponentValue(text: string): ComponentValue | ComponentValueFault {
  const typed = text.trim()
  if (/^\d+E\d/i.test(typed)) return { fault: 'two readings of E', text: typed }
  if (/^[1-9]\d*,\d{3}(?!\d)/.test(typed)) return { fault: 'comma in thousands', text: typed }
  const [inside, outside] = [lettered.exec(typed), plain.exec(typed)]
  if (inside) {
    const [all, whole = '0', letter = '', alone = '', decimals = '', word] = inside
    return built(typed, all, `${whole}.${decimals}`, [letter + alone, word])
  }
  if (!outside) return { fault: 'not a component value', text: typed }
  const [all, digits = '', letter, word] = outside
  // `8 MHz`: a bare number that another unit follows.
  const bare = letter === undefined && word === undefined
  if (bare && /^[A-Za-z\u00b5\u03bc]/.test(restOf(typed, all)))
    return { fault: 'not a component value', text: typed }
  return built(typed, all, digits.replace(',', '.'), [letter, word])
}

function built(
  typed: string,
  all: string,
  digits: string,
  words: readonly (string | undefined)[],
): ComponentValue | ComponentValueFault {
  const known = words.map((word) => (word && word.length > 1 ? word.toLowerCase() : (word ?? '')))
  const exponent = known.map((word) => powers.get(word) ?? 0).reduce((sum, one) => sum + one)
  const value = Number(`${digits}e${exponent}`)
  if (!(value <= 1e12)) return { fault: 'out of range', text: typed }
  const found = known.map((word) => units.get(word)).find((of) => of !== undefined)
  return { value, unit: found ?? null, rest: restOf(typed, all) }
}

function restOf(typed: string, all: string): string {
  return typed
    .slice(all.length)
    .replace(/^[\s,;/]+/, '')
    .trim()
}
