/** What a number must be before a formula may use it. Upper ends keep every product finite. */
export type Domain =
  | 'above 0'
  | '0 or more'
  | 'whole, 0 or more'
  | 'whole, 1 or more'
  | '0 to 1'
  | 'above 0, to 1'

/** A number outside what a formula covers: which field, what stood there, and what it must be. */
export interface OutOfDomain {
  readonly fault: 'out of domain'
  readonly field: string
  readonly value: number
  readonly must: string
}

const [least, most, mostCount] = [1e-18, 1e12, 1e9]

const holds: Readonly<Record<Domain, (value: number) => boolean>> = {
  'above 0': (value) => value >= least && value <= most,
  '0 or more': (value) => value === 0 || (value >= least && value <= most),
  'whole, 0 or more': (value) => Number.isInteger(value) && value >= 0 && value <= mostCount,
  'whole, 1 or more': (value) => Number.isInteger(value) && value >= 1 && value <= mostCount,
  '0 to 1': (value) => value === 0 || (value >= least && value <= 1),
  'above 0, to 1': (value) => value >= least && value <= 1,
}

/** The first field whose number is outside its domain, or `null`. Fields that are `null` are left to their defaults. */
export function firstOutside<T extends object>(
  given: T,
  rules: Readonly<Partial<Record<keyof T & string, Domain>>>,
): OutOfDomain | null {
  for (const [field, must] of Object.entries(rules) as [keyof T & string, Domain][]) {
    const value: unknown = given[field]
    if (value === null) continue
    if (typeof value !== 'number' || !holds[must](value))
      return { fault: 'out of domain', field, value: Number(value), must }
  }
  return null
}

/** A whole number that a division came to, up to rounding in the last places: 2.1 / 0.3 is 7, not 8. */
export function wholeUp(ratio: number): number {
  // Never minus zero.
  return Math.ceil(ratio - Math.max(1e-9, Math.abs(ratio) * 1e-12)) + 0
}

/** As `wholeUp`, downward: 0.3 / 0.1 is 3, not 2. */
export function wholeDown(ratio: number): number {
  return Math.floor(ratio + Math.max(1e-9, Math.abs(ratio) * 1e-12))
}
