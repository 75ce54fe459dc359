/**
 * How fast an edge wears when it is driven faster. Source: V T^n = C; n 0.125 for HSS, 0.25 for carbide,
 * public pages.
 */
export const taylorExponent = { hss: 0.125, carbide: 0.25 } as const

/**
 * Tool life in minutes by Taylor: T = (C / v)^(1/n); `null` where a number is not positive and finite, or the life is
 * beyond reckoning.
 * Source: Taylor's equation v T^n = C, as public pages give it.
 */
export function taylorLifeMinutes(
  speedMPerMin: number,
  constantMPerMin: number,
  exponent: number,
): number | null {
  if (![speedMPerMin, constantMPerMin, exponent].every((value) => Number.isFinite(value) && value > 0))
    return null
  const minutes = (constantMPerMin / speedMPerMin) ** (1 / exponent)
  return Number.isFinite(minutes) ? minutes : null
}

/**
 * Life in seconds at another speed than the one it is rated at: T (v_rated / v)^(1/n).
 * Source: Taylor's equation for one C.
 */
export function lifeAtSpeed(
  rated: { readonly lifeSeconds: number; readonly speedMPerMin: number },
  speedMPerMin: number,
  exponent: number,
): number | null {
  const factor = taylorLifeMinutes(speedMPerMin, rated.speedMPerMin, exponent)
  const life = factor === null ? null : rated.lifeSeconds * factor
  return life !== null && Number.isFinite(life) && life >= 0 ? life : null
}

/**
 * Share of a cutter that some seconds in cut use up; above 1 means more than one cutter. `null` where life is unknown
 * or a number is out of domain.
 * Source: straight-line wear, common practice, no source.
 */
export function wornShare(inCutSeconds: number, lifeSeconds: number | null): number | null {
  if (lifeSeconds === null || !(lifeSeconds > 0) || !(inCutSeconds >= 0)) return null
  const share = inCutSeconds / lifeSeconds
  return Number.isFinite(share) ? share : null
}
