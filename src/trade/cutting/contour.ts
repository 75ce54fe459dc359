import { howMany, sideApproach } from './formulas.ts'
import { milledCut, milledRate } from './milled-cut.ts'
import { figure, needed } from './notebook.ts'
import { noteDepth, noteStep, noteWall } from './reach-checks.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Milling along an outline. */
export interface ContourJob extends StatedCut {
  /** Length of the outline, all perimeters together. */
  readonly lengthMm?: number | null
  /** How deep the outline is cut in all. */
  readonly depthMm?: number | null
  /** What one level takes; all at once when silent. */
  readonly layerMm?: number | null
  /** Stock taken sideways, a_e; the whole cutter (a slot) when silent. */
  readonly stepMm?: number | null
  /** Times round at each level; 1 when silent. */
  readonly passes?: number | null
  /** Smallest inside corner, seen from above. */
  readonly cornerMm?: number | null
  readonly wallMm?: number | null
}

/**
 * Milling along an outline, at its side or as a slot: speed, feed, force and time.
 * Source: T = perimeters x levels / v_f; run-in sqrt(d (D - d)) of each level, Groover, peripheral milling.
 */
export const contour: CutQuestion<ContourJob> = (job, cutter, material, machine) =>
  milledCut({
    job,
    bench: { cutter, material, machine },
    engage(diameterMm, note) {
      needed(job.lengthMm, 'length', note)
      needed(job.depthMm, 'depth', note)
      if (note.missing.length > 0) return null
      const { cornerMm } = job
      const wanted = job.stepMm ?? diameterMm
      noteStep(wanted, diameterMm, note)
      if (cornerMm && diameterMm > 2 * cornerMm)
        note.troubles.push({
          trouble: 'cutter too large',
          of: 'corner',
          cutterMm: diameterMm,
          roomMm: 2 * cornerMm,
        })
      return { diameterMm, stepMm: Math.min(wanted, diameterMm), raisesThinned: true }
    },
    find({ feedMmPerMin, diameterMm }, { stepMm }, note) {
      const depthMm = job.depthMm!
      const layerMm = Math.min(job.layerMm ?? depthMm, depthMm)
      noteDepth(layerMm, depthMm, cutter, note)
      noteWall(
        { wallMm: job.wallMm ?? null, heightMm: depthMm, isPlastic: material.group === 'plastic' },
        note,
      )
      const cuts = howMany(depthMm, layerMm) * (job.passes ?? 1)
      const runIn = sideApproach(stepMm, diameterMm)
      note.worked.push(
        `time = ${cuts} x (${figure(job.lengthMm!)} mm + run-in ${figure(runIn)} mm) / ${figure(feedMmPerMin)} mm/min`,
      )
      return {
        feedMmPerMin,
        removalMm3PerMin: milledRate(layerMm, stepMm, feedMmPerMin, note),
        inCutSeconds: (60 * cuts * job.lengthMm!) / feedMmPerMin,
        entrySeconds: (60 * cuts * runIn) / feedMmPerMin,
        passes: cuts,
      }
    },
  })
