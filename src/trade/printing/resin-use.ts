import { firstOutside, type OutOfDomain } from './domain.ts'
import { figure } from './figure.ts'
import { type Assumed, orUsual, sayAssumed, type Typical, vatTypical } from './typical.ts'

/** Parts printed together in one job. `null` takes the usual value. */
export interface ResinJob {
  /** All parts of the job, without supports. */
  readonly partsCm3: number
  readonly supportFraction: number | null
  /** Left in the vat, on the plate and in the wash, once a job. */
  readonly lossCm3: number | null
  readonly densityGPerCm3: number | null
}

/** Resin drawn from the bottle. */
export interface ResinUse {
  readonly cm3: number
  readonly grams: number
  readonly assumed: readonly Assumed[]
  readonly worked: readonly string[]
}

/**
 * Resin that a vat job draws from the bottle: parts, supports and loss.
 * Source: part x (1 + support fraction) + loss per job; fractions and loss common practice, no source.
 */
export function resinUse(job: ResinJob): ResinUse | OutOfDomain {
  const outside = firstOutside(job, {
    partsCm3: 'above 0',
    supportFraction: '0 or more',
    lossCm3: '0 or more',
    densityGPerCm3: 'above 0',
  })
  if (outside) return outside
  const assumed: Assumed[] = []
  const support = orUsual(job.supportFraction, 'supports', vatTypical.supportFraction, assumed)
  const loss = orUsual(job.lossCm3, 'loss', vatTypical.lossCm3, assumed)
  const density = orUsual(job.densityGPerCm3, 'density of the liquid', vatTypical.densityLiquid, assumed)
  const cm3 = job.partsCm3 * (1 + support) + loss
  const grams = cm3 * density
  const parts = `${figure(job.partsCm3)} cm3 x (1 + ${figure(support)} supports)`
  return {
    cm3,
    grams,
    assumed,
    worked: [
      `resin = ${parts} + ${figure(loss)} cm3 lost = ${figure(cm3)} cm3, ${figure(grams)} g`,
      ...sayAssumed(assumed),
    ],
  }
}

/** Parts going through the wash. `null` takes the usual value. */
export interface Wash {
  /** Surface of all parts with their supports. */
  readonly surfaceCm2: number
  /** Liquid resin that clings to the surface. */
  readonly filmMm: number | null
  /** Resin in the bath, by volume, at which it is changed. */
  readonly fullAtFraction: number | null
  /** Solvent that leaves on the parts, as a film. */
  readonly dragOutMm: number | null
}

const practice = 'common practice, no source'
const film: Typical = { low: 0.05, usual: 0.1, high: 0.2, unit: 'mm', source: practice }
const full: Typical = { low: 0.05, usual: 0.1, high: 0.15, unit: 'of the bath', source: practice }
const dragOut: Typical = { low: 0.03, usual: 0.05, high: 0.1, unit: 'mm', source: practice }
/** Density of isopropyl alcohol, g/cm3. From memory. */
const alcoholGPerCm3 = 0.785

/**
 * Alcohol that washing uses up: its share of a bath that fills with resin until it is changed, and what leaves on
 * the parts.
 * Source: balance of volumes; every coefficient common practice, no source, so good to a factor of two.
 */
export function solventUse(wash: Wash): ResinUse | OutOfDomain {
  const outside = firstOutside(wash, {
    surfaceCm2: 'above 0',
    filmMm: '0 or more',
    fullAtFraction: 'above 0, to 1',
    dragOutMm: '0 or more',
  })
  if (outside) return outside
  const assumed: Assumed[] = []
  const filmMm = orUsual(wash.filmMm, 'resin film', film, assumed)
  const limit = orUsual(wash.fullAtFraction, 'bath changed at', full, assumed)
  const dragMm = orUsual(wash.dragOutMm, 'solvent film', dragOut, assumed)
  const carried = wash.surfaceCm2 * (filmMm / 10)
  const dragged = wash.surfaceCm2 * (dragMm / 10)
  const cm3 = carried / limit + dragged
  return {
    cm3,
    grams: cm3 * alcoholGPerCm3,
    assumed,
    worked: [
      `resin into the bath = ${figure(wash.surfaceCm2)} cm2 x ${figure(filmMm)} mm = ${figure(carried)} cm3`,
      `solvent = ${figure(carried)} / ${figure(limit)} + ${figure(dragged)} on the parts = ${figure(cm3)} cm3`,
      ...sayAssumed(assumed),
    ],
  }
}
