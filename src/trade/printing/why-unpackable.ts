import { firstOutside, type OutOfDomain } from './domain.ts'

/** Copies of a part to be laid on plates: its footprint and height as it will stand. */
export interface PlatePart {
  readonly name: string
  readonly count: number
  readonly widthMm: number
  readonly depthMm: number
  readonly heightMm: number
}

/** A build plate: its room, the edge kept free, and the gap between parts. */
export interface Plate {
  readonly widthMm: number
  readonly depthMm: number
  readonly heightMm: number
  readonly edgeMm: number
  readonly gapMm: number
}

/** A part that no plate holds: which side, and by how much. */
export interface TooLarge {
  readonly fault: 'too large'
  readonly name: string
  readonly side: 'footprint' | 'height'
  readonly overMm: number
}

/** More copies than are laid out at once. */
export interface TooMany {
  readonly fault: 'too many parts'
  readonly count: number
  readonly most: number
}

const mostCopies = 500

/** Why parts cannot be laid on plates at all, or `null`. */
export function whyUnpackable(
  parts: readonly PlatePart[],
  plate: Plate,
): OutOfDomain | TooLarge | TooMany | null {
  const outside = whyOutside(parts, plate)
  if (outside) return outside
  const count = parts.reduce((sum, part) => sum + part.count, 0)
  if (count > mostCopies) return { fault: 'too many parts', count, most: mostCopies }
  for (const part of parts) {
    const overHeight = part.heightMm - plate.heightMm
    if (overHeight > 1e-6) return { fault: 'too large', name: part.name, side: 'height', overMm: overHeight }
    const overMm = overFootprint(part, plate)
    // The same whole micrometres as the layout counts in: what passes here has room there.
    if (overMm > 0) return { fault: 'too large', name: part.name, side: 'footprint', overMm }
  }
  return null
}

function whyOutside(parts: readonly PlatePart[], plate: Plate): OutOfDomain | null {
  const bad = firstOutside(plate, {
    widthMm: 'above 0',
    depthMm: 'above 0',
    heightMm: 'above 0',
    edgeMm: '0 or more',
    gapMm: '0 or more',
  })
  if (bad) return bad
  for (const side of ['widthMm', 'depthMm'] as const)
    if (plate[side] > longestPlate)
      return { fault: 'out of domain', field: side, value: plate[side], must: `at most ${longestPlate}` }
  for (const part of parts) {
    const outside = firstOutside(part, {
      count: 'whole, 0 or more',
      widthMm: 'above 0',
      depthMm: 'above 0',
      heightMm: 'above 0',
    })
    if (outside) return outside
    for (const side of ['widthMm', 'depthMm'] as const)
      if (part[side] < thinnestPart)
        return { fault: 'out of domain', field: side, value: part[side], must: `at least ${thinnestPart}` }
  }
  return null
}

/** Plates to ten metres and parts from a hundredth of a millimetre: whole micrometres and their products stay exact. */
const [longestPlate, thinnestPart] = [10_000, 0.01]

/**
 * The plate less its edge, in whole micrometres downward, with one gap added: each part carries a gap at its right and
 * far side.
 */
export function usableRoom({ widthMm, depthMm, edgeMm, gapMm }: Plate): {
  readonly w: number
  readonly d: number
} {
  const down = (mm: number) => Math.floor(mm * 1000 + 1e-3)
  return { w: down(widthMm - 2 * edgeMm + gapMm), d: down(depthMm - 2 * edgeMm + gapMm) }
}

/** The footprint of a part with its gap, in whole micrometres upward. */
export function withGap(
  { widthMm, depthMm }: PlatePart,
  { gapMm }: Plate,
): { readonly w: number; readonly d: number } {
  const up = (mm: number) => Math.ceil(mm * 1000 - 1e-3)
  return { w: up(widthMm + gapMm), d: up(depthMm + gapMm) }
}

/** How far a part reaches past the plate on its better turn, on its worse side; zero or less where it fits. */
function overFootprint(part: PlatePart, plate: Plate): number {
  const [room, { w, d }] = [usableRoom(plate), withGap(part, plate)]
  const straight = Math.max(w - room.w, d - room.d)
  const turned = Math.max(d - room.w, w - room.d)
  return Math.min(straight, turned) / 1000
}
