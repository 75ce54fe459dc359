/** Pieces that are parted or sawn off one bar. */
export interface BarQuestion {
  readonly barMm: number
  /** Kept in the chuck or vice. */
  readonly gripMm: number
  readonly kerfMm: number
  /** Finished length. */
  readonly pieceMm: number
  /** Faced off at each end. */
  readonly facingMm: number
}

/**
 * How many pieces one bar yields: floor((bar - grip + kerf) / (piece + 2 facing + kerf)), the last one needs no kerf
 * after it; `null` where a number is out of domain.
 * Source: geometry.
 */
export function piecesPerBar({ barMm, gripMm, kerfMm, pieceMm, facingMm }: BarQuestion): number | null {
  const all = [barMm, gripMm, kerfMm, pieceMm, facingMm]
  if (!all.every((value) => Number.isFinite(value) && value >= 0 && value <= 1e6)) return null
  if (!(pieceMm > 0)) return null
  // A bar that holds a whole number of pieces holds it in spite of the last binary digit.
  return Math.max(0, Math.floor((barMm - gripMm + kerfMm) / (pieceMm + 2 * facingMm + kerfMm) + 1e-9))
}
