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
  /** Two short strokes that say the way is longer than drawn. */
  readonly cuts: readonly (readonly [number, number, number, number])[]
}

/** A thing this much nearer than the way does not hide it, in cells. */
const grazingCells = 1
/** Lengths in millimetres of paper: shortest stretch drawn, half the gap of a break, half the height of its strokes. */
const leastMm = 1.2
/** Where along the way it is broken: near the part, where there is most often nothing else. */
const breakShare = 0.3
const breakMm = { half: 0.6, high: 1.1 } as const
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
  if (seenLength(seen) > 0) return drawn(seen, part, cellsPerPaperMm)
  if (!part.goesIn) return null
  const short: readonly Span[] = [[0, Math.min(middle.length, overMm * cellsPerPaperMm)]]
  return { ...drawn({ ...middle, spans: short }, part, cellsPerPaperMm), over: true }
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

function drawn({ from, way, spans }: SeenWay, part: PosedPart, cellsPerPaperMm: number): WayLine {
  const at = (along: number): readonly [number, number] => [
    from[0] + along * way[0],
    from[1] + along * way[1],
  ]
  const cut = part.lift.broken ? longest(spans) : null
  const middle = cut ? cut[0] + breakShare * (cut[1] - cut[0]) : 0
  const half = breakMm.half * cellsPerPaperMm
  const pieces = spans.flatMap((span): readonly Span[] =>
    span === cut
      ? [
          [span[0], middle - half],
          [middle + half, span[1]],
        ]
      : [span],
  )
  return {
    over: false,
    dashes: pieces.filter(([a, b]) => b > a).map(([a, b]) => [...at(a), ...at(b)] as const),
    arrow: part.goesIn ? { tip: at(spans.at(-1)![1]), way } : null,
    cuts: cut ? [middle - half, middle + half].map((along) => cutStroke(at(along), cellsPerPaperMm)) : [],
  }
}

function longest(spans: readonly Span[]): Span {
  return spans.reduce((most, span) => (span[1] - span[0] > most[1] - most[0] ? span : most))
}

function cutStroke(
  [x, y]: readonly [number, number],
  cellsPerPaperMm: number,
): [number, number, number, number] {
  const high = breakMm.high * cellsPerPaperMm
  return [x - high * 0.8, y + high * 0.5, x + high * 0.8, y - high * 0.5]
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
