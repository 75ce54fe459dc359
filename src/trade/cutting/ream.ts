import { domainFault } from './domain-fault.ts'
import { drillFeed } from './drill-feeds.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { figure, needed, notebook, statedOr } from './notebook.ts'
import { noteDepth } from './reach-checks.ts'
import { spindleSpeed } from './spindle-speed.ts'
import { turningFeed } from './turning-feed.ts'
import type { CutQuestion, StatedCut } from './types.ts'

/** Reaming alike holes to size. */
export interface ReamJob extends StatedCut {
  /** Finished; the reamer's when silent. */
  readonly diameterMm?: number | null
  readonly depthMm?: number | null
  readonly holes?: number | null
  /** What was left on the diameter; without it power is not known. */
  readonly stockMm?: number | null
  readonly clearanceMm?: number | null
}

const usualClearance = { what: 'clearance', value: 1, unit: 'mm', source: 'common practice, no source' }
/**
 * Reamers run at half the speed of a drill and feed twice as fast. Source: from memory, handbooks give 1/2 to
 * 2/3 and 2 to 3.
 */
const slowed = { ratio: 0.5, source: 'half a drill’s speed, from memory' }

/**
 * Reaming: speed, feed, force and time.
 * Source: T = (depth + clearance) / (f n), as for a drill without a point; starting speed and feed from a drill's.
 */
export const ream: CutQuestion<ReamJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(cutter.diameterMm ?? job.diameterMm, 'cutter diameter', note)
  const depthMm = needed(job.depthMm, 'depth', note)
  if (diameterMm === null || depthMm === null) return missingFault(note)
  const wantedMm = job.diameterMm ?? diameterMm
  if (Math.abs(wantedMm - diameterMm) > 1e-6 * wantedMm)
    note.troubles.push({ trouble: 'cutter of another size', cutterMm: diameterMm, wantedMm })
  noteDepth(depthMm, depthMm, cutter, note)
  const rpm = spindleSpeed({ use: 'drill', diameterMm, stated: job, cutter, material, machine, slowed }, note)
  if (rpm === null) return missingFault(note)
  const drilled = material.group ? drillFeed(material.group, diameterMm) : null
  const usual = drilled && {
    feedMmPerRev: 2 * drilled.feedMmPerRev,
    source: `${drilled.source}; twice a drill’s feed, from memory`,
  }
  const feed = turningFeed(rpm, { stated: job, usual, machine, flutes: cutter.flutes ?? null }, note)
  if (feed === null) return missingFault(note)
  const { feedMmPerMin, feedMmPerRev } = feed
  const holes = job.holes ?? 1
  const clearance = statedOr(job.clearanceMm, usualClearance, note)
  const innerMm = job.stockMm ? Math.max(0, diameterMm - job.stockMm) : null
  note.worked.push(
    `${holes} x (${figure(depthMm)} mm + ${figure(clearance)} mm) / ${figure(feedMmPerMin)} mm/min`,
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin,
      chipMm: cutter.flutes ? feedMmPerRev / cutter.flutes : null,
      removalMm3PerMin:
        innerMm === null ? null : (Math.PI / 4) * (diameterMm ** 2 - innerMm ** 2) * feedMmPerMin,
      inCutSeconds: (60 * holes * depthMm) / feedMmPerMin,
      entrySeconds: (60 * holes * clearance) / feedMmPerMin,
      passes: holes,
    },
    material,
    machine,
    note,
  )
}
