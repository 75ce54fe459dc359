import type { Point } from '../mesh.ts'
import type { PosedPart } from './picture-part.ts'
import type { Projection } from './projection.ts'
import type { ViewAxes } from './view.ts'

/** The piece of the view plane that a picture shows, in millimetres of the device. */
export interface Frame {
  /** Middle along right and up. */
  readonly rightMm: number
  readonly upMm: number
  readonly sideMm: number
}

/** An upright box on the view plane, in millimetres of the device. */
export interface Extent {
  readonly low: readonly [right: number, up: number]
  readonly high: readonly [right: number, up: number]
}

/** Room kept free at the rim of a picture, in millimetres of paper. */
export const rimMm = 1.5
/**
 * What goes in is shown from nearer where all of it is smaller than the first on paper, or smaller than the second with
 * fasteners below the third, in millimetres. Source: tried on printed pictures.
 */
const smallOnPaperMm = { all: 5, fastened: 10, fastener: 3 } as const

/** The frame that holds everything, also the seats of what goes in. */
export function wholeFrame(parts: readonly PosedPart[], axes: ViewAxes, sizeMm: number): Frame {
  const extents = parts.flatMap((part) =>
    (part.goesIn ? [part.moved, part.lift.baseMm] : [part.moved]).map((moved) => extentOf(part, axes, moved)),
  )
  return frameOf(around(extents), sizeMm)
}

/** About the same from reduced meshes. */
export function roughFrame(parts: readonly PosedPart[], axes: ViewAxes, sizeMm: number): Frame {
  const extents = parts.map(({ shape, moved }) => extentOfPoints(shape.reduced.points, axes, moved))
  return frameOf(around(extents), sizeMm)
}

/**
 * The frame around what goes in, its ways and its seats, where that is too small to be seen in the whole; else `null`.
 * `wholeMm` is the side of the frame that would be taken.
 */
export function nearFrame(
  parts: readonly PosedPart[],
  axes: ViewAxes,
  sizeMm: number,
  wholeMm: number,
): Frame | null {
  const going = parts.filter(({ goesIn }) => goesIn)
  if (going.length === 0) return null
  const lifted = going.map((part) => extentOf(part, axes, part.moved))
  const sides = lifted.map(largest)
  const [largestMm, smallestMm] = [Math.max(...sides), Math.min(...sides)]
  const onPaper = (mm: number): number => (mm * sizeMm) / wholeMm
  const { all, fastened, fastener } = smallOnPaperMm
  const isSmall =
    onPaper(largestMm) < all || (onPaper(largestMm) < fastened && onPaper(smallestMm) < fastener)
  if (!isSmall) return null
  const seats = going.map((part) => extentOf(part, axes, part.lift.baseMm))
  const near = frameOf(around([...lifted, ...seats]), sizeMm)
  const sideMm = Math.max(1.3 * near.sideMm, largestMm * 4)
  return sideMm < 0.75 * wholeMm ? { ...near, sideMm } : null
}

/** Where a part lies on the view plane when it is moved so far. Cost: O(points). */
export function extentOf({ shape }: PosedPart, axes: ViewAxes, moved: Point): Extent {
  return extentOfPoints(shape.mesh.points, axes, moved)
}

function extentOfPoints(points: Float32Array, axes: ViewAxes, moved: Point): Extent {
  const [right, rightOff] = [axes.right, dot(axes.right, moved)]
  const [up, upOff] = [axes.up, dot(axes.up, moved)]
  let [left, bottom] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  let [most, top] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let at = 0; at < points.length; at += 3) {
    const across = right[0] * points[at]! + right[1] * points[at + 1]! + right[2] * points[at + 2]!
    const over = up[0] * points[at]! + up[1] * points[at + 1]! + up[2] * points[at + 2]!
    if (across < left) left = across
    if (across > most) most = across
    if (over < bottom) bottom = over
    if (over > top) top = over
  }
  return { low: [left + rightOff, bottom + upOff], high: [most + rightOff, top + upOff] }
}

/** How a frame comes onto cells. */
export function projectionOf(
  parts: readonly PosedPart[],
  axes: ViewAxes,
  frame: Frame,
  across: number,
): Projection {
  const centre = [0, 1, 2].map((axis) => {
    const ends = parts.flatMap(({ shape }) => [shape.lowMm[axis]!, shape.highMm[axis]!])
    return (Math.min(...ends) + Math.max(...ends)) / 2
  })
  const depth = axes.near[0] * centre[0]! + axes.near[1] * centre[1]! + axes.near[2] * centre[2]!
  const middle: Point = [
    frame.rightMm * axes.right[0] + frame.upMm * axes.up[0] + depth * axes.near[0],
    frame.rightMm * axes.right[1] + frame.upMm * axes.up[1] + depth * axes.near[1],
    frame.rightMm * axes.right[2] + frame.upMm * axes.up[2] + depth * axes.near[2],
  ]
  return { axes, cellsPerMm: across / frame.sideMm, middle, across }
}

function largest({ low, high }: Extent): number {
  return Math.max(high[0] - low[0], high[1] - low[1])
}

function around(extents: readonly Extent[]): Extent {
  return {
    low: [Math.min(...extents.map(({ low }) => low[0])), Math.min(...extents.map(({ low }) => low[1]))],
    high: [Math.max(...extents.map(({ high }) => high[0])), Math.max(...extents.map(({ high }) => high[1]))],
  }
}

function frameOf(extent: Extent, sizeMm: number): Frame {
  const side = largest(extent) || 1
  return {
    rightMm: (extent.low[0] + extent.high[0]) / 2,
    upMm: (extent.low[1] + extent.high[1]) / 2,
    sideMm: (side * sizeMm) / (sizeMm - 2 * rimMm),
  }
}

function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}
