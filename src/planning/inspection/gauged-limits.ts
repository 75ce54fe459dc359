import type { InspectionLine } from '../../model/results.ts'
import { type FeatureText, type ReadToleranced, readFeature } from '../../trade/joins/read-feature.ts'
import type { SizeLimits } from '../../trade/threads/limits-of-size.ts'
import { threadLimits } from '../../trade/threads/thread-limits.ts'
import { tidyMm } from '../../trade/tolerances/tidy.ts'

/** Limits that a bench can measure against, and what they are of. */
export type Gauged = Pick<InspectionLine, 'lower' | 'upper' | 'unit' | 'limitsOf'>

/**
 * Limits of a feature: of a size its own or the general ones, in the unit it is written in; of a thread those of the
 * diameter a bench can measure, the minor one inside and the major one outside. `null` where there are none.
 * Source: as `sizeLimits`, `generalLengthMm` and `threadLimits`.
 */
export function gaugedLimits(feature: FeatureText): Gauged | null {
  const read = readFeature(feature)
  if (read.kind === 'size') return sizeGauged(read)
  if (read.kind !== 'thread') return null
  const limits = threadLimits(read.thread, read.gender)
  if ('fault' in limits) return null
  const assumed = limits.classFrom === 'usual' ? `, ${limits.class.text} taken` : ''
  const unit = read.thread.system === 'metric' ? 'mm' : 'in'
  return limits.gender === 'internal'
    ? diameter(limits.minor, unit, `minor diameter${assumed}`)
    : diameter(limits.major, unit, `major diameter${assumed}`)
}

/** Inches to a hundredth of a thou: nothing at a bench reads finer. */
const inUnit = (sizeMm: number, unit: string): number =>
  unit === 'in' ? Math.round((sizeMm / 25.4) * 1e5) / 1e5 : tidyMm(sizeMm)

function diameter({ minMm, maxMm }: SizeLimits, unit: string, limitsOf: string): Gauged | null {
  if (minMm === null && maxMm === null) return null
  const said = (size: number | null): number | null => (size === null ? null : inUnit(size, unit))
  return { lower: said(minMm), upper: said(maxMm), unit, limitsOf }
}

function sizeGauged({ size, limits, limitsFrom }: ReadToleranced): Gauged | null {
  if (!limits) return null
  const { unit } = size
  return {
    lower: inUnit(limits.minMm, unit),
    upper: inUnit(limits.maxMm, unit),
    unit,
    limitsOf: limitsFrom === null ? null : `general tolerance ISO 2768-${limitsFrom}`,
  }
}
