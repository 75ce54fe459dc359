import { allWithin } from './all-within.ts'

/** A solvent that evaporates whole. */
export interface Solvent {
  readonly densityGPerMl: number
  readonly molarGPerMol: number
  /** Least share of vapour in air that burns, in percent by volume. */
  readonly leastBurningPercent: number
}

/** 2-propanol. Source: molar mass, data sheets; density at 20 C and burning limit from memory. */
export const isopropylAlcohol: Solvent = {
  densityGPerMl: 0.785,
  molarGPerMol: 60.1,
  leastBurningPercent: 2,
}

/** What evaporated solvent makes of the air of a room. */
export interface SolventVapour {
  readonly moles: number
  readonly gasLitres: number
  /** Parts of vapour in a million parts of air by volume. */
  readonly partsPerMillion: number
  /** Of the least share that burns; 1: it burns. */
  readonly shareOfBurning: number
  /** Above a tenth of the burning limit: air the room before anything else. */
  readonly tooMuch: boolean
}

/** Litres of a mole of gas at 20 C and 1 atm. Source: R T / p, ideal gas. */
const litresPerMole = 24.06
/** Source: common practice, no source. */
const mostShare = 0.1

/**
 * Vapour of spilled solvent, all of it evaporated and well mixed: n = V rho / M; `null` out of domain.
 * Near the spill it is far more. Source: ideal gas; the share that warns, common practice, no source.
 */
export function solventVapour(
  solvent: Solvent,
  { spiltMl, roomM3 }: { readonly spiltMl: number; readonly roomM3: number },
): SolventVapour | null {
  const { densityGPerMl, molarGPerMol, leastBurningPercent } = solvent
  if (!allWithin([densityGPerMl, molarGPerMol, leastBurningPercent, roomM3], 1e-6, 1e6)) return null
  if (!allWithin([spiltMl], 0, 1e6)) return null
  const moles = (spiltMl * densityGPerMl) / molarGPerMol
  const gasLitres = moles * litresPerMole
  const share = gasLitres / (roomM3 * 1000)
  const shareOfBurning = (share * 100) / leastBurningPercent
  return {
    moles,
    gasLitres,
    partsPerMillion: share * 1e6,
    shareOfBurning,
    tooMuch: shareOfBurning > mostShare,
  }
}

/**
 * Fresh air in m3/h that holds a limit: Q = G / C, times a factor for poor mixing of 3 to 10; `null` out of domain.
 * Source: balance of one well-mixed room; the factor, common practice, no source.
 */
export function airNeeded(
  { gramsPerHour, limitMgPerM3 }: { readonly gramsPerHour: number; readonly limitMgPerM3: number },
  mixingFactor = 3,
): number | null {
  if (!allWithin([gramsPerHour], 0, 1e6) || !allWithin([limitMgPerM3], 1e-6, 1e9)) return null
  if (!allWithin([mixingFactor], 1, 100)) return null
  return ((gramsPerHour * 1000) / limitMgPerM3) * mixingFactor
}
