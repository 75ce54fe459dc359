/** A usual value with the range it moves in, and where that was found. */
export interface Typical {
  readonly low: number
  readonly usual: number
  readonly high: number
  readonly unit: string
  readonly source: string
}

/** A quantity that nobody gave: what was taken for it, and why. */
export interface Assumed {
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly source: string
}

const practice = 'common practice, no source'
const range = (low: number, usual: number, high: number, unit: string, source = practice): Typical => ({
  low,
  usual,
  high,
  unit,
  source,
})

/**
 * Usual values of a vat print.
 * Source: beside each; a public worked example of masked vat time, public exposure and design guides, else as said.
 */
export const vatTypical = {
  layer: range(0.025, 0.05, 0.1, 'mm', 'public design guides of print bureaus'),
  exposureMonochrome: range(0.5, 2.5, 5, 's', 'public layer-exposure guide (2023): 0.5 to 5 s'),
  exposureColour: range(2, 8, 20, 's', 'public layer-exposure guide (2023): 2 to 20 s'),
  bottomLayers: range(4, 5, 6, 'layers', 'public guide: 4 to 6 bottom layers'),
  bottomExposures: range(10, 20, 30, 'times the normal exposure', 'public guide: 10 to 30 times'),
  moving: range(4, 6, 10, 's per layer', 'public worked example: 6 s'),
  supportFraction: range(0.1, 0.2, 0.3, 'of the part'),
  lossCm3: range(3, 5, 10, 'cm3 per job'),
  densityCured: range(1.1, 1.18, 1.25, 'g/cm3', 'from memory'),
  densityLiquid: range(1.05, 1.1, 1.15, 'g/cm3', 'from memory'),
  shrinkPercent: range(0.1, 0.4, 0.6, '%', 'from memory; order as in public tables'),
} as const satisfies Record<string, Typical>

/** Usual values of a filament print. Source: beside each. */
export const filamentTypical = {
  layer: range(0.1, 0.2, 0.3, 'mm', 'public design guides of print bureaus'),
  lineWidth: range(0.4, 0.45, 0.48, 'mm'),
  speed: range(40, 60, 150, 'mm/s'),
  mostFlow: range(5, 10, 15, 'mm3/s'),
  efficiency: range(0.5, 0.65, 0.8, 'of the flow'),
  perLayer: range(1, 2, 3, 's per layer'),
  supportDensity: range(0.1, 0.15, 0.25, 'of the room below overhangs'),
  holeUndersize: range(0.1, 0.2, 0.3, 'mm', 'public design guides of print bureaus'),
} as const satisfies Record<string, Typical>

/**
 * Filament plastics: density, linear shrinkage and drying before use.
 * Source: density of ABS from plastics tables, the other densities and all shrinkages from memory; drying common
 * practice.
 */
export const filaments = {
  pla: { gPerCm3: 1.24, shrinkPercent: range(0.2, 0.25, 0.3, '%', 'from memory'), dryC: 45, dryHours: 4 },
  petg: { gPerCm3: 1.27, shrinkPercent: range(0.2, 0.35, 0.5, '%', 'from memory'), dryC: 65, dryHours: 4 },
  abs: { gPerCm3: 1.05, shrinkPercent: range(0.6, 0.75, 0.9, '%', 'from memory'), dryC: 80, dryHours: 4 },
} as const

/** The value given, or the usual one noted down as assumed. */
export function orUsual(given: number | null, what: string, usual: Typical, assumed: Assumed[]): number {
  if (given !== null) return given
  assumed.push({ what, value: usual.usual, unit: usual.unit, source: usual.source })
  return usual.usual
}

/** Assumed quantities as lines of a sum. */
export function sayAssumed(assumed: readonly Assumed[]): string[] {
  return assumed.map(({ what, value, unit, source }) => `assumed: ${what} ${value} ${unit} (${source})`)
}
