/** A number that no formula of the trade may be asked about: which one, and what would do. */
export interface OutOfDomain {
  readonly fault: 'out of domain'
  /** Name of the field, with its unit. */
  readonly what: string
  readonly value: number
  /** What the value must be, in words that follow `must be`. */
  readonly wanted: string
}

const least = 1e-9
const most = 1e9

/** The first number given that is no sensible positive size, or `null` where all are. */
export function notPositive(given: Readonly<Record<string, number>>): OutOfDomain | null {
  for (const [what, value] of Object.entries(given))
    if (!(value >= least && value <= most)) return outOfDomain(what, value, 'more than 0 and finite')
  return null
}

/** The first number given that is below 0 or not finite, or `null`. */
export function negative(given: Readonly<Record<string, number>>): OutOfDomain | null {
  for (const [what, value] of Object.entries(given))
    if (!(value >= 0 && value <= most)) return outOfDomain(what, value, '0 or more and finite')
  return null
}

/** The first number given that is not finite or far beyond any size, or `null`. */
export function notFinite(given: Readonly<Record<string, number>>): OutOfDomain | null {
  for (const [what, value] of Object.entries(given))
    if (!(Math.abs(value) <= most)) return outOfDomain(what, value, 'finite')
  return null
}

/** A fault about one number. */
export function outOfDomain(what: string, value: number, wanted: string): OutOfDomain {
  return { fault: 'out of domain', what, value, wanted }
}
