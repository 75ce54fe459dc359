import type { Point } from '../mesh.ts'
import type { Direction } from '../relations/directions.ts'
import { type DepthBuffer, emptyBuffer, fillPart } from './depth-buffer.ts'
import { projectionOf, roughFrame } from './frame-picture.ts'
import type { PosedPart } from './picture-part.ts'
import { type Projection, projectPoint, projectPoints } from './projection.ts'
import { axesOf, upright, usualViews, type View } from './view.ts'
import { leadingPoints, type WayEnds } from './way-ends.ts'

/** Cells of the small pictures that views are judged by. */
const judgedAcross = 150
/** A view is left only for one that shows so much more. */
const clearlyBetter = 1.2
/** Or one in which so much more is seen of the places where parts get in. */
const clearlyMore = 0.2
/** People look at a bench from above, and not steeply: what other views must make good. */
const worthBelow = 0.8
const worthSteep = 0.92
/** What is seen of the seat, and of the place where the part gets in, against what is seen of the part. */
const seatWeighs = 1.1
const entryWeighs = 2.6

/**
 * The view that shows best what goes in and where it sits, the device lying on the table with the side `up`: the one
 * kept from the picture before, where the device lay so too, unless another shows them clearly better.
 * Method: visible cells of small pictures of reduced meshes, with the part on its way and with it seated.
 * Cost: a dozen small pictures.
 */
export function chooseView(parts: readonly PosedPart[], before: View | null, up: Direction): View {
  const kept = before && (before.up ?? upright) === up ? before : null
  const usual = usualViews(up)
  const views = kept && !usual.some((view) => same(view, kept)) ? [kept, ...usual] : usual
  if (!parts.some(({ goesIn }) => goesIn)) return kept ?? usual[0]!
  const shown = views.map((view) => shownIn(parts, view))
  const mostLifted = Math.max(...shown.map(({ lifted }) => lifted), 1)
  const mostSeat = Math.max(...shown.map(({ seat }) => seat), 1)
  const worths = shown.map(
    ({ lifted, seat, entries }, i) =>
      (lifted / mostLifted + (seatWeighs * seat) / mostSeat + entryWeighs * entries) * worthOf(views[i]!),
  )
  const best = worths.indexOf(Math.max(...worths))
  const now = kept ? views.findIndex((view) => same(view, kept)) : -1
  const keeps =
    now >= 0 &&
    worths[best]! <= clearlyBetter * worths[now]! &&
    shown[best]!.entries <= shown[now]!.entries + clearlyMore
  return keeps ? views[now]! : views[best]!
}

function worthOf({ heightDegrees }: View): number {
  if (heightDegrees < 0) return worthBelow
  return heightDegrees > 45 ? worthSteep : 1
}

function same(a: View, b: View): boolean {
  return a.turnDegrees === b.turnDegrees && a.heightDegrees === b.heightDegrees
}

/** What a view shows of what goes in, in cells: of it on its way, and of its seat. */
interface Shown {
  /** Less by what is hidden of each. */
  readonly lifted: number
  readonly seat: number
  /** How well the places are seen where it gets among others, 0 to 1. */
  readonly entries: number
}

/** Number in the small pictures of what goes in as one: what is there has 0. */
const numberOf = (part: PosedPart, at: number): number => (part.goesIn ? 1 + (part.fixedTo ?? at) : 0)

function shownIn(parts: readonly PosedPart[], view: View): Shown {
  const axes = axesOf(view)
  const projection = projectionOf(parts, axes, roughFrame(parts, axes, 60), judgedAcross)
  const lifted = emptyBuffer(judgedAcross)
  for (const part of parts) if (!part.goesIn) fill(lifted, projection, part, part.moved, 0)
  const seated = copyOf(lifted)
  const bodies = [...parts.keys()].filter((at) => parts[at]!.goesIn && parts[at]!.fixedTo === undefined)
  const alone = bodies.map((body) => {
    const own = emptyBuffer(judgedAcross)
    for (const [at, part] of parts.entries()) {
      if (!part.goesIn || (part.fixedTo ?? at) !== body) continue
      const number = numberOf(part, at)
      fill(own, projection, part, part.moved, number)
      fill(lifted, projection, part, part.moved, number)
      fill(seated, projection, part, part.lift.baseMm, number)
    }
    return countOf(own, body + 1)
  })
  const seen = bodies.map((body) => countOf(lifted, body + 1))
  return {
    lifted: sum(seen) * mean(seen.map((cells, i) => (alone[i]! > 0 ? cells / alone[i]! : 1))),
    seat: seatCells(seated, lifted),
    entries: mean(bodies.map((body) => entrySeen(lifted, projection, parts[body]!, body + 1))),
  }
}

/** Cells that show something in its seat and show it no longer on its way. */
function seatCells(seated: DepthBuffer, lifted: DepthBuffer): number {
  let cells = 0
  for (let at = 0; at < seated.part.length; at++) if (seated.part[at]! > 0 && lifted.part[at]! <= 0) cells++
  return cells
}

function countOf({ part }: DepthBuffer, number: number): number {
  let cells = 0
  for (const one of part) if (one === number) cells++
  return cells
}

function sum(list: readonly number[]): number {
  return list.reduce((all, each) => all + each, 0)
}

function mean(list: readonly number[]): number {
  return sum(list) / Math.max(1, list.length)
}

/** Steps in which a way is followed. */
const waySteps = 80

/**
 * How well one sees where a part gets among others: 1 where its way ends in sight or dips into something close by, as
 * into its hole; less where something stands before it. Of several points of its seat the one seen best.
 */
function entrySeen(buffer: DepthBuffer, projection: Projection, part: PosedPart, own: number): number {
  // Looked at from behind, what hides its way is no rim of a hole.
  const fromBehind = turnedTo(projection.axes.near, part.lift.ownMm) < 0
  const close = fromBehind ? 2 : closeMm(part) * projection.cellsPerMm + 2
  const ways = leadingPoints(part)
  const ends = part.way && part.way.seats.length > 0 ? ways : ways.slice(0, 1)
  return ends.reduce((best, one) => Math.max(best, wayInSight(buffer, projection, one, { own, close })), 0)
}

function turnedTo(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

function wayInSight(
  { across, depth, part }: DepthBuffer,
  projection: Projection,
  ends: WayEnds,
  { own, close }: { readonly own: number; readonly close: number },
): number {
  const [from, to] = [projectPoint(projection, ends.lifted), projectPoint(projection, ends.seat)]
  for (let i = 0; i <= waySteps; i++) {
    const share = i / waySteps
    const at = (axis: 0 | 1 | 2): number => from[axis] + share * (to[axis] - from[axis])
    const [column, row] = [Math.floor(at(0)), Math.floor(at(1))]
    if (column < 0 || row < 0 || column >= across || row >= across) return 0
    const cell = row * across + column
    const before = part[cell] === own ? 0 : depth[cell]! - at(2)
    if (before > 2) return before <= close ? 1 : share / 2
  }
  return 1
}

/** How near the rim of a hole may stand before the middle of what goes in first: a hole is up to twice as wide as it. */
function closeMm({ lead: { lowMm, highMm }, lift }: PosedPart): number {
  const own = Math.hypot(...lift.ownMm) || 1
  const across = [0, 1, 2].filter((axis) => Math.abs(lift.ownMm[axis]! / own) < 0.5)
  return 1.2 * Math.min(...across.map((axis) => highMm[axis]! - lowMm[axis]!))
}

function fill(
  buffer: DepthBuffer,
  projection: Projection,
  { shape }: PosedPart,
  moved: Point,
  number: number,
): void {
  const { points, triangles } = shape.reduced
  fillPart(buffer, number, triangles, projectPoints(projection, points, moved))
}

function copyOf({ across, part, depth }: DepthBuffer): DepthBuffer {
  return { across, part: part.slice(), depth: depth.slice() }
}
