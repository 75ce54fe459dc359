import { milledCut } from './milled-cut.ts'
import { figure, needed, statedOr } from './notebook.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Breaking edges with a pointed cutter. */
export interface ChamferJob extends StatedCut {
  /** Length of the edges, all together. */
  readonly lengthMm?: number | null
  /** Width of the chamfer seen from above. */
  readonly widthMm?: number | null
  readonly passes?: number | null
}

const usualAngle = { what: 'cutter angle', value: 90, unit: 'deg', source: 'common practice, no source' }

/**
 * Chamfering along edges: speed, feed, force and time.
 * Source: T = length x passes / v_f; the section cut is a triangle of width w and height w / tan(angle / 2) (geometry).
 */
export const chamfer: CutQuestion<ChamferJob> = (job, cutter, material, machine) => {
  const halfAngleDeg = Math.min(cutter.pointAngleDeg ?? usualAngle.value, 178) / 2
  return milledCut({
    job,
    bench: { cutter, material, machine },
    engage(diameterMm, note) {
      needed(job.lengthMm, 'length', note)
      const widthMm = needed(job.widthMm, 'width', note)
      if (widthMm === null || note.missing.length > 0) return null
      statedOr(cutter.pointAngleDeg, usualAngle, note)
      if (widthMm > diameterMm / 2)
        note.troubles.push({ trouble: 'step wider than cutter', stepMm: widthMm, cutterMm: diameterMm / 2 })
      return {
        diameterMm,
        stepMm: Math.min(widthMm, diameterMm / 2),
        enteringAngleDeg: Math.max(5, halfAngleDeg),
      }
    },
    find({ feedMmPerMin }, _, note) {
      const passes = job.passes ?? 1
      const widthMm = job.widthMm!
      const sectionMm2 = widthMm ** 2 / (2 * Math.tan((halfAngleDeg * Math.PI) / 180) * passes)
      note.worked.push(
        `Q = section ${figure(sectionMm2)} mm2 x ${figure(feedMmPerMin)} mm/min`,
        `time = ${passes} x ${figure(job.lengthMm!)} mm / ${figure(feedMmPerMin)} mm/min`,
      )
      return {
        feedMmPerMin,
        removalMm3PerMin: sectionMm2 * feedMmPerMin,
        inCutSeconds: (60 * passes * job.lengthMm!) / feedMmPerMin,
        entrySeconds: 0,
        passes,
      }
    },
  })
}
