import { domainFault } from './domain-fault.ts'
import { missingFault } from './finished-cut.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { noteDepth } from './reach-checks.ts'
import { singlePointCut } from './single-point.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Parting a piece off the bar. */
export interface PartOffJob extends StatedCut {
  readonly diameterMm?: number | null
  /** Bore of a tube; solid when silent or 0. */
  readonly innerDiameterMm?: number | null
  /** Width of the blade. */
  readonly bladeMm?: number | null
  readonly clearanceMm?: number | null
}

const usualClearance = { what: 'clearance', value: 1, unit: 'mm', source: 'common practice, no source' }
const usualBlade = {
  what: 'width of the blade',
  value: 2,
  unit: 'mm',
  source: '2 to 3 mm, common practice, no source',
}

/**
 * Parting off at one spindle speed: speed, feed, force and time from outside to the middle or the bore.
 * Source: T = (D - d) / (2 f n), turning formulas along the radius.
 */
export const partOff: CutQuestion<PartOffJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(job.diameterMm, 'diameter', note)
  if (diameterMm === null) return missingFault(note)
  const inner = job.innerDiameterMm ?? 0
  if (inner >= diameterMm * (1 - 1e-9))
    return {
      fault: 'no such shape',
      what: `the bore of ${figure(inner)} mm is not below the diameter of ${figure(diameterMm)} mm`,
    }
  const cutMm = (diameterMm - inner) / 2
  noteDepth(cutMm, cutMm, { reachMm: cutter.reachMm ?? null }, note)
  note.worked.push(`way = (${figure(diameterMm)} - ${figure(inner)}) / 2 = ${figure(cutMm)} mm`)
  return singlePointCut(
    {
      stated: job,
      diameterMm,
      cutMm,
      clearanceMm: statedOr(job.clearanceMm, usualClearance, note),
      passes: 1,
      chipWidthMm: statedOr(job.bladeMm, usualBlade, note),
      enteringAngleDeg: 90,
    },
    { cutter, material, machine },
    note,
  )
}
