const allFinite = (values: readonly number[]): boolean =>
  values.every((value) => Number.isFinite(value) && Math.abs(value) <= 1e9)

/**
 * Growth in mm of a length when it is warmer by some kelvin: alpha L dT; `null` where a number is out of domain.
 * Source: linear thermal expansion.
 */
export function thermalGrowth(lengthMm: number, expansionPerMK: number, warmerK: number): number | null {
  if (!allFinite([lengthMm, expansionPerMK, warmerK]) || lengthMm < 0) return null
  return lengthMm * expansionPerMK * 1e-6 * warmerK
}

/** Expansions of two parts that sit in each other, in millionths per kelvin. */
export interface MatedExpansions {
  readonly shaftPerMK: number
  readonly hubPerMK: number
}

/**
 * Interference in mm at another temperature: delta_20 + d (alpha_s - alpha_h)(T - 20); `null` out of domain.
 * Source: linear thermal expansion.
 */
export function interferenceAt(
  fit: { readonly interferenceMm: number; readonly diameterMm: number },
  { shaftPerMK, hubPerMK }: MatedExpansions,
  temperatureC: number,
): number | null {
  const { interferenceMm, diameterMm } = fit
  if (!allFinite([interferenceMm, diameterMm, shaftPerMK, hubPerMK, temperatureC]) || !(diameterMm > 0))
    return null
  return interferenceMm + diameterMm * (shaftPerMK - hubPerMK) * 1e-6 * (temperatureC - 20)
}
