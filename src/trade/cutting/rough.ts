import { howMany } from './formulas.ts'
import { milledCut, milledRate } from './milled-cut.ts'
import { figure, type Notebook, needed, statedOr } from './notebook.ts'
import { noteDepth, noteStep, noteWall } from './reach-checks.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** A rectangular pocket to be cleared. */
export interface Pocket {
  readonly lengthMm: number
  readonly widthMm: number
  readonly depthMm: number
}

/** Roughing a volume, or a pocket whose volume follows from its sides. */
export interface RoughJob extends StatedCut {
  readonly volumeMm3?: number | null
  readonly pocket?: Pocket | null
  /** Layer, a_p. */
  readonly depthMm?: number | null
  /** Step-over, a_e; half the diameter when silent. */
  readonly stepMm?: number | null
  /** How deep the cutter goes in all; the pocket's depth when silent. */
  readonly totalDepthMm?: number | null
  /** Share of the time in which the full width is cut: the rest is entry, corners and air. */
  readonly pathRatio?: number | null
  /** Smallest inside corner, seen from above. */
  readonly cornerMm?: number | null
  /** Thinnest wall left standing. */
  readonly wallMm?: number | null
}

const usualStep = (diameterMm: number) => ({
  what: 'step-over',
  value: 0.5 * diameterMm,
  unit: 'mm',
  source: 'half the diameter, common practice, no source',
})
const usualPath = {
  what: 'path efficiency',
  value: 0.65,
  unit: '',
  source: '0.5 to 0.8, common practice, no source',
}

/**
 * Roughing by volume: speed, feed, force and time.
 * Source: T = V / (Q eta) with Q = a_p a_e v_f; eta 0.5 to 0.8 for entry, corners and air (common practice, no source).
 */
export const rough: CutQuestion<RoughJob> = (job, cutter, material, machine) => {
  const { pocket } = job
  const volumeMm3 = job.volumeMm3 ?? (pocket ? pocket.lengthMm * pocket.widthMm * pocket.depthMm : null)
  const sides = {
    pocketLengthMm: pocket?.lengthMm,
    pocketWidthMm: pocket?.widthMm,
    pocketDepthMm: pocket?.depthMm,
  }
  return milledCut({
    job: { ...job, ...sides, volumeMm3 },
    bench: { cutter, material, machine },
    engage(diameterMm, note) {
      needed(volumeMm3, 'volume', note)
      const layerMm = needed(job.depthMm, 'depth of a layer', note)
      if (volumeMm3 === null || layerMm === null) return null
      const wanted = statedOr(job.stepMm, usualStep(diameterMm), note)
      noteStep(wanted, diameterMm, note)
      noteRoom(job, diameterMm, note)
      return { diameterMm, stepMm: Math.min(wanted, diameterMm), raisesThinned: true }
    },
    find({ feedMmPerMin }, { stepMm }, note) {
      const totalMm = job.totalDepthMm ?? pocket?.depthMm ?? job.depthMm!
      const layerMm = Math.min(job.depthMm!, totalMm)
      noteDepth(layerMm, totalMm, cutter, note)
      noteWall(
        { wallMm: job.wallMm ?? null, heightMm: totalMm, isPlastic: material.group === 'plastic' },
        note,
      )
      const rate = milledRate(layerMm, stepMm, feedMmPerMin, note)
      const eta = statedOr(job.pathRatio, usualPath, note)
      const inCutSeconds = (60 * volumeMm3!) / rate
      note.worked.push(
        `time = V / (Q eta) = ${figure(volumeMm3!)} mm3 / (${figure(rate)} mm3/min x ${figure(eta)}) = ${figure(inCutSeconds / eta)} s`,
      )
      return {
        feedMmPerMin,
        removalMm3PerMin: rate,
        inCutSeconds,
        entrySeconds: 0,
        airSeconds: inCutSeconds / eta - inCutSeconds,
        passes: howMany(totalMm, layerMm),
      }
    },
  })
}

function noteRoom({ pocket, cornerMm }: RoughJob, diameterMm: number, note: Notebook): void {
  const across = pocket ? Math.min(pocket.lengthMm, pocket.widthMm) : null
  if (across !== null && diameterMm >= across)
    note.troubles.push({ trouble: 'cutter too large', of: 'pocket', cutterMm: diameterMm, roomMm: across })
  if (cornerMm && diameterMm > 2 * cornerMm)
    note.troubles.push({
      trouble: 'cutter too large',
      of: 'corner',
      cutterMm: diameterMm,
      roomMm: 2 * cornerMm,
    })
}
