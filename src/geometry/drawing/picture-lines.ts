import { type DepthBuffer, emptyBuffer, fillPart } from './depth-buffer.ts'
import { outsideCells } from './outside-cells.ts'
import type { PosedPart } from './picture-part.ts'
import { type Projection, projectPoints } from './projection.ts'
import { type VisibleLine, visibleLines } from './visible-lines.ts'

/** What is seen of parts: the cells, and the lines that are not hidden. */
export interface PictureLines {
  readonly buffer: DepthBuffer
  readonly lines: readonly VisibleLine[]
}

/**
 * The lines of all parts that are seen. Of two parts in one plane what goes in is seen, else the one named first.
 * Cost: O(triangles + cells + edges).
 */
export function pictureLines(parts: readonly PosedPart[], projection: Projection): PictureLines {
  const buffer = emptyBuffer(projection.across)
  const places = parts.map(({ shape, moved }) => projectPoints(projection, shape.mesh.points, moved))
  const order = [...parts.keys()].sort((a, b) => Number(parts[b]!.goesIn) - Number(parts[a]!.goesIn) || a - b)
  for (const part of order) fillPart(buffer, part, parts[part]!.shape.mesh.triangles, places[part]!)
  const goesIn = Uint8Array.from(parts, (part) => Number(part.goesIn))
  const aroundAll = outsideCells(buffer, new Uint8Array(parts.length).fill(1))
  const sight = {
    buffer,
    goesIn,
    body: Int32Array.from(parts, ({ fixedTo }, part) => fixedTo ?? part),
    aroundAll,
    aroundGoing: goesIn.includes(1) ? outsideCells(buffer, goesIn) : aroundAll,
  }
  const lines = parts.flatMap(({ shape }, part) => visibleLines(sight, part, shape, places[part]!))
  return { buffer, lines }
}
