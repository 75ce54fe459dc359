import { domainFault } from './domain-fault.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { notePitchFeed } from './reach-checks.ts'
import { spindleSpeed } from './spindle-speed.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Cutting a thread on the lathe with a single edge, in passes. */
export interface TurnThreadJob extends StatedCut {
  /** Outside diameter of the thread. */
  readonly diameterMm?: number | null
  readonly pitchMm?: number | null
  readonly lengthMm?: number | null
  readonly passes?: number | null
  /** Run-in and run-out of one pass. */
  readonly runoutMm?: number | null
  /** Drawing back, running back and setting over after each pass. */
  readonly linkSeconds?: number | null
}

/** Threads are cut at a fraction of the turning speed, so that hands or nut can stop in time. */
const slowed = { ratio: 0.33, source: 'a third of the turning speed, common practice, no source' }
const usualLink = {
  what: 'drawing and running back',
  value: 20,
  unit: 's',
  source: '10 to 30 s by hand, common practice, no source',
}

/**
 * Thread turning: the edge goes one pitch for each turn.
 * Source: v_f = n P; T = passes (L + runout) / (n P) and the way back, formulas of turning.
 */
export const turnThread: CutQuestion<TurnThreadJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(job.diameterMm, 'thread diameter', note)
  const pitchMm = needed(job.pitchMm, 'pitch', note)
  const lengthMm = needed(job.lengthMm, 'length of thread', note)
  const passes = needed(job.passes, 'passes', note)
  if (diameterMm === null || pitchMm === null || lengthMm === null || passes === null)
    return missingFault(note)
  const rpm = spindleSpeed({ use: 'turn', diameterMm, stated: job, cutter, material, machine, slowed }, note)
  if (rpm === null) return missingFault(note)
  const usual = {
    what: 'run-in and run-out',
    value: 4 * pitchMm,
    unit: 'mm',
    source: '4 pitches, common practice, no source',
  }
  const runout = statedOr(job.runoutMm, usual, note)
  const link = statedOr(job.linkSeconds, usualLink, note)
  const feedMmPerMin = rpm * pitchMm
  notePitchFeed(job, rpm, pitchMm, note)
  note.worked.push(
    `v_f = n P = ${figure(rpm)} rpm x ${figure(pitchMm)} mm = ${figure(feedMmPerMin)} mm/min`,
    `time = ${passes} x ((${figure(lengthMm)} + ${figure(runout)}) mm / ${figure(feedMmPerMin)} mm/min + ${figure(link)} s)`,
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin,
      chipMm: null,
      removalMm3PerMin: null,
      inCutSeconds: (60 * passes * lengthMm) / feedMmPerMin,
      entrySeconds: (60 * passes * runout) / feedMmPerMin,
      airSeconds: passes * link,
      passes,
    },
    material,
    machine,
    note,
  )
}
