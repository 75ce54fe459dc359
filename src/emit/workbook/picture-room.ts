import type { Drawing } from '../../report/cells.ts'
import { pageScale } from './page-room.ts'
import type { PlacedRow, PlacedSheet } from './placing.ts'
import { columnPoints, type RowSize } from './room.ts'

/** Room kept free round a picture, in points. */
export const pictureRim = 3
const pointsPerMm = 72 / 25.4

/** A row with its size. */
export interface Sized {
  readonly row: PlacedRow
  readonly size: RowSize
}

/** A picture as large as it is drawn, in points of the sheet. */
export interface PictureSize {
  readonly wide: number
  readonly high: number
}

/** The size of the picture that begins in a row; `null`: none does. */
export type PictureSizes = (row: PlacedRow) => PictureSize | null

/** How large pictures are drawn: their size on paper, however the sheet is scaled for it, and no wider than their column. */
export function pictureSizes(
  placed: PlacedSheet,
  widths: readonly number[],
  pictures: ReadonlyMap<string, Drawing>,
): PictureSizes {
  const scale = pageScale(placed, widths)
  return ({ cells }) => {
    const shown = cells.find(({ cell }) => cell.picture)
    const drawing = shown && pictures.get(shown.cell.picture!)
    if (!drawing) return null
    const room = columnPoints(widths[shown.column - 1]!) - 2 * pictureRim
    const wide = Math.min(room, (drawing.sizeMm * pointsPerMm) / scale)
    return { wide, high: (wide * drawing.heightMm) / drawing.sizeMm }
  }
}

/** The rows with the row that a picture leaves to be filled as high as it needs. */
export function withPictureRoom(rows: readonly Sized[], sizeOf: PictureSizes): readonly Sized[] {
  const out = [...rows]
  for (const [at, { row }] of rows.entries()) {
    const high = (sizeOf(row)?.high ?? 0) + 2 * pictureRim
    const count = row.cells.find(({ cell }) => cell.picture)?.cell.down ?? 0
    const last = at + count - 1
    if (count === 0 || !out[last]?.row.fills) continue
    const taken = out.slice(at, last).reduce((sum, { size }) => sum + size.height, 0)
    const { row: end, size } = out[last]
    const says = end.cells.some(({ cell }) => cell.value.type !== 'empty')
    const height = Math.max(says ? size.height : pictureRim, Math.ceil((high - taken) * 4) / 4)
    out[last] = { row: out[last].row, size: { ...out[last].size, height } }
  }
  return out
}

/** How many rows at the start of a run a page break must not part: those that its first picture lies over. */
export function rowsUnderPicture(rows: readonly Sized[], sizeOf: PictureSizes): number {
  const high = (rows[0] && sizeOf(rows[0].row)?.high) ?? 0
  let [count, taken] = [1, rows[0]?.size.height ?? 0]
  while (taken < high && count < rows.length) taken += rows[count++]!.size.height
  return count
}
