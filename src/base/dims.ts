/**
 * What a quantity measures, as a canonical text: base dimensions with their powers in alphabetical order, such as
 * `length time^-1`; empty for a ratio. Each currency is a dimension of its own (`money:EUR`). Compare with `===`.
 */
export type Dims = string

/** The dimensions with the given powers; powers of zero are left out. */
export function dims(powers: Readonly<Record<string, number>>): Dims {
  return Object.keys(powers)
    .filter((base) => powers[base] !== 0)
    .sort()
    .map((base) => (powers[base] === 1 ? base : `${base}^${powers[base]}`))
    .join(' ')
}

/** The dimensions of a quotient. */
export function overDims(above: Dims, below: Dims): Dims {
  const powers = powersOf(above)
  for (const [base, power] of Object.entries(powersOf(below))) powers[base] = (powers[base] ?? 0) - power
  return dims(powers)
}

/** The same dimensions with any one currency written as plain `money`. */
export function anyMoney(of: Dims): Dims {
  return of.replace(/money:[A-Z]{3}/, 'money')
}

/** The currency code among the dimensions, or `null`. */
export function currencyOf(of: Dims): string | null {
  return /money:([A-Z]{3})/.exec(of)?.[1] ?? null
}

function powersOf(of: Dims): Record<string, number> {
  const powers: Record<string, number> = {}
  for (const part of of.split(' ').filter((text) => text !== '')) {
    const [base, power] = part.split('^')
    powers[base!] = Number(power ?? 1)
  }
  return powers
}
