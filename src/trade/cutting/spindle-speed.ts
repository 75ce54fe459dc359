import { rpmAt, speedAt } from './formulas.ts'
import { figure, type Notebook } from './notebook.ts'
import { type CutterUse, startingSpeed, toolSuits } from './starting-speeds.ts'
import type { Cutter, CuttingMachine, StatedCut, WorkMaterial } from './types.ts'

/** What a spindle speed is asked for. */
export interface SpindleQuestion {
  readonly use: CutterUse
  /** What turns: the cutter on a mill, the work on a lathe. */
  readonly diameterMm: number
  readonly stated: StatedCut
  readonly cutter: Cutter
  readonly material: WorkMaterial
  readonly machine: CuttingMachine
  /** Share of the starting speed that this operation runs at, with the reason. */
  readonly slowed?: { readonly ratio: number; readonly source: string }
}

/**
 * Spindle speed in rpm: as stated, or from the stated or starting cutting speed, held inside what the spindle can do.
 * Gives: `null` with a note of what is missing where neither is known.
 * Source: n = 1000 v_c / (pi D), capped at the spindle's fastest, makers' catalogues.
 */
export function spindleSpeed(question: SpindleQuestion, note: Notebook): number | null {
  const { cutter, material, diameterMm, stated } = question
  if (cutter.tool && material.group && !toolSuits(cutter.tool, material.group))
    note.troubles.push({ trouble: 'unsuited tool', tool: cutter.tool, group: material.group })
  if (stated.rpm) return held(stated.rpm, `n = ${figure(stated.rpm)} rpm as stated`, question, note)
  const speed = stated.speedMPerMin ?? startSpeed(question, note)
  if (speed === null) return null
  const rpm = rpmAt(speed, diameterMm)
  const sum = `n = 1000 x ${figure(speed)} m/min / (pi x ${figure(diameterMm)} mm) = ${figure(rpm)} rpm`
  return held(rpm, sum, question, note)
}

function startSpeed(question: SpindleQuestion, note: Notebook): number | null {
  const { use, cutter, material, slowed } = question
  if (!cutter.tool) note.missing.push('tool')
  if (!material.group) note.missing.push('material group')
  if (!cutter.tool || !material.group) return null
  const start = startingSpeed(cutter.tool, use, material.group)
  if (!start) {
    note.missing.push('cutting speed')
    return null
  }
  const speed = start.leastMPerMin * (slowed?.ratio ?? 1)
  const range = `${figure(start.leastMPerMin)} to ${figure(start.mostMPerMin)} m/min`
  note.assumed.push({
    what: 'cutting speed',
    value: `${figure(speed)} m/min (of ${range}, ${cutter.tool} in ${material.group})`,
    source: slowed ? `${start.source}; ${slowed.source}` : start.source,
  })
  return speed
}

function held(wanted: number, sum: string, question: SpindleQuestion, note: Notebook): number {
  const { machine, diameterMm, stated } = question
  const most = machine.mostRpm ?? Number.POSITIVE_INFINITY
  const least = machine.leastRpm ?? 0
  const rpm = Math.min(Math.max(wanted, least), most)
  note.worked.push(rpm === wanted ? sum : `${sum}, limited to ${figure(rpm)} rpm by the spindle`)
  // A wish from a cutting speed is simply held back; a speed that a person wrote cannot be had.
  if (wanted > most && stated.rpm)
    note.troubles.push({ trouble: 'above spindle', wantedRpm: wanted, mostRpm: most })
  if (wanted < least) note.troubles.push({ trouble: 'below spindle', wantedRpm: wanted, leastRpm: least })
  const speed = speedAt(rpm, diameterMm)
  note.worked.push(`v_c = pi x ${figure(diameterMm)} mm x ${figure(rpm)} rpm / 1000 = ${figure(speed)} m/min`)
  return rpm
}

/**
 * A feed in mm/min held to what the axis can do; a stated one that the axis cannot run is a trouble.
 * Source: makers' catalogues, feeds capped at the axis maximum.
 */
export function heldFeed(
  wantedMmPerMin: number,
  machine: CuttingMachine,
  isStated: boolean,
  note: Notebook,
): number {
  const most = machine.mostFeedMmPerMin ?? Number.POSITIVE_INFINITY
  if (wantedMmPerMin <= most) return wantedMmPerMin
  if (isStated) note.troubles.push({ trouble: 'feed above axis', wantedMmPerMin, mostMmPerMin: most })
  note.worked.push(`v_f = ${figure(wantedMmPerMin)} mm/min, limited to ${figure(most)} mm/min by the axis`)
  return most
}
