import type { Columns } from './columns.ts'
import type { Lattice } from './crossings.ts'

/** Pieces and overlaps shallower than this are no collision, in millimetres. */
export const depthToleranceMm = 0.05
/** Faces nearer than this touch, in millimetres. */
export const contactMm = 0.1

/** What a bit of `SweptPair.cells` says. */
export const bits = { aUp: 1, aDown: 2, bUp: 4, bDown: 8, overlap: 16 } as const

/** Two parts swept past each other along one axis. */
export interface SweptPair {
  /** The cells that both windows share. */
  readonly lattice: Lattice
  /** By cell: in which senses each part runs into the other, and whether they overlap. */
  readonly cells: Uint8Array
  /** Whether any cell has each bit. */
  readonly any: number
  /** Area over which b touches a from above, and from below, in mm2. */
  readonly contactUpMm2: number
  readonly contactDownMm2: number
}

/**
 * In which cells each of two parts runs into the other when moved up or down the axis without end.
 * Where they overlap as drawn, the part that moves counts without what it has in common with the other, so that
 * threads and press fits drawn as cylinders come out.
 * Needs: lattices of one axis and cell. Gives: `null` where they share no cell. Cost: O(cells shared).
 */
export function sweepPair(a: Columns, b: Columns): SweptPair | null {
  const lattice = shared(a.lattice, b.lattice)
  if (!lattice) return null
  const cells = new Uint8Array(lattice.columns * lattice.rows)
  const sums = { any: 0, up: 0, down: 0 }
  for (let row = 0; row < lattice.rows; row++) {
    let ofA = cellAt(a.lattice, lattice, row)
    let ofB = cellAt(b.lattice, lattice, row)
    let cell = row * lattice.columns
    for (const past = cell + lattice.columns; cell < past; cell++, ofA++, ofB++) {
      if (a.count[ofA] === 0 || b.count[ofB] === 0) continue
      const found = meet(a, ofA, b, ofB, sums)
      cells[cell] = found
      sums.any |= found
    }
  }
  const area = lattice.cellMm ** 2
  return { lattice, cells, any: sums.any, contactUpMm2: sums.up * area, contactDownMm2: sums.down * area }
}

function shared(a: Lattice, b: Lattice): Lattice | null {
  const [left, low] = [Math.max(a.left, b.left), Math.max(a.low, b.low)]
  const columns = Math.min(a.left + a.columns, b.left + b.columns) - left
  const rows = Math.min(a.low + a.rows, b.low + b.rows) - low
  return columns > 0 && rows > 0 ? { ...a, left, low, columns, rows } : null
}

function cellAt(of: Lattice, at: Lattice, row: number): number {
  return (at.low - of.low + row) * of.columns + at.left - of.left
}

interface Sums {
  up: number
  down: number
}

function meet(a: Columns, ofA: number, b: Columns, ofB: number, sums: Sums): number {
  const [a0, b0] = [a.start[ofA]!, b.start[ofB]!]
  const [a1, b1] = [a0 + a.count[ofA]!, b0 + b.count[ofB]!]
  const [aLow, aHigh] = [a.bounds[a0]!, a.bounds[a1 - 1]!]
  const [bLow, bHigh] = [b.bounds[b0]!, b.bounds[b1 - 1]!]
  if (aHigh <= bLow + depthToleranceMm) {
    if (bLow - aHigh < contactMm) sums.up++
    return bits.aUp | bits.bDown
  }
  if (bHigh <= aLow + depthToleranceMm) {
    if (aLow - bHigh < contactMm) sums.down++
    return bits.aDown | bits.bUp
  }
  const near = nearness(a.bounds, a0, a1, b.bounds, b0, b1)
  if (near & 1) sums.up++
  if (near & 2) sums.down++
  if (!(near & 4)) return bits.aUp | bits.bDown | bits.aDown | bits.bUp
  const ofA2 = restEnds(a.bounds, a0, a1, b.bounds, b0, b1)
  const ofB2 = restEnds(b.bounds, b0, b1, a.bounds, a0, a1)
  return (
    bits.overlap |
    (ofA2.low < bHigh - depthToleranceMm ? bits.aUp : 0) |
    (ofA2.high > bLow + depthToleranceMm ? bits.aDown : 0) |
    (ofB2.low < aHigh - depthToleranceMm ? bits.bUp : 0) |
    (ofB2.high > aLow + depthToleranceMm ? bits.bDown : 0)
  )
}

/** 1: b touches a from above, 2: from below, 4: they overlap. */
function nearness(a: Float32Array, a0: number, a1: number, b: Float32Array, b0: number, b1: number): number {
  let found = 0
  for (let i = a0; i < a1; i += 2) {
    for (let k = b0; k < b1; k += 2) {
      if (Math.abs(b[k]! - a[i + 1]!) < contactMm) found |= 1
      if (Math.abs(a[i]! - b[k + 1]!) < contactMm) found |= 2
      if (Math.min(a[i + 1]!, b[k + 1]!) - Math.max(a[i]!, b[k]!) > depthToleranceMm) found |= 4
    }
  }
  return found
}

/** Lowest entry and highest exit of what is left of a without b; slivers of the cut are dropped. */
function restEnds(
  a: Float32Array,
  a0: number,
  a1: number,
  b: Float32Array,
  b0: number,
  b1: number,
): { low: number; high: number } {
  let [low, high] = [Infinity, -Infinity]
  for (let i = a0; i < a1; i += 2) {
    const end = a[i + 1]!
    let from = a[i]!
    for (let k = b0; k < b1 && from < end; k += 2) {
      if (b[k + 1]! <= from) continue
      if (b[k]! >= end) break
      if (b[k]! - from > depthToleranceMm) {
        if (from < low) low = from
        high = b[k]!
      }
      from = b[k + 1]!
    }
    if (end - from > depthToleranceMm) {
      if (from < low) low = from
      high = end
    }
  }
  return { low, high }
}
