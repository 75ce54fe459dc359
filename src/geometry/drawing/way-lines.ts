import type { Point } from '../mesh.ts'
import type { DepthBuffer } from './depth-buffer.ts'
import type { PosedPart } from './picture-part.ts'
import { type Projection, projectPoint } from './projection.ts'
import { leadingPoints, type WayEnds } from './way-ends.ts'

/** The way of a part as it is drawn, in cells. */
export interface WayLine {
  /** Nothing of it is seen: it is drawn over what hides it. */
  readonly over: boolean
  /** Straight stretches that are seen, from the part towards its seat. */
  readonly dashes: readonly (readonly [number, number, number, number])[]
  /** Where it enters, and which way it points there; `null`: no arrow. */
  readonly arrow: { readonly tip: readonly [number, number]; readonly way: readonly [number, number] } | null
  /** From where it is seen last to its seat, where that is hidden; `null`: it is not, or nothing goes in. */
  readonly hidden: readonly [number, number, number, number] | null
}

/** A thing this much nearer than the way does not hide it, in cells. */
const grazingCells = 1
/** Shortest stretch that is drawn, in millimetres of paper. */
const leastMm = 1.2
/** As much of a way as is wanted in sight, and how much is drawn over everything where less than `leastMm` is. */
const wantedMm = 3
const overMm = 5

type Span = readonly [start: number, end: number]

/** A way on the paper, and the stretches of it that are seen, in cells from its start. */
interface SeenWay {
  readonly from: Point
  readonly way: readonly [number, number]
  readonly length: number
  readonly spans: readonly Span[]
}

/**
 * The way of a part from where it is drawn to its seat, as far as it is seen. It runs along the middle of the leading
 * side, or beside it where a wide part hides its own way.
 * Needs: `buffer` filled with the picture.
 */
export function wayLine(
  buffer: DepthBuffer,
  projection: Projection,
  part: PosedPart,
  cellsPerPaperMm: number,
): WayLine | null {
  const ways = leadingPoints(part).flatMap((ends) => {
    const way = seenWay(buffer, projection, ends, part.goesIn)
    return way.length < leastMm * cellsPerPaperMm ? [] : [keptSpans(way, leastMm * cellsPerPaperMm)]
  })
  const middle = ways[0]
  if (!middle) return null
  const seen = ways.find((way) => seenLength(way) >= wantedMm * cellsPerPaperMm) ?? mostSeen(ways)
  if (seenLength(seen) > 0) return drawn(seen, part.goesIn, leastMm * cellsPerPaperMm)
  if (!part.goesIn) return null
  const short: readonly Span[] = [[0, Math.min(middle.length, overMm * cellsPerPaperMm)]]
  return { ...drawn({ ...middle, spans: short }, true, leastMm * cellsPerPaperMm), over: true }
}

function seenLength({ spans }: SeenWay): number {
  return spans.reduce((sum, [start, end]) => sum + end - start, 0)
}

function mostSeen(ways: readonly SeenWay[]): SeenWay {
  return ways.reduce((most, way) => (seenLength(way) > seenLength(most) ? way : most))
}

function keptSpans(way: SeenWay, least: number): SeenWay {
  return { ...way, spans: way.spans.filter(([start, end]) => end - start >= least) }
}

function seenWay(buffer: DepthBuffer, projection: Projection, ends: WayEnds, goesIn: boolean): SeenWay {
  const [from, to] = [projectPoint(projection, ends.lifted), projectPoint(projection, ends.seat)]
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const length = Math.hypot(dx, dy)
  const spans = seenSpans(buffer, from, to, length)
  // Past its entry the way may come into sight again on the far side: nobody should put the part there.
  const entry = length * ends.entry + 2
  return {
    from,
    way: [dx / (length || 1), dy / (length || 1)],
    length,
    spans: goesIn ? spans.filter(([start]) => start <= entry) : spans,
  }
}

function drawn({ from, way, length, spans }: SeenWay, goesIn: boolean, least: number): WayLine {
  const at = (along: number): readonly [number, number] => [
    from[0] + along * way[0],
    from[1] + along * way[1],
  ]
  const entry = spans.at(-1)![1]
  const isHidden = goesIn && length - entry >= least
  return {
    over: false,
    dashes: spans.filter(([a, b]) => b > a).map(([a, b]) => [...at(a), ...at(b)] as const),
    arrow: goesIn ? { tip: at(entry), way } : null,
    hidden: isHidden ? [...at(entry), ...at(length)] : null,
  }
}

function seenSpans({ across, depth }: DepthBuffer, from: Point, to: Point, length: number): readonly Span[] {
  const spans: [number, number][] = []
  const count = Math.ceil(length)
  for (let i = 0; i < count; i++) {
    const share = (i + 0.5) / count
    const column = Math.floor(from[0] + share * (to[0] - from[0]))
    const row = Math.floor(from[1] + share * (to[1] - from[1]))
    const inside = column >= 0 && row >= 0 && column < across && row < across
    const z = from[2] + share * (to[2] - from[2])
    if (!inside || depth[row * across + column]! > z + grazingCells) continue
    const [start, end] = [(i / count) * length, ((i + 1) / count) * length]
    const last = spans.at(-1)
    if (last && start - last[1] < 2) last[1] = end
    else spans.push([start, end])
  }
  return spans
}
