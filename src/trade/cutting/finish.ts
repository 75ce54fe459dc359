import { scallopHeight, stepForScallop } from './formulas.ts'
import { milledCut, milledRate } from './milled-cut.ts'
import { figure, type Notebook, needed } from './notebook.ts'
import { noteDepth, noteStep, noteWall } from './reach-checks.ts'
import type { CutQuestion, Cutter, StatedCut } from './types.ts'

/** Finishing a surface in close passes. */
export interface FinishJob extends StatedCut {
  readonly areaMm2?: number | null
  /** Step-over between passes. */
  readonly stepMm?: number | null
  /** Ridge wanted between passes of a ball; gives the step-over where none is stated. */
  readonly scallopMm?: number | null
  /** What was left on the surface; without it power is not known. */
  readonly stockMm?: number | null
  /** How deep the cutter goes in all. */
  readonly totalDepthMm?: number | null
  readonly wallMm?: number | null
}

/**
 * Finishing by area: speed, feed, force and time, with the ridge a ball leaves.
 * Source: T = A / (step v_f); step for a ridge h of a ball of radius R 2 sqrt(2 R h - h^2).
 */
export const finish: CutQuestion<FinishJob> = (job, cutter, material, machine) =>
  milledCut({
    job,
    bench: { cutter, material, machine },
    engage(diameterMm, note) {
      needed(job.areaMm2, 'area', note)
      const wanted = stepOf(job, diameterMm, cutter, note)
      if (wanted === null || note.missing.length > 0) return null
      noteStep(wanted, diameterMm, note)
      return { diameterMm, stepMm: Math.min(wanted, diameterMm) }
    },
    find({ feedMmPerMin, diameterMm }, { stepMm }, note) {
      const { stockMm, areaMm2, totalDepthMm } = job
      const depthMm = totalDepthMm ?? stockMm
      if (depthMm) noteDepth(stockMm ?? 0, depthMm, cutter, note)
      noteWall(
        { wallMm: job.wallMm ?? null, heightMm: totalDepthMm ?? 0, isPlastic: material.group === 'plastic' },
        note,
      )
      if (isBall(cutter, diameterMm)) {
        const ridge = scallopHeight(diameterMm / 2, stepMm)
        note.worked.push(
          `ridge = R - sqrt(R^2 - (s/2)^2) = ${figure(ridge)} mm at a step of ${figure(stepMm)} mm`,
        )
      }
      const inCutSeconds = (60 * areaMm2!) / (stepMm * feedMmPerMin)
      note.worked.push(
        `time = A / (s v_f) = ${figure(areaMm2!)} mm2 / (${figure(stepMm)} mm x ${figure(feedMmPerMin)} mm/min) = ${figure(inCutSeconds)} s`,
      )
      return {
        feedMmPerMin,
        removalMm3PerMin: stockMm ? milledRate(stockMm, stepMm, feedMmPerMin, note) : null,
        inCutSeconds,
        entrySeconds: 0,
        passes: Math.max(1, Math.ceil(Math.sqrt(areaMm2!) / stepMm)),
      }
    },
  })

const isBall = ({ cornerRadiusMm }: Cutter, diameterMm: number): boolean =>
  Boolean(cornerRadiusMm) && Math.abs(cornerRadiusMm! - diameterMm / 2) <= 1e-6 * diameterMm

function stepOf(job: FinishJob, diameterMm: number, cutter: Cutter, note: Notebook): number | null {
  if (job.stepMm) return job.stepMm
  if (!job.scallopMm) return needed(null, 'step-over', note)
  if (!isBall(cutter, diameterMm)) return needed(null, 'step-over (a ridge gives it for a ball alone)', note)
  const step = stepForScallop(diameterMm / 2, job.scallopMm)
  note.worked.push(`s = 2 sqrt(2 R h - h^2) = ${figure(step)} mm for a ridge of ${figure(job.scallopMm)} mm`)
  return step
}
