import { firstOutside, type OutOfDomain } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** Series of preferred values by the number of values in a decade. */
export type PreferredSeries = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192'

/** Two figures. Source: IEC 60063 as printed in an encyclopedia; the rule of the finer series misses eight of them. */
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91]

/**
 * Three figures by the rule 10^(i/192). Source: IEC 60063, with its one exception 920 for 919 (several public
 * tables).
 */
const e192 = Array.from({ length: 192 }, (_, i) => (i === 185 ? 920 : Math.round(100 * 10 ** (i / 192))))

const every = (list: readonly number[], step: number) => list.filter((_, i) => i % step === 0)

/** Values of one decade, as two figures from 10 (E3 to E24) or three from 100 (E48 to E192). Source: IEC 60063. */
export const preferredValues: Readonly<Record<PreferredSeries, readonly number[]>> = {
  E3: every(e24, 8),
  E6: every(e24, 4),
  E12: every(e24, 2),
  E24: e24,
  E48: every(e192, 4),
  E96: every(e192, 2),
  E192: e192,
}

/** The value of a series nearest to a wanted one. */
export interface NearestValue {
  /** Nearest by ratio. */
  readonly value: number
  /** Nearest by difference; another value only near the middle between two. */
  readonly byDifference: number
  /** The wanted value is itself in the series. */
  readonly inSeries: boolean
  /** How far the nearest is off, in percent of the wanted one, with sign. */
  readonly offPercent: number
  /** The neighbours of the wanted value in the series; both equal to it where it is in the series. */
  readonly below: number
  readonly above: number
  readonly worked: readonly string[]
}

/**
 * The preferred value nearest to a wanted one, by ratio, and whether the wanted one is preferred. Source: IEC
 * 60063.
 */
export function nearestPreferred(wanted: number, series: PreferredSeries): NearestValue | OutOfDomain {
  const outside = firstOutside({ wanted }, { wanted: 'above 0' })
  if (outside) return outside
  const candidates = around(wanted, series)
  const same = candidates.find((value) => Math.abs(value / wanted - 1) < 1e-9)
  const below = same ?? candidates.filter((value) => value < wanted).at(-1)!
  const above = same ?? candidates.find((value) => value > wanted)!
  const value = wanted / below <= above / wanted ? below : above
  const byDifference = wanted - below <= above - wanted ? below : above
  const offPercent = (value / wanted - 1) * 100
  const between = `${figure(below)} and ${figure(above)}`
  const line =
    same !== undefined
      ? `${figure(wanted)} is in ${series}`
      : `${figure(wanted)} lies between ${between} of ${series}: nearest by ratio ${figure(value)} ` +
        `(${offPercent >= 0 ? '+' : ''}${offPercent.toFixed(2)} %)`
  return { value, byDifference, inSeries: same !== undefined, offPercent, below, above, worked: [line] }
}

/** The series values of three decades about a value, rising; decimal to the last place. */
function around(wanted: number, series: PreferredSeries): number[] {
  const decade = Math.floor(Math.log10(wanted))
  const digits = preferredValues[series][0] === 10 ? 1 : 2
  return [-1, 0, 1].flatMap((shift) =>
    preferredValues[series].map((figures) => Number(`${figures}e${decade + shift - digits}`)),
  )
}

/** The coarsest series that holds a value, or `null`. */
export function seriesOf(value: number): PreferredSeries | null {
  const all = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'] as const
  return (
    all.find((series) => {
      const near = nearestPreferred(value, series)
      return !('fault' in near) && near.inSeries
    }) ?? null
  )
}
