import type { Place } from '../../base/place.ts'
import { prcBoard } from '../../diagnostics/catalogue/prc-board.ts'
import { type ComponentUnit, readComponentValue } from '../../trade/boards/component-value.ts'
import { designatorLetters } from '../../trade/boards/designators.ts'
import { nearestPreferred, type PreferredSeries, seriesOf } from '../../trade/boards/preferred-values.ts'
import type { Context } from '../context.ts'

const unitByLetter: Readonly<Record<string, ComponentUnit>> = { R: 'ohm', C: 'farad', L: 'henry' }

/** A value on a board or of a bought part. */
export interface WrittenValue {
  readonly at: Place
  readonly text: string
  /** `R1, R2` or the part's name, for the message. */
  readonly what: string
  /** What it measures, where that is known from elsewhere. */
  readonly unit: ComponentUnit | null
}

/** What a designator measures: R resistance, C capacitance, L inductance; `null`: something else. */
export function unitOfDesignator(designator: string): ComponentUnit | null {
  return unitByLetter[designatorLetters(designator)] ?? null
}

/**
 * PRC52: a resistance, capacitance or inductance that is in no series of preferred values, or not in the one asked for.
 * Links (0 ohm) and what reads as no value are left alone.
 */
export function warnValue(context: Context, written: WrittenValue, series: PreferredSeries | null): void {
  const read = readComponentValue(written.text)
  if ('fault' in read || read.value === 0) return
  const unit = read.unit ?? written.unit
  if (unit === null || (written.unit !== null && read.unit !== null && read.unit !== written.unit)) return
  const usual = series ?? 'E24'
  const near = nearestPreferred(read.value, usual)
  if ('fault' in near || near.inSeries || (series === null && seriesOf(read.value) !== null)) return
  context.report(prcBoard.notPreferred, written.at, {
    what: written.what,
    value: written.text,
    series: series ?? 'any series of IEC 60063 up to E192',
    nearest: `${sayValue(near.value, unit)}${series ? '' : ' of E24'}`,
    percent: near.offPercent,
  })
}

const prefixes = [
  [1e9, 'G'],
  [1e6, 'M'],
  [1e3, 'k'],
  [1, ''],
  [1e-3, 'm'],
  [1e-6, 'u'],
  [1e-9, 'n'],
  [1e-12, 'p'],
] as const
const symbols: Readonly<Record<ComponentUnit, string>> = { ohm: 'ohm', farad: 'F', henry: 'H' }

/** A value with the prefix a person would write: `4.7 kohm`. */
function sayValue(value: number, unit: ComponentUnit): string {
  const [size, prefix] = prefixes.find(([least]) => value >= least * (1 - 1e-9)) ?? prefixes.at(-1)!
  return `${Number((value / size).toPrecision(4))} ${prefix}${symbols[unit]}`
}
