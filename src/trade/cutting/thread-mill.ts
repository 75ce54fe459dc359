import { domainFault } from './domain-fault.ts'
import { finishedCut, missingFault } from './finished-cut.ts'
import { helixTurn } from './formulas.ts'
import { millingFeed } from './milling-feed.ts'
import { figure, type Notebook, needed, notebook, statedOr } from './notebook.ts'
import { noteDepth } from './reach-checks.ts'
import { heldFeed, spindleSpeed } from './spindle-speed.ts'
import type { CutQuestion, Cutter, CuttingMachine, StatedCut } from './types.ts'

/**
 * Milling a thread with a single-profile cutter. A stated feed is that of the cutter's centre, as a machine
 * takes it.
 */
export interface ThreadMillJob extends StatedCut {
  /** Outside diameter of the thread. */
  readonly majorDiameterMm?: number | null
  /** Core of a screw, hole of a nut. */
  readonly minorDiameterMm?: number | null
  readonly pitchMm?: number | null
  /** Length of thread. */
  readonly depthMm?: number | null
  readonly passes?: number | null
  /** Outside on a shank; inside a hole when silent. */
  readonly isOutside?: boolean | null
  /** Lead-in and lead-out of one pass. */
  readonly linkSeconds?: number | null
}

/** A thread and the cutter in it. */
export interface MilledThread {
  readonly majorMm: number
  readonly minorMm: number
  readonly pitchMm: number
  readonly depthMm: number
  readonly cutterMm: number
  readonly isOutside: boolean
}

/**
 * Part of the hole that a thread mill may fill. Source: about 70 %, to keep the profile true, common practice,
 * no source.
 */
const mostFill = 0.7
const usualLink = { what: 'lead-in and lead-out', value: 2, unit: 's', source: 'common practice, no source' }

/**
 * Feed of the cutter's centre over the feed of its edge: (D - d) / D inside, (D + d) / D outside.
 * Source: a maker's threading handbook, thread-milling formulas.
 */
export function centreFeedRatio(cutMm: number, cutterMm: number, isOutside: boolean): number {
  return isOutside ? (cutMm + cutterMm) / cutMm : (cutMm - cutterMm) / cutMm
}

/**
 * Width of cut in mm that the cutter sees on its curved way: (D_m^2 - D_w^2) / (4 (D_m - d)) inside, with the major
 * diameter machined into the minor one; (D_w^2 - D_m^2) / (4 (D_m + d)) outside, the other way round.
 * Source: a maker's threading handbook, thread-milling formulas.
 */
export function threadEngagement({ majorMm, minorMm, cutterMm, isOutside }: MilledThread): number {
  const between = majorMm ** 2 - minorMm ** 2
  return between / (4 * (isOutside ? minorMm + cutterMm : majorMm - cutterMm))
}

/**
 * Thread milling with a single profile, in passes: speed, centre feed, force and time.
 * Source: turns = L / P + 1; turn s = sqrt((pi (D -/+ d))^2 + P^2); T = passes (turns s / v_f + link), from a maker's
 * threading handbook; the groove is a triangle one pitch wide and as high as the thread (geometry, an estimate).
 */
export const threadMill: CutQuestion<ThreadMillJob> = (job, cutter, material, machine) => {
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const thread = threadOf(job, cutter, note)
  const passes = needed(job.passes, 'passes', note)
  if (thread === null || passes === null) return missingFault(note)
  const { majorMm, minorMm, pitchMm, depthMm, cutterMm, isOutside } = thread
  if (minorMm >= majorMm * (1 - 1e-9))
    return { fault: 'no such shape', what: 'the minor diameter is not below the major one' }
  if (!isOutside && cutterMm >= majorMm * (1 - 1e-9))
    return {
      fault: 'no such shape',
      what: `the thread mill of ${figure(cutterMm)} mm is not below the thread of ${figure(majorMm)} mm`,
    }
  noteThread(thread, cutter, note)
  const rpm = spindleSpeed(
    { use: 'mill', diameterMm: cutterMm, stated: job, cutter, material, machine },
    note,
  )
  if (rpm === null) return missingFault(note)
  const ratio = centreFeedRatio(majorMm, cutterMm, isOutside)
  const engaged = { diameterMm: cutterMm, stepMm: Math.min(threadEngagement(thread) / passes, cutterMm) }
  const edge = atEdge(job, machine, ratio, note)
  const feed = millingFeed({ rpm, engaged, cutter, material, ...edge }, note)
  if (feed === null) return missingFault(note)
  const centre = feed.feedMmPerMin * ratio
  const turnMm = helixTurn(isOutside ? majorMm + cutterMm : majorMm - cutterMm, pitchMm)
  const turns = depthMm / pitchMm
  const turnSeconds = (60 * turnMm) / centre
  const link = statedOr(job.linkSeconds, usualLink, note)
  const sectionMm2 = (pitchMm * (majorMm - minorMm)) / 4 / passes
  const sign = isOutside ? '+' : '-'
  note.worked.push(
    `v_f = ${figure(feed.feedMmPerMin)} mm/min x (${figure(majorMm)} ${sign} ${figure(cutterMm)}) / ${figure(majorMm)} = ${figure(centre)} mm/min at the centre`,
    `turns = ${figure(depthMm)} / ${figure(pitchMm)} + 1 = ${figure(turns + 1)}, each ${figure(turnMm)} mm`,
    `time = ${passes} x (${figure(turns + 1)} x ${figure(turnMm)} mm / ${figure(centre)} mm/min + ${figure(link)} s)`,
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin: centre,
      chipMm: feed.chipMm,
      removalMm3PerMin: (60 * sectionMm2 * Math.PI * ((majorMm + minorMm) / 2)) / turnSeconds,
      inCutSeconds: passes * turns * turnSeconds,
      entrySeconds: passes * (turnSeconds + link),
      passes,
    },
    material,
    machine,
    note,
  )
}

function threadOf(job: ThreadMillJob, cutter: Cutter, note: Notebook): MilledThread | null {
  const majorMm = needed(job.majorDiameterMm, 'major diameter', note)
  const minorMm = needed(job.minorDiameterMm, 'minor diameter', note)
  const pitchMm = needed(job.pitchMm, 'pitch', note)
  const depthMm = needed(job.depthMm, 'length of thread', note)
  const cutterMm = needed(cutter.diameterMm, 'cutter diameter', note)
  if (majorMm === null || minorMm === null || pitchMm === null || depthMm === null || cutterMm === null)
    return null
  return { majorMm, minorMm, pitchMm, depthMm, cutterMm, isOutside: job.isOutside ?? false }
}

function noteThread(thread: MilledThread, cutter: Cutter, note: Notebook): void {
  const { pitchMm, depthMm, minorMm, cutterMm, isOutside } = thread
  const fromMm = cutter.pitchFromMm ?? cutter.pitchToMm ?? pitchMm
  const toMm = cutter.pitchToMm ?? cutter.pitchFromMm ?? pitchMm
  if (pitchMm < fromMm * (1 - 1e-6) || pitchMm > toMm * (1 + 1e-6))
    note.troubles.push({ trouble: 'pitch out of range', pitchMm, fromMm, toMm })
  if (!isOutside && cutterMm >= minorMm)
    note.troubles.push({ trouble: 'cutter too large', of: 'thread', cutterMm, roomMm: minorMm })
  else if (!isOutside && cutterMm > mostFill * minorMm)
    note.troubles.push({ trouble: 'wide thread mill', cutterMm, mostMm: mostFill * minorMm })
  noteDepth(pitchMm, depthMm, { reachMm: cutter.reachMm ?? null }, note)
}

/** The question put to the edge: a person and an axis speak of the centre. */
function atEdge(job: StatedCut, machine: CuttingMachine, ratio: number, note: Notebook) {
  const most = machine.mostFeedMmPerMin
  const stated = job.feedMmPerMin ? heldFeed(job.feedMmPerMin, machine, true, note) / ratio : null
  return {
    stated: { ...job, feedMmPerMin: stated },
    machine: { ...machine, mostFeedMmPerMin: most && stated === null ? most / ratio : null },
  }
}
