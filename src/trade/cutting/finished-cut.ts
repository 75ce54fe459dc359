import { powerOf, specificForce, torqueOf } from './formulas.ts'
import { figure, type Notebook, statedOr } from './notebook.ts'
import type { Cut, CuttingFault, CuttingMachine, WorkMaterial } from './types.ts'

/** What an operation has found when only force, power and time are left. */
export interface Found {
  readonly rpm: number | null
  readonly feedMmPerMin: number | null
  readonly chipMm: number | null
  readonly removalMm3PerMin: number | null
  /** Torque by a formula of the operation's own; power follows from it. */
  readonly ownTorqueNm?: number | null
  readonly inCutSeconds: number
  readonly entrySeconds: number
  /** Air found by the operation itself; else the machine's air factor is used. */
  readonly airSeconds?: number
  readonly passes: number
}

/**
 * Part of the time in cut that goes into air, corners and clearing chips. Source: 10 to 30 %, common practice,
 * no source.
 */
const usualAir = 1.2
/** Share of motor power at the cut. Source: 0.7 to 0.8, makers' catalogues. */
const usualEfficiency = 0.75

/**
 * The answer of an operation: force, power and torque beside what the spindle has, and the time in its parts.
 * Gives: only finite numbers; a fault where missing figures were noted.
 * Source: P = Q k_c, k_c = k_c1.1 h^(-m_c), M = P / (2 pi n), motor power P / eta; makers' catalogues.
 */
export function finishedCut(
  found: Found,
  material: WorkMaterial,
  machine: CuttingMachine,
  note: Notebook,
): Cut | CuttingFault {
  if (note.missing.length > 0) return missingFault(note)
  const load = effort(found, material, note)
  if (load && found.rpm !== null) against(load, machine, note)
  const time = cutTime(found, machine, note)
  const { rpm, feedMmPerMin, chipMm, removalMm3PerMin, passes } = found
  return {
    rpm,
    feedMmPerMin,
    chipMm,
    removalMm3PerMin,
    powerW: load?.powerW ?? null,
    torqueNm: load?.torqueNm ?? null,
    seconds: time.inCut + time.entry + time.air,
    timeSeconds: time,
    toolChangeSeconds: machine.toolChangeSeconds ?? null,
    passes,
    worked: note.worked,
    assumed: note.assumed,
    troubles: note.troubles,
  }
}

/** The fault that names, once each, what was found missing. */
export function missingFault(note: Notebook): CuttingFault {
  return { fault: 'missing', what: [...new Set(note.missing)] }
}

interface Load {
  readonly powerW: number
  readonly torqueNm: number
}

function effort(found: Found, material: WorkMaterial, note: Notebook): Load | null {
  const { rpm, chipMm, removalMm3PerMin, ownTorqueNm } = found
  if (rpm === null) return null
  if (ownTorqueNm) return { torqueNm: ownTorqueNm, powerW: (ownTorqueNm * 2 * Math.PI * rpm) / 60 }
  const { kc11NPerMm2, mc } = material
  const isByForce = ownTorqueNm === undefined
  if (!isByForce || !kc11NPerMm2 || mc === null || mc === undefined || !removalMm3PerMin || !chipMm) {
    const parts: readonly [unknown, string][] = isByForce
      ? [
          [kc11NPerMm2, 'k_c1.1'],
          [mc ?? null, 'm_c'],
          [removalMm3PerMin, 'removal rate'],
          [chipMm, 'chip thickness'],
        ]
      : [[kc11NPerMm2, 'k_c1.1']]
    const missing = parts.filter(([value]) => value === null || value === undefined).map(([, what]) => what)
    note.troubles.push({ trouble: 'power unknown', missing })
    return null
  }
  const force = specificForce(kc11NPerMm2, mc, chipMm)
  const powerW = powerOf(removalMm3PerMin, force)
  const torqueNm = torqueOf(powerW, rpm)
  note.worked.push(
    `k_c = ${figure(kc11NPerMm2)} N/mm2 x ${figure(chipMm)}^-${figure(mc)} = ${figure(force)} N/mm2`,
    `P = ${figure(removalMm3PerMin)} mm3/min x ${figure(force)} N/mm2 / 60000 = ${figure(powerW)} W at the cut (estimate)`,
    `M = 60 x ${figure(powerW)} W / (2 pi x ${figure(rpm)} rpm) = ${figure(torqueNm)} N m`,
  )
  return { powerW, torqueNm }
}

function against({ powerW, torqueNm }: Load, machine: CuttingMachine, note: Notebook): void {
  if (machine.powerW) {
    const efficiency = statedOr(
      machine.efficiencyRatio,
      {
        what: 'spindle efficiency',
        value: usualEfficiency,
        unit: '',
        source: '0.7 to 0.8, makers’ catalogues',
      },
      note,
    )
    const needsW = powerW / efficiency
    note.worked.push(
      `motor: ${figure(powerW)} W / ${figure(efficiency)} = ${figure(needsW)} W of ${figure(machine.powerW)} W`,
    )
    if (needsW > machine.powerW)
      note.troubles.push({ trouble: 'too little power', needsW, hasW: machine.powerW })
  }
  if (machine.torqueNm && torqueNm > machine.torqueNm)
    note.troubles.push({ trouble: 'too little torque', needsNm: torqueNm, hasNm: machine.torqueNm })
}

function cutTime(found: Found, machine: CuttingMachine, note: Notebook): Cut['timeSeconds'] {
  const { inCutSeconds: inCut, entrySeconds: entry, airSeconds } = found
  if (airSeconds !== undefined) return { inCut, entry, air: airSeconds }
  const usual = {
    what: 'air factor',
    value: usualAir,
    unit: '',
    source: '10 to 30 %, common practice, no source',
  }
  const factor = statedOr(machine.airFactor, usual, note)
  const air = (inCut + entry) * (factor - 1)
  note.worked.push(
    `time = (${figure(inCut)} s in cut + ${figure(entry)} s entry) x ${figure(factor)} = ${figure(inCut + entry + air)} s`,
  )
  return { inCut, entry, air }
}
