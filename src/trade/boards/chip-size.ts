/** A chip component by its two codes, its body and the usual power of a resistor in it. */
export interface ChipSize {
  readonly inch: string
  readonly metric: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly usualWatt: readonly [low: number, high: number]
}

const chip = (
  inch: string,
  metric: string,
  lengthMm: number,
  widthMm: number,
  low: number,
  high = low,
): ChipSize => ({ inch, metric, lengthMm, widthMm, usualWatt: [low, high] })

/** Chip sizes, inch (EIA) and metric (IEC) codes. Source: four public tables that agree. */
export const chipSizes: readonly ChipSize[] = [
  chip('01005', '0402', 0.4, 0.2, 1 / 32),
  chip('0201', '0603', 0.6, 0.3, 1 / 20),
  chip('0402', '1005', 1, 0.5, 1 / 16),
  chip('0603', '1608', 1.6, 0.8, 1 / 10),
  chip('0805', '2012', 2, 1.25, 1 / 8),
  chip('1206', '3216', 3.2, 1.6, 1 / 4),
  chip('1210', '3225', 3.2, 2.5, 1 / 3, 1 / 2),
  chip('1812', '4532', 4.5, 3.2, 1 / 2, 3 / 4),
  chip('2010', '5025', 5, 2.5, 1 / 2, 3 / 4),
  chip('2512', '6332', 6.3, 3.2, 1),
]

/** A code that means two sizes, or none. */
export type ChipFault =
  | { readonly fault: 'ambiguous'; readonly code: string; readonly inch: ChipSize; readonly metric: ChipSize }
  | { readonly fault: 'no such chip'; readonly code: string }

/** The chip of a code; with no system given, 0402 and 0603 are ambiguous, since both systems have them. */
export function chipSize(code: string, system: 'inch' | 'metric' | null): ChipSize | ChipFault {
  const inch = system === 'metric' ? undefined : chipSizes.find((size) => size.inch === code)
  const metric = system === 'inch' ? undefined : chipSizes.find((size) => size.metric === code)
  if (inch && metric) return { fault: 'ambiguous', code, inch, metric }
  return inch ?? metric ?? { fault: 'no such chip', code }
}
