import type { Notebook } from './notebook.ts'
import type { Cutter, StatedCut } from './types.ts'

/**
 * Notes a cut that goes deeper at once than the flutes are long, or deeper in all than the cutter hangs out.
 * Source: geometry.
 */
export function noteDepth(layerMm: number, depthMm: number, cutter: Cutter, note: Notebook): void {
  const { fluteLengthMm, reachMm } = cutter
  if (fluteLengthMm && layerMm > fluteLengthMm)
    note.troubles.push({ trouble: 'past flutes', depthMm: layerMm, fluteMm: fluteLengthMm })
  if (reachMm && depthMm > reachMm) note.troubles.push({ trouble: 'past reach', depthMm, reachMm })
}

/**
 * Notes a hole deeper than 3, 5 or 10 times its diameter that is drilled without pecks. Source: common
 * practice, no source.
 */
export function noteDeepHole(depthMm: number, diameterMm: number, note: Notebook): void {
  const ratio = depthMm / diameterMm
  const beyond = ratio > 10 ? 10 : ratio > 5 ? 5 : ratio > 3 ? 3 : null
  if (beyond !== null) note.troubles.push({ trouble: 'deep hole', ratio, beyond })
}

/** Notes a step-over wider than the cutter, which leaves strips standing. Source: geometry. */
export function noteStep(stepMm: number, diameterMm: number, note: Notebook): void {
  if (stepMm > diameterMm * (1 + 1e-9))
    note.troubles.push({ trouble: 'step wider than cutter', stepMm, cutterMm: diameterMm })
}

/** Notes a stated feed that would tear a thread: the edge must go one pitch each turn. Source: geometry of a thread. */
export function notePitchFeed(stated: StatedCut, rpm: number, pitchMm: number, note: Notebook): void {
  const { feedMmPerMin, feedMmPerRev } = stated
  const statedMmPerMin = feedMmPerMin ?? (feedMmPerRev ? feedMmPerRev * rpm : null)
  const pitchMmPerMin = rpm * pitchMm
  if (statedMmPerMin !== null && Math.abs(statedMmPerMin - pitchMmPerMin) > 0.01 * pitchMmPerMin)
    note.troubles.push({ trouble: 'feed is not the pitch', statedMmPerMin, pitchMmPerMin })
}

/** Thinnest wall left standing in mm that is worth a try, by family. Source: common practice, no source. */
const leastWallMm = { metal: 0.8, plastic: 1.5 } as const

/**
 * Notes a wall thinner than is worth a try, or than a tenth of its height.
 * Source: common practice, no source.
 */
export function noteWall(
  wall: { readonly wallMm?: number | null; readonly heightMm: number; readonly isPlastic: boolean },
  note: Notebook,
): void {
  const { wallMm, heightMm, isPlastic } = wall
  if (!wallMm) return
  const leastMm = Math.max(isPlastic ? leastWallMm.plastic : leastWallMm.metal, heightMm / 10)
  if (wallMm < leastMm) note.troubles.push({ trouble: 'thin wall', wallMm, leastMm, heightMm })
}
