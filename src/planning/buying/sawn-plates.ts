import type Fraction from 'fraction.js'
import { type PackedUnit, smaller } from './packing.ts'
import type { FilledPlate, Lying } from './plate-problem.ts'
import type { Plate, PlateShop } from './plate-shop.ts'

/** A piece in its place on a plate; corner nearest to the plate's, sides as it lies. Millimetres. */
export interface CutPlace {
  readonly part: string
  readonly atLength: Fraction
  readonly atWidth: Fraction
  readonly length: Fraction
  readonly width: Fraction
}

/** One plate, and the pieces sawn from it. */
export interface CutPlate extends PackedUnit {
  /** The stock it is of. */
  readonly form: string
  /** One for each of the pieces, in their order. */
  readonly places: readonly CutPlace[]
  /** Left over, as a share of a whole plate. */
  readonly rest: Fraction
}

/** The pieces by name on their plates; of plates of one size, own ones get the fullest. */
export function sawnPlates(
  shop: PlateShop,
  packing: readonly FilledPlate[],
  plates: readonly Plate[],
): CutPlate[] {
  const left = packing.filter(({ pieces }) => pieces.length > 0).sort(fullestFirst)
  const names = shop.parts.map((parts) => [...parts])
  return plates.flatMap((plate) => {
    const found = left.findIndex((filled) => filled.plate === plate.size)
    if (found < 0) return []
    const [{ pieces }] = left.splice(found, 1) as [FilledPlate]
    return [sawn(shop, plate, pieces, names)]
  })
}

function fullestFirst(a: FilledPlate, b: FilledPlate): number {
  const area = ({ pieces }: FilledPlate): number => pieces.reduce((sum, { x, y }) => sum + x * y, 0)
  return area(b) - area(a)
}

function sawn(shop: PlateShop, plate: Plate, lying: readonly Lying[], names: string[][]): CutPlate {
  const { stock, share, own } = plate
  const ordered = [...lying].sort((a, b) => a.atY - b.atY || a.atX - b.atX)
  const places = ordered.map((piece) => placed(shop, piece, names[piece.kind]!.shift()!))
  const pieces = places.map((place) => ({ part: place.part, share: taken(place, shop.cut, plate) }))
  const rest = pieces.reduce((left, piece) => left.sub(piece.share), share)
  return { own, size: share, pieces, form: stock.id, places, rest }
}

/** In millimetres; corners are exact where the steps are. */
function placed({ grid, sides }: PlateShop, { kind, atX, atY, x, y }: Lying, part: string): CutPlace {
  const { length, width } = sides[kind]!
  const turned = x !== y && grid.up(length) !== x
  const [along, across] = turned ? [width, length] : [length, width]
  return { part, atLength: grid.back(atX), atWidth: grid.back(atY), length: along, width: across }
}

/** With its cuts, where they do not fall beyond the edge; as a share of a whole plate. */
function taken(place: CutPlace, cut: Fraction, { stock, share }: Plate): Fraction {
  const along = smaller(place.length.add(cut), stock.length.mul(share).sub(place.atLength))
  const across = smaller(place.width.add(cut), stock.width.sub(place.atWidth))
  return along.mul(across).div(stock.length.mul(stock.width))
}
