import { domainFault } from './domain-fault.ts'
import { missingFault } from './finished-cut.ts'
import { howMany } from './formulas.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { noteDepth } from './reach-checks.ts'
import { singlePointCut } from './single-point.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Boring a hole wider with a single edge. */
export interface BoreJob extends StatedCut {
  /** The hole that is there. */
  readonly fromDiameterMm?: number | null
  /** The hole wanted. */
  readonly diameterMm?: number | null
  readonly depthMm?: number | null
  /** When silent one, or as many as `layerMm` asks for. */
  readonly passes?: number | null
  /** Most depth of cut of one pass, a_p. */
  readonly layerMm?: number | null
  readonly clearanceMm?: number | null
}

const usualClearance = { what: 'clearance', value: 2, unit: 'mm', source: 'common practice, no source' }

/**
 * Boring: speed, feed, force and time; the cutter's diameter is that of its bar, which must pass the hole that is
 * there.
 * Source: as turning, T = L / (f n) each pass.
 */
export const bore: CutQuestion<BoreJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const from = needed(job.fromDiameterMm, 'diameter before', note)
  const to = needed(job.diameterMm, 'diameter after', note)
  const depthMm = needed(job.depthMm, 'depth', note)
  if (from === null || to === null || depthMm === null) return missingFault(note)
  if (to * (1 - 1e-9) <= from)
    return {
      fault: 'no such shape',
      what: `${figure(to)} mm after boring is not above ${figure(from)} mm before`,
    }
  noteDepth(depthMm, depthMm, { reachMm: cutter.reachMm ?? null }, note)
  if (cutter.diameterMm && cutter.diameterMm >= from)
    note.troubles.push({ trouble: 'cutter too large', of: 'bore', cutterMm: cutter.diameterMm, roomMm: from })
  const allMm = (to - from) / 2
  const passes = job.passes ?? (job.layerMm ? howMany(allMm, job.layerMm) : 1)
  note.worked.push(`a_p = (${figure(to)} - ${figure(from)}) / 2 / ${passes} = ${figure(allMm / passes)} mm`)
  return singlePointCut(
    {
      stated: job,
      diameterMm: to,
      cutMm: depthMm,
      clearanceMm: statedOr(job.clearanceMm, usualClearance, note),
      passes,
      chipWidthMm: allMm / passes,
      enteringAngleDeg: 90,
    },
    { cutter, material, machine },
    note,
  )
}
