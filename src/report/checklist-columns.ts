import type { Column, Sheet } from './cells.ts'
import { mostBoxes } from './step-rows.ts'

/** How the page of a checklist is divided. */
export interface ChecklistPage {
  /** Columns before the boxes. */
  readonly columns: readonly Column[]
  /** Width of a box to tick, in characters. */
  readonly box: number
  readonly orientation: Sheet['orientation']
}

const plain: ChecklistPage = {
  columns: [
    { head: 'No.', width: 5 },
    { head: 'Do', width: 46 },
    { head: 'How', width: 42 },
    { head: 'Planned', width: 21 },
    { head: 'Time', width: 11 },
  ],
  box: 10,
  orientation: 'landscape',
}

/**
 * Characters across an upright page, with those between columns, in the reader that draws them widest: more, and it
 * would print all smaller, so that a picture of 60 mm would be less.
 */
const upright = 92.5
const between = 0.71
const [number, picture, pictureBox] = [4, 33, 7]

/** Columns of checklists with so many boxes at most; four pictures of 60 mm stand one below the other on a page. */
export function checklistPage(boxes: number, pictured: boolean): ChecklistPage {
  if (!pictured) return plain
  const rest = upright - number - picture - boxes * pictureBox - (3 + boxes) * between
  return {
    columns: [
      { head: 'No.', width: number },
      { head: 'Picture', width: picture },
      { head: 'Do', width: Math.floor(rest * 10) / 10 },
    ],
    box: pictureBox,
    orientation: 'portrait',
  }
}

/** Heads of the boxes: one for each piece where they are few. */
export function boxHeads(pieces: number, width: number): readonly Column[] {
  const one = (head: string): Column => ({ head, width, align: 'center' })
  if (pieces === 1) return [one('Done')]
  return pieces > mostBoxes
    ? [one('All done')]
    : Array.from({ length: pieces }, (_, at) => one(`No. ${at + 1}`))
}
