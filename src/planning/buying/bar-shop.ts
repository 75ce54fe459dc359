import Fraction from 'fraction.js'
import type { BarPiece, BarRules, BarStock } from './bar-stock.ts'
import type { Buyable, UnitPrice } from './choose-units.ts'
import { type BarProblem, barLeft, type Effort, type PieceKind } from './fit-bars.ts'
import { ownUnits } from './packing.ts'
import { compareIds } from './started.ts'
import { type WholeLengths, wholeLengths } from './whole-lengths.ts'

/** One bar that can be cut, here or bought. */
export interface Bar {
  readonly stock: BarStock
  readonly own: boolean
  /** As a share of a whole one. */
  readonly share: Fraction
  /** Index into the sizes of the shop. */
  readonly size: number
}

/** Pieces and bars in whole steps of length, in an order of their own. */
export interface BarShop {
  readonly grid: WholeLengths
  readonly grip: number
  /** Longest first, then the widest cut first. */
  readonly kinds: readonly PieceKind[]
  /** The kinds in millimetres, facing included. */
  readonly cuts: readonly { readonly length: Fraction; readonly kerf: Fraction }[]
  /** Names of the parts whose pieces are of each kind, once for each piece. */
  readonly parts: readonly (readonly string[])[]
  /** Parts that no bar is long enough for. */
  readonly tooLarge: readonly string[]
  /** Longest first. */
  readonly stocks: readonly BarStock[]
  readonly forms: readonly Buyable[]
  /** Every length of bar, shortest first. */
  readonly sizes: readonly number[]
  /** What is here: remnants, shortest first, then whole bars. */
  readonly own: readonly Bar[]
  readonly effort: Effort
}

/** Everything that a plan of bars needs, counted in whole steps; what fits no bar is set aside. */
export function barShop(pieces: readonly BarPiece[], stocks: readonly BarStock[], rules: BarRules): BarShop {
  const ordered = [...stocks].sort((a, b) => b.length.compare(a.length) || compareIds(a.id, b.id))
  const grid = gridOf(pieces, ordered, rules.grip)
  const grip = grid.up(rules.grip)
  const fits = (piece: BarPiece): boolean =>
    ordered.some(({ length }) => barLeft({ kinds: [kindOf(grid, piece)], grip }, grid.down(length), [1]) >= 0)
  const cut = pieces.filter(fits)
  const tooLarge = [...new Set(pieces.filter((piece) => !fits(piece)).map(({ part }) => part))].sort(
    compareIds,
  )
  const kinds = kindsOf(grid, cut)
  const forms = ordered.map((stock) => ({ holds: grid.down(stock.length), price: remembered(stock.price) }))
  const lengths = ordered.flatMap(({ length, have }) =>
    [new Fraction(1), ...ownUnits(have, cut.length)].map((share) => grid.down(length.mul(share))),
  )
  const sizes = [...new Set(lengths)].sort((a, b) => a - b)
  const own = ownBars(ordered, cut.length, (length) => sizes.indexOf(grid.down(length)))
  return {
    grid,
    grip,
    ...kinds,
    tooLarge,
    stocks: ordered,
    forms,
    sizes,
    own,
    effort: { left: rules.effort },
  }
}

/** Pieces into what is here and so many new bars of each stock; of own whole bars as many as said, else all. */
export function barProblem(shop: BarShop, counts: readonly number[], whole?: readonly number[]): BarProblem {
  const bars = shop.sizes.map((size) => ({ size, count: 0 }))
  const left = shop.stocks.map((_, k) => whole?.[k] ?? Number.POSITIVE_INFINITY)
  for (const { stock, share, size } of shop.own) {
    const k = shop.stocks.indexOf(stock)
    if (share.equals(1)) left[k] = left[k]! - 1
    if (left[k]! >= 0) bars[size]!.count += 1
  }
  for (const [k, { holds }] of shop.forms.entries()) bars[shop.sizes.indexOf(holds)]!.count += counts[k]!
  return { kinds: shop.kinds, counts: shop.parts.map(({ length }) => length), bars, grip: shop.grip }
}

function gridOf(pieces: readonly BarPiece[], stocks: readonly BarStock[], grip: Fraction): WholeLengths {
  const zero = new Fraction(0)
  const kinds = pieces.flatMap(({ length, kerf, facing }) => [length, kerf, facing ?? zero])
  const bars = stocks.flatMap(({ length, have }) => [
    length,
    ...ownUnits(have, 1).map((one) => length.mul(one)),
  ])
  const longest = stocks.reduce((most, { length }) => (length.gt(most) ? length : most), grip)
  const sum = kinds.reduce((all, each) => all.add(each), longest.mul(pieces.length + 1))
  return wholeLengths([...kinds, ...bars, grip], sum)
}

function kindOf(grid: WholeLengths, piece: BarPiece): PieceKind {
  return { length: grid.up(withFacing(piece)), kerf: grid.up(piece.kerf) }
}

function withFacing({ length, facing }: BarPiece): Fraction {
  return facing ? length.add(facing) : length
}

function kindsOf(grid: WholeLengths, pieces: readonly BarPiece[]): Pick<BarShop, 'kinds' | 'cuts' | 'parts'> {
  const found = new Map<string, { kind: PieceKind; cut: BarShop['cuts'][number]; parts: string[] }>()
  for (const piece of pieces) {
    const kind = kindOf(grid, piece)
    const cut = { length: withFacing(piece), kerf: piece.kerf }
    // Two lengths may count as one where the steps are coarse.
    const key = `${cut.length.toFraction()} ${cut.kerf.toFraction()}`
    const like = found.get(key) ?? { kind, cut, parts: [] }
    like.parts.push(piece.part)
    found.set(key, like)
  }
  const ordered = [...found.values()].sort(
    (a, b) => b.cut.length.compare(a.cut.length) || b.cut.kerf.compare(a.cut.kerf),
  )
  return {
    kinds: ordered.map(({ kind }) => kind),
    cuts: ordered.map(({ cut }) => cut),
    parts: ordered.map(({ parts }) => parts.sort(compareIds)),
  }
}

function ownBars(stocks: readonly BarStock[], most: number, sizeOf: (length: Fraction) => number): Bar[] {
  const bars = stocks.flatMap((stock) =>
    ownUnits(stock.have, most).map(
      (share): Bar => ({
        stock,
        own: true,
        share,
        size: sizeOf(stock.length.mul(share)),
      }),
    ),
  )
  const whole = ({ share }: Bar): number => (share.equals(1) ? 1 : 0)
  return bars.sort((a, b) => whole(a) - whole(b) || a.size - b.size)
}

function remembered(price: (bars: number) => UnitPrice): (bars: number) => UnitPrice {
  const known = new Map<number, UnitPrice>()
  return (bars) => {
    const found = known.get(bars) ?? price(bars)
    known.set(bars, found)
    return found
  }
}
