/** A size in millimetres to the nanometre: takes off what binary arithmetic adds to 25 + 0.021. */
export function tidyMm(valueMm: number): number {
  return Math.round(valueMm * 1e6) / 1e6 + 0
}

/** A number with its sign as drawings show it: `+0.05`, `-0.02`, `0`. */
export function signed(value: number): string {
  return value > 0 ? `+${value}` : `${value}`
}

/** A number to at most `digits` decimals, without zeros at the end. */
export function plain(value: number, digits = 3): string {
  return `${Number(value.toFixed(digits)) + 0}`
}
