import { domainFault } from './domain-fault.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import type { CutQuestion } from './types.ts'

/** Sawing pieces off a bar or plate. */
export interface SawJob {
  /** Section sawn through. */
  readonly sectionMm2?: number | null
  readonly cuts?: number | null
  /** Section sawn in a minute, by this saw in this material. */
  readonly rateMm2PerMin?: number | null
  /** Moving up and clamping before each cut. */
  readonly clampSeconds?: number | null
  readonly kerfMm?: number | null
}

const usualClamp = {
  what: 'clamping',
  value: 60,
  unit: 's',
  source: '0.5 to 2 min, common practice, no source',
}

/**
 * Sawing: time and chips from the section and the rate of the saw; its speed is the saw's own.
 * Needs: a stated rate; the starting tables have none for saws.
 * Source: T = section / rate, geometry.
 */
export const saw: CutQuestion<SawJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const section = needed(job.sectionMm2, 'section', note)
  const rate = needed(job.rateMm2PerMin, 'sawing rate', note)
  if (section === null || rate === null) return missingFault(note)
  const cuts = job.cuts ?? 1
  const clamp = statedOr(job.clampSeconds, usualClamp, note)
  note.worked.push(
    `time = ${cuts} x (${figure(section)} mm2 / ${figure(rate)} mm2/min + ${figure(clamp)} s clamping)`,
  )
  return finishedCut(
    {
      rpm: null,
      feedMmPerMin: null,
      chipMm: null,
      removalMm3PerMin: job.kerfMm ? job.kerfMm * rate : null,
      inCutSeconds: (60 * cuts * section) / rate,
      entrySeconds: cuts * clamp,
      airSeconds: 0,
      passes: cuts,
    },
    material,
    machine,
    note,
  )
}
