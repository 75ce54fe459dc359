import type { DepthBuffer } from './depth-buffer.ts'
import { type Frame, projectionOf, wholeFrame } from './frame-picture.ts'
import { pictureLines } from './picture-lines.ts'
import { stroke } from './picture-marks.ts'
import type { PosedPart } from './picture-part.ts'
import type { Mark, PaperBox } from './svg-text.ts'
import { thinOut } from './thin-out.ts'
import type { ViewAxes } from './view.ts'

/** Side of the small picture as a share of the large one, and its cells. */
const share = 0.27
const across = 240

/**
 * A small picture of the whole in the emptiest corner, with a box around what the large one shows, so that nobody has
 * to guess where on the device it is.
 */
export function locator(
  parts: readonly PosedPart[],
  axes: ViewAxes,
  near: Frame,
  { buffer, sizeMm }: { readonly buffer: DepthBuffer; readonly sizeMm: number },
): readonly Mark[] {
  const side = share * sizeMm
  const corner = emptiestCorner(buffer, (number) => parts[number]?.goesIn === true)
  const box: PaperBox = {
    x: corner.right ? sizeMm - side - 0.3 : 0.3,
    y: corner.low ? sizeMm - side - 0.3 : 0.3,
    side,
  }
  const whole = wholeFrame(parts, axes, side)
  const mmPerCell = side / across
  const { lines } = pictureLines(parts, projectionOf(parts, axes, whole, across))
  const onPaper = (points: readonly number[]): readonly number[] =>
    thinOut(points, 0.5).map((cell, i) => (i % 2 === 0 ? box.x : box.y) + cell * mmPerCell)
  const scale = side / whole.sideMm
  const half = (near.sideMm * scale) / 2
  const x = side / 2 + (near.rightMm - whole.rightMm) * scale
  const y = side / 2 - (near.upMm - whole.upMm) * scale
  const within = (at: number): number => Math.max(0.4, Math.min(side - 0.4, at))
  const [left, right] = [box.x + within(x - half), box.x + within(x + half)]
  const [top, bottom] = [box.y + within(y - half), box.y + within(y + half)]
  return [
    { mark: 'box', box, widthMm: 0.13 },
    stroke(
      0.13,
      lines.filter(({ kind }) => kind !== 'inner').map(({ points }) => onPaper(points)),
    ),
    stroke(0.4, [[left, top, right, top, right, bottom, left, bottom, left, top]]),
  ]
}

function emptiestCorner(
  { across: cells, part: parts }: DepthBuffer,
  goesIn: (part: number) => boolean,
): { readonly right: boolean; readonly low: boolean } {
  const side = Math.ceil(share * cells)
  const corners = [
    { right: true, low: false },
    { right: false, low: false },
    { right: true, low: true },
    { right: false, low: true },
  ]
  const taken = corners.map(({ right, low }) => {
    let sum = 0
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side; x++) {
        const part = parts[(low ? cells - 1 - y : y) * cells + (right ? cells - 1 - x : x)]!
        sum += part < 0 ? 0 : goesIn(part) ? 20 : 1
      }
    return sum
  })
  return corners[taken.indexOf(Math.min(...taken))]!
}
