import { plain, signed } from '../tolerances/tidy.ts'
import type { Limits, NoLimits } from './size-limits.ts'
import { classLimits } from './size-limits.ts'
import type { SizeText } from './size-text.ts'

/** How a hole and a shaft go together; clearances in micrometres of diameter, below 0 where metal overlaps. */
export interface Fit {
  readonly kind: 'clearance' | 'transition' | 'interference'
  readonly largestClearanceUm: number
  readonly smallestClearanceUm: number
  readonly hole: Limits
  readonly shaft: Limits
  readonly worked: readonly string[]
}

/**
 * The fit of a hole and a shaft, whatever their tolerances were written as.
 * Source: ISO 286-1: largest clearance = largest hole - smallest shaft, smallest = smallest hole - largest shaft.
 */
export function fitOf(hole: Limits, shaft: Limits): Fit {
  const largestClearanceUm = um(hole.maxMm - shaft.minMm)
  const smallestClearanceUm = um(hole.minMm - shaft.maxMm)
  const kind =
    smallestClearanceUm >= 0 ? 'clearance' : largestClearanceUm <= 0 ? 'interference' : 'transition'
  return {
    kind,
    largestClearanceUm,
    smallestClearanceUm,
    hole,
    shaft,
    worked: [
      `largest clearance = ${difference(hole.maxMm, shaft.minMm)} = ${signed(largestClearanceUm)} um`,
      `smallest clearance = ${difference(hole.minMm, shaft.maxMm)} = ${signed(smallestClearanceUm)} um: ${kind}`,
    ],
  }
}

/** The fit a text such as `6 H7/m6` names. */
export function namedFit(size: SizeText & { readonly kind: 'fit' }): Fit | NoLimits {
  const hole = classLimits(size.nominalMm, size.hole)
  const shaft = classLimits(size.nominalMm, size.shaft)
  if ('fault' in hole) return hole
  if ('fault' in shaft) return shaft
  const fit = fitOf(hole, shaft)
  return { ...fit, worked: [...hole.worked, ...shaft.worked, ...fit.worked] }
}

const um = (mm: number): number => Math.round(mm * 1e7) / 1e4 + 0

const difference = (hole: number, shaft: number): string => `${plain(hole, 6)} - ${plain(shaft, 6)} mm`
