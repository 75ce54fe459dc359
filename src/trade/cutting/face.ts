import { howMany } from './formulas.ts'
import { milledCut, milledRate } from './milled-cut.ts'
import { figure, type Notebook, needed, statedOr } from './notebook.ts'
import { noteDepth } from './reach-checks.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Facing a rectangular top. */
export interface FaceJob extends StatedCut {
  /** Along the passes. */
  readonly lengthMm?: number | null
  /** Across the passes. */
  readonly widthMm?: number | null
  /** What comes off in all. */
  readonly stockMm?: number | null
  /** What one layer takes; all at once when silent. */
  readonly depthMm?: number | null
  /** Step-over in parts of the cutter's diameter. */
  readonly stepRatio?: number | null
  /** Step-over; wins over the ratio. */
  readonly stepMm?: number | null
  /** How far the outer passes hang over the side. */
  readonly overhangMm?: number | null
  /** Room before and after each pass. */
  readonly clearanceMm?: number | null
}

/** Step-over in facing. Source: common practice, no source. */
const usualStep = { what: 'step-over', value: 0.7, unit: 'D', source: 'common practice, no source' }
const usualClearance = { what: 'clearance', value: 2, unit: 'mm', source: 'common practice, no source' }

/**
 * Facing in parallel passes: speed, feed, force and time.
 * Source: passes = ceil((W - D + 2 o) / (s D)) + 1, one where W + 2 o <= D; length of a pass L + D + 2 clearance.
 */
export const face: CutQuestion<FaceJob> = (job, cutter, material, machine) =>
  milledCut({
    job,
    bench: { cutter, material, machine },
    engage(diameterMm, note) {
      const lengthMm = needed(job.lengthMm, 'length', note)
      const widthMm = needed(job.widthMm, 'width', note)
      const stockMm = needed(job.stockMm, 'stock to take off', note)
      if (lengthMm === null || widthMm === null || stockMm === null) return null
      const isNarrow = widthMm + 2 * (job.overhangMm ?? 0) <= diameterMm
      if (isNarrow) return { diameterMm, stepMm: widthMm, isCentred: true, isOpen: true }
      return { diameterMm, stepMm: stepOf(job, diameterMm, note), isOpen: true }
    },
    find({ feedMmPerMin, diameterMm }, { stepMm, isCentred }, note) {
      const stockMm = job.stockMm!
      const layerMm = Math.min(job.depthMm ?? stockMm, stockMm)
      noteDepth(layerMm, stockMm, cutter, note)
      const layers = howMany(stockMm, layerMm)
      const across = job.widthMm! + 2 * (job.overhangMm ?? 0)
      const passes = isCentred ? 1 : Math.ceil((across - diameterMm) / stepMm - 1e-9) + 1
      const extraMm = diameterMm + 2 * statedOr(job.clearanceMm, usualClearance, note)
      const length = job.lengthMm! + extraMm
      const cuts = layers * passes
      note.worked.push(
        `passes = ${isCentred ? 1 : `ceil((${figure(across)} - ${figure(diameterMm)}) / ${figure(stepMm)}) + 1 = ${passes}`}, layers = ${layers}, length of a pass = ${figure(length)} mm`,
      )
      return {
        feedMmPerMin,
        removalMm3PerMin: milledRate(layerMm, stepMm, feedMmPerMin, note),
        inCutSeconds: (60 * cuts * job.lengthMm!) / feedMmPerMin,
        entrySeconds: (60 * cuts * extraMm) / feedMmPerMin,
        passes: cuts,
      }
    },
  })

function stepOf({ stepMm, stepRatio }: FaceJob, diameterMm: number, note: Notebook): number {
  if (!stepMm) return statedOr(stepRatio, usualStep, note) * diameterMm
  if (stepMm <= diameterMm) return stepMm
  note.troubles.push({ trouble: 'step wider than cutter', stepMm, cutterMm: diameterMm })
  return diameterMm
}
