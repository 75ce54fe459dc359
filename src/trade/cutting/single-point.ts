import { finishedCut, missingFault } from './finished-cut.ts'
import { speedAt } from './formulas.ts'
import type { Bench } from './milled-cut.ts'
import { figure, type Notebook } from './notebook.ts'
import { spindleSpeed } from './spindle-speed.ts'
import { turningFeed } from './turning-feed.ts'
import type { Cut, CuttingFault, StatedCut } from './types.ts'

/** A single edge that goes along or into round work. */
export interface SinglePoint {
  readonly stated: StatedCut
  /** Diameter at which the cutting speed is taken: the largest that is cut. */
  readonly diameterMm: number
  /** Way of the edge in one pass, through the work. */
  readonly cutMm: number
  /** Way before and behind the work in one pass. */
  readonly clearanceMm: number
  readonly passes: number
  /** Width of the chip: depth of cut of one pass, or the blade's. */
  readonly chipWidthMm: number
  readonly enteringAngleDeg: number
}

/**
 * Turning, boring or parting: speed, feed, force and time.
 * Source: T = L / (f n) each pass; Q = v_c a_p f; P = v_c a_p f k_c / 60e3, makers' catalogues; h = f sin(kappa).
 */
export function singlePointCut(plan: SinglePoint, bench: Bench, note: Notebook): Cut | CuttingFault {
  const { stated, diameterMm, cutMm, clearanceMm, passes, chipWidthMm } = plan
  const { material, machine } = bench
  const rpm = spindleSpeed({ use: 'turn', diameterMm, stated, ...bench }, note)
  const feed = turningFeed(rpm ?? 1, { stated, usual: null, machine }, rpm === null ? throwaway(note) : note)
  if (rpm === null || feed === null) return missingFault(note)
  const { feedMmPerMin, feedMmPerRev } = feed
  const chipMm = feedMmPerRev * Math.sin((plan.enteringAngleDeg * Math.PI) / 180)
  const speed = speedAt(rpm, diameterMm)
  const removal = speed * chipWidthMm * feedMmPerRev * 1000
  note.worked.push(
    `h = f sin(${figure(plan.enteringAngleDeg)} deg) = ${figure(chipMm)} mm`,
    `Q = v_c a_p f = ${figure(speed)} m/min x ${figure(chipWidthMm)} mm x ${figure(feedMmPerRev)} mm = ${figure(removal)} mm3/min`,
    `${passes} x (${figure(cutMm)} mm + ${figure(clearanceMm)} mm) / ${figure(feedMmPerMin)} mm/min`,
  )
  return finishedCut(
    {
      rpm,
      feedMmPerMin,
      chipMm,
      removalMm3PerMin: removal,
      inCutSeconds: (60 * passes * cutMm) / feedMmPerMin,
      entrySeconds: (60 * passes * clearanceMm) / feedMmPerMin,
      passes,
    },
    material,
    machine,
    note,
  )
}

/** Keeps what is missing, drops what would be worked out with a speed nobody knows. */
const throwaway = ({ missing }: Notebook): Notebook => ({ worked: [], assumed: [], troubles: [], missing })
