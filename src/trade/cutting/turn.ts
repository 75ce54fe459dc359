import { domainFault } from './domain-fault.ts'
import { missingFault } from './finished-cut.ts'
import { howMany, turnedRidge } from './formulas.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { singlePointCut } from './single-point.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Turning a length from one diameter to another. */
export interface TurnJob extends StatedCut {
  readonly fromDiameterMm?: number | null
  readonly toDiameterMm?: number | null
  readonly lengthMm?: number | null
  /** Most depth of cut of one pass, a_p; all in one pass when silent. */
  readonly depthMm?: number | null
  readonly clearanceMm?: number | null
  readonly enteringAngleDeg?: number | null
}

const usualClearance = { what: 'clearance', value: 2, unit: 'mm', source: 'common practice, no source' }

/**
 * Longitudinal turning: speed, feed, force and time, with the ridges that the nose leaves in theory.
 * Source: passes = ceil((D0 - D1) / (2 a_p)); T = L / (f n), Groover; R_t = f^2 / (8 r).
 */
export const turn: CutQuestion<TurnJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const from = needed(job.fromDiameterMm, 'diameter before', note)
  const to = needed(job.toDiameterMm, 'diameter after', note)
  const lengthMm = needed(job.lengthMm, 'length', note)
  if (from === null || to === null || lengthMm === null) return missingFault(note)
  if (to >= from * (1 - 1e-9))
    return {
      fault: 'no such shape',
      what: `${figure(to)} mm after turning is not below ${figure(from)} mm before`,
    }
  const allMm = (from - to) / 2
  const passes = howMany(allMm, job.depthMm ?? allMm)
  const depthMm = allMm / passes
  note.worked.push(
    `passes = ceil((${figure(from)} - ${figure(to)}) / (2 a_p)) = ${passes}, a_p = ${figure(depthMm)} mm`,
  )
  const cut = singlePointCut(
    {
      stated: job,
      diameterMm: from,
      cutMm: lengthMm,
      clearanceMm: statedOr(job.clearanceMm, usualClearance, note),
      passes,
      chipWidthMm: depthMm,
      enteringAngleDeg: job.enteringAngleDeg ?? 90,
    },
    { cutter, material, machine },
    note,
  )
  if ('fault' in cut || !cutter.cornerRadiusMm) return cut
  const feed = cut.feedMmPerMin! / cut.rpm!
  const ridge = turnedRidge(feed, cutter.cornerRadiusMm)
  return { ...cut, worked: [...cut.worked, `R_t = f^2 / (8 r) = ${figure(ridge)} mm in theory`] }
}
