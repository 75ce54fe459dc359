import type { Point } from '../mesh.ts'
import { type DepthBuffer, emptyBuffer, fillPart } from './depth-buffer.ts'
import { projectionOf, roughFrame } from './frame-picture.ts'
import type { PosedPart } from './picture-part.ts'
import { type Projection, projectPoint, projectPoints } from './projection.ts'
import { axesOf, usualViews, type View } from './view.ts'
import { leadingPoints } from './way-ends.ts'

/** Cells of the small pictures that views are judged by. */
const judgedAcross = 150
/** A view is left only for one that shows so much more. */
const clearlyBetter = 1.2
/** People look at a bench from above, and not steeply: what other views must make good. */
const worthBelow = 0.8
const worthSteep = 0.92
/** What is seen of the seat, and of the place where the part gets in, against what is seen of the part. */
const seatWeighs = 1.1
const entryWeighs = 1.6

/**
 * The view that shows best what goes in and where it sits: the one kept from the picture before, unless another shows
 * them clearly better.
 * Method: visible cells of small pictures of reduced meshes, with the part on its way and with it seated.
 * Cost: a dozen small pictures.
 */
export function chooseView(parts: readonly PosedPart[], kept: View | null): View {
  const views = kept && !usualViews.some((view) => same(view, kept)) ? [kept, ...usualViews] : usualViews
  if (!parts.some(({ goesIn }) => goesIn)) return kept ?? usualViews[0]!
  const shown = views.map((view) => shownIn(parts, view))
  const mostLifted = Math.max(...shown.map(({ lifted }) => lifted), 1)
  const mostSeat = Math.max(...shown.map(({ seat }) => seat), 1)
  const worths = shown.map(
    ({ lifted, seat, entries }, i) =>
      (lifted / mostLifted + (seatWeighs * seat) / mostSeat + entryWeighs * entries) * worthOf(views[i]!),
  )
  const best = worths.indexOf(Math.max(...worths))
  const now = kept ? views.findIndex((view) => same(view, kept)) : -1
  return now >= 0 && worths[best]! <= clearlyBetter * worths[now]! ? views[now]! : views[best]!
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
  readonly lifted: number
  readonly seat: number
  /** How well the places are seen where it gets among others, 0 to 1. */
  readonly entries: number
}

function shownIn(parts: readonly PosedPart[], view: View): Shown {
  const axes = axesOf(view)
  const projection = projectionOf(parts, axes, roughFrame(parts, axes, 60), judgedAcross)
  const [there, going] = [parts.filter(({ goesIn }) => !goesIn), parts.filter(({ goesIn }) => goesIn)]
  const base = emptyBuffer(judgedAcross)
  for (const part of there) fill(base, projection, part, part.moved, 0)
  const [lifted, seated] = [copyOf(base), copyOf(base)]
  for (const part of going) {
    fill(lifted, projection, part, part.moved, 1)
    fill(seated, projection, part, part.lift.baseMm, 1)
  }
  let seat = 0
  for (let cell = 0; cell < seated.part.length; cell++)
    if (seated.part[cell] === 1 && lifted.part[cell] !== 1) seat++
  return {
    lifted: lifted.part.reduce((sum, part) => sum + (part === 1 ? 1 : 0), 0),
    seat,
    entries: mean(
      going.filter(({ fixedTo }) => fixedTo === undefined).map((part) => entrySeen(base, projection, part)),
    ),
  }
}

function mean(list: readonly number[]): number {
  return list.reduce((sum, each) => sum + each, 0) / Math.max(1, list.length)
}

/** Steps in which a way is followed. */
const waySteps = 80

/**
 * How well one sees where a part gets among others: 1 where its way ends in sight or dips into something close by, as
 * into its hole; less where something stands before it.
 */
function entrySeen({ across, depth }: DepthBuffer, projection: Projection, part: PosedPart): number {
  const ends = leadingPoints(part)[0]
  if (!ends) return 0
  const [from, to] = [projectPoint(projection, ends.lifted), projectPoint(projection, ends.seat)]
  const close = closeMm(part) * projection.cellsPerMm + 2
  for (let i = 0; i <= waySteps; i++) {
    const share = i / waySteps
    const at = (axis: 0 | 1 | 2): number => from[axis] + share * (to[axis] - from[axis])
    const [column, row] = [Math.floor(at(0)), Math.floor(at(1))]
    if (column < 0 || row < 0 || column >= across || row >= across) return 0
    const before = depth[row * across + column]! - at(2)
    if (before > 2) return before <= close ? 1 : share / 2
  }
  return 1
}

/** How near the rim of a hole may stand before the middle of what goes in: a hole is up to twice as wide as it. */
function closeMm({ body: { lowMm, highMm }, lift }: PosedPart): number {
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
