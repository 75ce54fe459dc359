import { firstOutside, type OutOfDomain } from './domain.ts'
import { figure } from './figure.ts'

/** The two ways of printing that the tables know. */
export type PrintProcess = 'filament' | 'vat'
/** What a process has a least size for. */
export type PrintFeature = 'wall' | 'hole' | 'clearance' | 'pin'

/** Below `low` it will not come out; from `high` on it does; between them it depends on printer and material. */
export interface LeastSize {
  readonly low: number
  readonly high: number
}

/** Least sizes in millimetres. Source: four public design tables of print bureaus (ranges over all four). */
export const printLimits: Readonly<Record<PrintProcess, Readonly<Record<PrintFeature, LeastSize>>>> = {
  filament: {
    wall: { low: 0.8, high: 1.2 },
    hole: { low: 1.6, high: 2 },
    clearance: { low: 0.2, high: 0.5 },
    pin: { low: 2, high: 3 },
  },
  vat: {
    wall: { low: 0.8, high: 1 },
    hole: { low: 0.5, high: 0.5 },
    clearance: { low: 0.125, high: 0.3 },
    pin: { low: 1, high: 1 },
  },
}

/** A feature smaller than its process prints, or so small that it is doubtful. */
export interface PrintTrouble {
  readonly trouble: 'too small' | 'doubtful'
  readonly feature: PrintFeature
  readonly hasMm: number
  readonly needsMm: number
  readonly shortMm: number
  /** Processes of the table in which the feature is safe. */
  readonly wouldDo: readonly PrintProcess[]
  readonly says: string
}

/** The smallest features of a part, in millimetres; `null` where it has none. */
export type SmallestFeatures = Readonly<Record<PrintFeature, number | null>>

/** What is too small or doubtful about a part for the process it is printed in: too small first below `low`. */
export function printTroubles(
  features: SmallestFeatures,
  process: PrintProcess,
): readonly PrintTrouble[] | OutOfDomain {
  const outside = firstOutside(features, {
    wall: 'above 0',
    hole: 'above 0',
    clearance: '0 or more',
    pin: 'above 0',
  })
  if (outside) return outside
  return (['wall', 'hole', 'clearance', 'pin'] as const).flatMap((feature) => {
    const hasMm = features[feature]
    return hasMm === null ? [] : troubleOf(feature, hasMm, process)
  })
}

function troubleOf(feature: PrintFeature, hasMm: number, process: PrintProcess): PrintTrouble[] {
  const { low, high } = printLimits[process][feature]
  if (hasMm >= high) return []
  const needsMm = hasMm < low ? low : high
  const wouldDo = (['filament', 'vat'] as const).filter((other) => hasMm >= printLimits[other][feature].high)
  const shortMm = needsMm - hasMm
  return [
    {
      trouble: hasMm < low ? 'too small' : 'doubtful',
      feature,
      hasMm,
      needsMm,
      shortMm,
      wouldDo,
      says:
        `${feature} ${figure(hasMm)} mm, ${process} needs ${figure(low)}` +
        `${high > low ? ` to ${figure(high)}` : ''} mm: short by ${figure(shortMm)} mm`,
    },
  ]
}

/** How far a printed size may be off, either way, in millimetres. */
export interface PrintTolerance {
  readonly lowMm: number
  readonly usualMm: number
  readonly highMm: number
  readonly worked: readonly string[]
}

const tolerances = {
  filament: { low: 0.2, usual: 0.5, high: 0.5, percent: 0.5 },
  vat: { low: 0.1, usual: 0.2, high: 0.25, percent: 0.2 },
} as const

/**
 * General tolerance of a printed size: a least deviation, or a share of the size where that is larger.
 * Source: four public design tables of print bureaus.
 */
export function printTolerance(process: PrintProcess, sizeMm: number): PrintTolerance | OutOfDomain {
  const outside = firstOutside({ sizeMm }, { sizeMm: 'above 0' })
  if (outside) return outside
  const { low, usual, high, percent } = tolerances[process]
  const share = (sizeMm * percent) / 100
  const usualMm = Math.max(usual, share)
  const parts = `${figure(usual)} mm and ${percent} % of ${figure(sizeMm)} mm (${figure(share)} mm)`
  return {
    lowMm: Math.max(low, share),
    usualMm,
    highMm: Math.max(high, share),
    worked: [`tolerance = larger of ${parts} = +/- ${figure(usualMm)} mm`],
  }
}
