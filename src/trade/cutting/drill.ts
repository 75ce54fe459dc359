import { domainFault } from './domain-fault.ts'
import { drillFeed } from './drill-feeds.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { howMany, pointAllowance } from './formulas.ts'
import { figure, type Notebook, needed, notebook, statedOr } from './notebook.ts'
import { noteDeepHole, noteDepth } from './reach-checks.ts'
import { spindleSpeed } from './spindle-speed.ts'
import { turningFeed } from './turning-feed.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Drilling alike holes. */
export interface DrillJob extends StatedCut {
  /** Of the hole; the drill's when silent. */
  readonly diameterMm?: number | null
  /** To the full diameter. */
  readonly depthMm?: number | null
  readonly holes?: number | null
  /** Depth of one peck; in one go when silent. */
  readonly peckMm?: number | null
  readonly secondsPerPeck?: number | null
  readonly clearanceMm?: number | null
}

const usualAngle = { what: 'point angle', value: 118, unit: 'deg', source: 'common practice, no source' }
const usualClearance = { what: 'clearance', value: 1, unit: 'mm', source: 'common practice, no source' }
const usualPeck = {
  what: 'time of a peck',
  value: 2,
  unit: 's',
  source: '1 to 3 s, common practice, no source',
}

/**
 * Drilling: speed, feed, force and time, with pecks.
 * Source: T = (depth + point + clearance) / (f n), Groover; P = f v_c D k_c / 240e3, a maker's catalogue; chip of a lip
 * f/2 sin(theta/2).
 */
export const drill: CutQuestion<DrillJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(cutter.diameterMm ?? job.diameterMm, 'cutter diameter', note)
  const depthMm = needed(job.depthMm, 'depth', note)
  if (diameterMm === null || depthMm === null) return missingFault(note)
  noteHole(job, diameterMm, note)
  noteDepth(depthMm, depthMm, cutter, note)
  const rpm = spindleSpeed({ use: 'drill', diameterMm, stated: job, cutter, material, machine }, note)
  if (rpm === null) return missingFault(note)
  const usual = material.group ? drillFeed(material.group, diameterMm) : null
  const feed = turningFeed(rpm, { stated: job, usual, machine, flutes: cutter.flutes ?? null }, note)
  if (feed === null) return missingFault(note)
  const { feedMmPerMin, feedMmPerRev } = feed
  const angle = statedOr(cutter.pointAngleDeg, usualAngle, note)
  const pointMm = pointAllowance(diameterMm, angle)
  const chipMm = (feedMmPerRev / 2) * Math.sin((angle * Math.PI) / 360)
  const removalMm3PerMin = (Math.PI / 4) * diameterMm ** 2 * feedMmPerMin
  const holes = job.holes ?? 1
  const pecks = job.peckMm ? howMany(depthMm, job.peckMm) : 1
  const peckSeconds = pecks > 1 ? pecks * statedOr(job.secondsPerPeck, usualPeck, note) : 0
  const extraMm = pointMm + statedOr(job.clearanceMm, usualClearance, note)
  note.worked.push(
    `A = 0.5 D tan(90 - ${figure(angle)}/2) = ${figure(pointMm)} mm`,
    `h = f/2 sin(${figure(angle)}/2) = ${figure(chipMm)} mm`,
    `Q = pi D^2 / 4 v_f = ${figure(removalMm3PerMin)} mm3/min`,
    `${holes} x (${figure(depthMm)} mm + ${figure(extraMm)} mm) / ${figure(feedMmPerMin)} mm/min, ${pecks} pecks`,
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin,
      chipMm,
      removalMm3PerMin,
      inCutSeconds: (60 * holes * depthMm) / feedMmPerMin,
      entrySeconds: holes * ((60 * extraMm) / feedMmPerMin + peckSeconds),
      passes: holes * pecks,
    },
    material,
    machine,
    note,
  )
}

function noteHole({ diameterMm, depthMm, peckMm }: DrillJob, drillMm: number, note: Notebook): void {
  const holeMm = diameterMm ?? drillMm
  const tolerance = 1e-6 * holeMm
  if (drillMm > holeMm + tolerance)
    note.troubles.push({ trouble: 'cutter too large', of: 'bore', cutterMm: drillMm, roomMm: holeMm })
  if (drillMm < holeMm - tolerance)
    note.troubles.push({ trouble: 'cutter of another size', cutterMm: drillMm, wantedMm: holeMm })
  if (!peckMm || peckMm >= depthMm!) noteDeepHole(depthMm!, drillMm, note)
}
