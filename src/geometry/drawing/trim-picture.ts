import { rimMm } from './frame-picture.ts'
import type { Mark, Strip } from './svg-text.ts'

/** The sheet without what is empty above and below: full width, so that pictures keep to their column. */
export function trimPicture(sizeMm: number, marks: readonly Mark[]): Strip {
  let [top, bottom] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const mark of marks)
    for (const y of heightsOf(mark)) {
      if (y < top) top = y
      if (y > bottom) bottom = y
    }
  if (!(top < bottom)) return { topMm: 0, heightMm: sizeMm }
  const topMm = Math.max(0, Math.floor((top - rimMm) * 10) / 10)
  const end = Math.min(sizeMm, Math.ceil((bottom + rimMm) * 10) / 10)
  return { topMm, heightMm: Math.round((end - topMm) * 10) / 10 }
}

function heightsOf(mark: Mark): readonly number[] {
  if (mark.mark === 'box') return [mark.box.y, mark.box.y + mark.box.side]
  const lines = mark.mark === 'solid' ? [mark.points] : mark.stroke.lines
  return lines.flatMap((points) => points.filter((_, i) => i % 2 === 1))
}
