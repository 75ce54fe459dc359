import Fraction from 'fraction.js'
import type { Buyable, UnitPrice } from './choose-units.ts'
import type { Effort } from './fit-bars.ts'
import { ownUnits, type Piece } from './packing.ts'
import { goesOnto, type PlateProblem, type Sides, waysToLie } from './plate-problem.ts'
import type { PlateRules, PlateStock } from './plate-stock.ts'
import { compareIds } from './started.ts'
import { type WholeLengths, wholeLengths } from './whole-lengths.ts'

/** One plate that can be sawn, here or bought. */
export interface Plate {
  readonly stock: PlateStock
  readonly own: boolean
  /** As a share of a whole one. */
  readonly share: Fraction
  /** Index into the sizes of the shop. */
  readonly size: number
}

/** Pieces and plates in whole steps of length, in an order of their own. */
export interface PlateShop {
  readonly grid: WholeLengths
  readonly kerf: number
  /** In millimetres. */
  readonly cut: Fraction
  readonly turn: boolean
  readonly kinds: readonly Sides[]
  /** The kinds in millimetres, as they lie unless turned. */
  readonly sides: readonly { readonly length: Fraction; readonly width: Fraction }[]
  /** Names of the parts whose pieces are of each kind, once for each piece. */
  readonly parts: readonly (readonly string[])[]
  /** Parts that no plate is large enough for. */
  readonly tooLarge: readonly string[]
  /** Largest first. */
  readonly stocks: readonly PlateStock[]
  readonly forms: readonly Buyable[]
  /** Every size of plate, smallest first. */
  readonly sizes: readonly Sides[]
  readonly sizeOf: (stock: PlateStock, share: Fraction) => number
  /** Index of the size of each stock. */
  readonly sizeOfForm: readonly number[]
  /** What is here: remnants, smallest first, then whole plates. */
  readonly own: readonly Plate[]
  readonly effort: Effort
}

/** Everything that a plan of plates needs, counted in whole steps; what goes onto no plate is set aside. */
export function plateShop(
  pieces: readonly Piece[],
  stocks: readonly PlateStock[],
  { turn, effort }: PlateRules,
): PlateShop {
  const ordered = [...stocks].sort(largestFirst)
  const cut = widestCut(pieces)
  const grid = gridOf(pieces, ordered, cut)
  const sidesOf = ({ length, width }: PlateStock, share: Fraction): Sides => ({
    x: grid.down(length.mul(share)),
    y: grid.down(width),
  })
  const one = new Fraction(1)
  const fits = (piece: Piece): boolean =>
    waysToLie({ x: grid.up(piece.length), y: grid.up(piece.width) }, turn).some((sides) =>
      ordered.some((stock) => goesOnto(sides, sidesOf(stock, one))),
    )
  const sawn = pieces.filter(fits)
  const tooLarge = [...new Set(pieces.filter((piece) => !fits(piece)).map(({ part }) => part))].sort(
    compareIds,
  )
  const shares = ordered.flatMap((stock) =>
    [one, ...ownUnits(stock.have, 1)].map((share) => sidesOf(stock, share)),
  )
  const sizes = distinct(shares)
  const sizeOf = (stock: PlateStock, share: Fraction): number => {
    const { x, y } = sidesOf(stock, share)
    return sizes.findIndex((size) => size.x === x && size.y === y)
  }
  return {
    grid,
    kerf: grid.up(cut),
    cut,
    turn,
    ...kindsOf(grid, sawn, turn),
    tooLarge,
    stocks: ordered,
    forms: ordered.map(formOf),
    sizes,
    sizeOf,
    sizeOfForm: ordered.map((stock) => sizeOf(stock, one)),
    own: ownPlates(ordered, sawn.length, sizeOf),
    effort: { left: effort },
  }
}

/** Pieces onto what is here and so many new plates of each stock. */
export function plateProblem(shop: PlateShop, counts: readonly number[]): PlateProblem {
  const plates = shop.sizes.map((size) => ({ ...size, count: 0 }))
  for (const { size } of shop.own) plates[size]!.count += 1
  for (const [k, count] of counts.entries()) plates[shop.sizeOfForm[k]!]!.count += count
  const { kinds, parts, kerf, turn } = shop
  return { kinds, counts: parts.map(({ length }) => length), plates, kerf, turn }
}

/** Whether a piece of a kind goes onto a plate, in any way it may lie. */
export function fitsOnto({ kinds, turn }: PlateProblem, kind: number, plate: Sides): boolean {
  return waysToLie(kinds[kind]!, turn).some((sides) => goesOnto(sides, plate))
}

/** One blade cuts a plate: the widest cut that any of its pieces asks for. */
export function widestCut(pieces: readonly { readonly kerf: Fraction }[]): Fraction {
  return pieces.reduce((most, { kerf }) => (kerf.gt(most) ? kerf : most), new Fraction(0))
}

function largestFirst(a: PlateStock, b: PlateStock): number {
  return b.length.mul(b.width).compare(a.length.mul(a.width)) || compareIds(a.id, b.id)
}

/** Square centimetres are fine enough to tell which of two equal prices buys less. */
function formOf({ length, width, price }: PlateStock): Buyable {
  const known = new Map<number, UnitPrice>()
  return {
    holds: length.mul(width).div(100).valueOf(),
    price: (plates) => {
      const found = known.get(plates) ?? price(plates)
      known.set(plates, found)
      return found
    },
  }
}

function gridOf(pieces: readonly Piece[], stocks: readonly PlateStock[], cut: Fraction): WholeLengths {
  const lengths = [
    ...pieces.flatMap(({ length, width }) => [length, width]),
    ...stocks.flatMap(({ length, width, have }) => [
      length,
      width,
      ...ownUnits(have, 1).map((one) => length.mul(one)),
    ]),
    cut,
  ]
  const sum = lengths.reduce((all, each) => all.add(each), cut.mul(pieces.length))
  return wholeLengths(lengths, sum)
}

function distinct(sizes: readonly Sides[]): Sides[] {
  const found = new Map(sizes.map((size) => [`${size.x} ${size.y}`, size]))
  return [...found.values()].sort((a, b) => a.x * a.y - b.x * b.y || a.x - b.x)
}

function ownPlates(stocks: readonly PlateStock[], most: number, sizeOf: PlateShop['sizeOf']): Plate[] {
  const plates = stocks.flatMap((stock) =>
    ownUnits(stock.have, most).map(
      (share): Plate => ({ stock, own: true, share, size: sizeOf(stock, share) }),
    ),
  )
  const whole = ({ share }: Plate): number => (share.equals(1) ? 1 : 0)
  return plates.sort((a, b) => whole(a) - whole(b) || a.size - b.size)
}

function kindsOf(
  grid: WholeLengths,
  pieces: readonly Piece[],
  turn: boolean,
): Pick<PlateShop, 'kinds' | 'sides' | 'parts'> {
  const found = new Map<string, { length: Fraction; width: Fraction; parts: string[] }>()
  for (const { part, length, width } of pieces) {
    const [x, y] = turn && length.lt(width) ? [width, length] : [length, width]
    const key = `${x.toFraction()} ${y.toFraction()}`
    const like = found.get(key) ?? { length: x, width: y, parts: [] }
    like.parts.push(part)
    found.set(key, like)
  }
  const ordered = [...found.values()].sort((a, b) => b.width.compare(a.width) || b.length.compare(a.length))
  return {
    kinds: ordered.map(({ length, width }) => ({ x: grid.up(length), y: grid.up(width) })),
    sides: ordered.map(({ length, width }) => ({ length, width })),
    parts: ordered.map(({ parts }) => parts.sort(compareIds)),
  }
}
