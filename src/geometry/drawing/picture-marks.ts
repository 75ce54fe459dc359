import { extentOf, type Frame } from './frame-picture.ts'
import { ghosts } from './ghosts.ts'
import { hatchLines } from './hatch-lines.ts'
import type { PictureLines } from './picture-lines.ts'
import type { PosedPart } from './picture-part.ts'
import type { Projection } from './projection.ts'
import type { Mark } from './svg-text.ts'
import { thinOut } from './thin-out.ts'
import type { VisibleLine } from './visible-lines.ts'
import { type WayLine, wayLine } from './way-lines.ts'
import { withoutDoubles } from './without-doubles.ts'

/** Line weights in millimetres. Source: tried on printed pictures; the steps are near those of ISO 128, from memory. */
const weights = {
  goesIn: 0.5,
  smallGoesIn: 0.35,
  outer: 0.3,
  border: 0.18,
  inner: 0.13,
  way: 0.3,
  hidden: 0.18,
  hatch: 0.1,
}
const dashMm: readonly [number, number] = [1.3, 0.8]
/** Of what is hidden and yet shown. */
const hiddenDashMm: readonly [number, number] = [0.5, 0.5]
const arrowMm = { long: 2, half: 0.62 } as const
/** Between lines of hatch, on parts of usual size and on small ones. */
const hatchMm = { usual: 0.95, small: 0.65 } as const
/** A part narrower than this on paper would drown in a heavy outline. */
const smallMm = 5

/** A picture that is drawn, and how it lies on its paper. */
export interface Sheet {
  readonly parts: readonly PosedPart[]
  readonly seen: PictureLines
  readonly projection: Projection
  readonly frame: Frame
  readonly sizeMm: number
}

/** Hatch and lines of a picture, the finest first. */
export function lineMarks(sheet: Sheet): readonly Mark[] {
  const { seen, sizeMm } = sheet
  const perMm = seen.buffer.across / sizeMm
  const small = smallParts(sheet)
  const weighed = seen.lines
    .map((line) => ({ ...line, weight: weightOf(line, small) }))
    .sort((a, b) => b.weight - a.weight)
  const single = withoutDoubles(weighed, seen.buffer.across)
  const onPaper = (points: readonly number[]): readonly number[] =>
    thinOut(points, 0.3).map((cell) => cell / perMm)
  const used = [...new Set(single.map(({ weight }) => weight))].reverse()
  return [
    stroke(weights.hatch, hatchOf(sheet, small).map(onPaper)),
    ...used.map((weight) =>
      stroke(
        weight,
        single.filter((line) => line.weight === weight).map(({ points }) => onPaper(points)),
      ),
    ),
  ]
}

/** Where parts come to sit that are hidden there. */
export function ghostMarks({ parts, seen, projection, sizeMm }: Sheet): readonly Mark[] {
  if (!parts.some(({ goesIn }) => goesIn)) return []
  const perMm = seen.buffer.across / sizeMm
  const lines = ghosts(parts, projection).map((points) => thinOut(points, 0.3).map((cell) => cell / perMm))
  return [stroke(weights.hidden, lines, hiddenDashMm)]
}

/** The ways of a picture, with their arrows. */
export function wayMarks({ parts, seen, projection, sizeMm }: Sheet): readonly Mark[] {
  const perMm = seen.buffer.across / sizeMm
  const all = parts.flatMap((part) => {
    const line = part.way && part.fixedTo === undefined ? wayLine(seen.buffer, projection, part, perMm) : null
    return line ? [line] : []
  })
  // A hidden way is drawn only where no other one says how it goes.
  const seenOnes = all.filter(({ over }) => !over)
  const ways = seenOnes.length > 0 ? seenOnes : all.slice(0, 1)
  const weight = parts.some(({ goesIn }) => goesIn) ? weights.way : weights.border
  // Several parts on one axis have one line between them.
  const dashes = withoutDoubles(
    ways.flatMap((way) => way.dashes.map((points) => ({ weight, points }))),
    seen.buffer.across,
  )
  const onPaper = (points: readonly number[]): readonly number[] => points.map((cell) => cell / perMm)
  return [
    stroke(
      weight,
      dashes.map(({ points }) => onPaper(thinOut(points, 0.3))),
      dashMm,
    ),
    stroke(
      weights.hidden,
      ways.flatMap(({ hidden }) => (hidden ? [onPaper(hidden)] : [])),
      hiddenDashMm,
    ),
    ...ways.flatMap(({ arrow }): readonly Mark[] =>
      arrow ? [{ mark: 'solid', points: onPaper(arrowHead(arrow, perMm)) }] : [],
    ),
  ]
}

/** Lines of one weight as a mark. */
export function stroke(
  widthMm: number,
  lines: readonly (readonly number[])[],
  dashes: readonly [number, number] | null = null,
): Mark {
  return { mark: 'stroke', stroke: { widthMm, dashMm: dashes, lines } }
}

/** Numbers of parts that go in and are narrow on the paper. */
function smallParts({ parts, projection, frame, sizeMm }: Sheet): ReadonlySet<number> {
  const least = (smallMm * frame.sideMm) / sizeMm
  const small = parts.flatMap((part, number) => {
    if (!part.goesIn) return []
    const { low, high } = extentOf(part, projection.axes, part.moved)
    return Math.min(high[0] - low[0], high[1] - low[1]) < least ? [number] : []
  })
  return new Set(small)
}

function weightOf({ part, kind }: VisibleLine, small: ReadonlySet<number>): number {
  if (kind !== 'goes in') return weights[kind]
  return small.has(part) ? weights.smallGoesIn : weights.goesIn
}

/** What goes in first is hatched rising, what is of another size falling. */
function hatchOf({ parts, seen, sizeMm }: Sheet, small: ReadonlySet<number>): readonly (readonly number[])[] {
  const perMm = seen.buffer.across / sizeMm
  const first = parts.find(({ goesIn }) => goesIn)
  const falls = (part: PosedPart): boolean =>
    first !== undefined && sizeOf(parts[part.fixedTo ?? -1] ?? part) !== sizeOf(first)
  return [false, true].flatMap((falling) =>
    [false, true].flatMap((isSmall) =>
      hatchLines(
        seen.buffer,
        Uint8Array.from(parts, (part, number) =>
          Number(part.goesIn && falls(part) === falling && small.has(number) === isSmall),
        ),
        { everyCells: (isSmall ? hatchMm.small : hatchMm.usual) * perMm, falling },
      ),
    ),
  )
}

function sizeOf({ body: { lowMm, highMm } }: PosedPart): string {
  return highMm.map((high, axis) => (high - lowMm[axis]!).toFixed(2)).join(' ')
}

function arrowHead({ tip, way }: NonNullable<WayLine['arrow']>, perMm: number): readonly number[] {
  const [long, half] = [arrowMm.long * perMm, arrowMm.half * perMm]
  const [x, y] = [tip[0] - long * way[0], tip[1] - long * way[1]]
  return [...tip, x - half * way[1], y + half * way[0], x + half * way[1], y - half * way[0]]
}
