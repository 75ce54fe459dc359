import {
  type FilledPlate,
  goesOnto,
  type Lying,
  type PlateProblem,
  type Sides,
  waysToLie,
} from './plate-problem.ts'

/** Rows along the plate's length or width, pieces laid long or short side along the row. */
export interface Manner {
  readonly rowsAlong: 'length' | 'width'
  readonly laid: 'long' | 'short'
}

/** Every manner in which rows can be sawn. */
export const manners: readonly Manner[] = [
  { rowsAlong: 'length', laid: 'long' },
  { rowsAlong: 'length', laid: 'short' },
  { rowsAlong: 'width', laid: 'long' },
  { rowsAlong: 'width', laid: 'short' },
]

/** A piece as laid: `run` along the row, `rise` across it. */
interface Laid {
  readonly kind: number
  readonly run: number
  readonly rise: number
}

interface Row {
  readonly rise: number
  readonly at: number
  /** Where the next piece of the row begins. */
  next: number
}

interface Sheet {
  readonly plate: number
  readonly run: number
  readonly depth: number
  /** Where the next row begins. */
  next: number
  readonly rows: Row[]
  readonly pieces: { kind: number; along: number; across: number; run: number; rise: number }[]
}

/**
 * Pieces onto plates in rows, deepest first; a plate is begun only where no begun one has room. One saw cut behind each
 * piece and each row, none where it would fall beyond the edge.
 * Method: shelves by first fit (textbook). `opens` says which size of plate to begin for a piece; `null`: none is left.
 * Gives: `null` where a piece finds no plate. Cost: O(pieces x rows).
 */
export function plateRows(
  problem: PlateProblem,
  manner: Manner,
  opens: (kind: number, opened: readonly number[]) => number | null,
): FilledPlate[] | null {
  const sheets: Sheet[] = []
  const opened = problem.plates.map(() => 0)
  const laid = problem.kinds.flatMap((_, kind) => {
    const piece = lay(problem, kind, manner)
    return Array.from({ length: piece ? problem.counts[kind]! : 0 }, () => piece!)
  })
  for (const piece of laid.sort(deepestFirst)) {
    if (sheets.some((sheet) => place(problem, sheet, piece))) continue
    const plate = opens(piece.kind, opened)
    if (plate === null) return null
    opened[plate] = opened[plate]! + 1
    const sheet = begin(problem.plates[plate]!, plate, manner)
    sheets.push(sheet)
    if (!place(problem, sheet, piece)) return null
  }
  return sheets.map(({ plate, pieces }) => ({ plate, pieces: pieces.map((piece) => lying(piece, manner)) }))
}

function begin({ x, y }: Sides, plate: number, { rowsAlong }: Manner): Sheet {
  const [run, depth] = rowsAlong === 'length' ? [x, y] : [y, x]
  return { plate, run, depth, next: 0, rows: [], pieces: [] }
}

/** In the manner's direction, else turned; `null` where no plate takes it. */
function lay({ kinds, plates, turn }: PlateProblem, kind: number, manner: Manner): Laid | null {
  const ways = waysToLie(kinds[kind]!, turn)
    .filter((sides) => plates.some((plate) => goesOnto(sides, plate)))
    .map(({ x, y }) =>
      manner.rowsAlong === 'length' ? { kind, run: x, rise: y } : { kind, run: y, rise: x },
    )
    .sort((a, b) => (manner.laid === 'long' ? b.run - a.run : a.run - b.run))
  return ways[0] ?? null
}

function deepestFirst(a: Laid, b: Laid): number {
  return b.rise - a.rise || b.run - a.run || a.kind - b.kind
}

/** The piece in the first row with room, else in a new row, else turned in a new row of an empty plate. */
function place({ kerf, turn }: PlateProblem, sheet: Sheet, piece: Laid): boolean {
  const put = ({ kind, run, rise }: Laid): boolean => {
    const row =
      sheet.rows.find((each) => rise <= each.rise && each.next + run <= sheet.run) ?? newRow(sheet, run, rise)
    if (!row) return false
    sheet.pieces.push({ kind, along: row.next, across: row.at, run, rise })
    row.next += run + kerf
    sheet.next = Math.max(sheet.next, row.at + row.rise + kerf)
    return true
  }
  if (put(piece)) return true
  return turn && sheet.rows.length === 0 && put({ kind: piece.kind, run: piece.rise, rise: piece.run })
}

function newRow(sheet: Sheet, run: number, rise: number): Row | null {
  if (run > sheet.run || sheet.next + rise > sheet.depth) return null
  const row: Row = { rise, at: sheet.next, next: 0 }
  sheet.rows.push(row)
  return row
}

function lying({ kind, along, across, run, rise }: Sheet['pieces'][number], { rowsAlong }: Manner): Lying {
  return rowsAlong === 'length'
    ? { kind, atX: along, atY: across, x: run, y: rise }
    : { kind, atX: across, atY: along, x: rise, y: run }
}
