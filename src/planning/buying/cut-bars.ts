import Fraction from 'fraction.js'
import { ownUnits, type Packing, type Piece, smaller } from './packing.ts'
import { compareIds } from './started.ts'

interface Bar {
  readonly own: boolean
  readonly size: Fraction
  /** Millimetres. */
  rest: Fraction
  readonly pieces: { part: string; share: Fraction }[]
}

/**
 * Which piece is cut from which bar. Each piece takes its length and one saw cut; the last one of a bar may take the
 * end as it is, so a cut that would fall beyond the end is not needed. No piece straddles two bars.
 * Method: first fit, longest piece first (textbook), own remnant before own whole bars before new ones.
 * Gives: at most 11/9 of the fewest new bars and a bit, not the proven fewest. Cost: O(pieces x bars).
 */
export function cutBars(pieces: readonly Piece[], length: Fraction, have: Fraction): Packing {
  const bars: Bar[] = ownUnits(have, pieces.length).map((size) => newBar(length, size, true))
  const tooLarge = new Set<string>()
  for (const piece of [...pieces].sort(longestFirst)) {
    const bar = bars.find(({ rest }) => piece.length.lte(rest)) ?? openBar(bars, piece, length)
    if (!bar) tooLarge.add(piece.part)
    else take(bar, piece, length)
  }
  const units = bars
    .filter((bar) => bar.pieces.length > 0)
    .map(({ own, size, pieces }) => ({ own, size, pieces }))
  return { units, tooLarge: [...tooLarge].sort(compareIds) }
}

function newBar(length: Fraction, size: Fraction, own: boolean): Bar {
  return { own, size, rest: length.mul(size), pieces: [] }
}

function openBar(bars: Bar[], piece: Piece, length: Fraction): Bar | null {
  if (piece.length.gt(length)) return null
  const bar = newBar(length, new Fraction(1), false)
  bars.push(bar)
  return bar
}

function take(bar: Bar, piece: Piece, length: Fraction): void {
  const taken = smaller(piece.length.add(piece.kerf), bar.rest)
  bar.rest = bar.rest.sub(taken)
  bar.pieces.push({ part: piece.part, share: taken.div(length) })
}

function longestFirst(a: Piece, b: Piece): number {
  return b.length.compare(a.length) || b.kerf.compare(a.kerf) || compareIds(a.part, b.part)
}
