import type { MaterialGroup } from './types.ts'

/** Diameters in mm for which the feeds are printed. */
const sizes = [6, 12, 18, 25] as const

type Row = readonly [at6: number, at12: number, at18: number, at25: number]

/** Feeds in mm/rev of HSS drills at 6, 12, 18 and 25 mm. Source: tutorial tables of nominal feeds, HSS drilling. */
const rows: Readonly<Partial<Record<MaterialGroup, Row>>> = {
  aluminium: [0.3, 0.4, 0.61, 0.81],
  brass: [0.2, 0.25, 0.41, 0.51],
  'cast iron': [0.13, 0.18, 0.25, 0.31],
  'low-carbon steel': [0.2, 0.25, 0.41, 0.51],
  'austenitic stainless': [0.13, 0.18, 0.25, 0.31],
  plastic: [0.1, 0.15, 0.2, 0.25],
}

/** Feeds below 6 mm in parts of the diameter. Source: common practice, no source. */
const below: Readonly<Partial<Record<MaterialGroup, number>>> = {
  aluminium: 0.03,
  brass: 0.03,
  'low-carbon steel': 0.02,
  'austenitic stainless': 0.02,
}

/** A feed of one turn, with where it comes from. */
export interface DrillFeed {
  readonly feedMmPerRev: number
  readonly source: string
}

/**
 * Feed of one turn to begin with for a twist drill, or `null` where no table gives one.
 * Between printed sizes along straight lines; above the last one that of the last.
 * Source: tutorial tables of nominal feeds; below 6 mm in proportion to the diameter (common practice, no source).
 */
export function drillFeed(group: MaterialGroup, diameterMm: number): DrillFeed | null {
  // Medium-carbon steel is drilled as mild steel, only slower (from memory).
  const row = rows[group === 'medium-carbon steel' ? 'low-carbon steel' : group]
  if (!row) return null
  if (diameterMm < sizes[0]) {
    const ratio = below[group === 'medium-carbon steel' ? 'low-carbon steel' : group] ?? row[0] / sizes[0]
    return {
      feedMmPerRev: ratio * diameterMm,
      source: `${ratio.toPrecision(2)} D below 6 mm, common practice, no source`,
    }
  }
  const source = 'tutorial tables of nominal feeds, HSS drilling'
  const above = sizes.findIndex((size) => size > diameterMm)
  if (above < 0) return { feedMmPerRev: row[3], source }
  const share = (diameterMm - sizes[above - 1]!) / (sizes[above]! - sizes[above - 1]!)
  return { feedMmPerRev: row[above - 1]! + share * (row[above]! - row[above - 1]!), source }
}
