import type { Lattice } from './crossings.ts'

/** The widest disc in a set of cells, and the rectangle (in cells of the lattice) that holds the set. */
export interface Widest {
  readonly widthMm: number
  readonly left: number
  readonly low: number
  readonly columns: number
  readonly rows: number
}

/**
 * The widest disc that fits into the cells that have a bit, in millimetres, right to about a cell; `null` for no cell.
 * Method: distance transform by chamfers of 3 and 4 (Borgefors, "Distance transformations in digital images", 1986,
 * from memory). Cost: O(cells in the rectangle of the set).
 */
export function widestDisc(lattice: Lattice, cells: Uint8Array, bit: number): Widest | null {
  const around = rectangleOf(lattice, cells, bit)
  if (!around) return null
  const most = farthestInside(lattice, cells, bit, around)
  // The middle of the first cell outside is `most / 3` cells away; the edge of the set lies half a cell nearer, and
  // where the middle of the set falls between two cells another quarter is lost on average.
  return { widthMm: ((2 * most) / 3 - 0.75) * lattice.cellMm, ...around }
}

type Rectangle = Omit<Widest, 'widthMm'>

function rectangleOf({ columns, rows }: Lattice, cells: Uint8Array, bit: number): Rectangle | null {
  let [left, right, low, high] = [columns, -1, -1, -1]
  for (let row = 0, cell = 0; row < rows; row++) {
    let found = false
    for (let column = 0; column < columns; column++, cell++) {
      if (!(cells[cell]! & bit)) continue
      found = true
      if (column < left) left = column
      if (column > right) right = column
    }
    if (!found) continue
    if (low < 0) low = row
    high = row
  }
  return low < 0 ? null : { left, low, columns: right - left + 1, rows: high - low + 1 }
}

/** Three times the greatest distance from a cell of the set to the nearest outside it, in cells. */
function farthestInside(lattice: Lattice, cells: Uint8Array, bit: number, around: Rectangle): number {
  const wide = around.columns + 2
  const far = new Uint16Array(wide * (around.rows + 2))
  for (let row = 0; row < around.rows; row++) {
    let at = (row + 1) * wide + 1
    let cell = (around.low + row) * lattice.columns + around.left
    for (const past = at + around.columns; at < past; at++, cell++) {
      if (!(cells[cell]! & bit)) continue
      far[at] = Math.min(
        far[at - 1]! + 3,
        far[at - wide]! + 3,
        far[at - wide - 1]! + 4,
        far[at - wide + 1]! + 4,
      )
    }
  }
  let most = 0
  for (let row = around.rows; row > 0; row--) {
    for (let at = row * wide + around.columns; at > row * wide; at--) {
      const here = far[at]!
      if (here === 0) continue
      const back = Math.min(
        far[at + 1]! + 3,
        far[at + wide]! + 3,
        far[at + wide + 1]! + 4,
        far[at + wide - 1]! + 4,
      )
      const least = Math.min(back, here)
      far[at] = least
      if (least > most) most = least
    }
  }
  return most
}
