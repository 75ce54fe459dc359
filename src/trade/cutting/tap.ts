import { domainFault } from './domain-fault.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { noteDepth, notePitchFeed } from './reach-checks.ts'
import { spindleSpeed } from './spindle-speed.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Tapping alike holes. */
export interface TapJob extends StatedCut {
  /** Nominal diameter of the thread. */
  readonly diameterMm?: number | null
  readonly pitchMm?: number | null
  readonly depthMm?: number | null
  readonly holes?: number | null
  /** Way beyond the thread on each stroke: lead of the tap and clearance. */
  readonly runoutMm?: number | null
}

/**
 * Tapping under power, out at the speed of in: speed, feed, torque and time.
 * Needs: a stated speed; the starting tables have none for taps.
 * Source: v_f = n P; T = 2 (depth + runout) / (n P); M = k_c1.1 P^2 D / 8000 (from memory).
 */
export const tap: CutQuestion<TapJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(job.diameterMm ?? cutter.diameterMm, 'thread diameter', note)
  const pitchMm = needed(job.pitchMm, 'pitch', note)
  const depthMm = needed(job.depthMm, 'depth', note)
  if (!job.rpm && !job.speedMPerMin) note.missing.push('cutting speed')
  if (diameterMm === null || pitchMm === null || depthMm === null || note.missing.length > 0)
    return missingFault(note)
  noteDepth(depthMm, depthMm, cutter, note)
  const most = machine.mostFeedMmPerMin ? machine.mostFeedMmPerMin / pitchMm : Number.POSITIVE_INFINITY
  const wanted = spindleSpeed({ use: 'drill', diameterMm, stated: job, cutter, material, machine }, note)
  if (wanted === null) return missingFault(note)
  // The pitch ties feed to speed: an axis that is too slow slows the spindle too.
  const rpm = Math.min(wanted, most)
  if (rpm < wanted)
    note.troubles.push({
      trouble: 'feed above axis',
      wantedMmPerMin: wanted * pitchMm,
      mostMmPerMin: most * pitchMm,
    })
  const feedMmPerMin = rpm * pitchMm
  notePitchFeed(job, rpm, pitchMm, note)
  const usual = {
    what: 'runout',
    value: 3 * pitchMm,
    unit: 'mm',
    source: '3 pitches, common practice, no source',
  }
  const runout = statedOr(job.runoutMm, usual, note)
  const holes = job.holes ?? 1
  const torque = material.kc11NPerMm2 ? (material.kc11NPerMm2 * pitchMm ** 2 * diameterMm) / 8000 : null
  note.worked.push(
    `v_f = n P = ${figure(rpm)} rpm x ${figure(pitchMm)} mm = ${figure(feedMmPerMin)} mm/min`,
    `time = ${holes} x 2 (${figure(depthMm)} + ${figure(runout)}) mm / ${figure(feedMmPerMin)} mm/min`,
    ...(torque === null ? [] : [`M = k_c1.1 P^2 D / 8000 = ${figure(torque)} N m (from memory)`]),
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin,
      chipMm: null,
      removalMm3PerMin: null,
      ownTorqueNm: torque,
      inCutSeconds: (60 * holes * depthMm) / feedMmPerMin,
      entrySeconds: (60 * holes * (depthMm + 2 * runout)) / feedMmPerMin,
      passes: holes,
    },
    material,
    machine,
    note,
  )
}
