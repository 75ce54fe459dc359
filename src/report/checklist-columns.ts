import type { Column } from './cells.ts'
import { mostBoxes } from './step-rows.ts'

/** Columns of a checklist before the boxes. */
export const leadingColumns: readonly Column[] = [
  { head: 'No.', width: 5 },
  { head: 'Do', width: 46 },
  { head: 'How', width: 46 },
  { head: 'Planned', width: 17 },
  { head: 'Time', width: 11 },
]
/** The same with pictures of 60 mm: as wide as a page all the same, so that nothing gets smaller in print. */
export const picturedColumns: readonly Column[] = [
  { head: 'No.', width: 5 },
  { head: 'Picture', width: 33 },
  { head: 'Do', width: 35 },
  { head: 'How', width: 34 },
  { head: 'Planned', width: 17 },
  { head: 'Time', width: 11 },
]
/** Width of a box to tick, in characters. */
export const boxWidth = 10

/** Heads of the boxes: one for each piece where they are few. */
export function boxHeads(pieces: number): readonly Column[] {
  const one = (head: string): Column => ({ head, width: boxWidth, align: 'center' })
  if (pieces === 1) return [one('Done')]
  return pieces > mostBoxes
    ? [one('All done')]
    : Array.from({ length: pieces }, (_, at) => one(`No. ${at + 1}`))
}
