import { cutterDeflection, mostBendMm } from './cutter-deflection.ts'
import { domainFault } from './domain-fault.ts'
import { type Found, finishedCut, missingFault } from './finished-cut.ts'
import { type Engagement, type MillingFeed, millingFeed } from './milling-feed.ts'
import { figure, type Notebook, needed, notebook } from './notebook.ts'
import { spindleSpeed } from './spindle-speed.ts'
import type { Cut, Cutter, CuttingFault, CuttingMachine, StatedCut, WorkMaterial } from './types.ts'

/** What every milling operation is given. */
export interface Bench {
  readonly cutter: Cutter
  readonly material: WorkMaterial
  readonly machine: CuttingMachine
}

/** Speed and feed of a milling cut, from which the operation finds rate and time. */
export interface Running extends MillingFeed {
  readonly rpm: number
  readonly diameterMm: number
}

/** What an operation of milling says of itself. */
export interface MillingPlan<Job> {
  readonly job: Job & StatedCut
  readonly bench: Bench
  /** How the cutter of this diameter meets the work; `null` once something missing is noted. */
  engage(diameterMm: number, note: Notebook): Engagement | null
  /** Rate and time at a speed and feed; `null` once something missing is noted. */
  find(running: Running, engaged: Engagement, note: Notebook): Omit<Found, 'rpm' | 'chipMm'> | null
}

/**
 * A milling cut from its engagement to its time, with what bends, rubs or asks too much.
 * Gives: a fault for a number out of domain or for all that is missing at once.
 * Source: as `spindleSpeed`, `millingFeed` and `finishedCut`.
 */
export function milledCut<Job extends object>(plan: MillingPlan<Job>): Cut | CuttingFault {
  const { job, bench } = plan
  const { cutter, material, machine } = bench
  const fault = domainFault(job, cutter, material, machine)
  if (fault) return fault
  const note = notebook()
  const diameterMm = needed(cutter.diameterMm, 'cutter diameter', note)
  if (diameterMm === null) return missingFault(note)
  const engaged = plan.engage(diameterMm, note)
  const rpm = spindleSpeed({ use: 'mill', diameterMm, stated: job, ...bench }, note)
  if (engaged === null || rpm === null) {
    needed(cutter.flutes, 'flutes', note)
    return missingFault(note)
  }
  const feed = millingFeed({ rpm, engaged, stated: job, ...bench }, note)
  if (feed === null) return missingFault(note)
  const found = plan.find({ ...feed, rpm, diameterMm }, engaged, note)
  if (found === null) return missingFault(note)
  return bent(finishedCut({ ...found, rpm, chipMm: feed.chipMm }, material, machine, note), cutter)
}

function bent(
  cut: Cut | CuttingFault,
  { diameterMm, reachMm, stickOutMm, tool }: Cutter,
): Cut | CuttingFault {
  const outMm = stickOutMm ?? reachMm
  if ('fault' in cut || !diameterMm || !outMm || !tool || cut.powerW === null || cut.rpm === null) return cut
  const byMm = cutterDeflection({
    diameterMm,
    stickOutMm: outMm,
    tool,
    powerW: cut.powerW,
    rpm: cut.rpm,
  })
  const line = `bend = F l^3 / (3 E I) over ${figure(outMm)} mm = ${figure(byMm)} mm (estimate)`
  const worked = [...cut.worked, line]
  if (byMm <= mostBendMm) return { ...cut, worked }
  return {
    ...cut,
    worked,
    troubles: [...cut.troubles, { trouble: 'cutter bends', byMm, mostMm: mostBendMm }],
  }
}

/** Removal rate in mm3/min of a milling cut, written down: Q = a_p a_e v_f. Source: milling formulas. */
export function milledRate(depthMm: number, stepMm: number, feedMmPerMin: number, note: Notebook): number {
  const rate = depthMm * stepMm * feedMmPerMin
  const product = `${figure(depthMm)} mm x ${figure(stepMm)} mm x ${figure(feedMmPerMin)} mm/min`
  note.worked.push(`Q = a_p a_e v_f = ${product} = ${figure(rate)} mm3/min`)
  return rate
}
