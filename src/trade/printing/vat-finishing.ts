import { firstOutside, type OutOfDomain, wholeUp } from './domain.ts'

/** A plate of parts after a vat print, and how many fit the wash and the curing box at once. */
export interface VatPlate {
  readonly parts: number
  readonly partsPerWash: number
  readonly partsPerCure: number
}

/** One kind of work after the print, over the whole plate. */
export interface FinishingStep {
  readonly step: string
  /** `hands` all the time, or left alone between loading and unloading. */
  readonly attention: 'hands' | 'none'
  readonly rounds: number
  readonly lowMinutes: number
  readonly likelyMinutes: number
  readonly highMinutes: number
  readonly source: string
  readonly worked: string
}

const steps = [
  ['machine ready and clean again', 'hands', 'job', 10, 20],
  ['first bath', 'none', 'wash', 2, 5],
  ['second bath', 'none', 'wash', 2, 5],
  ['dry in air until no fluid is left', 'none', 'job', 10, 30],
  ['supports off', 'hands', 'part', 5, 20],
  ['cure at 405 nm', 'none', 'cure', 5, 30],
] as const

/**
 * Work after a vat print, in order: wash twice, dry, supports off, cure, each with its range of minutes.
 * Source: common practice, no source: the data sheet of the resin comes first. The likely value is the middle.
 * Gives: steps in their order; times of rounds that follow one another are added.
 */
export function vatFinishing(plate: VatPlate): readonly FinishingStep[] | OutOfDomain {
  const outside = firstOutside(plate, {
    parts: 'whole, 1 or more',
    partsPerWash: 'whole, 1 or more',
    partsPerCure: 'whole, 1 or more',
  })
  if (outside) return outside
  const rounds = {
    job: 1,
    part: plate.parts,
    wash: wholeUp(plate.parts / plate.partsPerWash),
    cure: wholeUp(plate.parts / plate.partsPerCure),
  }
  return steps.map(([step, attention, per, low, high]) => {
    const n = rounds[per]
    return {
      step,
      attention,
      rounds: n,
      lowMinutes: n * low,
      likelyMinutes: (n * (low + high)) / 2,
      highMinutes: n * high,
      source: 'common practice, no source',
      worked: `${step}: ${n} x ${low}..${high} min = ${n * low}..${n * high} min`,
    }
  })
}
