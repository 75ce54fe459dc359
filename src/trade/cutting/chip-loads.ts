import type { MaterialGroup } from './types.ts'

/** Thickest chips of a tooth in parts of the cutter's diameter: to begin with, and at most. */
export interface ChipLoad {
  readonly startRatio: number
  readonly mostRatio: number
  readonly source: string
}

const maker = 'solid carbide milling guide 2022, feed ratios'
const soft: ChipLoad = { startRatio: 0.006, mostRatio: 0.0085, source: maker }

/**
 * Chip loads of small end mills by group; `null` where no table gives one.
 * Source: a maker's starting ratios; the most is 0.008 D (common practice, no source) or a public chart's 0.025 mm at
 * 3 mm in soft metals, and one and a half times the start elsewhere (common practice, no source).
 */
export const chipLoads: Readonly<Record<MaterialGroup, ChipLoad | null>> = {
  aluminium: soft,
  brass: soft,
  copper: soft,
  magnesium: null,
  'low-carbon steel': { startRatio: 0.006, mostRatio: 0.009, source: maker },
  'medium-carbon steel': { startRatio: 0.006, mostRatio: 0.009, source: maker },
  'alloy steel': { startRatio: 0.004, mostRatio: 0.006, source: maker },
  'tool steel': { startRatio: 0.004, mostRatio: 0.006, source: maker },
  'hardened steel': null,
  'austenitic stainless': { startRatio: 0.003, mostRatio: 0.005, source: maker },
  titanium: { startRatio: 0.003, mostRatio: 0.005, source: maker },
  'cast iron': { startRatio: 0.004, mostRatio: 0.006, source: maker },
  plastic: null,
  laminate: null,
}

/** Thinnest chip in mm that is still cut; below it the edge rubs. Source: common practice, no source. */
export const leastChipMm = 0.002
