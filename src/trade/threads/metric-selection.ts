/** One row of the diameter and pitch selection. */
export interface MetricSize {
  readonly diameterMm: number
  /** 1 to be preferred, then 2, then 3. */
  readonly choice: 1 | 2 | 3
  readonly coarseMm: number | null
  readonly fineMm: readonly number[]
  /** Fine pitches that fasteners have too. */
  readonly fastenerFineMm: readonly number[]
}

type Row = readonly [diameterMm: number, choice: 1 | 2 | 3, coarseMm: number | null, ...fineMm: number[]]

/**
 * Source: ISO 261 general plan, read in two open thread tables citing it; third choice and all above 30 mm (only as
 * far as the coarse pitch) from memory.
 */
const rows: readonly Row[] = [
  [1, 1, 0.25, 0.2],
  [1.1, 2, 0.25, 0.2],
  [1.2, 1, 0.25, 0.2],
  [1.4, 2, 0.3, 0.2],
  [1.6, 1, 0.35, 0.2],
  [1.8, 2, 0.35, 0.2],
  [2, 1, 0.4, 0.25],
  [2.2, 2, 0.45, 0.25],
  [2.5, 1, 0.45, 0.35],
  [3, 1, 0.5, 0.35],
  [3.5, 2, 0.6, 0.35],
  [4, 1, 0.7, 0.5],
  [4.5, 2, 0.75, 0.5],
  [5, 1, 0.8, 0.5],
  [5.5, 3, null, 0.5],
  [6, 1, 1, 0.75],
  [7, 2, 1, 0.75],
  [8, 1, 1.25, 1, 0.75],
  [9, 3, 1.25, 1, 0.75],
  [10, 1, 1.5, 1.25, 1, 0.75],
  [11, 3, 1.5, 1, 0.75],
  [12, 1, 1.75, 1.5, 1.25, 1],
  [14, 2, 2, 1.5, 1.25, 1],
  [15, 3, null, 1.5, 1],
  [16, 1, 2, 1.5, 1],
  [17, 3, null, 1.5, 1],
  [18, 2, 2.5, 2, 1.5, 1],
  [20, 1, 2.5, 2, 1.5, 1],
  [22, 2, 2.5, 2, 1.5, 1],
  [24, 1, 3, 2, 1.5, 1],
  [25, 3, null, 2, 1.5, 1],
  [26, 3, null, 1.5],
  [27, 2, 3, 2, 1.5, 1],
  [28, 3, null, 2, 1.5, 1],
  [30, 1, 3.5, 3, 2, 1.5, 1],
  [33, 2, 3.5, 3, 2, 1.5],
  [36, 1, 4, 3, 2, 1.5],
  [39, 2, 4, 3, 2, 1.5],
  [42, 1, 4.5, 4, 3, 2, 1.5],
  [45, 2, 4.5, 4, 3, 2, 1.5],
  [48, 1, 5, 4, 3, 2, 1.5],
  [52, 2, 5, 4, 3, 2, 1.5],
  [56, 1, 5.5, 4, 3, 2, 1.5],
  [60, 2, 5.5, 4, 3, 2, 1.5],
  [64, 1, 6, 4, 3, 2, 1.5],
]

/** Source: ISO 262, a public table read to 30 mm. */
const fastenerFine: ReadonlyMap<number, readonly number[]> = new Map([
  [8, [1]],
  [10, [1.25, 1]],
  [12, [1.5, 1.25]],
  [14, [1.5]],
  [16, [1.5]],
  [18, [2, 1.5]],
  [20, [2, 1.5]],
  [22, [2, 1.5]],
  [24, [2]],
  [27, [2]],
  [30, [2]],
])

/** Metric diameters and the pitches that belong to them, 1 to 64 mm. Source: ISO 261 and ISO 262. */
export const metricSizes: readonly MetricSize[] = rows.map(([diameterMm, choice, coarseMm, ...fineMm]) => ({
  diameterMm,
  choice,
  coarseMm,
  fineMm,
  fastenerFineMm: fastenerFine.get(diameterMm) ?? [],
}))

/** What the standards say about a diameter with a pitch. */
export interface MetricSelection {
  readonly coarse: boolean
  /** In the general selection. */
  readonly inIso261: boolean
  /** In the shorter selection for screws, bolts and nuts. `null` above 30 mm: not known here. */
  readonly inIso262: boolean | null
  /** `null` where the diameter itself is not listed. */
  readonly choice: 1 | 2 | 3 | null
  /** All pitches listed for the diameter, coarse first. */
  readonly pitchesMm: readonly number[]
  /** Listed diameters next below and above. */
  readonly neighboursMm: readonly number[]
}

/**
 * Whether the standards list a pitch for a diameter, and which they list. Unlisted ones exist: tools must be asked
 * for.
 */
export function metricSelection(diameterMm: number, pitchMm: number): MetricSelection {
  const size = metricSizes.find((row) => row.diameterMm === diameterMm) ?? null
  const coarse = size?.coarseMm === pitchMm
  const below = metricSizes.filter((row) => row.diameterMm < diameterMm).at(-1)
  const above = metricSizes.find((row) => row.diameterMm > diameterMm)
  return {
    coarse,
    inIso261: coarse || (size?.fineMm.includes(pitchMm) ?? false),
    inIso262: diameterMm > 30 ? null : inFasteners(size, pitchMm),
    choice: size?.choice ?? null,
    pitchesMm: size ? [...(size.coarseMm === null ? [] : [size.coarseMm]), ...size.fineMm] : [],
    neighboursMm: [below, above].flatMap((row) => (row ? [row.diameterMm] : [])),
  }
}

function inFasteners(size: MetricSize | null, pitchMm: number): boolean {
  if (size === null || size.choice === 3) return false
  return size.coarseMm === pitchMm || size.fastenerFineMm.includes(pitchMm)
}

/** The coarse pitch of a diameter, or `null` where the standard has none. */
export function coarsePitchMm(diameterMm: number): number | null {
  return metricSizes.find((row) => row.diameterMm === diameterMm)?.coarseMm ?? null
}
