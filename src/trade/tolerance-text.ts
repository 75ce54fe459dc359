import { inUnit } from '../base/quantity.ts'
import { isFault } from '../base/quantity-fault.ts'
import { readSharing } from '../base/three-point.ts'

/** Limits of a dimension, in the unit it was written in. */
export interface Limits {
  readonly lower: number
  readonly upper: number
  readonly unit: string
}

/**
 * Limits of `4.2 ± 0.05 mm` or `4.2 +0.1/-0.05 mm`; `null` for any other text (fits and threads are read elsewhere).
 * Source: lower limit = nominal + lower deviation, upper = nominal + upper deviation (ISO 286-1 terms, from memory).
 */
export function readLimits(text: string): Limits | null {
  const even = /^([^±]+?)\s*±\s*(.+)$/.exec(text)
  if (even) return limits(even[1]!, `-${even[2]!}`, even[2]!)
  const uneven = /^(\S+)\s+\+([\d.]+)\s*\/\s*-([\d.]+)\s+(\S+)$/.exec(text)
  return uneven
    ? limits(`${uneven[1]!} ${uneven[4]!}`, `-${uneven[3]!} ${uneven[4]!}`, `${uneven[2]!} ${uneven[4]!}`)
    : null
}

function limits(nominal: string, down: string, up: string): Limits | null {
  const read = readSharing([nominal, down, up], 'length')
  if (isFault(read)) return null
  const [middle, low, high] = read
  if (!middle || !low || !high) return null
  const { unit } = high
  const lower = inUnit(middle.value.add(low.value), unit)
  const upper = inUnit(middle.value.add(high.value), unit)
  return lower && upper ? { lower: lower.valueOf(), upper: upper.valueOf(), unit } : null
}
