import Fraction from 'fraction.js'
import type { DimensionName } from './dimension-names.ts'
import type { Dims } from './dims.ts'
import { readNumeral } from './numeral.ts'
import { type Quantity, readAs, readQuantity } from './quantity.ts'
import { isFault, type QuantityFault } from './quantity-fault.ts'
import { foldSigns } from './units.ts'

/** An optimistic, a likely and a pessimistic value, exact, in base units. */
export interface ThreePoint {
  readonly low: Fraction
  readonly likely: Fraction
  readonly high: Fraction
  /** (low + 4 likely + high) / 6. */
  readonly mean: Fraction
  readonly dims: Dims
  /** The unit of the last value, as typed. */
  readonly unit: string
  readonly text: string
}

/** Why a text is no three-point value. */
export type ThreePointFault =
  | QuantityFault
  /** The values, as typed, do not rise. */
  | { readonly fault: 'out of order'; readonly text: string; readonly points: readonly string[] }
  | { readonly fault: 'too many points'; readonly text: string; readonly count: number }

/**
 * The values of `1..1.5..3 h`, of `10..40 min` (likely value in the middle) or of one quantity (all three alike).
 * Each value carries its own unit or takes that of the last.
 */
export function readThreePoint(
  text: string,
  wanted: DimensionName | readonly DimensionName[],
  bareUnit: string | null = null,
): ThreePoint | ThreePointFault {
  const typed = text.trim()
  const points = typed.split('..').map((part) => part.trim())
  if (points.length > 3) return { fault: 'too many points', text: typed, count: points.length }
  // Three dots in a row could be cut in two ways.
  if (typed.includes('...')) return { fault: 'not a number', text: typed }
  const read = readSharing(points, wanted, bareUnit)
  if (isFault(read)) return points.length > 1 && read.fault === 'bare' ? bareRange(points, read) : read
  const [low, high] = [read[0]!.value, read.at(-1)!.value]
  const likely = read.length === 3 ? read[1]!.value : low.add(high).div(2)
  if (low.gt(likely) || likely.gt(high)) return { fault: 'out of order', text: typed, points }
  return { ...threePoint(low, likely, high), dims: read[0]!.dims, unit: read.at(-1)!.unit, text: typed }
}

/** Three values with their mean. Source: the PERT estimate (Malcolm et al. 1959), from memory. */
export function threePoint(
  low: Fraction,
  likely: Fraction,
  high: Fraction,
): Pick<ThreePoint, 'low' | 'likely' | 'high' | 'mean'> {
  return { low, likely, high, mean: low.add(likely.mul(4)).add(high).div(new Fraction(6)) }
}

/** Several quantities of one kind, those without a unit taking that of the last: the parts of `60 x 60 x 45 mm`. */
export function readSharing(
  parts: readonly string[],
  wanted: DimensionName | readonly DimensionName[],
  bareUnit: string | null = null,
): Quantity[] | QuantityFault {
  const last = readAs(parts.at(-1) ?? '', wanted, bareUnit)
  if (isFault(last)) return last
  const all: Quantity[] = []
  for (const part of parts) {
    const read = readAs(part, wanted, last.unit)
    if (isFault(read)) return read
    if (read.dims !== last.dims) return { fault: 'two kinds', text: part, units: [read.unit, last.unit] }
    all.push(read)
  }
  return all
}

/** The last value has no unit: shows it with the unit of another, else with the likeliest one. */
function bareRange(points: readonly string[], fault: QuantityFault & { fault: 'bare' }): QuantityFault {
  const typed = points
    .map((point) => readQuantity(point))
    .flatMap((read) => (isFault(read) ? [] : [read.unit]))
  const units = typed[0] === undefined ? fault.perhaps.map(unitOf) : [typed[0]]
  const text = points.join('..')
  const plain = points.map((point) => point.replace(/^[A-Z]{3} ?/, '')).join('..')
  return { fault: 'bare', text, perhaps: units.map((unit) => `${plain} ${unit}`) }
}

function unitOf(text: string): string {
  const numeral = readNumeral(foldSigns(text))
  return typeof numeral === 'string' ? '' : numeral.rest.trim()
}
