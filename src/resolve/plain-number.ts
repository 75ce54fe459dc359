import type { Quantity } from '../base/quantity.ts'

/** A quantity as a plain number of base units, mm and s; `null` where absent. */
export function numberOf(quantity: Quantity | null | undefined): number | null {
  return quantity ? quantity.value.valueOf() : null
}

/** The same a minute instead of a second, exact as long as it can be. */
export function perMinute(quantity: Quantity | null | undefined): number | null {
  return quantity ? quantity.value.mul(60).valueOf() : null
}
