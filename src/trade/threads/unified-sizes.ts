/** One unified thread of the coarse or fine series. */
export interface UnifiedSize {
  /** `#10` or `1/4`. */
  readonly size: string
  readonly majorIn: number
  readonly threadsPerInch: number
  readonly series: 'UNC' | 'UNF'
  /** The usual tap drill, by its name and diameter. */
  readonly drill: string
  readonly drillIn: number
}

type Row = readonly [size: string, majorIn: number, tpi: number, drill: string, drillIn: number]

/**
 * Source: ASME B1.1 sizes; coarse drills to 1/4 from public charts (they vary by one number size), fine drills and all
 * above 1/4 from memory.
 */
const coarse: readonly Row[] = [
  ['#1', 0.073, 64, '#53', 0.0595],
  ['#2', 0.086, 56, '#50', 0.07],
  ['#3', 0.099, 48, '#47', 0.0785],
  ['#4', 0.112, 40, '#43', 0.089],
  ['#5', 0.125, 40, '#38', 0.1015],
  ['#6', 0.138, 32, '#36', 0.1065],
  ['#8', 0.164, 32, '#29', 0.136],
  ['#10', 0.19, 24, '#25', 0.1495],
  ['#12', 0.216, 24, '#16', 0.177],
  ['1/4', 0.25, 20, '#7', 0.201],
  ['5/16', 0.3125, 18, 'F', 0.257],
  ['3/8', 0.375, 16, '5/16', 0.3125],
  ['7/16', 0.4375, 14, 'U', 0.368],
  ['1/2', 0.5, 13, '27/64', 0.4219],
  ['9/16', 0.5625, 12, '31/64', 0.4844],
  ['5/8', 0.625, 11, '17/32', 0.5312],
  ['3/4', 0.75, 10, '21/32', 0.6562],
  ['7/8', 0.875, 9, '49/64', 0.7656],
  ['1', 1, 8, '7/8', 0.875],
]

const fine: readonly Row[] = [
  ['#0', 0.06, 80, '3/64', 0.0469],
  ['#1', 0.073, 72, '#53', 0.0595],
  ['#2', 0.086, 64, '#50', 0.07],
  ['#3', 0.099, 56, '#45', 0.082],
  ['#4', 0.112, 48, '#42', 0.0935],
  ['#5', 0.125, 44, '#37', 0.104],
  ['#6', 0.138, 40, '#33', 0.113],
  ['#8', 0.164, 36, '#29', 0.136],
  ['#10', 0.19, 32, '#21', 0.159],
  ['#12', 0.216, 28, '#14', 0.182],
  ['1/4', 0.25, 28, '#3', 0.213],
  ['5/16', 0.3125, 24, 'I', 0.272],
  ['3/8', 0.375, 24, 'Q', 0.332],
  ['7/16', 0.4375, 20, '25/64', 0.3906],
  ['1/2', 0.5, 20, '29/64', 0.4531],
  ['9/16', 0.5625, 18, '33/64', 0.5156],
  ['5/8', 0.625, 18, '37/64', 0.5781],
  ['3/4', 0.75, 16, '11/16', 0.6875],
  ['7/8', 0.875, 14, '13/16', 0.8125],
  ['1', 1, 12, '59/64', 0.9219],
]

const sized =
  (series: 'UNC' | 'UNF') =>
  ([size, majorIn, threadsPerInch, drill, drillIn]: Row): UnifiedSize => ({
    size,
    majorIn,
    threadsPerInch,
    series,
    drill,
    drillIn,
  })

/** The coarse and fine unified threads from #0 to 1 inch. Source: ASME B1.1. */
export const unifiedSizes: readonly UnifiedSize[] = [...coarse.map(sized('UNC')), ...fine.map(sized('UNF'))]

/** The listed thread of a major diameter and threads per inch, or `null`. */
export function unifiedSize(majorIn: number, threadsPerInch: number): UnifiedSize | null {
  return (
    unifiedSizes.find(
      (row) => Math.abs(row.majorIn - majorIn) < 1e-6 && row.threadsPerInch === threadsPerInch,
    ) ?? null
  )
}
