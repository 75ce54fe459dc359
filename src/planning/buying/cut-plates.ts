import Fraction from 'fraction.js'
import { ownUnits, type PackedUnit, type Packing, type Piece, smaller } from './packing.ts'
import { compareIds } from './started.ts'

/** Millimetres. */
export interface PlateSize {
  readonly length: Fraction
  readonly width: Fraction
}

/** A piece as laid: `run` along the row, `rise` across it. */
interface Laid {
  readonly part: string
  readonly run: Fraction
  readonly rise: Fraction
}

interface Row {
  readonly rise: Fraction
  /** With the cut behind the row. */
  readonly depth: Fraction
  rest: Fraction
}

interface Sheet {
  readonly own: boolean
  readonly size: Fraction
  readonly run: Fraction
  rest: Fraction
  readonly rows: Row[]
  readonly pieces: { part: string; share: Fraction }[]
}

/** Rows along the plate's length or width, pieces laid long or short side along the row. */
interface Manner {
  readonly rowsAlong: 'length' | 'width'
  readonly laid: 'long' | 'short'
}

const manners: readonly Manner[] = [
  { rowsAlong: 'length', laid: 'long' },
  { rowsAlong: 'length', laid: 'short' },
  { rowsAlong: 'width', laid: 'long' },
  { rowsAlong: 'width', laid: 'short' },
]

/**
 * Which piece is sawn from which plate: rows across the plate, pieces in a row, one saw cut behind each piece and each
 * row; none where it would fall beyond the edge. Pieces may be turned by a quarter. A piece takes its length and cut
 * times its width and cut. A remnant is taken to have the full width and its share of the length.
 * Method: rows (shelves) by first fit, deepest first, in four manners; the one with the fewest new plates is kept, then
 * with the fewest own ones, then the first. Gives: a plan that can be sawn, not the proven fewest plates.
 * Cost: O(pieces x rows).
 */
export function cutPlates(pieces: readonly Piece[], plate: PlateSize, have: Fraction): Packing {
  const kerf = widestCut(pieces)
  const plans = manners.map((manner) => packRows(pieces, plate, have, kerf, manner))
  return plans.reduce((best, plan) => (fewer(plan, best) ? plan : best))
}

/** One blade cuts a plate: the widest cut that any of its pieces asks for. */
export function widestCut(pieces: readonly { readonly kerf: Fraction }[]): Fraction {
  return pieces.reduce((most, { kerf }) => (kerf.gt(most) ? kerf : most), new Fraction(0))
}

function fewer(plan: Packing, than: Packing): boolean {
  const difference = count(plan, false) - count(than, false) || count(plan, true) - count(than, true)
  return difference < 0
}

function count(plan: Packing, own: boolean): number {
  return plan.units.filter((unit) => unit.own === own).length
}

function packRows(
  pieces: readonly Piece[],
  plate: PlateSize,
  have: Fraction,
  kerf: Fraction,
  manner: Manner,
): Packing {
  const area = plate.length.mul(plate.width)
  const sheets = ownUnits(have, pieces.length).map((size) => newSheet(plate, manner, size, true))
  const whole = newSheet(plate, manner, new Fraction(1), false)
  const laid = pieces.map((piece) => lay(piece, whole, manner))
  for (const piece of laid.filter((each) => each !== null).sort(deepestFirst)) {
    if (sheets.some((sheet) => place(piece, sheet, kerf, area))) continue
    sheets.push(newSheet(plate, manner, new Fraction(1), false))
    place(piece, sheets.at(-1)!, kerf, area)
  }
  const tooLarge = new Set(pieces.filter((_, k) => laid[k] === null).map(({ part }) => part))
  const units = sheets.filter((sheet) => sheet.pieces.length > 0).map(unitOf)
  return { units, tooLarge: [...tooLarge].sort(compareIds) }
}

function unitOf({ own, size, pieces }: Sheet): PackedUnit {
  return { own, size, pieces }
}

function newSheet(plate: PlateSize, manner: Manner, size: Fraction, own: boolean): Sheet {
  const length = plate.length.mul(size)
  const [run, rest] = manner.rowsAlong === 'length' ? [length, plate.width] : [plate.width, length]
  return { own, size, run, rest, rows: [], pieces: [] }
}

/** The piece in the manner's direction, else turned; `null` where no whole plate takes it. */
function lay(piece: Piece, whole: Sheet, manner: Manner): Laid | null {
  const [short, long] = piece.length.lt(piece.width)
    ? [piece.length, piece.width]
    : [piece.width, piece.length]
  const both = [
    { part: piece.part, run: long, rise: short },
    { part: piece.part, run: short, rise: long },
  ]
  const tried = manner.laid === 'long' ? both : both.reverse()
  return tried.find(({ run, rise }) => run.lte(whole.run) && rise.lte(whole.rest)) ?? null
}

function deepestFirst(a: Laid, b: Laid): number {
  return b.rise.compare(a.rise) || b.run.compare(a.run) || compareIds(a.part, b.part)
}

function place(piece: Laid, sheet: Sheet, kerf: Fraction, area: Fraction): boolean {
  const row =
    sheet.rows.find(({ rise, rest }) => piece.rise.lte(rise) && piece.run.lte(rest)) ??
    openRow(piece, sheet, kerf)
  if (!row) return false
  const run = smaller(piece.run.add(kerf), row.rest)
  row.rest = row.rest.sub(run)
  const share = run.mul(smaller(piece.rise.add(kerf), row.depth)).div(area)
  sheet.pieces.push({ part: piece.part, share })
  return true
}

function openRow(piece: Laid, sheet: Sheet, kerf: Fraction): Row | null {
  if (piece.rise.gt(sheet.rest) || piece.run.gt(sheet.run)) return null
  const depth = smaller(piece.rise.add(kerf), sheet.rest)
  const row: Row = { rise: piece.rise, depth, rest: sheet.run }
  sheet.rest = sheet.rest.sub(depth)
  sheet.rows.push(row)
  return row
}
