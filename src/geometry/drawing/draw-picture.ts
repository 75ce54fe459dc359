import type { Direction } from '../relations/directions.ts'
import { chooseView } from './choose-view.ts'
import type { DrawingFault } from './drawn-mesh.ts'
import { type Frame, nearFrame, projectionOf, wholeFrame } from './frame-picture.ts'
import { locator } from './locator.ts'
import { numberLabels } from './number-labels.ts'
import { pictureLines } from './picture-lines.ts'
import { ghostMarks, lineMarks, wayMarks } from './picture-marks.ts'
import { type PicturePart, posedParts } from './picture-part.ts'
import { svgText } from './svg-text.ts'
import { trimPicture } from './trim-picture.ts'
import { axesOf, upright, type View } from './view.ts'

/** How a picture is drawn. */
export interface PictureOptions {
  /** Width of the picture on paper, and the most it is high. */
  readonly sizeMm: number
  readonly title: string
  /** The view of the picture before, kept where it shows enough; `null`: the best is taken. */
  readonly kept: View | null
  /** The side of the device that lies up. */
  readonly up: Direction
  /** Looked at from here, whatever it shows; `null`: the best is taken. */
  readonly view: View | null
  /** Millimetres of paper for a millimetre of the device, at most; `null`: as large as it fits. */
  readonly scale: number | null
}

/** A picture of one step, or of a whole taken apart. */
export interface Picture {
  readonly svg: string
  /** On paper: no more than `sizeMm`, which is its width. */
  readonly heightMm: number
  readonly view: View
  /** Millimetres of paper for a millimetre of the device. */
  readonly scale: number
  /** Only the surroundings of what goes in are shown, because it is small. */
  readonly near: boolean
}

/** Cells for a millimetre of paper: enough that no step of a line shows in print; and most cells across. */
const finestCellsPerMm = 16
const mostAcross = 2000

/** Usual options: 60 mm on a side, the best view, as large as it fits. */
export const usualPicture: PictureOptions = {
  sizeMm: 60,
  title: '',
  kept: null,
  up: upright,
  view: null,
  scale: null,
}

/**
 * Draws parts in black and white: hidden lines left out, what goes in with a heavy outline and hatch, a dashed way with
 * an arrow to its seat. Where nothing goes in, all parts that have a way are drawn apart, with their ways dashed.
 * Needs: parts in the order they go in. Gives: the same text for the same parts, in whatever order their triangles are.
 * Cost: O(triangles + cells).
 */
export function drawPicture(parts: readonly PicturePart[], options: PictureOptions): Picture | DrawingFault {
  if (!parts.some(isThere)) return { fault: 'nothing to draw' }
  const posed = posedParts(parts)
  const view = options.view ?? chooseView(posed, options.kept, options.up)
  const axes = axesOf(view)
  const { sizeMm } = options
  const whole = wholeFrame(posed, axes, sizeMm)
  const kept: Frame =
    options.scale === null ? whole : { ...whole, sideMm: Math.max(whole.sideMm, sizeMm / options.scale) }
  const near = nearFrame(posed, axes, sizeMm, kept.sideMm)
  const frame = near ?? kept
  const across = Math.min(mostAcross, Math.round(finestCellsPerMm * sizeMm))
  const projection = projectionOf(posed, axes, frame, across)
  const seen = pictureLines(posed, projection)
  const sheet = { parts: posed, seen, projection, frame, sizeMm }
  const marks = [
    ...lineMarks(sheet),
    ...(near ? locator(posed, axes, near, { buffer: seen.buffer, sizeMm }) : []),
    ...ghostMarks(sheet),
    ...wayMarks(sheet),
    ...numberLabels(sheet),
  ]
  const strip = trimPicture(sizeMm, marks)
  return {
    svg: svgText(sizeMm, options.title, marks, strip),
    heightMm: strip.heightMm,
    view,
    scale: sizeMm / frame.sideMm,
    near: near !== null,
  }
}

/** The scale at which every one of several pictures fits its paper, each seen from where it is seen best. */
export function scaleOfAll(
  pictures: readonly { readonly parts: readonly PicturePart[]; readonly up: Direction }[],
  sizeMm: number,
): number | null {
  const scales = pictures
    .filter(({ parts }) => parts.some(isThere))
    .map(({ parts, up }) => {
      const posed = posedParts(parts)
      return sizeMm / wholeFrame(posed, axesOf(chooseView(posed, null, up)), sizeMm).sideMm
    })
  return scales.length > 0 ? Math.min(...scales) : null
}

function isThere({ shape }: PicturePart): boolean {
  return shape.mesh.triangles.length > 0
}
