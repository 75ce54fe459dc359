import { type DepthBuffer, emptyBuffer, fillPart } from './depth-buffer.ts'
import { pictureLines } from './picture-lines.ts'
import type { PosedPart } from './picture-part.ts'
import { type Projection, projectPoints } from './projection.ts'
import type { Polyline } from './visible-lines.ts'

/** Cells of the small picture in which it is counted how much of a seated part is seen. */
const countedAcross = 300
/** Less than this share of a part in its seat is seen: its place has to be shown through what hides it. */
const hiddenShare = 0.3
/** Narrower than this, in cells of the small picture, an outline says nothing. */
const leastCells = 6

/**
 * Outlines of parts that go in, where they come to sit, as far as what is there hides them: drawn over it they say how
 * deep a part goes, and where on a side that is not seen. Source: hidden outlines as dashed narrow lines, ISO 128, from memory.
 * Cost: a small picture, and one of the parts that are hidden.
 */
export function ghosts(parts: readonly PosedPart[], projection: Projection): readonly Polyline[] {
  const hidden = hiddenBodies(parts, {
    ...projection,
    across: countedAcross,
    cellsPerMm: (projection.cellsPerMm * countedAcross) / projection.across,
  })
  if (hidden.length === 0) return []
  const shown = hidden.flatMap((body) => bodyOf(parts, body)).map(seated)
  return pictureLines(shown, projection)
    .lines.filter(({ kind }) => kind === 'outer' || kind === 'border')
    .map(({ points }) => points)
}

function seated({ fixedTo: _, ...part }: PosedPart): PosedPart {
  return { ...part, moved: part.lift.baseMm, goesIn: false }
}

function bodyOf(parts: readonly PosedPart[], body: number): readonly PosedPart[] {
  return parts.filter((part, number) => number === body || part.fixedTo === body)
}

/** Numbers of what goes in and is hardly seen in its seat. */
function hiddenBodies(parts: readonly PosedPart[], small: Projection): readonly number[] {
  const bodies = parts.flatMap((part, number) => (part.goesIn && part.fixedTo === undefined ? [number] : []))
  if (bodies.length === 0) return []
  const all = emptyBuffer(countedAcross)
  for (const [number, part] of parts.entries()) fillSeated(all, small, part, part.fixedTo ?? number)
  const seen = countCells(all)
  return bodies.filter((body) => {
    const alone = emptyBuffer(countedAcross)
    for (const part of bodyOf(parts, body)) fillSeated(alone, small, part, body)
    const own = countCells(alone).get(body) ?? 0
    return own >= leastCells && (seen.get(body) ?? 0) < hiddenShare * own
  })
}

function fillSeated(buffer: DepthBuffer, projection: Projection, part: PosedPart, number: number): void {
  const { points, triangles } = part.shape.reduced
  fillPart(buffer, number, triangles, projectPoints(projection, points, part.lift.baseMm))
}

function countCells({ part }: DepthBuffer): ReadonlyMap<number, number> {
  const cells = new Map<number, number>()
  for (const number of part) if (number >= 0) cells.set(number, (cells.get(number) ?? 0) + 1)
  return cells
}
